package steening.stage.drilling.start;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingStage;

/**
 * How far mast, rods and hoist keep from an overhead power line.
 *
 * <p>K by Table A; B = b + i (U − 50). U voltage in kV, b 10 ft, i 0.4 in for each kV above 50.
 *
 * <p>Source: 29 CFR 1926.1408, Table A (seen), which is about cranes; 29 CFR 1926.600(a)(6) and 1910.333(c)(3) for rigs
 * built for drilling (from memory). Range: up to 1000 kV; 20 ft where the voltage is not known and is 350 kV at most.
 * The greater of the two is to be kept; local law and the owner of the line decide.
 */
public final class LineClearance {
  static final QuantityField KILOVOLTS = QuantityField.of(
          "kilovolts", Scale.NUMBER, Phrase.of("voltage in kV, if known", "voltaje en kV, si se conoce"), "69",
          "69")
      .between("0.1", "1000").usually("0.2", "765").optional();

  static final Answer TABLE =
      new Answer("clearance", Phrase.of("clearance by Table A", "distancia según la tabla A"), Scale.DISTANCE);
  static final Answer RIG =
      new Answer("rig-rule", Phrase.of("clearance by the rigs' rule", "distancia según la norma de equipos"),
          Scale.DISTANCE);

  public static final Reckoning RECKONING = new Reckoning(
      "line-clearance",
      DrillingStage.NAME,
      Phrase.of("Clearance from overhead lines", "Distancia a líneas aéreas"),
      List.of(KILOVOLTS),
      List.of(TABLE, RIG),
      Source.seen(
          "29 CFR 1926.1408, Table A. The rigs' rule, 1926.600(a)(6) and 1910.333(c)(3): from memory.",
          "29 CFR 1926.1408, tabla A. La norma de equipos, 1926.600(a)(6) y 1910.333(c)(3): de memoria."),
      List.of(
          Phrase.of(
              "Keep the greater of the two. Measured on the level from the raised mast. Local law and the owner of the"
                  + " line decide.",
              "Guarde la mayor de las dos. Medida en horizontal desde el mástil izado. Deciden la ley local y el dueño"
                  + " de la línea."),
          Phrase.of(
              "20 ft (6.1 m) where the voltage is not known; 50 ft (15.3 m) where it can be more than 350 kV.",
              "6.1 m (20 ft) si no se conoce el voltaje; 15.3 m (50 ft) si puede pasar de 350 kV.")),
      LineClearance::reckon);

  /** Up to so many kV, so many feet. */
  private record Row(double kilovolts, long feet) {}

  private static final List<Row> TABLE_A = List.of(
      new Row(50, 10), new Row(200, 15), new Row(350, 20), new Row(500, 25), new Row(750, 35), new Row(1000, 45));
  private static final long UNKNOWN_FEET = 20;
  private static final double FREE_KILOVOLTS = 50;
  private static final Length LEAST = Length.feet(10);
  private static final Length A_KILOVOLT = Length.of(0.4, Unit.INCH);

  private LineClearance() {}

  static Outcome of(Optional<Quantity> kilovolts) {
    return RECKONING.of(kilovolts.map(k -> Inputs.none().with(KILOVOLTS, k)).orElse(Inputs.none()));
  }

  /** The greater of the rules. */
  static Length toKeep(Outcome outcome) {
    Length table = (Length) outcome.quantity(TABLE.name());
    return outcome.answers().containsKey(RIG.name()) ? table.max((Length) outcome.quantity(RIG.name())) : table;
  }

  private static Outcome reckon(Inputs inputs) {
    Term row = Term.given(
        "a", Phrase.of("row of the table", "renglón de la tabla"), Scale.DISTANCE,
        Length.feet(feet(inputs.find(KILOVOLTS))));
    Outcome outcome = Outcome.empty().with(TABLE.name(), row.named("K", TABLE.label(), TABLE.scale()));
    boolean high = inputs.find(KILOVOLTS).filter(k -> k.coherent() > FREE_KILOVOLTS).isPresent();
    if (!high) return outcome;
    Term above = inputs.given("U", KILOVOLTS).minus(Term.given(
        "U₀", Phrase.of("kV that ask for no more", "kV que no piden más"), Scale.NUMBER,
        new Measure(Dimension.NUMBER, FREE_KILOVOLTS)));
    Term more = Coefficient.giving(Scale.DISTANCE, 1).of(Scale.DIAMETER).term()
        .times(Term.given("i", Phrase.of("more for each kV", "más por cada kV"), Scale.DIAMETER, A_KILOVOLT))
        .times(above);
    Term rule = Term.given("b", Phrase.of("least distance", "distancia mínima"), Scale.DISTANCE, LEAST).plus(more)
        .named("B", RIG.label(), RIG.scale());
    return outcome.with(RIG.name(), rule);
  }

  private static long feet(Optional<Quantity> kilovolts) {
    if (kilovolts.isEmpty()) return UNKNOWN_FEET;
    for (Row row : TABLE_A) if (kilovolts.get().coherent() <= row.kilovolts()) return row.feet();
    throw new NotReckonable(
        "Above 1000 kV the owner of the line says how far.", "Arriba de 1000 kV lo dice el dueño de la línea.");
  }
}
