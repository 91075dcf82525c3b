package steening.stage.test.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Field;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.stage.test.gauge.MeasuredRates.Measured;
import steening.stage.test.gauge.MeasuredRates.Rate;
import steening.well.PumpingTest;
import steening.well.Well;

/** Whether the measured rate is the one that was said, and stayed as it was. */
public final class RateFindings {
  private static final String ROOM = "test";

  /** A rate is called constant while it stays within a tenth (common practice, no source). */
  private static final double TENTH = 0.1;

  private RateFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    for (Measured measured : MeasuredRates.ofRun(well)) unread(measured).ifPresent(findings::add);
    List<Rate> rates = MeasuredRates.rates(well);
    if (rates.isEmpty()) return findings;
    well.get(PumpingTest.PART).rate().flatMap(said -> differs(said, rates.get(0))).ifPresent(findings::add);
    changed(rates).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> unread(Measured measured) {
    Optional<Way> way = Way.in(measured.body());
    if (way.isEmpty()) return Optional.empty();
    List<Field> missing = way.get().missing(measured.body());
    if (!missing.isEmpty()) {
      return Optional.of(look("test.rate-readings-missing", Phrase.of(
              "Rate by {0}: the {1} is missing, {2} readings in all. No rate follows from it.",
              "Gasto con {0}: falta {1}, {2} lecturas en total. De ello no resulta un gasto.",
              way.get().label(), missing.get(0).label(), Integer.toString(missing.size())))
          .so(Phrase.of("Enter what was read.", "Registre lo que se leyó."))
          .from(List.of(measured.entry())));
    }
    try {
      way.get().reckoning.of(Inputs.of(measured.body()));
      return Optional.empty();
    } catch (NotReckonable refused) {
      return Optional.of(look("test.rate-not-held", refused.sentence())
          .so(Phrase.of("Measure the rate again.", "Mida otra vez el gasto."))
          .from(List.of(measured.entry())));
    }
  }

  private static Optional<Finding> differs(FlowRate said, Rate first) {
    double flow = said.cubicMetresPerSecond();
    if (flow <= 0 || Math.abs(first.rate() - flow) <= TENTH * flow || within(flow, first)) return Optional.empty();
    Figure expected = new Figure(said, Scale.FLOW);
    return Optional.of(look("test.rate-differs", Phrase.of(
            "The pump was started at {0}; {1} were measured by {2}.",
            "La bomba arrancó con {0}; se midieron {1} con {2}.",
            expected, first.figure(), Way.in(first.measured().body()).orElseThrow().label()))
        .comparing(first.figure(), expected)
        .because(Phrase.of("The rate at the start was a guess, or a valve was moved since.",
            "El gasto del arranque fue supuesto, o se movió una válvula después."))
        .so(Phrase.of(
            "All that follows from the drawdown goes with the rate: correct the start if that was a guess.",
            "Todo lo que sale del abatimiento va con el gasto: corrija el arranque si fue supuesto."))
        .shownBy(first.outcome())
        .from(List.of(first.measured().entry())));
  }

  private static boolean within(double flow, Rate rate) {
    return flow >= rate.size(RateBand.LEAST.name()) && flow <= rate.size(RateBand.MOST.name());
  }

  /** The first measurement that the errors of both do not make one with the first of all. */
  private static Optional<Finding> changed(List<Rate> rates) {
    Rate first = rates.get(0);
    for (Rate rate : rates) {
      boolean apart = rate.size(RateBand.LEAST.name()) > first.size(RateBand.MOST.name())
          || rate.size(RateBand.MOST.name()) < first.size(RateBand.LEAST.name());
      if (!apart || Math.abs(rate.rate() - first.rate()) <= TENTH * first.rate()) continue;
      boolean less = rate.rate() < first.rate();
      return Optional.of(look("test.rate-changed", Phrase.of(
              "The rate went from {0} to {1} during the test.", "El gasto pasó de {0} a {1} durante la prueba.",
              first.figure(), rate.figure()))
          .comparing(rate.figure(), first.figure())
          .because(less
              ? Phrase.of("The level fell and the pump gives less against it, or the intake draws air.",
                  "El nivel bajó y la bomba da menos contra él, o la toma aspira aire.")
              : Phrase.of("A valve was opened, or the engine sped up.", "Se abrió una válvula o se aceleró el motor."))
          .so(Phrase.of(
              "The line through all levels does not hold. Hold the rate by the valve, or start again after rest.",
              "La recta por todos los niveles no vale. Mantenga el gasto con la válvula, o empiece tras el reposo."))
          .shownBy(rate.outcome())
          .from(List.of(first.measured().entry(), rate.measured().entry())));
    }
    return Optional.empty();
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, ROOM, text);
  }
}
