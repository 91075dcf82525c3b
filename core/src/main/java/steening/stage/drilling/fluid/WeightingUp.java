package steening.stage.drilling.fluid;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Mass;
import steening.quantity.Quantity;
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
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * Barite to bring mud to a weight, and the room it takes.
 *
 * <p>G = V (F − W) / (b − F); B = b G; S = B / s rounded up. V mud, W and F its weight now and wanted, b weight of the
 * barite's grains, G gain of volume, s one sack.
 *
 * <p>Source: formulas handbook, chapter 3 (seen): 1470 (F − W) / (35 − F) sacks of 100 lb to 100 barrels; 12 to 14
 * lb/gal takes 140 sacks and gains 9.52 barrels. Range: W below F, F below b. Accuracy: 1 %; barite of a lower grade
 * takes more.
 */
public final class WeightingUp {
  static final QuantityField NOW =
      DrillingEntries.MUD_WEIGHT.named("from").labelled("mud weight now", "densidad actual del lodo");
  static final QuantityField WANTED =
      DrillingEntries.MUD_WEIGHT.named("to").labelled("mud weight wanted", "densidad deseada del lodo");
  static final QuantityField VOLUME = QuantityField.of(
          "volume", Scale.LIQUID, Phrase.of("mud in hole and pit", "lodo en barreno y fosa"), "600 gal", "2300 L")
      .between("1 gal", "1000000 gal").usually("20 gal", "20000 gal");
  static final QuantityField SACK = QuantityField.of(
          "sack", Scale.WEIGHT, Phrase.of("weight of a sack", "peso del saco"), "100 lb", "45 kg")
      .between("1 lb", "4000 lb").usually("40 lb", "110 lb").optional();

  static final Answer BARITE = new Answer("barite", Phrase.of("barite", "barita"), Scale.WEIGHT);
  static final Answer SACKS = new Answer("sacks", Phrase.of("sacks of barite", "sacos de barita"), Scale.NUMBER);
  static final Answer GAIN =
      new Answer("volume-gain", Phrase.of("gain in volume", "aumento de volumen"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "weighting-up",
      DrillingStage.NAME,
      Phrase.of("Weighting up mud", "Densificar el lodo"),
      List.of(NOW, WANTED, VOLUME, SACK),
      List.of(BARITE, SACKS, GAIN),
      Source.seen(
          "Formulas handbook, chapter 3: barite of 35 lb/gal (specific gravity 4.2); 12 to 14 lb/gal, 140 sacks of 100"
              + " lb and 9.52 barrels to 100 barrels.",
          "Manual de fórmulas, capítulo 3: barita de 4.2 kg/L; de 1.44 a 1.68 kg/L, 140 sacos de 45 kg y 9.52 barriles"
              + " por 100 barriles."),
      List.of(
          Phrase.of(
              "Leave room in the pit for the gain; add slowly while the mud goes around.",
              "Deje lugar en la fosa para el aumento; agregue despacio mientras circula el lodo."),
          Phrase.of(
              "Thin mud lets barite settle: it wants a gel first. Bentonite alone reaches about 9.0 lb/gal, drilled"
                  + " solids about 11 (trade article).",
              "El lodo delgado deja caer la barita: primero necesita gel. La bentonita sola llega a unos 1.08 kg/L, los"
                  + " sólidos perforados a unos 1.32 (artículo técnico).")),
      WeightingUp::reckon);

  private static final Density GRAINS = Density.of(35, Unit.POUND_PER_GALLON);
  private static final Quantity USUAL_SACK = Mass.of(100, Unit.POUND);

  private WeightingUp() {}

  private static Outcome reckon(Inputs inputs) {
    if (inputs.amount(WANTED).coherent() <= inputs.amount(NOW).coherent()) {
      throw new NotReckonable(
          "The mud is already as heavy as wanted.", "El lodo ya es tan denso como se desea.");
    }
    Term wanted = inputs.given("F", WANTED);
    Term grains =
        Term.given("b", Phrase.of("weight of the barite's grains", "densidad de la barita"), Scale.DENSITY, GRAINS);
    Term gain = inputs.given("V", VOLUME)
        .times(wanted.minus(inputs.given("W", NOW)))
        .over(grains.minus(wanted))
        .named("G", GAIN.label(), GAIN.scale());
    Term barite = Coefficient.giving(Scale.WEIGHT, 1).of(Scale.DENSITY).of(Scale.LIQUID).term()
        .times(grains)
        .times(gain)
        .named("B", BARITE.label(), BARITE.scale());
    Term sacks = barite.over(inputs.given("s", SACK, USUAL_SACK)).roundedUp().named("S", SACKS.label(), SACKS.scale());
    return Outcome.empty().with(BARITE.name(), barite).with(SACKS.name(), sacks).with(GAIN.name(), gain);
  }
}
