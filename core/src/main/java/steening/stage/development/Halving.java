package steening.stage.development;

import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * How fast the sand halves, from the first reading to the middle one and from there to the last.
 *
 * @param series of at least three readings
 */
record Halving(SandSeries series) {
  /** Later half-lives longer by more than this tell of a floor, not of scatter (common practice, no source). */
  private static final double LENGTHENING = 1.25;

  /** The half-lives, each where the sand fell and did not vanish. */
  Outcome answered(Outcome outcome) {
    Outcome early = falls(0, middle()) ? with(outcome, SandDecay.EARLY, "h₁", 0, middle()) : outcome;
    return falls(middle(), last()) ? with(early, SandDecay.LATE, "h₂", middle(), last()) : early;
  }

  /** Whether it halves more slowly late than early, or no longer at all. */
  boolean isLengthening() {
    if (!falls(0, middle())) return false;
    Outcome outcome = answered(Outcome.empty());
    if (!outcome.answers().containsKey(SandDecay.LATE.name())) return series.content(last()) > 0;
    return outcome.quantity(SandDecay.LATE.name()).coherent()
        > LENGTHENING * outcome.quantity(SandDecay.EARLY.name()).coherent();
  }

  private int middle() {
    return last() / 2;
  }

  private int last() {
    return series.size() - 1;
  }

  private boolean falls(int from, int to) {
    return series.content(to) > 0 && series.content(from) > series.content(to);
  }

  private Outcome with(Outcome outcome, Answer answer, String symbol, int from, int to) {
    Term passed = time(to).minus(time(from));
    Term fall = content(mark("c", from), series.content().get(from))
        .over(content(mark("c", to), series.content().get(to))).log10();
    return outcome.with(answer.name(),
        passed.times(Term.number(2).log10()).over(fall).named(symbol, answer.label(), answer.scale()));
  }

  private Term time(int reading) {
    return Term.given(mark("t", reading), SandSeries.TIMES.label(), Scale.MINUTES, series.minutes().get(reading));
  }

  /** The last one has its own mark, as it is said of the time that is left too. */
  private String mark(String letter, int reading) {
    return letter + (reading == last() ? "ₙ" : Term.index(reading + 1));
  }

  static Term content(String symbol, Quantity content) {
    Phrase label = SandContent.CONTENT.label();
    return Term.given(symbol, label, Scale.CONCENTRATION, content);
  }
}
