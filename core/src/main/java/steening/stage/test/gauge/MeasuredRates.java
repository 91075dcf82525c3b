package steening.stage.test.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Part;
import steening.well.PumpingTest;
import steening.well.Well;

/** The rates that were measured, in the order they were. */
public record MeasuredRates(List<Measured> all) {
  static final Part<MeasuredRates> PART = Part.ofHole("measured-rates", new MeasuredRates(List.of()));

  public MeasuredRates {
    all = List.copyOf(all);
  }

  /**
   * One measurement.
   *
   * @param body what was read, under the names of the reckoning's own inputs
   */
  record Measured(Body body, Moment at, String entry) {
    /** Empty where readings are missing or the way of measuring does not hold for them. */
    Optional<Outcome> outcome() {
      Optional<Way> way = Way.in(body);
      if (way.isEmpty() || !way.get().missing(body).isEmpty()) return Optional.empty();
      return Outcome.ifReckonable(() -> way.get().reckoning.of(Inputs.of(body)));
    }
  }

  /** A measurement that came to a rate. */
  record Rate(Measured measured, Outcome outcome) {
    double size(String answer) {
      return outcome.quantity(answer).coherent();
    }

    double rate() {
      return size(RateBand.RATE.name());
    }

    Figure figure() {
      return outcome.figure(RateBand.RATE.name());
    }
  }

  MeasuredRates with(Measured measured) {
    List<Measured> more = new ArrayList<>(all);
    more.add(measured);
    return new MeasuredRates(more);
  }

  /** Those of the last run of the pump; all of them where its start is not known. */
  static List<Measured> ofRun(Well well) {
    Optional<Moment> started = well.get(PumpingTest.PART).started();
    return well.get(PART).all().stream()
        .filter(m -> started.isEmpty() || !started.get().isAfter(m.at()))
        .toList();
  }

  static List<Rate> rates(Well well) {
    List<Rate> rates = new ArrayList<>();
    for (Measured one : ofRun(well)) one.outcome().ifPresent(outcome -> rates.add(new Rate(one, outcome)));
    return rates;
  }

  /** The mean of what was measured in the last run. */
  public static Optional<FlowRate> mean(Well well) {
    List<Rate> rates = rates(well);
    if (rates.isEmpty()) return Optional.empty();
    double sum = 0;
    for (Rate rate : rates) sum += rate.rate();
    return Optional.of(new FlowRate(sum / rates.size()));
  }

  /** The sheet with what was measured; as it was where nothing was. */
  public static Sheet on(Sheet sheet, Well well) {
    List<Rate> rates = rates(well);
    if (rates.isEmpty()) return sheet;
    List<List<Shown>> rows = new ArrayList<>();
    for (Rate rate : rates) {
      Body body = rate.measured().body();
      List<Shown> row = new ArrayList<>();
      row.add(RateEntry.MINUTES.in(body).<Shown>map(q -> new Figure(q, Scale.MINUTES)).orElse(Phrase.same("–")));
      row.add(Way.in(body).orElseThrow().label());
      row.add(rate.figure());
      row.add(Phrase.of("{0} to {1}", "{0} a {1}", rate.outcome().figure(RateBand.LEAST.name()),
          rate.outcome().figure(RateBand.MOST.name())));
      rows.add(row);
    }
    Rate last = rates.get(rates.size() - 1);
    return sheet
        .line(Phrase.of("rate as last measured", "último gasto medido"), last.figure(), last.outcome())
        .table(
            Phrase.of("Measured rate", "Gasto medido"),
            List.of(
                Phrase.of("minutes", "minutos"), Way.FIELD.label(), RateBand.RATE.label(),
                Phrase.of("by its error", "según su error")),
            rows);
  }
}
