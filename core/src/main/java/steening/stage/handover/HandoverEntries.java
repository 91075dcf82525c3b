package steening.stage.handover;

import java.util.Optional;
import steening.field.DateField;
import steening.field.Kind;
import steening.field.TextField;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.well.Completion;
import steening.well.Tag;

/** The plate on the well, and the day that the report gives. */
final class HandoverEntries {
  static final TextField NUMBER = TextField.of("number", Phrase.of("tag number", "número de placa"), "0047813");
  static final TextField PERMIT =
      TextField.of("permit", Phrase.of("permit number on the tag", "número de permiso en la placa"), "WP-2026-0413")
          .optional();
  static final Kind TAG = Kind.of("tag", Phrase.of("Well tag", "Placa de identificación"), NUMBER, PERMIT);

  static final DateField DATE = DateField.of("date", Phrase.of("completed on", "terminado el"));
  static final TextField DRILLER = TextField.of("driller", Phrase.of("driller", "perforador"), "A. Ejemplo").optional();
  static final TextField LICENCE =
      TextField.of("licence", Phrase.of("licence number", "número de licencia"), "WD-0000").optional();
  static final Kind COMPLETION = Kind.of("completion", Phrase.of("Completion", "Terminación"), DATE, DRILLER, LICENCE);

  private HandoverEntries() {}

  static Tag tag(Entry entry) {
    return new Tag(NUMBER.text(entry.body()).orElse(""), PERMIT.text(entry.body()), entry.happenedAt(), entry.id());
  }

  /** Empty without a date. */
  static Optional<Completion> completion(Entry entry) {
    return DATE.in(entry.body()).map(date -> new Completion(
        date, DRILLER.text(entry.body()), LICENCE.text(entry.body()), entry.recordedAt(), entry.id()));
  }
}
