package steening.stage.handover;

import java.util.Optional;
import steening.field.Field;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.stage.Sheet;
import steening.well.Completion;
import steening.well.Tag;
import steening.well.Well;

/** Tag, completion, and the days until the report is due. */
final class HandoverSheet {
  private HandoverSheet() {}

  static Sheet of(Well well) {
    Sheet sheet = Sheet.EMPTY;
    Optional<Tag> tag = well.get(Tag.PART);
    if (tag.isPresent()) {
      sheet = with(sheet, HandoverEntries.NUMBER, Optional.of(tag.get().number()));
      sheet = with(sheet, HandoverEntries.PERMIT, tag.get().permit());
      sheet = sheet.line(Phrase.of("tag put on", "placa colocada"), Phrase.same(Dates.format(tag.get().at().date())));
    }
    Optional<Completion> completion = well.get(Completion.PART);
    if (completion.isEmpty()) return sheet;
    sheet = with(sheet, HandoverEntries.DATE, Optional.of(Dates.format(completion.get().date())));
    sheet = with(sheet, HandoverEntries.DRILLER, completion.get().driller());
    sheet = with(sheet, HandoverEntries.LICENCE, completion.get().licence());
    return DueDates.with(sheet, completion.get().date());
  }

  private static Sheet with(Sheet sheet, Field field, Optional<String> text) {
    return text.isEmpty() ? sheet : sheet.line(field.label(), Phrase.same(text.get()));
  }
}
