package steening.office.command;

import java.util.List;
import steening.language.Phrase;

/** The command cannot do what it was told, and these sentences say why. */
final class WrongUsage extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient List<Phrase> phrases;

  WrongUsage(List<Phrase> phrases) {
    this.phrases = List.copyOf(phrases);
  }

  WrongUsage(String english, String spanish, Object... arguments) {
    this(List.of(Phrase.of(english, spanish, arguments)));
  }

  List<Phrase> phrases() {
    return phrases;
  }
}
