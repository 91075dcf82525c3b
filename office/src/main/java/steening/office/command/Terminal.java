package steening.office.command;

import java.io.PrintStream;
import java.util.Locale;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;

/**
 * Where a command speaks to.
 *
 * @param out what was asked for
 * @param err what went wrong
 */
public record Terminal(Language language, PrintStream out, PrintStream err) {
  /** In the language of the machine. */
  public Terminal(PrintStream out, PrintStream err) {
    this(Language.of(Locale.getDefault().getLanguage()), out, err);
  }

  Reader reader(UnitSystem units) {
    return new Reader(language, units);
  }

  String shown(Phrase phrase) {
    return phrase.shownTo(reader(UnitSystem.US));
  }

  void say(Phrase phrase) {
    out.println(shown(phrase));
  }

  void complain(Phrase phrase) {
    err.println(shown(phrase));
  }
}
