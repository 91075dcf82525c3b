package steening.stage.pack;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.Filled;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.well.Plan;

/**
 * How wide the hole must be, going by what it took: a hole narrower than the bit that drilled it means a bridge, a much
 * wider one a washout or a loss.
 *
 * <p>Da = √(d² + V / (π/4 Δz)) and R = V / V₀; see {@link Filled} for symbols, source, accuracy. Range: a stretch that
 * was sounded at both ends.
 */
public final class ApparentDiameter {
  public static final QuantityField HOLE = Plan.HOLE.named("hole");
  public static final QuantityField CASING = Plan.CASING_OUTSIDE.named("casing");
  public static final QuantityField RISE = QuantityField.of(
          "rise", Scale.DEPTH, Phrase.of("rise between two tapes", "subida entre dos lecturas"), "6.5 ft", "2 m")
      .between("0.01 ft", "6000 ft").usually("1 ft", "200 ft");
  public static final QuantityField VOLUME = QuantityField.of(
          "volume", Scale.VOLUME, Phrase.of("put in between them", "vertido entre ellas"), "1.5 ft3", "0.042 m3")
      .between("0.001 ft3", "10000 ft3").usually("0.1 ft3", "100 ft3");

  public static final Reckoning RECKONING = new Reckoning(
      "apparent-diameter",
      PackStage.NAME,
      Phrase.of("Apparent diameter", "Diámetro aparente"),
      List.of(HOLE, CASING, RISE, VOLUME),
      List.of(
          new Answer("apparent-diameter", Phrase.of("apparent diameter", "diámetro aparente"), Scale.DIAMETER),
          new Answer(
              "holds", Phrase.of("what the stretch should hold", "lo que debería caber en el tramo"), Scale.VOLUME),
          new Answer("ratio", Phrase.of("put in over reckoned", "vertido entre calculado"), Scale.NUMBER),
          new Answer("per-length", Phrase.of("put in per length", "vertido por longitud"), Scale.CAPACITY)),
      Source.seen(
          "Geometry; comparing placed with computed volume: California monitoring-well standards, section 11.",
          "Geometría; comparar el volumen vertido con el calculado: normas de California para pozos de monitoreo,"
              + " sección 11."),
      List.of(
          Phrase.of(
              "A stretch with pipe all the way, sounded at both ends.",
              "Un tramo con tubo en toda su longitud, sondeado en ambos extremos."),
          Phrase.of(
              "Below 0.97 of the bit, a bridge is likely; above 1.15, a washout or a loss (common practice, no"
                  + " source).",
              "Menos de 0.97 de la barrena: probable puente; más de 1.15: socavación o pérdida (práctica común, sin"
                  + " fuente).")),
      ApparentDiameter::reckon);

  private ApparentDiameter() {}

  private static Outcome reckon(Inputs inputs) {
    Length rise = inputs.length(RISE);
    Annulus annulus = new Annulus(
        Bore.straight(inputs.length(HOLE), Length.ZERO, rise), Bore.straight(inputs.length(CASING), Length.ZERO, rise));
    return new Filled(annulus, Length.ZERO, rise, inputs.given("V", VOLUME)).outcome();
  }
}
