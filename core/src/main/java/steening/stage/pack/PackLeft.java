package steening.stage.pack;

import java.util.List;
import steening.bore.Annulus;
import steening.bore.BagsLeft;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.bore.Overbreak;
import steening.bore.Taken;
import steening.bore.UsualOverbreak;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;
import steening.well.UsualGround;

/** How many more bags the pack takes, by what the hole took so far; {@link BagsLeft} has the formula. */
public final class PackLeft {
  public static final BoreField HOLE = PackVolume.HOLE;
  public static final QuantityField CASING = PackVolume.CASING;
  public static final QuantityField STRING_BOTTOM = PackVolume.STRING_BOTTOM;
  public static final QuantityField BOTTOM = ExpectedTape.BOTTOM;
  public static final CountField BAGS = PackBags.BAGS;
  public static final QuantityField BAG_VOLUME = PackVolume.BAG_VOLUME;
  public static final QuantityField FOUND =
      Plan.SCREEN_TOP.named("found").labelled("tape found, below ground", "lectura hallada, bajo el terreno");
  public static final QuantityField TO = Plan.PACK_TOP.named("to");
  public static final QuantityField USUALLY = UsualGround.MEAN.named("usual-ratio").optional();
  public static final QuantityField GIVE_OR_TAKE = UsualGround.SPREAD.named("usual-spread").optional();

  public static final Reckoning RECKONING = new Reckoning(
      "bags-left",
      PackStage.NAME,
      Phrase.of("Bags still needed", "Sacos que faltan"),
      List.of(HOLE, CASING, STRING_BOTTOM, BOTTOM, BAGS, BAG_VOLUME, FOUND, TO, USUALLY, GIVE_OR_TAKE),
      BagsLeft.ANSWERS,
      Source.derived(
          "Bayes' rule for a normal mean, and geometry. What is usual: common practice, no source.",
          "Regla de Bayes para una media normal, y geometría. Lo usual: práctica común, sin fuente."),
      Overbreak.validity(),
      PackLeft::reckon);

  private PackLeft() {}

  private static Outcome reckon(Inputs inputs) {
    Length bottom = inputs.length(BOTTOM);
    Length found = inputs.length(FOUND);
    if (!bottom.isMoreThan(found)) {
      throw new NotReckonable(
          "The tape must find the pack above the bottom of the hole.",
          "La sonda debe hallar el filtro arriba del fondo del barreno.");
    }
    Length stringBottom = inputs.find(STRING_BOTTOM).map(q -> (Length) q).orElse(bottom);
    Annulus annulus =
        new Annulus(inputs.value(HOLE), Bore.straight(inputs.length(CASING), Length.ZERO, stringBottom));
    Term bag = inputs.given("b", BAG_VOLUME, PackVolume.BAG);
    Overbreak usually = Overbreak.usually(new UsualOverbreak(
        inputs.find(USUALLY).orElse(UsualOverbreak.MEAN), inputs.find(GIVE_OR_TAKE).orElse(UsualOverbreak.SPREAD)));
    Term placed = ExpectedTape.poured(inputs.given("n", BAGS), bag);
    Overbreak hole = usually.having(new Taken(annulus, found, bottom, false, placed));
    return BagsLeft.of(hole, annulus, inputs.length(TO), found, bag, Inputs.count("i", TruckFindings.SINCE, 0));
  }
}
