package steening.stage.test;

import java.util.List;
import java.util.Optional;
import steening.journal.Entry;
import steening.quantity.FlowRate;
import steening.quantity.Notation;
import steening.quantity.Unit;
import steening.stage.test.gauge.RateEntry;
import steening.well.CasingString;
import steening.well.Levels;
import steening.well.PumpingTest;
import steening.well.Well;

/** What each entry of this room adds to the well. */
final class TestFold {
  private static final FlowRate NOTHING = new FlowRate(0);

  private TestFold() {}

  static Well with(Well well, Entry entry) {
    CasingString string = well.get(CasingString.PART);
    return switch (entry.kind()) {
      case "static-level" -> atRest(well, read(LevelReadings.Sort.AT_REST, entry, string));
      case "pumping-start" -> started(well, entry);
      case "pumping-level" -> pumping(well, read(LevelReadings.Sort.PUMPING, entry, string));
      case "pumping-stop" -> well.with(PumpingTest.PART, well.get(PumpingTest.PART).stopped(entry.happenedAt()));
      case "rate-measured" -> RateEntry.with(well, entry);
      default -> recovering(well, read(LevelReadings.Sort.RECOVERY, entry, string));
    };
  }

  private static LevelReadings.LevelReading read(LevelReadings.Sort sort, Entry entry, CasingString string) {
    return switch (sort) {
      case AT_REST -> LevelReadings.LevelReading.of(sort, entry, TestEntries.AT_REST, TestEntries.SINCE_START, string);
      case PUMPING -> LevelReadings.LevelReading.of(sort, entry, TestEntries.PUMPING, TestEntries.SINCE_START, string);
      case RECOVERY -> LevelReadings.LevelReading.of(sort, entry, TestEntries.LEVEL, TestEntries.SINCE_STOP, string);
    };
  }

  private static Well atRest(Well well, LevelReadings.LevelReading read) {
    Well noted = noted(well, read);
    if (read.depth().isEmpty()) return noted;
    Levels.Level level = new Levels.Level(read.depth().get(), read.from(), NOTHING, read.at(), read.entry());
    return noted.with(Levels.PART, noted.get(Levels.PART).rest(level));
  }

  private static Well started(Well well, Entry entry) {
    Optional<Notation.Typed> rate =
        TestEntries.RATE.text(entry.body()).flatMap(t -> Notation.read(t, Unit.GALLON_PER_MINUTE));
    boolean again = !well.get(LevelReadings.PART).starts().isEmpty();
    Well noted = well.with(LevelReadings.PART, well.get(LevelReadings.PART).started(rate, entry.id()));
    PumpingTest before = again ? PumpingTest.PART.empty() : well.get(PumpingTest.PART);
    FlowRate flow = rate.map(t -> (FlowRate) t.quantity()).orElse(NOTHING);
    return deepest(noted.with(PumpingTest.PART, before.started(flow, entry.happenedAt())));
  }

  private static Well pumping(Well well, LevelReadings.LevelReading read) {
    Well noted = noted(well, read);
    if (read.depth().isEmpty()) return noted;
    Well with = noted.with(PumpingTest.PART, noted.get(PumpingTest.PART).read(reading(read)));
    Optional<FlowRate> rate = with.get(PumpingTest.PART).rate();
    Levels levels = with.get(Levels.PART);
    boolean deeper = levels.pumping().map(known -> read.depth().get().isMoreThan(known.depth())).orElse(true);
    return rate.isPresent() && deeper ? with.with(Levels.PART, levels.pumping(level(read, rate.get()))) : with;
  }

  private static Well recovering(Well well, LevelReadings.LevelReading read) {
    Well noted = noted(well, read);
    if (read.depth().isEmpty()) return noted;
    return noted.with(PumpingTest.PART, noted.get(PumpingTest.PART).recovered(reading(read)));
  }

  /** The deepest level of the test and the rate it goes with; a level without a rate says nothing of the well. */
  private static Well deepest(Well well) {
    Optional<FlowRate> rate = well.get(PumpingTest.PART).rate();
    List<LevelReadings.LevelReading> placed =
        well.get(LevelReadings.PART).of(LevelReadings.Sort.PUMPING).stream()
            .filter(s -> s.depth().isPresent())
            .toList();
    Levels levels = new Levels(well.get(Levels.PART).atRest(), Optional.empty());
    if (rate.isEmpty() || placed.isEmpty()) return well.with(Levels.PART, levels);
    LevelReadings.LevelReading deepest =
        placed.stream().max((a, b) -> a.depth().get().compareTo(b.depth().get())).get();
    return well.with(Levels.PART, levels.pumping(level(deepest, rate.get())));
  }

  private static Levels.Level level(LevelReadings.LevelReading read, FlowRate rate) {
    return new Levels.Level(read.depth().orElseThrow(), read.from(), rate, read.at(), read.entry());
  }

  private static PumpingTest.Reading reading(LevelReadings.LevelReading read) {
    return new PumpingTest.Reading(read.minutes(), read.depth().get(), read.from(), read.entry());
  }

  private static Well noted(Well well, LevelReadings.LevelReading read) {
    return well.with(LevelReadings.PART, well.get(LevelReadings.PART).with(read));
  }
}
