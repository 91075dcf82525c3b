package steening.stage.casing.choice;

import java.util.Optional;
import steening.ground.PackGrading;
import steening.ground.SlotChoice;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Well;

/** What the sand and the rate ask of pack, slot and screen, each with the rule it follows. */
public final class ChoiceSheet {
  private ChoiceSheet() {}

  public static Sheet on(Sheet sheet, Well well) {
    Optional<PackKnown> pack = PackKnown.of(well);
    Sheet with = sheet;
    Optional<Governing> governing = Governing.of(well);
    if (governing.isPresent()) with = sand(with, well, governing.get(), pack);
    if (pack.isPresent()) with = slot(with, well, pack.get());
    Optional<Outcome> length = Choice.length(well);
    if (length.isEmpty()) return with;
    return with.line(
        ScreenLength.LENGTH.label(),
        Phrase.of("{0}, half blocked {1}", "{0}, medio tapada {1}",
            length.get().figure(ScreenLength.LENGTH.name()), length.get().figure(ScreenLength.HALF.name())),
        length.get());
  }

  private static Sheet sand(Sheet sheet, Well well, Governing governing, Optional<PackKnown> pack) {
    Sheet with = sheet.line(
        Phrase.of("sand that governs pack and slot", "arena que manda en filtro y ranura"),
        Phrase.of(
            "{0} to {1}, D30 {2}, the finest of {3} sieved in the screen",
            "{0} a {1}, D30 {2}, la más fina de {3} tamizadas en la rejilla",
            depth(governing.sample().from()), depth(governing.sample().to()), governing.curve().figure("d30"),
            Integer.toString(governing.count())),
        governing.curve());
    Optional<Outcome> grading =
        Outcome.ifReckonable(() -> PackGrading.RECKONING.of(Choice.grading(well, governing, pack)));
    if (grading.isPresent()) {
      with = with.line(
          Phrase.of("D30 of the pack it asks for", "D30 del filtro que pide"),
          Phrase.of("{0} to {1}", "{0} a {1}",
              grading.get().figure(PackGrading.PACK_LEAST.name()), grading.get().figure(PackGrading.PACK_MOST.name())),
          grading.get());
    }
    Optional<Outcome> natural = Outcome.ifReckonable(() -> SlotChoice.RECKONING.of(Choice.natural(governing)));
    return natural.isEmpty() || natural.get().shown(SlotChoice.SLOT.name()).isEmpty()
        ? with
        : with.line(Phrase.of("slot without a pack", "ranura sin filtro"), natural(natural.get()), natural.get());
  }

  private static Phrase natural(Outcome outcome) {
    Figure slot = outcome.figure(SlotChoice.SLOT.name());
    return slot.quantity().coherent() < SlotChoice.NATURAL_LEAST.coherent()
        ? Phrase.of("{0}, under {1}: put a pack (EPA)", "{0}, bajo {1}: ponga filtro (EPA)",
            slot, new Figure(SlotChoice.NATURAL_LEAST, Scale.SLOT))
        : chosen(outcome);
  }

  private static Sheet slot(Sheet sheet, Well well, PackKnown pack) {
    Optional<Outcome> reckoned = Outcome.ifReckonable(() -> SlotChoice.RECKONING.of(Choice.slot(well, pack)));
    if (reckoned.isEmpty()) return sheet;
    Outcome outcome = reckoned.get();
    Sheet with = outcome.shown(SlotChoice.SLOT.name()).isEmpty() ? sheet : sheet.line(
        Phrase.of("widest slot for this pack, {0}", "ranura más ancha para este filtro, {0}", pack.name()),
        chosen(outcome), outcome);
    Optional<Shown> passes = outcome.shown(SlotChoice.PASSES.name());
    return passes.isEmpty() ? with : with.line(
        Phrase.of("slot {0} lets through", "la ranura {0} deja pasar",
            new Figure(Choice.slot(well).orElseThrow(), Scale.SLOT)),
        passes.get(), outcome);
  }

  private static Phrase chosen(Outcome outcome) {
    return Phrase.of("{0}, {1}", "{0}, {1}",
        outcome.figure(SlotChoice.SLOT.name()), outcome.shown(SlotChoice.RULE.name()).orElseThrow());
  }

  static Figure depth(Length depth) {
    return new Figure(depth, Scale.DEPTH);
  }
}
