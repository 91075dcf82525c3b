package steening.stage.test.gauge;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.number.Elementary;
import steening.quantity.Figure;
import steening.quantity.Length;
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

/**
 * Rate through a circular orifice at the end of a level pipe, from the height of water in a tube beside it.
 *
 * <p>Q = K (π/4) d² √(2 g h): d orifice, h head above the middle of the pipe, K by β = d/D, D inside of the pipe. In
 * gpm
 * and inches the factor is 7.22 K A √h. Some texts print 8.025 with a smaller K for the same product; a K from such a
 * text must not be typed here. Source: a drillers' handbook table after the Purdue tests (memory), from which K follows
 * at four ratios; between them it is taken in a straight line. Range: β 0.49 to 0.75, or to 0.8 with the plate's own K;
 * h of 3 in and more. Accuracy: 2 % against the table.
 */
public final class OrificeRate {
  public static final QuantityField PIPE = QuantityField.of(
          "discharge-pipe", Scale.DIAMETER,
          Phrase.of("discharge pipe, inside diameter", "tubo de descarga, diámetro interior"), "4.026 in", "102.3 mm")
      .between("0.5 in", "48 in").usually("1 in", "16 in");
  public static final QuantityField ORIFICE = QuantityField.of(
          "orifice", Scale.DIAMETER, Phrase.of("diameter of the orifice", "diámetro del orificio"), "2.5 in", "63.5 mm")
      .between("0.25 in", "40 in").usually("0.75 in", "12 in");
  public static final QuantityField HEAD = QuantityField.of(
          "tube-head", Scale.DIAMETER,
          Phrase.of("water in the tube above the middle of the pipe", "agua en el tubo sobre el centro de la tubería"),
          "10 in", "254 mm")
      .between("0.1 in", "200 in").usually("3 in", "60 in");
  public static final QuantityField OWN_K = QuantityField.of(
          "orifice-k", Scale.NUMBER,
          Phrase.of("K of the plate, by tests", "K de la placa, por ensayos"), "0.69", "0.69")
      .between("0.5", "0.9").optional();

  static final Answer RATIO = new Answer(
      "ratio", Phrase.of("orifice to pipe", "orificio entre tubo"), Scale.NUMBER);
  static final Answer K = new Answer(
      "coefficient", Phrase.of("K of the orifice", "K del orificio"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "orifice-rate",
      "test",
      Phrase.of("Rate through a circular orifice", "Aforo con orificio circular"),
      List.of(PIPE, ORIFICE, HEAD, OWN_K),
      List.of(RateBand.RATE, RateBand.LEAST, RateBand.MOST, RATIO, K),
      Source.memory(
          "Drillers' handbook table after the Purdue tests; K worked out from it as Q = K A √(2 g h).",
          "Tabla de un manual de perforación según los ensayos de Purdue; K deducido de ella con Q = K A √(2 g h)."),
      List.of(
          Phrase.of(
              "Level pipe, free discharge, tube 24 in before the plate; orifice 0.49 to 0.75 of the pipe.",
              "Tubo a nivel, descarga libre, tubo de lectura a 0.6 m de la placa; orificio de 0.49 a 0.75 del tubo."),
          Phrase.of(
              "Head of 3 in and more; good to 2 %. A K printed for 8.025 K A √h does not belong here.",
              "Carga de 76 mm o más; exacto a 2 %. Un K impreso para 8.025 K A √h no corresponde aquí.")),
      OrificeRate::reckon);

  /** Mean K of each row of the table, by its ratio (memory). */
  private static final double[][] TABLE = {{0.495, 0.655}, {0.621, 0.691}, {0.660, 0.711}, {0.745, 0.773}};

  private static final double LEAST_RATIO = 0.49;
  private static final double MOST_RATIO = 0.75;
  private static final double MOST_WITH_OWN_K = 0.8;
  private static final double ERROR = 0.02;
  private static final Length LEAST_HEAD = Length.of(3, Unit.INCH);
  private static final Length MOST_HEAD = Length.of(200, Unit.INCH);

  private OrificeRate() {}

  private static Outcome reckon(Inputs inputs) {
    RateBand.check(inputs, HEAD, LEAST_HEAD, MOST_HEAD, Phrase.of(
        "Take a smaller orifice.", "Use un orificio menor."));
    Optional<Quantity> own = inputs.find(OWN_K);
    double ratio = inputs.length(ORIFICE).coherent() / inputs.length(PIPE).coherent();
    if (own.isEmpty()) check(ratio, LEAST_RATIO, MOST_RATIO);
    else check(ratio, 0.1, MOST_WITH_OWN_K);
    Term d = inputs.given("d", ORIFICE);
    Term beta = d.over(inputs.given("D", PIPE)).named("β", RATIO.label(), RATIO.scale());
    Term k = own.isPresent() ? inputs.given("K", OWN_K) : between(beta, ratio).named("K", K.label(), K.scale());
    double area = Annulus.QUARTER_PI;
    Term rate = Coefficient.giving(Scale.FLOW, area * Elementary.sqrt(2 * Gravity.METRES_PER_SECOND_SQUARED))
        .of(Scale.DIAMETER, 2).of(Scale.DIAMETER, 0.5).term()
        .times(k).times(d.squared()).times(inputs.given("h", HEAD).squareRoot());
    return RateBand.around(rate, RateBand.error(ERROR)).with(RATIO.name(), beta).with(K.name(), k);
  }

  private static void check(double ratio, double least, double most) {
    if (ratio >= least && ratio <= most) return;
    throw new NotReckonable(
        "The orifice is {0} of the pipe; this way of measuring holds from {1} to {2}. Take another plate.",
        "El orificio es {0} del tubo; esta forma de aforar vale de {1} a {2}. Use otra placa.",
        Decimal.fixed(ratio, 3), Decimal.upTo(least, 2), Decimal.upTo(most, 2));
  }

  /** In a straight line between two rows of the table; beyond its ends along the last of them. */
  private static Term between(Term beta, double ratio) {
    int row = 0;
    while (row < TABLE.length - 2 && ratio > TABLE[row + 1][0]) row++;
    double[] below = TABLE[row];
    double[] above = TABLE[row + 1];
    return Term.number(below[1]).plus(
        Term.number(above[1]).minus(Term.number(below[1]))
            .over(Term.number(above[0]).minus(Term.number(below[0])))
            .times(beta.minus(Term.number(below[0]))));
  }
}
