package steening.stage.seal;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * How high so many bags of grout stand: z = z₀ − n Y / A, reach by reach from the bottom up; z₀ where it starts, n bags
 * of yield Y, A annulus volume per length. Source, accuracy: {@link GroutMix} for the yield; the hole's size decides
 * the rest. Range: a hole near the size it was drilled, no loss into the ground.
 */
public final class GroutTop {
  public static final BoreField HOLE = AnnulusVolume.HOLE;
  public static final QuantityField CASING = AnnulusVolume.CASING;
  public static final QuantityField BOTTOM = Plan.DEPTH.named("bottom")
      .labelled("where the grout starts", "donde empieza la lechada");
  public static final CountField BAGS = GroutEntries.BAGS;
  public static final ChoiceField MATERIAL = GroutVolume.MATERIAL;
  public static final QuantityField SOLIDS = GroutVolume.SOLIDS;
  public static final QuantityField WATER = GroutVolume.WATER;

  static final Answer TOP =
      new Answer("top", Phrase.of("expected top of the grout", "tope esperado de la lechada"), Scale.DEPTH);

  private static final Phrase PUMPED = Phrase.of("grout pumped", "lechada bombeada");

  public static final Reckoning RECKONING = new Reckoning(
      "grout-top",
      SealStage.NAME,
      Phrase.of("Top of the grout", "Tope de la lechada"),
      List.of(HOLE, CASING, BOTTOM, BAGS, MATERIAL, SOLIDS, WATER),
      List.of(TOP),
      GroutMix.RECKONING.source(),
      List.of(
          Phrase.of(
              "A hole near the size it was drilled, no loss.",
              "Un barreno cercano a su diámetro perforado, sin pérdida."),
          GroutVolume.RECKONING.validity().get(0)),
      GroutTop::reckon);

  private GroutTop() {}

  private static Outcome reckon(Inputs inputs) {
    Annulus annulus = new Annulus(inputs.value(HOLE), Bore.even(inputs.length(CASING)));
    Term yield = GroutMix.of(GroutVolume.recipe(inputs)).term(GroutMix.YIELD_VOLUME.name());
    return of(annulus, inputs.length(BOTTOM), inputs.given("n", BAGS).times(yield).named("V", PUMPED, Scale.VOLUME));
  }

  /** The same for what was pumped. */
  static Outcome of(Annulus annulus, Length bottom, Volume pumped) {
    return of(annulus, bottom, Term.given("V", PUMPED, Scale.VOLUME, pumped));
  }

  private static Outcome of(Annulus annulus, Length bottom, Term pumped) {
    Outcome outcome = Outcome.empty().with(TOP.name(), annulus.top("z", TOP.label(), bottom, pumped));
    Length top = (Length) outcome.quantity(TOP.name());
    if (!top.isLessThan(Length.ZERO)) return outcome;
    return outcome.remarking(Phrase.of(
        "It comes back at the surface, with enough over for {0} more.", "Regresa a la superficie y sobra para {0} más.",
        new Figure(Length.ZERO.minus(top), Scale.DEPTH)));
  }
}
