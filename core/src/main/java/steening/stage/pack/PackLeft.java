package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.BagsLeft;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.bore.Overbreak;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

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
  public static final QuantityField USUALLY = QuantityField.of(
          "usual-ratio", Scale.NUMBER,
          Phrase.of("usual ratio, placed over drilled", "razón usual, vertido entre perforado"), "1.14", "1.14")
      .between("0.5", "5").usually("0.9", "2").optional();
  public static final QuantityField GIVE_OR_TAKE = QuantityField.of(
          "usual-spread", Scale.NUMBER, Phrase.of("its standard deviation", "su desviación estándar"), "0.12", "0.12")
      .between("0.001", "2").usually("0.02", "0.5").optional();

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
    Overbreak.Ground ground = new Overbreak.Ground(
        inputs.find(USUALLY).orElse(Overbreak.USUAL), inputs.find(GIVE_OR_TAKE).orElse(Overbreak.USUAL_SPREAD));
    Term placed = ExpectedTape.poured(inputs.given("n", BAGS), bag);
    Overbreak hole =
        Overbreak.of(ground, Optional.of(new Overbreak.Seen(annulus, found, bottom, placed)));
    return BagsLeft.of(hole, annulus, inputs.length(TO), found, bag, Inputs.count("i", TruckFindings.SINCE, 0));
  }
}
