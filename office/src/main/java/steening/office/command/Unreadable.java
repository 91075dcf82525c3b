package steening.office.command;

import steening.language.Phrase;

/** What a command was given cannot be read. */
final class Unreadable extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Phrase phrase;

  Unreadable(String english, String spanish, Object... arguments) {
    this.phrase = Phrase.of(english, spanish, arguments);
  }

  Phrase phrase() {
    return phrase;
  }
}
