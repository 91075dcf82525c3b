package steening.reckoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Figure;
import steening.quantity.Quantity;

/**
 * What a reckoning came to.
 *
 * @param answers the declared answers by name, each a named term; one that does not apply is left out
 * @param remarks what the person should know about these very numbers
 */
public record Outcome(Map<String, Term> answers, List<Phrase> remarks) {
  public Outcome {
    answers = new LinkedHashMap<>(answers);
    remarks = List.copyOf(remarks);
  }

  public static Outcome empty() {
    return new Outcome(Map.of(), List.of());
  }

  /** What a method comes to; nothing where its inputs contradict each other or give no finite number. */
  public static Optional<Outcome> ifReckonable(Supplier<Outcome> method) {
    try {
      return Optional.of(method.get()).filter(Outcome::isFinite);
    } catch (NotReckonable contradiction) {
      return Optional.empty();
    }
  }

  /** Whether every answer is a number that can be shown. */
  public boolean isFinite() {
    return answers.values().stream().allMatch(Term::isFinite);
  }

  public Outcome with(String answer, Term term) {
    Map<String, Term> more = new LinkedHashMap<>(answers);
    more.put(answer, term);
    return new Outcome(more, remarks);
  }

  public Outcome remarking(Phrase remark) {
    List<Phrase> more = new ArrayList<>(remarks);
    more.add(remark);
    return new Outcome(answers, more);
  }

  public Term term(String answer) {
    Term term = answers.get(answer);
    if (term == null) throw new IllegalArgumentException("no answer named " + answer);
    return term;
  }

  public Quantity quantity(String answer) {
    return term(answer).quantity();
  }

  public Figure figure(String answer) {
    return new Figure(quantity(answer), term(answer).scale());
  }

  public Working working(Reader reader) {
    return Working.of(List.copyOf(answers.values()), reader);
  }
}
