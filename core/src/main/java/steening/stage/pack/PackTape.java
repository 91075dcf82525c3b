package steening.stage.pack;

import steening.field.Kind;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.Sounding;
import steening.well.Well;

/** The top of the pack, sounded. */
final class PackTape {
  static final Kind KIND =
      Kind.of("pack-tape", Phrase.of("Tape on the pack", "Sonda sobre el filtro"), Sounding.READING, DepthFrom.FIELD)
          .carrying(DepthFrom.FIELD);

  private PackTape() {}

  static Well fold(Well well, Entry entry) {
    return Sounding.in(entry, well).map(s -> well.with(Fill.PACK, well.get(Fill.PACK).with(s))).orElse(well);
  }
}
