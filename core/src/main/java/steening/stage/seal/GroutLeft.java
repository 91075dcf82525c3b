package steening.stage.seal;

import java.util.ArrayList;
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
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;
import steening.well.UsualGround;

/**
 * How many more bags of grout a hole takes, by what pack and grout took so far; {@link BagsLeft} and {@link Overbreak}
 * have the formulas, {@link GroutMix} the yield of a bag.
 */
public final class GroutLeft {
  public static final BoreField HOLE = AnnulusVolume.HOLE;
  public static final QuantityField CASING = AnnulusVolume.CASING;
  public static final QuantityField BOTTOM = GroutTop.BOTTOM;
  public static final CountField BAGS = GroutEntries.BAGS;
  public static final QuantityField SOLIDS = GroutVolume.SOLIDS;
  public static final QuantityField MIX_WATER = GroutVolume.WATER;
  public static final QuantityField IN_HOSE = GroutEntries.IN_HOSE;
  public static final QuantityField FOUND =
      Plan.PACK_TOP.named("found").labelled("tape found, below ground", "lectura hallada, bajo el terreno");
  public static final QuantityField TO = Plan.GROUT_TOP.named("to");
  public static final QuantityField PACK_RATIO = UsualGround.MEAN.named("pack-ratio")
      .labelled("placed over drilled, pack and chips", "vertido entre perforado, filtro y pellets").optional();
  public static final QuantityField PACK_STRETCH = QuantityField.of(
          "pack-stretch", Scale.DEPTH, Phrase.of("stretch that they fill", "tramo que llenan"), "32 ft", "9.8 m")
      .between("0.5 ft", "6000 ft").usually("5 ft", "300 ft").optional();
  public static final QuantityField USUALLY = UsualGround.MEAN.named("usual-ratio").optional();
  public static final QuantityField GIVE_OR_TAKE = UsualGround.SPREAD.named("usual-spread").optional();

  static final Phrase SINCE = Phrase.of("bags in since the tape", "sacos desde la sonda");
  static final Phrase IN_HOLE = Phrase.of("grout in the hole", "lechada en el barreno");
  static final Answer WATER =
      new Answer("water", Phrase.of("water for the whole bags", "agua para los sacos enteros"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "grout-left",
      SealStage.NAME,
      Phrase.of("Bags of grout still needed", "Sacos de lechada que faltan"),
      List.of(
          HOLE, CASING, BOTTOM, BAGS, GroutVolume.MATERIAL, SOLIDS, MIX_WATER, IN_HOSE, FOUND, TO, PACK_RATIO,
          PACK_STRETCH, USUALLY, GIVE_OR_TAKE),
      answers(),
      Source.derived(
          "Bayes' rule for a normal mean, and geometry. What is usual: common practice, no source.",
          "Regla de Bayes para una media normal, y geometría. Lo usual: práctica común, sin fuente."),
      validity(),
      GroutLeft::reckon);

  private GroutLeft() {}

  private static List<Answer> answers() {
    List<Answer> answers = new ArrayList<>(BagsLeft.ANSWERS);
    answers.add(WATER);
    return answers;
  }

  private static List<Phrase> validity() {
    List<Phrase> validity = new ArrayList<>(Overbreak.validity());
    validity.add(Phrase.of(
        "One bed tells half of the next: a judgement, no source. No loss into the ground.",
        "Una capa dice la mitad de la siguiente: a juicio, sin fuente. Sin pérdida al terreno."));
    return validity;
  }

  private static Outcome reckon(Inputs inputs) {
    Length bottom = inputs.length(BOTTOM);
    Length found = inputs.length(FOUND);
    if (!bottom.isMoreThan(found)) {
      throw new NotReckonable(
          "The tape must find the grout above where it starts.",
          "La sonda debe hallar la lechada arriba de donde empieza.");
    }
    Recipe recipe = GroutVolume.recipe(inputs);
    Annulus annulus = new Annulus(inputs.value(HOLE), Bore.even(inputs.length(CASING)));
    Term yield = GroutForecast.bag(recipe);
    Term hose = Term.given("J", IN_HOSE.label(), Scale.LIQUID, inputs.find(IN_HOSE).orElse(Volume.NONE));
    Term placed = inputs.given("n", BAGS).times(yield).minus(Liquids.asVolume(hose)).named("V", IN_HOLE, Scale.VOLUME);
    if (!(placed.quantity().coherent() > 0)) {
      throw new NotReckonable("All of it is still in the hose.", "Toda está aún en la manguera.");
    }
    Overbreak hole = before(inputs).having(new Taken(annulus, found, bottom, true, placed));
    Outcome left = BagsLeft.of(hole, annulus, inputs.length(TO), found, yield, Inputs.count("i", SINCE, 0));
    return GroutForecast.withWater(left, recipe);
  }

  private static Overbreak before(Inputs inputs) {
    Quantity mean = inputs.find(USUALLY).orElse(UsualOverbreak.MEAN);
    Overbreak usually =
        Overbreak.usually(new UsualOverbreak(mean, inputs.find(GIVE_OR_TAKE).orElse(UsualOverbreak.SPREAD)));
    if (inputs.find(PACK_RATIO).isEmpty() || inputs.find(PACK_STRETCH).isEmpty()) return usually.onGrout();
    return usually
        .having(inputs.given("F″", PACK_RATIO), inputs.given("H″", PACK_STRETCH), true, "″").inOtherGround(usually).onGrout();
  }
}
