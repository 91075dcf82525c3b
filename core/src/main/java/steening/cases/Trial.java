package steening.cases;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Field;
import steening.field.Reading;
import steening.job.Stages;
import steening.journal.Body;
import steening.language.Phrase;
import steening.language.Reader;
import steening.number.Decimal;
import steening.quantity.Notation;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

/** One case, tried. */
final class Trial {
  private static final int FIGURES = 6;
  private static final String REFUSED = "refused";
  private static final Phrase SHOULD_REFUSE = Phrase.of("it was not refused", "no fue rechazado");

  private final Case tried;
  private final String file;

  private Trial(Case tried, String file) {
    this.tried = tried;
    this.file = file;
  }

  /** A verdict for each expected answer. */
  static List<Verdict> of(Case tried, String file) {
    return new Trial(tried, file).verdicts();
  }

  private List<Verdict> verdicts() {
    Optional<Reckoning> reckoning = Stages.reckoning(tried.reckoning());
    if (reckoning.isEmpty()) {
      return List.of(Verdict.notCovered(
          tried.id(), file, tried.reckoning(),
          Phrase.of("there is no reckoning named {0} here", "aquí no hay un cálculo llamado {0}", tried.reckoning())));
    }
    try {
      Outcome outcome = reckoning.get().of(Inputs.of(body(reckoning.get())));
      if (tried.mustBeRefused()) return List.of(onRefusal(Verdict.Status.FAILED, "", SHOULD_REFUSE));
      List<Verdict> verdicts = new ArrayList<>();
      for (Expected expected : tried.expected()) verdicts.add(compared(expected, reckoning.get(), outcome));
      return verdicts;
    } catch (NotReckonable refused) {
      return refused(refused.sentence());
    }
  }

  /** The inputs as their fields take them from a hand that is sure. */
  private Body body(Reckoning reckoning) {
    Body body = Body.EMPTY;
    for (String name : tried.inputs().keySet()) {
      if (reckoning.inputs().stream().noneMatch(f -> f.name().equals(name))) {
        throw new NotReckonable("{0} has no input {1}.", "{0} no tiene el dato {1}.", reckoning.name(), name);
      }
    }
    for (Field field : reckoning.inputs()) {
      Reading reading = field.read(tried.inputs().get(field.name()), Reader.US_ENGLISH, true);
      if (reading instanceof Reading.Taken taken) body = body.with(field.name(), taken.text());
      else if (reading instanceof Reading.Refused refused) throw new NotReckonable(refused.sentence());
      else if (reading instanceof Reading.Asked asked) throw new NotReckonable(asked.question());
    }
    return body;
  }

  private List<Verdict> refused(Phrase sentence) {
    if (tried.mustBeRefused()) return List.of(onRefusal(Verdict.Status.PASSED, REFUSED, Verdict.NOTHING));
    return tried.expected().stream().map(expected -> failed(expected, REFUSED, sentence)).toList();
  }

  private Verdict compared(Expected expected, Reckoning reckoning, Outcome outcome) {
    String answer = expected.answer();
    boolean declared = reckoning.answers().stream().anyMatch(a -> a.name().equals(answer));
    if (!declared || outcome.shown(answer).isEmpty()) {
      return failed(
          expected, "",
          Phrase.of("{0} gives no {1} for this", "{0} no da {1} en este caso", reckoning.name(), answer));
    }
    if (outcome.words().containsKey(answer)) return compared(expected, outcome.words().get(answer));
    Optional<BigDecimal> number = Decimal.parse(expected.value());
    if (number.isEmpty()) {
      return failed(expected, "", Phrase.of("{0} is no word", "{0} no es una palabra", answer));
    }
    Quantity quantity = outcome.quantity(answer);
    Optional<Unit> unit = Notation.unit(expected.unit(), quantity.dimension());
    if (unit.isEmpty()) {
      return failed(
          expected, "",
          Phrase.of("{0} is not measured in \"{1}\"", "{0} no se mide en «{1}»", answer, expected.unit()));
    }
    double got = quantity.in(unit.get());
    String shown = Decimal.significant(got, FIGURES);
    double off = Math.abs(got - Decimal.nearest(number.get()));
    if (off <= expected.tolerance().around(number.get(), unit.get())) {
      return verdict(expected, Verdict.Status.PASSED, shown, Verdict.NOTHING);
    }
    return failed(
        expected, shown,
        Phrase.of("it is outside the tolerance of {0}", "está fuera de la tolerancia de {0}", expected.tolerance()));
  }

  private Verdict compared(Expected expected, Phrase word) {
    String got = word.shownTo(Reader.US_ENGLISH);
    if (got.equals(expected.value())) return verdict(expected, Verdict.Status.PASSED, got, Verdict.NOTHING);
    return failed(expected, got, Phrase.of("it is another word", "es otra palabra"));
  }

  private Verdict failed(Expected expected, String got, Phrase reason) {
    return verdict(expected, Verdict.Status.FAILED, got, reason);
  }

  private Verdict verdict(Expected expected, Verdict.Status status, String got, Phrase reason) {
    String id = tried.expected().size() > 1 ? tried.id() + " " + expected.answer() : tried.id();
    return new Verdict(id, file, tried.reckoning(), status, expected.value(), got, expected.unit(), reason);
  }

  /** Where a refusal was expected, and came or did not. */
  private Verdict onRefusal(Verdict.Status status, String got, Phrase reason) {
    return new Verdict(tried.id(), file, tried.reckoning(), status, REFUSED, got, "", reason);
  }
}
