package steening.stage.sample;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Whether water lays down lime or takes it up.
 *
 * <p>I = pH − pHs, pHs = 9.3 + A + B − C − D; A = (log S − 1)/10, B = 34.55 − 13.12 log T, C = log Ca − 0.4,
 * D = log Alk; S dissolved solids, Ca calcium hardness and Alk alkalinity as calcium carbonate, all in mg/L, T water
 * temperature in kelvin. Source: Langelier 1936 in the form handbooks give it (formula seen, original from memory).
 * Range: pH 6.5 to 9.5, dissolved solids to 1,000 mg/L. Accuracy: 0.1 to 0.2; it tells a tendency, no amounts.
 */
public final class LangelierIndex {
  static final QuantityField PH = QuantityField.of(
          "ph", Scale.NUMBER, Phrase.of("pH of the water", "pH del agua"), "7.5", "7.5")
      .between("0", "14").usually("5.5", "9.5");
  static final QuantityField TEMPERATURE = QuantityField.of(
          "water-temperature", Scale.TEMPERATURE, Phrase.of("water temperature", "temperatura del agua"), "55 °F",
          "13 °C")
      .between("32 °F", "200 °F").usually("36 °F", "150 °F");
  static final QuantityField SOLIDS = concentration(
      "dissolved-solids", Phrase.of("total dissolved solids", "sólidos disueltos totales"), "320 mg/L");
  static final QuantityField CALCIUM = concentration(
      "calcium-hardness",
      Phrase.of("calcium hardness as calcium carbonate", "dureza de calcio como carbonato de calcio"), "150 mg/L");
  static final QuantityField ALKALINITY = concentration(
      "alkalinity", Phrase.of("alkalinity as calcium carbonate", "alcalinidad como carbonato de calcio"), "130 mg/L");

  static final Answer SATURATION =
      new Answer("saturation-ph", Phrase.of("pH at saturation", "pH de saturación"), Scale.NUMBER);
  static final Answer INDEX = new Answer("index", Phrase.of("Langelier index", "índice de Langelier"), Scale.NUMBER);
  static final Answer TENDENCY = Answer.word("tendency", Phrase.of("tendency", "tendencia"));

  /** Nearer to nought than the formula is good for; limits of pool operators' tables (seen). */
  private static final double BALANCED = 0.3;

  public static final Reckoning RECKONING = new Reckoning(
      "langelier-index",
      SampleStage.NAME,
      Phrase.of("Langelier index: lime or corrosion", "Índice de Langelier: sarro o corrosión"),
      List.of(PH, TEMPERATURE, SOLIDS, CALCIUM, ALKALINITY),
      List.of(SATURATION, INDEX, TENDENCY),
      Source.memory(
          "Langelier 1936, in the form handbooks give it.", "Langelier 1936, en la forma que dan los manuales."),
      List.of(
          Phrase.of(
              "pH 6.5 to 9.5, dissolved solids to 1,000 mg/L. The pH is to be read at the well: it drifts in a bottle.",
              "pH de 6.5 a 9.5, sólidos disueltos hasta 1,000 mg/L. El pH se mide en el pozo: en el frasco cambia."),
          Phrase.of(
              "A tendency, no amounts. Water that takes up lime may also take up lead and copper from pipes.",
              "Es una tendencia, no cantidades. Si disuelve sarro, puede disolver plomo y cobre de las tuberías.")),
      LangelierIndex::reckon);

  private LangelierIndex() {}

  private static Outcome reckon(Inputs inputs) {
    Term kelvin = Inputs.count(
        "T", Phrase.of("water temperature in kelvin", "temperatura del agua en kelvin"),
        inputs.amount(TEMPERATURE).coherent());
    Term solids = inputs.given("S", SOLIDS).log10().minus(Term.number(1)).over(10)
        .named("A", Phrase.of("factor of the dissolved solids", "factor de los sólidos disueltos"), Scale.NUMBER);
    Term warmth = Term.number(34.55).minus(kelvin.log10().times(13.12))
        .named("B", Phrase.of("factor of the temperature", "factor de la temperatura"), Scale.NUMBER);
    Term calcium = inputs.given("Ca", CALCIUM).log10().minus(Term.number(0.4))
        .named("C", Phrase.of("factor of the calcium", "factor del calcio"), Scale.NUMBER);
    Term alkalinity = inputs.given("Alk", ALKALINITY).log10()
        .named("D", Phrase.of("factor of the alkalinity", "factor de la alcalinidad"), Scale.NUMBER);
    Term saturation = Term.number(9.3).plus(solids).plus(warmth).minus(calcium).minus(alkalinity)
        .named("pHs", SATURATION.label(), SATURATION.scale());
    Term index = inputs.given("pH", PH).minus(saturation).named("I", INDEX.label(), INDEX.scale());
    return Outcome.empty()
        .with(SATURATION.name(), saturation)
        .with(INDEX.name(), index)
        .naming(TENDENCY.name(), tendency(index.quantity()));
  }

  private static Phrase tendency(Quantity index) {
    double value = index.in(Unit.ONE);
    if (value > BALANCED) return Phrase.of("lays down lime", "deja sarro");
    return value < -BALANCED
        ? Phrase.of("takes up lime, may corrode", "disuelve sarro, puede corroer")
        : Phrase.of("about balanced", "casi en equilibrio");
  }

  private static QuantityField concentration(String name, Phrase label, String example) {
    return QuantityField.of(name, Scale.CONCENTRATION, label, example, example)
        .between("1 mg/L", "100000 mg/L").usually("5 mg/L", "1000 mg/L");
  }
}
