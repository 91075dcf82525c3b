package steening.office.web;

import steening.language.Phrase;

/** The request is not answered, for a reason that can be told. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final int status;
  private final transient Phrase phrase;

  Refusal(int status, String english, String spanish) {
    super(english);
    this.status = status;
    this.phrase = Phrase.of(english, spanish);
  }

  int status() {
    return status;
  }

  Phrase phrase() {
    return phrase;
  }
}
