package steening.stage.development;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The sand that the water carries, from what was dried and weighed.
 *
 * <p>c = m / V; c in mg/L, m dry sand, V water it came from. Source: unit arithmetic. Range: dry sand; damp sand weighs
 * a fifth more. Accuracy: that of the scales and of the volume; no bulk density is guessed, unlike {@link SandContent}.
 */
public final class WeighedSand {
  static final QuantityField SAND = QuantityField.of(
          "sand", Scale.SMALL_WEIGHT, Phrase.of("dry sand, weighed", "arena seca, pesada"), "0.2 oz", "6 g")
      .between("0 g", "100 lb").usually("0 g", "5 lb");
  static final QuantityField WATER = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("water it came from", "agua de la que salió"), "50 gal", "200 L")
      .between("0.1 L", "1000000 gal").usually("1 L", "10000 gal");

  static final Answer CONTENT = SandContent.CONTENT;

  public static final Reckoning RECKONING = new Reckoning(
      "sand-weighed",
      DevelopmentStage.NAME,
      Phrase.of("Sand content, weighed", "Contenido de arena, pesada"),
      List.of(SAND, WATER),
      List.of(CONTENT),
      Source.derived("Unit arithmetic.", "Aritmética de unidades."),
      List.of(Phrase.of(
          "Sand that was dried: damp sand weighs about a fifth more (from memory).",
          "Arena ya seca: húmeda pesa cerca de un quinto más (de memoria).")),
      WeighedSand::reckon);

  private WeighedSand() {}

  private static Outcome reckon(Inputs inputs) {
    Term content = Coefficient.giving(CONTENT.scale(), 1).of(Scale.SMALL_WEIGHT).of(Scale.LIQUID, -1).term()
        .times(inputs.given("m", SAND)).over(inputs.given("V", WATER));
    return Outcome.empty().with(CONTENT.name(), content.named("c", CONTENT.label(), CONTENT.scale()));
  }
}
