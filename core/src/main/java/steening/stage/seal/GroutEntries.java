package steening.stage.seal;

import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Mass;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.stage.seal.placing.HoseVolume;
import steening.stage.seal.placing.SetClock;
import steening.stage.seal.placing.Tremie;
import steening.stage.seal.placing.WorkingTime;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.Sounding;
import steening.well.Well;

/** The mix, the batches and the tape readings of the grout. */
final class GroutEntries {
  static final QuantityField SOLIDS = QuantityField.of(
          "solids", Scale.WEIGHT, Phrase.of("dry grout in a bag", "lechada seca por saco"), "50 lb", "22.7 kg")
      .between("1 lb", "4000 lb").usually("40 lb", "100 lb");
  static final QuantityField WATER_PER_BAG = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("water for a bag", "agua por saco"), "24 gal", "91 L")
      .between("0.5 gal", "1000 gal").usually("4 gal", "40 gal");
  static final QuantityField SET_TIME = QuantityField.of(
          "set-time", Scale.HOURS,
          Phrase.of("hours that your rules let cement set", "horas de fraguado que pide su norma"), "24 h", "24 h")
      .between("1 h", "1000 h").usually("8 h", "96 h").optional();
  static final Kind MIX = Kind.of(
      "grout-mix", Phrase.of("Grout mix", "Mezcla de lechada"), DryGrout.FIELD, SOLIDS, WATER_PER_BAG, SET_TIME);

  static final CountField BAGS = CountField.of("bags", Phrase.of("bags", "sacos"), 1, 2000).usuallyUpTo(20);
  static final QuantityField WATER = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("water in all, by the meter", "agua en total, por el medidor"),
          "192 gal", "727 L")
      .between("0.5 gal", "100000 gal").usually("4 gal", "600 gal");
  static final QuantityField WEIGHED = QuantityField.of(
          "weight", Scale.DENSITY, Phrase.of("weight by the balance", "densidad en la balanza"),
          "9.5 lb/gal", "1140 kg/m3")
      .between("8.3 lb/gal", "25 lb/gal").usually("8.4 lb/gal", "18 lb/gal").optional();
  static final ChoiceField RETURNS = ChoiceField.of(
          "returns",
          Phrase.of("grout came back at the surface", "la lechada regresó a la superficie"),
          ChoiceField.option("yes", "yes", "sí"),
          ChoiceField.option("no", "no", "no"))
      .optional();
  static final QuantityField RETURN_WEIGHT = WEIGHED.named("return-weight")
      .labelled("weight of what came back", "densidad de lo que regresó");
  static final Kind BATCH = Kind.of(
          "grout-batch", Phrase.of("Grout pumped", "Lechada bombeada"), BAGS, WATER, WEIGHED, RETURNS, RETURN_WEIGHT,
          WorkingTime.TEMPERATURE)
      .carrying(WorkingTime.TEMPERATURE);

  static final String AFTER_AN_HOUR = "after-an-hour";
  static final String NEXT_DAY = "next-day";
  static final ChoiceField AFTER = ChoiceField.of(
          "after",
          Phrase.of("read", "leído"),
          ChoiceField.option("at-once", "at once", "enseguida"),
          ChoiceField.option(AFTER_AN_HOUR, "an hour after the pump stopped", "una hora después de parar la bomba"),
          ChoiceField.option(NEXT_DAY, "the next day", "al día siguiente"))
      .optional();
  static final QuantityField IN_HOSE = QuantityField.of(
          "in-hose", Scale.LIQUID, Phrase.of("grout still in hose and tremie", "lechada aún en manguera y tremie"),
          "6 gal", "23 L")
      .between("0 gal", "1000 gal").usually("0 gal", "60 gal").optional();
  static final Kind TAPE = Kind.of(
      "grout-tape", Phrase.of("Tape on the grout", "Sonda sobre la lechada"),
      Sounding.READING, DepthFrom.FIELD, AFTER, IN_HOSE)
      .carrying(DepthFrom.FIELD);

  private GroutEntries() {}

  static Well mix(Well well, Entry entry) {
    Body body = entry.body();
    if (!SOLIDS.isIn(body) || !WATER_PER_BAG.isIn(body)) return well;
    Recipe recipe = new Recipe(
        DryGrout.FIELD.text(body).map(DryGrout::of).orElse(DryGrout.BENTONITE),
        (Mass) SOLIDS.in(body).orElseThrow(),
        (Volume) WATER_PER_BAG.in(body).orElseThrow(),
        Optional.of(entry.id()));
    return well.with(Grouting.PART, well.get(Grouting.PART).mixing(recipe, SET_TIME.in(body)));
  }

  static Well batch(Well well, Entry entry) {
    Body body = entry.body();
    if (!BAGS.isIn(body) || !WATER.isIn(body)) return well;
    Batch batch = new Batch(
        Grouting.recipe(well),
        BAGS.in(body).orElseThrow(),
        (Volume) WATER.in(body).orElseThrow(),
        WEIGHED.in(body).map(w -> (Density) w),
        RETURNS.text(body).map("yes"::equals),
        RETURN_WEIGHT.in(body).map(w -> (Density) w),
        WorkingTime.TEMPERATURE.in(body),
        entry.happenedAt(),
        entry.id());
    Fill.Pour pour = new Fill.Pour(batch.bags(), batch.volume(), batch.at(), batch.entry());
    Well with = well
        .with(Grouting.PART, well.get(Grouting.PART).with(batch))
        .with(Fill.GROUT, well.get(Fill.GROUT).with(pour));
    return SetClock.after(
        with, batch.recipe().material(), with.get(Grouting.PART).setTime(), batch.at(), batch.entry());
  }

  static Well sound(Well well, Entry entry) {
    Optional<Sounding> sounding = Sounding.in(entry, well);
    if (sounding.isEmpty()) return well;
    Volume inHose = IN_HOSE.in(entry.body()).map(v -> (Volume) v).orElseGet(() -> inTremie(well));
    Grouting.Look look = new Grouting.Look(entry.id(), AFTER.text(entry.body()), inHose);
    return well
        .with(Grouting.PART, well.get(Grouting.PART).with(look))
        .with(Fill.GROUT, well.get(Fill.GROUT).with(sounding.get()));
  }

  /** What hose and tremie hold as they hang, where nobody says what is in them. */
  private static Volume inTremie(Well well) {
    Optional<Volume> held = well.get(Tremie.PART).held().map(o -> (Volume) o.quantity(HoseVolume.HELD.name()));
    return held.filter(h -> h.cubicMetres() < well.get(Fill.GROUT).volume().cubicMetres()).orElse(Volume.NONE);
  }
}
