package steening.cases;

import steening.language.Phrase;

/**
 * What became of one published value.
 *
 * @param id the case, and the answer where the case has several
 * @param file the file it stands in
 * @param reckoning empty where none was found for it
 * @param expected the number as published, or {@code refused}; may be empty
 * @param got the number that was reckoned, or {@code refused}; empty where nothing was
 * @param unit of both
 * @param reason why it failed or was not covered; says nothing where it passed
 */
public record Verdict(
    String id, String file, String reckoning, Status status, String expected, String got, String unit, Phrase reason) {
  static final Phrase NOTHING = Phrase.same("");

  /** How a value came out. */
  public enum Status {
    PASSED("passed"),
    FAILED("failed"),
    NOT_COVERED("not covered");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    /** As files have it. */
    public String words() {
      return words;
    }
  }

  static Verdict notCovered(String id, String file, String reckoning, Phrase reason) {
    return new Verdict(id, file, reckoning, Status.NOT_COVERED, "", "", "", reason);
  }
}
