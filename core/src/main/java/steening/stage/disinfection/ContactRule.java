package steening.stage.disinfection;

import steening.language.Phrase;

/**
 * How long chlorine is to stay. Rules differ; the one that ties hours to strength is held to, the others are told.
 * Sources, all seen: Michigan R 325.1661 Table 5; 15A NCAC 18C .1002; Montana ARM 36.21.662; Alberta Working Well
 * module 6.
 */
final class ContactRule {
  static final Phrase DIFFERING = Phrase.of(
      "Rules differ: Michigan R 325.1661 asks for 10 h at 100 mg/L, 4 h at 250, 2 h at 500, 1 h at 1000;"
          + " North Carolina 15A NCAC 18C .1002 for 24 h at 100 mg/L;"
          + " Montana ARM 36.21.662 for 25 mg/L still there after 24 h;"
          + " Alberta's module 6 for 8 to 48 h at 200 mg/L.",
      "Las reglas difieren: Michigan R 325.1661 pide 10 h con 100 mg/L, 4 h con 250, 2 h con 500, 1 h con 1000;"
          + " Carolina del Norte 15A NCAC 18C .1002, 24 h con 100 mg/L; Montana ARM 36.21.662, 25 mg/L aún a las 24 h;"
          + " el módulo 6 de Alberta, de 8 a 48 h con 200 mg/L.");

  private static final double[][] MICHIGAN = {{1000, 1}, {500, 2}, {250, 4}};
  private static final double LONGEST = 10;

  private ContactRule() {}

  /** Hours for a concentration in mg/L after Michigan's table; the longest for anything weaker than its second row. */
  static double hours(double concentration) {
    for (double[] row : MICHIGAN) if (concentration >= row[0]) return row[1];
    return LONGEST;
  }
}
