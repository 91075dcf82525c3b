package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * What several tables say of one joint.
 *
 * @param tables those that reach so far
 * @param times of each of them, with the half for damp air
 */
record CureTimes(List<CureTable> tables, List<Term> times) {
  /** Above it the tables add half: over 60 %, or in "damp weather". */
  private static final double DAMP = 0.6 + 1e-9;

  private static final double HALF_AGAIN = 1.5;

  static CureTimes of(
      List<CureTable> asked, String printed, String adjusted, Scale scale, Length size, Quantity temperature,
      Optional<Quantity> humidity) {
    boolean damp = humidity.filter(h -> h.coherent() > DAMP).isPresent();
    List<CureTable> tables = new ArrayList<>();
    List<Term> times = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      OptionalInt minutes = asked.get(i).minutes(temperature, size);
      if (minutes.isEmpty()) continue;
      Phrase name = asked.get(i).name();
      String place = Character.toString((char) ('₁' + i));
      Term given = Term.given(
          printed + place, Phrase.of("{0}, as printed", "{0}, impreso", name), scale,
          Measure.of(minutes.getAsInt(), Unit.MINUTE));
      tables.add(asked.get(i));
      times.add(given.times(damp ? HALF_AGAIN : 1).named(adjusted + place, name, scale));
    }
    return new CureTimes(tables, times);
  }

  Term slowest() {
    return times.stream().reduce(Term::most).orElseThrow();
  }

  /** Each table's time under its own name. */
  Outcome each(Outcome outcome) {
    Outcome more = outcome;
    for (int i = 0; i < times.size(); i++) more = more.with(tables.get(i).code(), times.get(i));
    return more;
  }

  /** Says so where the tables do not agree. */
  Outcome disagreeing(Outcome outcome) {
    Quantity most = times.get(0).quantity();
    Quantity least = most;
    for (Term time : times) {
      if (time.quantity().coherent() > most.coherent()) most = time.quantity();
      if (time.quantity().coherent() < least.coherent()) least = time.quantity();
    }
    if (least.coherent() >= most.coherent()) return outcome;
    Scale scale = times.get(0).scale();
    return outcome.remarking(Phrase.of(
        "The tables disagree: {0} to {1}. The slowest is taken.",
        "Las tablas no coinciden: de {0} a {1}. Se toma la más lenta.",
        new Figure(least, scale), new Figure(most, scale)));
  }
}
