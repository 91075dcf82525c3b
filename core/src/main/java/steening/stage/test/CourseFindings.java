package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.test.LevelReadings.Sort;
import steening.well.PumpingTest;
import steening.well.Well;

/** How the test was run: what was left out, how long, and whether its readings lie on one line. */
final class CourseFindings {
  /** New York 10 NYCRR Appendix 5-B.4: at least four hours of stabilised drawdown (seen). */
  private static final double FOUR_HOURS = 240;

  /** A barrier doubles the slope; most of a doubling is taken for one (common practice, no source). */
  private static final double STEEPER = 1.8;
  private static final double FLATTER = 0.5;
  private static final int FEWEST = 6;
  private static final Length CLEAR = Length.of(0.2, Unit.FOOT);

  private CourseFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    LevelReadings readings = well.get(LevelReadings.PART);
    RunReckoned reckoned = RunReckoned.of(well);
    boolean pumping = !readings.of(Sort.PUMPING).isEmpty();
    List<String> last = pumping ? List.of(readings.of(Sort.PUMPING).get(readings.of(Sort.PUMPING).size() - 1).entry())
        : List.of();
    if (pumping && reckoned.run().rate().isEmpty()) {
      findings.add(missing("test.rate-missing", "discharge rate", "el gasto", last));
    }
    if (pumping && reckoned.run().rest().isEmpty()) {
      findings.add(missing("test.static-missing", "static water level", "el nivel estático", last));
    }
    if (well.get(PumpingTest.PART).stopped().isPresent() && pumping) {
      tooShort(reckoned, last).ifPresent(findings::add);
      onlyCasing(reckoned, last).ifPresent(findings::add);
    }
    bent(reckoned).ifPresent(findings::add);
    return findings;
  }

  private static Finding missing(String code, String english, String spanish, List<String> entries) {
    return Finding.of(
            code, Weight.LOOK, TestStage.NAME,
            Phrase.of(
                "Pumping levels are noted, but no {0}. Nothing follows from them.",
                "Hay niveles dinámicos, pero falta {1}. De ellos nada resulta.",
                english, spanish))
        .so(Phrase.of(
            "Enter the {0}, at the hour it was measured.", "Registre {1}, con la hora en que se midió.", english,
            spanish))
        .from(entries);
  }

  private static Optional<Finding> tooShort(RunReckoned reckoned, List<String> entries) {
    if (reckoned.pumped() >= FOUR_HOURS) return Optional.empty();
    Figure pumped = hours(reckoned.pumped());
    return Optional.of(Finding.of(
            "test.short", Weight.NOTE, TestStage.NAME,
            Phrase.of(
                "Pumped for {0}; {1} at least are asked for in some places (New York 10 NYCRR Appendix 5-B.4).",
                "Se bombeó {0}; en algunos lugares se piden al menos {1} (New York 10 NYCRR Appendix 5-B.4).",
                pumped, hours(FOUR_HOURS)))
        .comparing(pumped, hours(FOUR_HOURS))
        .so(Phrase.of("See what the local code asks for before certifying a rate.",
            "Vea qué pide el reglamento local antes de certificar un gasto."))
        .from(entries));
  }

  private static Figure hours(double minutes) {
    return new Figure(new Measure(Dimension.TIME, Unit.MINUTE.toCoherent(minutes)), Scale.HOURS);
  }

  private static Optional<Finding> onlyCasing(RunReckoned reckoned, List<String> entries) {
    Optional<Outcome> storage = reckoned.storage();
    if (storage.isEmpty() || !reckoned.run().since(reckoned.firstTrue()).isEmpty()) return Optional.empty();
    Run.Drawdown last = reckoned.run().last().orElseThrow();
    Figure time = storage.get().figure(CasingStorageTime.TIME.name());
    return Optional.of(Finding.of(
            "test.casing-storage", Weight.NOTE, TestStage.NAME,
            Phrase.of(
                "The last level was read at {0}; until {1} the casing itself gives the water.",
                "El último nivel se leyó a {0}; hasta {1} el agua la da el propio ademe.",
                Window.minutes(last.minutes()), time))
        .comparing(Window.minutes(last.minutes()), time)
        .so(Phrase.of("Do not certify a rate on these readings; pump longer.",
            "No certifique un gasto con estas lecturas; bombee más tiempo."))
        .shownBy(storage.get())
        .from(entries));
  }

  /** Whether the later half of the readings, by their number, runs clearly steeper or flatter than the earlier. */
  private static Optional<Finding> bent(RunReckoned reckoned) {
    List<Run.Drawdown> used = reckoned.run().since(reckoned.firstTrue());
    if (used.size() < FEWEST || reckoned.run().rate().isEmpty()) return Optional.empty();
    double half = used.get(used.size() / 2).minutes();
    Optional<StraightLine> early = line(used.stream().filter(d -> d.minutes() <= half).toList());
    Optional<StraightLine> late = line(used.stream().filter(d -> d.minutes() >= half).toList());
    if (early.isEmpty() || late.isEmpty()) return Optional.empty();
    Length before = (Length) early.get().slope().quantity();
    Length after = (Length) late.get().slope().quantity();
    Run.Drawdown last = used.get(used.size() - 1);
    double apart = early.get().miss(StraightLine.Point.at(last.minutes(), last.minutes(), last.size()));
    if (before.nanometres() <= 0 || apart < CLEAR.coherent()) return Optional.empty();
    double ratio = after.coherent() / before.coherent();
    if (ratio < STEEPER && ratio > FLATTER) return Optional.empty();
    boolean steeper = ratio >= STEEPER;
    Finding finding = Finding.of(
            steeper ? "test.line-steepens" : "test.line-flattens", steeper ? Weight.LOOK : Weight.NOTE, TestStage.NAME,
            Phrase.of(
                "The drawdown grew by {0} per log cycle until {2}, and by {1} after.",
                "El abatimiento crecía {0} por ciclo logarítmico hasta {2}, y {1} después.",
                TestWords.depth(before), TestWords.depth(after), Window.minutes(half)))
        .comparing(TestWords.depth(after), TestWords.depth(before))
        .from(List.of(last.reading().entry()));
    return Optional.of(steeper
        ? finding
            .because(Phrase.of("A boundary, the aquifer thinning, or the rate gone up.",
                "Una frontera, el acuífero que adelgaza, o el gasto que subió."))
            .so(Phrase.of("Pump longer, and certify on the later line.",
                "Bombee más tiempo, y certifique con la recta posterior."))
        : finding
            .because(Phrase.of(
                "Leakage, recharge, discharge running back, or the rate gone down.",
                "Goteo, recarga, descarga que regresa, o el gasto que bajó."))
            .so(Phrase.of(
                "Measure the rate, and see where the discharge runs. Do not count on it in a drought.",
                "Mida el gasto y vea adónde corre la descarga. No cuente con ello en una sequía.")));
  }

  private static Optional<StraightLine> line(List<Run.Drawdown> drawdowns) {
    List<StraightLine.Point> points =
        drawdowns.stream().map(d -> StraightLine.Point.at(d.minutes(), d.minutes(), d.size())).toList();
    if (points.stream().allMatch(p -> p.x() == points.get(0).x())) return Optional.empty();
    StraightLine.Sums sums = StraightLine.Sums.of(points, ConstantRateTest.START.label());
    return Optional.of(sums.line(sums.slope().named("Δs", ConstantRateTest.SLOPE.label(), Scale.DEPTH), "s₁",
        ConstantRateTest.START.label()));
  }
}
