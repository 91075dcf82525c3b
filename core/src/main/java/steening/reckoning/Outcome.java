package steening.reckoning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Quantity;

/**
 * What a reckoning came to.
 *
 * @param answers the declared amounts by name, each a named term; one that does not apply is left out
 * @param words the declared answers that are words, by name; likewise
 * @param remarks what the person should know about these very numbers
 */
public record Outcome(Map<String, Term> answers, Map<String, Phrase> words, List<Phrase> remarks) {
  public Outcome {
    answers = new LinkedHashMap<>(answers);
    words = new LinkedHashMap<>(words);
    remarks = List.copyOf(remarks);
  }

  public Outcome(Map<String, Term> answers, List<Phrase> remarks) {
    this(answers, Map.of(), remarks);
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
    return new Outcome(more, words, remarks);
  }

  /** The same with an answer that is a word. */
  public Outcome naming(String answer, Phrase word) {
    Map<String, Phrase> more = new LinkedHashMap<>(words);
    more.put(answer, word);
    return new Outcome(answers, more, remarks);
  }

  public Outcome remarking(Phrase remark) {
    List<Phrase> more = new ArrayList<>(remarks);
    more.add(remark);
    return new Outcome(answers, words, more);
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

  /** An answer as a person reads it, amount or word; nothing where it was left out. */
  public Optional<Shown> shown(String answer) {
    if (words.containsKey(answer)) return Optional.of(words.get(answer));
    return answers.containsKey(answer) ? Optional.of(figure(answer)) : Optional.empty();
  }

  public Working working(Reader reader) {
    return Working.of(List.copyOf(answers.values()), reader);
  }
}
