package steening.job;

import steening.language.Phrase;
import steening.reckoning.Source;

/**
 * Where the work can hurt someone: one hazard in a sentence or two, and who says so.
 *
 * @param what without its last full stop, since the source follows
 */
record Caution(Phrase what, Source source) {
  static Caution seen(Phrase what, String source, String fuente) {
    return new Caution(what, Source.seen(source, fuente));
  }

  static Caution memory(Phrase what, String source, String fuente) {
    return new Caution(what, Source.memory(source, fuente));
  }

  /** With its source, and whether that was read or is remembered. */
  Phrase said() {
    Phrase with = source.read() == Source.Read.SEEN
        ? Phrase.of("{0} ({1}, seen).", "{0} ({1}, leído).")
        : Phrase.of("{0} ({1}, from memory).", "{0} ({1}, de memoria).");
    return with.about(what, source.publication());
  }
}
