package steening.stage.test.gauge;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
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
 * Rate over a sharp rectangular weir with both sides contracted.
 *
 * <p>b = L − 0.2 H, Q = 3.33 b H^1.5 in cubic feet a second and feet: L crest, b what is left of it by the
 * contractions,
 * H head. Source: Francis 1883, as the table of a construction handbook has it (seen). Range: head no more than a third
 * of the crest; below 0.2 ft the sheet clings to the plate. Accuracy: 5 % (common practice, no source).
 */
public final class RectangularWeir {
  public static final QuantityField CREST = QuantityField.of(
          "crest", Scale.DEPTH, Phrase.of("length of the crest", "longitud de la cresta"), "1 ft", "0.3 m")
      .between("0.1 ft", "100 ft").usually("0.5 ft", "10 ft");
  public static final QuantityField HEAD = VNotchWeir.HEAD;

  static final Answer LEFT = new Answer(
      "effective-crest", Phrase.of("crest less the contractions", "cresta menos las contracciones"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "rectangular-weir",
      "test",
      Phrase.of("Rate over a rectangular weir", "Aforo con vertedor rectangular"),
      List.of(CREST, HEAD),
      List.of(RateBand.RATE, RateBand.LEAST, RateBand.MOST, LEFT),
      Source.seen(
          "Francis 1883, as a construction handbook's table of contracted rectangular weirs has it.",
          "Francis 1883, como lo trae la tabla de vertedores rectangulares contraídos de un manual de construcción."),
      List.of(
          Phrase.of(
              "Sharp plate, both sides contracted, free fall; head no more than a third of the crest.",
              "Placa afilada, contracción en ambos lados, caída libre; carga no mayor que un tercio de la cresta."),
          Phrase.of(
              "Good to 5 % (common practice, no source); worse below 0.2 ft, where the sheet clings to the plate.",
              "Exacto a 5 % (práctica común, sin fuente); peor bajo 0.06 m, donde la lámina se pega a la placa.")),
      RectangularWeir::reckon);

  private static final double FRANCIS = 3.33;
  private static final double POWER = 1.5;
  private static final double ERROR = 0.05;
  private static final Length CLINGS = Length.of(0.2, Unit.FOOT);

  private RectangularWeir() {}

  private static Outcome reckon(Inputs inputs) {
    Length head = inputs.length(HEAD);
    Length crest = inputs.length(CREST);
    if (head.coherent() * 3 > crest.coherent() * (1 + 1e-9)) {
      throw new NotReckonable(
          "A head of {0} is more than a third of the crest of {1}: the formula does not hold. Use a longer crest.",
          "Una carga de {0} es más de un tercio de la cresta de {1}: la fórmula no vale. Use una cresta más larga.",
          new Figure(head, Scale.DIAMETER), new Figure(crest, Scale.DEPTH));
    }
    Term h = inputs.given("H", HEAD);
    Term left = inputs.given("L", CREST)
        .minus(Coefficient.giving(Scale.DEPTH, 0.2).of(Scale.DIAMETER).term().times(h))
        .named("b", LEFT.label(), LEFT.scale());
    Term rate = Coefficient.giving(Scale.FLOW, RateBand.fromFeet(FRANCIS, 1 + POWER))
        .of(Scale.DEPTH).of(Scale.DIAMETER, POWER).term()
        .times(left).times(h.power(POWER));
    Outcome outcome = RateBand.around(rate, RateBand.error(ERROR)).with(LEFT.name(), left);
    if (!head.isLessThan(CLINGS)) return outcome;
    return outcome.remarking(Phrase.of(
        "Below {0} of head the sheet clings to the plate; a V-notch measures so little better.",
        "Bajo {0} de carga la lámina se pega a la placa; un vertedor triangular mide mejor tan poco.",
        new Figure(CLINGS, Scale.DIAMETER)));
  }
}
