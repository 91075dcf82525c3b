package steening.field;

import java.util.List;
import steening.language.Phrase;

/** What became of something typed. */
public sealed interface Reading {
  /** Understood, and kept with its unit. */
  record Taken(String text) implements Reading {}

  /** Nothing was typed where nothing is needed. */
  record Absent() implements Reading {}

  /** Not understood, or impossible: one sentence with an example of the right form. */
  record Refused(Phrase sentence) implements Reading {}

  /**
   * Understood, but probably a slip: the question, and the texts it may have meant, the one that was typed first.
   */
  record Asked(Phrase question, List<String> meanings) implements Reading {
    public Asked {
      meanings = List.copyOf(meanings);
    }
  }
}
