package steening.stage.test.gauge;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Rate over a sharp V-notch, by the formulas that are met.
 *
 * <p>In cubic feet a second and feet: 90°: Q = 2.49 H^2.48 (Cone) and 2.5 H^2.5; 60°: Q = 1.443 H^2.5. For both,
 * Kindsvater and Shen: Q = 8/15 √(2g) C tan(θ/2) (H + k)^2.5. H head above the notch, θ angle, C = 0.578 and k = 0.0029
 * ft at 90°, 0.577 and 0.0037 ft at 60°. Source: 60° a printed table after ASTM D5242, 0.20 to 0.30 ft (seen); the
 * others USBR Water Measurement Manual (memory). Range: 0.2 to 1.25 ft of head. Accuracy: 2 to 5 %; the formulas differ
 * by 3 % at 0.2 ft.
 */
public final class VNotchWeir {
  private static final ChoiceField.Option RIGHT = ChoiceField.option("90", "90 degrees", "90 grados");
  private static final ChoiceField.Option NARROW = ChoiceField.option("60", "60 degrees", "60 grados");

  public static final ChoiceField ANGLE = ChoiceField.of(
      "notch", Phrase.of("angle of the notch", "ángulo de la escotadura"), RIGHT, NARROW);
  public static final QuantityField HEAD = QuantityField.of(
          "weir-head", Scale.DIAMETER, Phrase.of("head over the weir", "carga sobre el vertedor"), "3.6 in", "91 mm")
      .between("0.05 in", "60 in").usually("0.5 in", "20 in");

  static final Answer HALF = new Answer(
      "rate-half-power", Phrase.of("by 2.5 H^2.5 (feet)", "según 2.5 H^2.5 (pies)"), Scale.FLOW);
  static final Answer SHEN = new Answer(
      "rate-shen", Phrase.of("after Kindsvater and Shen", "según Kindsvater y Shen"), Scale.FLOW);

  public static final Reckoning RECKONING = new Reckoning(
      "v-notch-weir",
      "test",
      Phrase.of("Rate over a V-notch weir", "Aforo con vertedor triangular"),
      List.of(ANGLE, HEAD),
      List.of(RateBand.RATE, RateBand.LEAST, RateBand.MOST, HALF, SHEN),
      Source.memory(
          "60°: printed table after ASTM D5242, seen. 90° (Cone) and Kindsvater and Shen: USBR Water Measurement "
              + "Manual, memory.",
          "60°: tabla impresa según ASTM D5242, leída. 90° (Cone) y Kindsvater y Shen: Water Measurement Manual del "
              + "USBR, de memoria."),
      List.of(
          Phrase.of(
              "Sharp plate, air under the sheet of water, head read well upstream; 0.2 to 1.25 ft of head.",
              "Placa afilada, aire bajo la lámina, carga leída bien aguas arriba; de 0.06 a 0.38 m de carga."),
          Phrase.of(
              "Good to 2 to 5 %; the formulas differ by 3 % at the least head.",
              "Exacto a 2 o 5 %; las fórmulas difieren 3 % a la carga mínima.")),
      VNotchWeir::reckon);

  private static final Length LEAST = Length.of(0.2, Unit.FOOT);
  private static final Length MOST = Length.of(1.25, Unit.FOOT);
  private static final double ERROR = 0.05;
  private static final double HALF_POWER = 2.5;
  private static final double CONE_POWER = 2.48;

  private VNotchWeir() {}

  private static Outcome reckon(Inputs inputs) {
    RateBand.check(inputs, HEAD, LEAST, MOST, Phrase.of(
        "Below it use a vessel and a watch; above it a wider weir.",
        "Abajo use recipiente y reloj; arriba, un vertedor más ancho."));
    Term head = inputs.given("H", HEAD);
    boolean right = inputs.value(ANGLE).equals(RIGHT);
    Term formula = right ? power(head, 2.49, CONE_POWER) : power(head, 1.443, HALF_POWER);
    Outcome outcome = RateBand.around(formula, RateBand.error(ERROR));
    if (right) {
      outcome = outcome.with(HALF.name(), power(head, 2.5, HALF_POWER).named("Q₃", HALF.label(), HALF.scale()));
    }
    return outcome.with(SHEN.name(), shen(head, right).named("Q₄", SHEN.label(), SHEN.scale()));
  }

  private static Term power(Term head, double factor, double power) {
    return Coefficient.giving(Scale.FLOW, RateBand.fromFeet(factor, power)).of(Scale.DIAMETER, power).term()
        .times(head.power(power));
  }

  private static Term shen(Term head, boolean right) {
    double tangent = right ? 1 : Elementary.sqrt(1.0 / 3);
    double factor = 8.0 / 15 * Elementary.sqrt(2 * Gravity.METRES_PER_SECOND_SQUARED) * tangent;
    Term effective = Term.number(right ? 0.578 : 0.577);
    Term added = Term.given("k", Phrase.of("head to add", "carga por añadir"), Scale.DIAMETER,
        Length.of(right ? 0.0029 : 0.0037, Unit.FOOT));
    return Coefficient.giving(Scale.FLOW, factor).of(Scale.DIAMETER, HALF_POWER).term()
        .times(effective).times(head.plus(added).power(HALF_POWER));
  }
}
