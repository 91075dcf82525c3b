package steening.stage.disinfection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Load;
import steening.stage.Sheet;
import steening.well.Plan;
import steening.well.Residual;
import steening.well.Well;

/** The water, the dose for each label, what was made of it, and the cautions. */
final class DisinfectionSheet {
  private DisinfectionSheet() {}

  static Sheet of(Well well) {
    WaterInWell water = WaterInWell.of(well);
    Optional<Dosing.Dose> dose = well.get(Dosing.PART).last();
    Sheet sheet = Sheet.EMPTY;
    if (water.outcome().isPresent()) {
      Outcome outcome = water.outcome().get();
      sheet = sheet.line(WaterToTreat.WATER.label(), outcome.figure(WaterToTreat.WATER.name()), outcome);
    }
    if (dose.isPresent()) sheet = put(sheet, well, dose.get());
    Optional<Residual.Reading> left = well.get(Residual.PART).standing();
    if (left.isPresent()) {
      sheet = sheet.line(DisinfectionEntries.CHLORINE.label(), new Figure(left.get().chlorine(), Scale.CONCENTRATION));
    }
    if (dose.isEmpty()) sheet = doses(sheet, water);
    sheet = LettingOff.added(sheet, well);
    // As long as chlorine is to go in or is in the well.
    return dose.isEmpty() || left.isEmpty() ? sheet.cautioning(Cautions.ALL) : sheet;
  }

  private static Sheet put(Sheet sheet, Well well, Dosing.Dose dose) {
    Sheet so = sheet.line(dose.product().label(), dose.shown())
        .line(Phrase.of("available chlorine", "cloro disponible"), Products.label(dose.strength()))
        .line(DisinfectionEntries.TARGET.label(), new Figure(dose.target(), Scale.CONCENTRATION))
        .line(DisinfectionEntries.CONTACT.label(), new Figure(dose.contact(), Scale.HOURS));
    Optional<Outcome> reached = Reached.of(well, dose);
    if (reached.isEmpty()) return so;
    return so.line(
        Phrase.of("chlorine reached in the well", "cloro alcanzado en el pozo"),
        reached.get().figure(Reached.CONCENTRATION), reached.get());
  }

  private static Sheet doses(Sheet sheet, WaterInWell water) {
    WaterInWell casing = new WaterInWell(water.inside(), water.column(), Optional.empty());
    List<List<Shown>> rows = new ArrayList<>();
    for (Quantity strength : Products.BLEACH) {
      Optional<Outcome> all = water.bleach(strength, WaterInWell.USUAL_TARGET);
      Optional<Outcome> only = casing.bleach(strength, WaterInWell.USUAL_TARGET);
      if (all.isEmpty() || only.isEmpty()) continue;
      rows.add(List.of(
          DisinfectionEntries.BLEACH.label(), Products.label(strength),
          only.get().figure(DisinfectionDose.DOSE.name()), all.get().figure(DisinfectionDose.DOSE.name())));
    }
    Optional<Outcome> all = water.dry(Products.DRY, WaterInWell.USUAL_TARGET);
    Optional<Outcome> only = casing.dry(Products.DRY, WaterInWell.USUAL_TARGET);
    if (all.isPresent() && only.isPresent()) {
      rows.add(List.of(
          DisinfectionEntries.DRY.label(), Products.label(Products.DRY),
          only.get().figure(DryChlorineDose.DOSE.name()), all.get().figure(DryChlorineDose.DOSE.name())));
    }
    return sheet.table(
        Phrase.of("Doses for {0}", "Dosis para {0}", new Figure(WaterInWell.USUAL_TARGET, Scale.CONCENTRATION)),
        List.of(
            Phrase.of("product", "producto"), Phrase.of("label", "etiqueta"),
            Phrase.of("for the casing", "para el ademe"),
            Phrase.of("for casing and pack", "para ademe y filtro")),
        rows);
  }

  /** The dose before it is poured. */
  static List<Expectation> expectations(Well well) {
    if (well.get(Dosing.PART).last().isPresent()) return List.of();
    WaterInWell water = WaterInWell.of(well);
    List<Expectation> expectations = new ArrayList<>();
    for (Quantity strength : Products.BLEACH) {
      water.bleach(strength, WaterInWell.USUAL_TARGET).ifPresent(o -> expectations.add(
          expected(DisinfectionEntries.BLEACH.label(), strength, o, DisinfectionDose.DOSE.name())));
    }
    water.dry(Products.DRY, WaterInWell.USUAL_TARGET).ifPresent(o -> expectations.add(
        expected(DisinfectionEntries.DRY.label(), Products.DRY, o, DryChlorineDose.DOSE.name())));
    return expectations;
  }

  private static Expectation expected(Phrase product, Quantity strength, Outcome outcome, String answer) {
    Phrase what = Phrase.of(
        "{0} of {1}, for {2} in casing and pack", "{0} al {1}, para {2} en ademe y filtro",
        product, Products.label(strength), new Figure(WaterInWell.USUAL_TARGET, Scale.CONCENTRATION));
    Outcome cautioned = outcome;
    for (Phrase caution : Cautions.ALL) cautioned = cautioned.remarking(caution);
    return new Expectation(what, outcome.figure(answer), Optional.empty(), cautioned);
  }

  /** Enough for water up to the ground. */
  static List<Load> loads(Well well) {
    if (!well.get(Plan.PART).isMade()) return List.of();
    List<Load> loads = new ArrayList<>();
    Quantity weakest = Products.BLEACH.get(0);
    WaterInWell.atMost(well).bleach(weakest, WaterInWell.USUAL_TARGET).ifPresent(o -> loads.add(new Load(
        Phrase.of("unscented bleach of {0}", "blanqueador sin aroma al {0}", Products.label(weakest)),
        o.figure(DisinfectionDose.DOSE.name()), Optional.of(o))));
    loads.add(new Load(Phrase.of("goggles and gloves", "gafas y guantes"), Phrase.same("1"), Optional.empty()));
    loads.add(new Load(Phrase.of("chlorine test kit", "equipo para medir cloro"), Phrase.same("1"), Optional.empty()));
    return loads;
  }
}
