package steening.stage.seal;

import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.bore.Filled;
import steening.language.Phrase;
import steening.pipe.Collapse;
import steening.quantity.Figure;
import steening.quantity.Mass;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.seal.placing.SetClock;
import steening.well.Cure;
import steening.well.Fill;
import steening.well.OnTruck;
import steening.well.Plan;
import steening.well.Well;
import steening.well.WellAnnulus;

/** The seal on paper: what was planned, mixed and pumped, and where it stands. */
final class SealSheet {
  private static final Phrase NOT_BEFORE = Phrase.of(
      "not before the cement of the joints has cured", "no antes de que cure el cemento de las uniones");

  private SealSheet() {}

  static Sheet of(Well well) {
    Sheet sheet = planned(well);
    Optional<Cure> cure = well.get(Cure.PART);
    if (cure.isPresent()) sheet = sheet.line(NOT_BEFORE, Phrase.same(cure.get().clock()));
    sheet = chips(sheet, well.get(Fill.CHIPS));
    Grouting grouting = well.get(Grouting.PART);
    if (grouting.recipe().isPresent() || well.get(Plan.PART).isMade()) sheet = recipe(sheet, Grouting.recipe(well));
    sheet = GroutTables.batches(sheet, grouting, well.get(Fill.GROUT));
    Optional<Sealing> sealing = Sealing.of(well);
    if (sealing.isPresent()) sheet = toCome(standing(sheet, sealing.get()), well, sealing.get());
    Optional<CasingLoad> load = CasingLoad.of(well);
    if (load.isPresent()) sheet = onTheCasing(sheet, load.get());
    sheet = SetClock.on(sheet, well);
    sheet = sheet.cautioning(SealCautions.ALL);
    return sheet;
  }

  private static Sheet planned(Well well) {
    Plan plan = well.get(Plan.PART);
    Sheet sheet = Sheet.EMPTY;
    Optional<Outcome> chips = SealLoads.chips(plan, WellAnnulus.planned(well), Bagged.NO_OVERAGE);
    if (chips.isPresent()) {
      sheet = sheet.line(Phrase.of("chips planned", "pellets planeados"),
          Phrase.of("{0}, {1}", "{0}, {1}", chips.get().figure("volume"), Bagged.said(chips.get().quantity("bags"))),
          chips.get());
    }
    Optional<Outcome> grout = SealLoads.grout(plan, WellAnnulus.planned(well), Bagged.NO_OVERAGE);
    if (grout.isEmpty()) return sheet;
    return sheet.line(Phrase.of("grout planned", "lechada planeada"),
        Phrase.of("{0}, {1}, {2} of water", "{0}, {1}, {2} de agua",
            grout.get().figure("liquid"), Bagged.said(grout.get().quantity("bags")), grout.get().figure("water")),
        grout.get());
  }

  private static Sheet chips(Sheet sheet, Fill chips) {
    if (!chips.isBegun()) return sheet;
    Sheet with = sheet.line(
        Phrase.of("chips in", "pellets vertidos"),
        Phrase.of("{0}, {1}", "{0}, {1}", Bagged.said(chips.bags()), new Figure(chips.volume(), Scale.VOLUME)));
    Phrase sounded = Phrase.of("top of the chips, sounded", "tope de los pellets, sondeado");
    return chips.top().map(t -> with.line(sounded, new Figure(t, Scale.DEPTH))).orElse(with);
  }

  private static Sheet recipe(Sheet sheet, Recipe recipe) {
    Phrase text = Phrase.of(
        "{0}, {1} to {2} of water", "{0}, {1} con {2} de agua",
        recipe.material().label(), new Figure(recipe.solids(), Scale.WEIGHT), new Figure(recipe.water(), Scale.LIQUID));
    Optional<Outcome> mix = Outcome.ifReckonable(() -> GroutMix.of(recipe));
    if (mix.isEmpty()) return sheet.line(Phrase.of("mix", "mezcla"), text);
    return sheet
        .line(Phrase.of("mix", "mezcla"), text, mix.get())
        .line(Phrase.of("it should weigh", "debería dar"), mix.get().figure("density"), mix.get())
        .line(Phrase.of("yield of a bag", "rendimiento de un saco"), mix.get().figure("yield"), mix.get());
  }

  private static Sheet standing(Sheet sheet, Sealing sealing) {
    if (!sealing.grout().isBegun()) return sheet;
    Sheet with = GroutTables.gallons(sheet, sealing);
    Optional<Outcome> expected = Standing.expected(sealing);
    if (expected.isPresent()) {
      with = with.line(GroutTop.TOP.label(), sealing.seen(expected.get()), expected.get());
    }
    Optional<Fill.Tag> tag = sealing.grout().lastTag().filter(t -> t.bags() > 0);
    if (tag.isPresent()) {
      with = with.line(
          Phrase.of("top of the grout, sounded", "tope de la lechada, sondeado"),
          new Figure(tag.get().depth(), Scale.DEPTH));
      Optional<Outcome> filled = sealing.filled(tag.get());
      if (filled.isPresent()) {
        with = with
            .line(GroutTables.OVER, GroutTables.ratio(filled.get()), filled.get())
            .line(GroutTables.APPARENT, Filled.said(filled.get()), filled.get());
      }
    }
    Optional<Falling> falling = Falling.of(sealing);
    if (falling.isPresent()) with = falling.get().on(with);
    return GroutTables.readings(with, sealing);
  }

  private static Sheet toCome(Sheet sheet, Well well, Sealing sealing) {
    Optional<Outcome> left = Grouted.isDone(well) ? Optional.empty() : GroutForecast.left(sealing);
    if (left.isEmpty()) return sheet;
    Sheet with = sheet
        .line(Phrase.of("bags of grout still needed", "sacos de lechada que faltan"),
            BagsLeft.said(left.get()), left.get())
        .line(Phrase.of("how sure that is", "qué tan seguro es eso"), BagsLeft.bands(left.get()), left.get());
    Optional<Integer> has = TruckFindings.onTruck(well);
    return has.isEmpty() ? with : with.line(
        well.get(OnTruck.PART).last(OnTruck.Goods.GROUT).isPresent()
            ? Phrase.of("grout on the truck, by the last count", "lechada en el camión, según el último conteo")
            : Phrase.of("grout on the truck, by the plan's load", "lechada en el camión, según la carga del plan"),
        Bagged.said(has.get()));
  }

  private static Sheet onTheCasing(Sheet sheet, CasingLoad load) {
    Sheet with = sheet;
    if (load.readiness().isPresent()) {
      with = with.line(Phrase.of("casing before the grout", "ademe antes de la lechada"), Phrase.of(
          "{0}, {1}", "{0}, {1}", load.filling(),
          load.isHeld() ? Phrase.of("held down", "sujeto") : Phrase.of("not held down", "sin sujetar")));
    }
    Optional<Outcome> pressed = load.pressed();
    if (pressed.isPresent()) {
      Outcome lifts = GroutLifts.of(pressed.get(), load.column());
      with = with.line(
          Phrase.of("pressure on the casing, {0}", "presión sobre el ademe, {0}", load.filling()),
          lifts.figure("differential"), lifts);
      if (lifts.answers().containsKey(GroutLifts.LIFTS.name())) {
        with = with
            .line(Collapse.HIGHEST.label(), lifts.figure(Collapse.HIGHEST.name()), lifts)
            .line(GroutLifts.LIFTS.label(), lifts.figure(GroutLifts.LIFTS.name()), lifts);
      }
    }
    Optional<Outcome> empty = load.pressed(Readiness.EMPTY).filter(o -> !load.isEmpty());
    if (empty.isPresent()) {
      with = with.line(
          Phrase.of("the same, empty: keep it full", "la misma, vacío: manténgalo lleno"),
          empty.get().figure("differential"), empty.get());
    }
    return uplift(with, load);
  }

  private static Sheet uplift(Sheet sheet, CasingLoad load) {
    Optional<Mass> uplift = load.uplift();
    Optional<Outcome> held = load.held().filter(o -> uplift.isPresent());
    return held.isEmpty() ? sheet : sheet.line(
        Phrase.of("lift on the closed casing while liquid", "empuje sobre el ademe cerrado, aún líquida"),
        new Figure(uplift.get(), Scale.WEIGHT), held.get());
  }
}
