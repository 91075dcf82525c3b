package steening.stage.test;

import java.util.List;
import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.field.QuantityField;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.quantity.Length;
import steening.quantity.Notation;
import steening.quantity.Unit;
import steening.well.CasingString;
import steening.well.DepthFrom;
import steening.well.Part;

/**
 * The levels of the test as they were read, in the order they were read in, those that cannot be placed among them.
 *
 * @param rate the rate as it was typed
 * @param starts entries that started the pump; a second start begins the test again
 */
record LevelReadings(PVector<LevelReading> all, Optional<Notation.Typed> rate, PVector<String> starts) {
  static final Part<LevelReadings> PART =
      Part.ofHole("level-readings", new LevelReadings(TreePVector.empty(), Optional.empty(), TreePVector.empty()));

  /** What the well was doing. */
  enum Sort {
    AT_REST,
    PUMPING,
    RECOVERY
  }

  /**
   * One level as read.
   *
   * @param minutes since the pump was started or stopped; 0 at rest
   * @param tape as read
   * @param unit the unit it was typed in
   * @param depth below ground, with the stick-up of that time; absent where that was not known
   */
  record LevelReading(
      Sort sort, double minutes, Length tape, Unit unit, DepthFrom from, Optional<Length> depth, Moment at,
      String entry) {

    static LevelReading of(Sort sort, Entry entry, QuantityField level, QuantityField since, CasingString string) {
      Notation.Typed typed = level.text(entry.body()).flatMap(t -> Notation.read(t, Unit.FOOT)).orElseThrow();
      DepthFrom from = DepthFrom.FIELD.in(entry.body()).map(o -> DepthFrom.of(o.code())).orElse(DepthFrom.GROUND);
      double minutes = sort == Sort.AT_REST ? 0 : since.in(entry.body()).map(q -> q.in(Unit.MINUTE)).orElse(0.0);
      Length reading = (Length) typed.quantity();
      return new LevelReading(
          sort, minutes, reading, typed.unit(), from, string.belowGround(reading, from), entry.happenedAt(),
          entry.id());
    }
  }

  LevelReadings with(LevelReading reading) {
    return new LevelReadings(all.plus(reading), rate, starts);
  }

  /** The pump is started: the levels of an earlier run no longer count. */
  LevelReadings started(Optional<Notation.Typed> rate, String entry) {
    boolean again = !starts.isEmpty();
    return new LevelReadings(again ? TreePVector.from(of(Sort.AT_REST)) : all, rate, starts.plus(entry));
  }

  List<LevelReading> of(Sort sort) {
    return all.stream().filter(s -> s.sort() == sort).toList();
  }

  boolean isEmpty() {
    return all.isEmpty() && starts.isEmpty();
  }
}
