package steening.bench;

import steening.number.Decimal;

/**
 * One measurement beside its rival.
 *
 * @param what was measured
 * @param ours in {@code unit}
 * @param rival what it is held against
 * @param theirs in the same unit
 * @param ratio ours to theirs, so that less is better
 */
record Row(String what, double ours, String rival, double theirs, String unit, double ratio) {
  /** Less is better. */
  static Row time(String what, double ours, String rival, double theirs) {
    return new Row(what, ours, rival, theirs, "ms", ours / theirs);
  }

  /** More is better, so the ratio is turned round. */
  static Row rate(String what, double ours, String rival, double theirs) {
    return new Row(what, ours, rival, theirs, "a second", theirs / ours);
  }

  String printed() {
    return "| " + what + " | " + Decimal.significant(ours, 3) + " " + unit + " | " + rival + " | "
        + Decimal.significant(theirs, 3) + " " + unit + " | " + Decimal.significant(ratio, 3) + " |";
  }
}
