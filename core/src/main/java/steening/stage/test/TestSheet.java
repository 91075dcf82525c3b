package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.drawing.Chart;
import steening.language.Phrase;
import steening.language.Shown;
import steening.number.Elementary;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.test.LevelReadings.LevelReading;
import steening.stage.test.gauge.MeasuredRates;
import steening.well.Well;

/** The figures, the readings and the chart of a test. */
final class TestSheet {
  private TestSheet() {}

  static Sheet of(Well well) {
    RunReckoned reckoned = RunReckoned.of(well);
    Run run = reckoned.run();
    Sheet sheet = Sheet.EMPTY;
    if (run.rest().isPresent()) {
      sheet = sheet.line(Phrase.of("static water level, below ground", "nivel estático, bajo el terreno"),
          TestWords.depth(run.rest().get().depth().orElseThrow()));
    }
    if (run.rate().isPresent()) sheet = sheet.line(TestEntries.RATE.label(), new Figure(run.rate().get(), Scale.FLOW));
    sheet = figures(MeasuredRates.on(sheet, well), reckoned);
    Optional<Outcome> line = reckoned.line();
    double from = reckoned.firstTrue();
    sheet = pumping(sheet, run, line, from);
    sheet = recovery(sheet, run);
    return run.pumping().isEmpty() ? sheet : sheet.chart(chart(run, line, from));
  }

  private static Sheet figures(Sheet sheet, RunReckoned reckoned) {
    Sheet so = sheet;
    so = with(so, reckoned.capacity(), SpecificCapacity.CAPACITY, SpecificCapacity.CAPACITY.label());
    so = with(so, reckoned.storage(), CasingStorageTime.TIME, CasingStorageTime.TIME.label());
    so = with(so, reckoned.line(), ConstantRateTest.SLOPE, ConstantRateTest.SLOPE.label());
    so = with(so, reckoned.line(), ConstantRateTest.TRANSMISSIVITY, ConstantRateTest.TRANSMISSIVITY.label());
    so = with(so, reckoned.recovery(), RecoveryTest.TRANSMISSIVITY,
        Phrase.of("transmissivity from the recovery", "transmisividad por la recuperación"));
    so = with(so, reckoned.longTerm(), LongTermDrawdown.LATER,
        Phrase.of("drawdown after 100 days at this rate", "abatimiento a 100 días con este gasto"));
    Optional<Outcome> later = reckoned.longTerm();
    if (later.isEmpty()) return so;
    Length rest = reckoned.run().rest().orElseThrow().depth().orElseThrow();
    Length level = rest.plus((Length) later.get().quantity(LongTermDrawdown.LATER.name()));
    return so.line(Phrase.of("level then, below ground", "nivel entonces, bajo el terreno"), TestWords.depth(level));
  }

  private static Sheet with(Sheet sheet, Optional<Outcome> outcome, Answer answer, Phrase label) {
    return outcome.isEmpty() ? sheet : sheet.line(label, outcome.get().figure(answer.name()), outcome.get());
  }

  private static Sheet pumping(Sheet sheet, Run run, Optional<Outcome> line, double from) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Run.Drawdown one : run.pumping()) {
      List<Shown> row = row(one);
      boolean used = one.minutes() > 0 && one.minutes() >= from;
      row.add(line.isPresent() && used ? TestWords.depth(at(line.get(), one.minutes())) : Phrase.same("–"));
      rows.add(row);
    }
    return sheet.table(
        TestEntries.PUMPING.label(),
        List.of(
            Phrase.of("minutes", "minutos"), Phrase.of("level as read", "nivel leído"),
            Phrase.of("read from", "leído desde"),
            Phrase.of("drawdown", "abatimiento"), Phrase.of("the line there", "la recta ahí")),
        rows);
  }

  private static Sheet recovery(Sheet sheet, Run run) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Run.Drawdown one : run.recovery()) rows.add(row(one));
    return sheet.table(
        Phrase.of("Recovery", "Recuperación"),
        List.of(
            Phrase.of("minutes since the stop", "minutos desde el paro"), Phrase.of("level as read", "nivel leído"),
            Phrase.of("read from", "leído desde"), Phrase.of("residual drawdown", "abatimiento residual")),
        rows);
  }

  private static List<Shown> row(Run.Drawdown one) {
    LevelReading reading = one.reading();
    List<Shown> row = new ArrayList<>();
    row.add(Window.minutes(one.minutes()));
    row.add(TestWords.depth(reading.tape()));
    row.add(TestWords.point(reading.from()));
    row.add(TestWords.depth(one.size()));
    return row;
  }

  private static Length at(Outcome line, double minutes) {
    double start = line.quantity(ConstantRateTest.START.name()).coherent();
    double slope = line.quantity(ConstantRateTest.SLOPE.name()).coherent();
    return Length.ofMetres(start + slope * Elementary.log10(minutes));
  }

  private static Chart chart(Run run, Optional<Outcome> line, double from) {
    List<Chart.Point> points = new ArrayList<>();
    for (Run.Drawdown one : run.pumping()) {
      if (one.minutes() > 0) points.add(point(one.minutes(), one.size(), line.isPresent() && one.minutes() >= from));
    }
    List<Run.Drawdown> used = run.since(from);
    Optional<List<Chart.Point>> ends = line.map(l -> List.of(
        point(used.get(0).minutes(), at(l, used.get(0).minutes()), true),
        point(used.get(used.size() - 1).minutes(), at(l, used.get(used.size() - 1).minutes()), true)));
    return new Chart(
        Phrase.of("Drawdown over the logarithm of time", "Abatimiento según el logaritmo del tiempo"),
        new Chart.Axis(Phrase.of("time since the start", "tiempo desde el arranque"), Scale.MINUTES,
            true, false),
        new Chart.Axis(Phrase.of("drawdown", "abatimiento"), Scale.DEPTH, false, true),
        points,
        ends);
  }

  private static Chart.Point point(double minutes, Length drawdown, boolean used) {
    return new Chart.Point(minutes, drawdown.inFeet(), used);
  }
}
