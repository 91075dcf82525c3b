package steening.stage.pack;

import java.util.List;
import steening.bore.Settling;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.well.Plan;

/** How far a pack will go down in development, and what it then still covers; {@link Settling} has the formula. */
public final class PackSettles {
  public static final QuantityField TOP = Plan.PACK_TOP.named("top");
  public static final QuantityField BOTTOM = Plan.DEPTH.named("bottom")
      .labelled("bottom of the pack", "fondo del filtro");
  public static final QuantityField SCREEN_TOP = Plan.SCREEN_TOP.optional();

  public static final Reckoning RECKONING = new Reckoning(
      "pack-settling",
      PackStage.NAME,
      Phrase.of("Settling of the pack", "Asentamiento del filtro"),
      List.of(TOP, BOTTOM, SCREEN_TOP),
      Settling.ANSWERS,
      Settling.SOURCE,
      List.of(
          Phrase.of(
              "Sand poured loose through water, in an even annulus.",
              "Arena vertida suelta en agua, en un espacio anular parejo."),
          Phrase.of(
              "The two ends are four apart: sound it again in development.",
              "Los extremos difieren cuatro veces: sondéelo de nuevo en el desarrollo.")),
      PackSettles::reckon);

  private PackSettles() {}

  private static Outcome reckon(Inputs inputs) {
    Length top = inputs.length(TOP);
    Length bottom = inputs.length(BOTTOM);
    if (!bottom.isMoreThan(top)) {
      throw new NotReckonable(
          "The bottom of the pack must be deeper than its top.",
          "El fondo del filtro debe estar más abajo que su tope.");
    }
    return Settling.of(top, bottom, inputs.find(SCREEN_TOP).map(q -> (Length) q));
  }
}
