package steening.finding;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.reckoning.Outcome;

/**
 * A comparison that did not come out: what was compared, with both numbers; what probably happened; what to do next.
 *
 * @param code stable, for scripts and tests: {@code pack.bridged}
 * @param stage the room it belongs to
 * @param text one or two sentences that say what was compared
 * @param cause what probably happened; may be absent
 * @param next what to do now; may be absent
 * @param working the reckoning behind the expected number; may be absent
 * @param entries ids of the entries it rests on, the latest last
 */
public record Finding(
    String code,
    Weight weight,
    String stage,
    Phrase text,
    Optional<Figure> measured,
    Optional<Figure> expected,
    Optional<Phrase> cause,
    Optional<Phrase> next,
    Optional<Outcome> working,
    List<String> entries) {

  public Finding {
    entries = List.copyOf(entries);
  }

  public static Finding of(String code, Weight weight, String stage, Phrase text) {
    return new Finding(
        code, weight, stage, text,
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
  }

  public Finding comparing(Figure measured, Figure expected) {
    return new Finding(
        code, weight, stage, text, Optional.of(measured), Optional.of(expected), cause, next, working, entries);
  }

  public Finding because(Phrase cause) {
    return new Finding(code, weight, stage, text, measured, expected, Optional.of(cause), next, working, entries);
  }

  public Finding so(Phrase next) {
    return new Finding(code, weight, stage, text, measured, expected, cause, Optional.of(next), working, entries);
  }

  public Finding shownBy(Outcome working) {
    return new Finding(code, weight, stage, text, measured, expected, cause, next, Optional.of(working), entries);
  }

  public Finding from(List<String> entries) {
    return new Finding(code, weight, stage, text, measured, expected, cause, next, working, entries);
  }
}
