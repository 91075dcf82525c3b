package steening.stage.drilling.hole;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * What the open hole holds.
 *
 * <p>V = π/4 D² h, summed over the reaches; D hole diameter, h length.
 *
 * <p>Source: geometry. Range: a round hole. Accuracy: rounding; the real hole is seldom the bit's size.
 */
public final class HoleVolume {
  public static final BoreField HOLE = BoreField.of("hole", DrillingEntries.HOLE_DIAMETER, DrillingEntries.HOLE_TO);
  public static final QuantityField DEPTH = DrillingEntries.HOLE_TO.named("depth")
      .labelled("hole depth", "profundidad del barreno");

  public static final Answer VOLUME =
      new Answer("volume", Phrase.of("hole volume", "volumen del barreno"), Scale.VOLUME);
  public static final Answer LIQUID = new Answer(
      "liquid", Phrase.of("hole volume in liquid measure", "volumen del barreno en medida de líquidos"),
      Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "hole-volume",
      DrillingStage.NAME,
      Phrase.of("Hole volume", "Volumen del barreno"),
      List.of(HOLE, DEPTH),
      List.of(VOLUME, LIQUID),
      Source.derived("Geometry.", "Geometría."),
      List.of(Phrase.of(
          "A round hole, in gauge unless its washouts are given.",
          "Un barreno redondo, en calibre salvo las socavaciones dadas.")),
      inputs -> reckon(inputs.value(HOLE), inputs.length(DEPTH)));

  private HoleVolume() {}

  public static Outcome of(Bore hole, Length depth) {
    return RECKONING.of(Inputs.none().with(HOLE, hole).with(DEPTH, depth));
  }

  private static Outcome reckon(Bore hole, Length depth) {
    Term volume = volume(hole, Length.ZERO, depth);
    return Outcome.empty().with(VOLUME.name(), volume).with(LIQUID.name(), liquid(volume));
  }

  /** The volume between two depths as a named term. */
  public static Term volume(Bore hole, Length from, Length to) {
    return new Annulus(hole, Bore.NONE).volume("V", VOLUME.label(), from, to);
  }

  public static Term liquid(Term volume) {
    return Coefficient.giving(Scale.LIQUID, 1).of(Scale.VOLUME).term()
        .times(volume)
        .named("G", LIQUID.label(), LIQUID.scale());
  }
}
