package steening.finding;

import steening.language.Phrase;

/** How much a finding matters. In order: the last is the heaviest. */
public enum Weight {
  NOTE("note", "Note", "Nota"),
  LOOK("look", "Look", "Revise"),
  STOP("stop", "Stop", "Alto");

  private final String code;
  private final Phrase label;

  Weight(String code, String english, String spanish) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
  }

  public String code() {
    return code;
  }

  public Phrase label() {
    return label;
  }
}
