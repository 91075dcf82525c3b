package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Notation;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Well;

/** Whether the well gives what wells around it give, and whether it will go on giving it. */
final class YieldFindings {
  /** Earlier than this the casing may still be giving the water (common practice, no source). */
  private static final double SETTLED = 10;

  private YieldFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    RunReckoned reckoned = RunReckoned.of(well);
    unlikely(well, reckoned).ifPresent(findings::add);
    inScreen(well, reckoned.run()).ifPresent(findings::add);
    longTerm(well, reckoned).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> unlikely(Well well, RunReckoned reckoned) {
    Optional<Neighbours> neighbours = Neighbours.of(well);
    Optional<Outcome> outcome = reckoned.capacity();
    if (neighbours.isEmpty() || outcome.isEmpty()) return Optional.empty();
    Run.Drawdown last = reckoned.run().last().orElseThrow();
    Quantity capacity = outcome.get().quantity(SpecificCapacity.CAPACITY.name());
    Optional<Double> distance = neighbours.get().distance(capacity).filter(z -> Math.abs(z) > Neighbours.FAR);
    if (distance.isEmpty() || last.minutes() < SETTLED) return Optional.empty();
    Quantity median = neighbours.get().median();
    Finding finding = Finding.of(
            "test.specific-capacity-unlikely", Weight.LOOK, TestStage.NAME,
            Phrase.of(
                "Specific capacity {0} against the neighbours' median {1}: {2} of their spreads away.",
                "Caudal específico {0} contra la mediana de los vecinos {1}: a {2} de sus dispersiones.",
                TestWords.capacity(capacity), TestWords.capacity(median), Decimal.fixed(Math.abs(distance.get()), 1)))
        .comparing(TestWords.capacity(capacity), TestWords.capacity(median))
        .shownBy(outcome.get())
        .from(List.of(last.reading().entry(), startEntry(well)));
    return Optional.of(offered(finding, well, last.size(), neighbours.get()));
  }

  /** The unit in which the rate's number would be like its neighbours'. */
  private static Finding offered(Finding finding, Well well, Length drawdown, Neighbours neighbours) {
    Optional<Notation.Typed> typed = well.get(LevelReadings.PART).rate();
    Unit likeliest = null;
    double least = Neighbours.FAR - 1;
    if (typed.isPresent()) {
      double number = typed.get().quantity().in(typed.get().unit());
      for (Unit unit : Unit.values()) {
        boolean fits = unit.dimension() == typed.get().unit().dimension() && unit != Unit.CUBIC_FOOT_PER_MINUTE;
        if (!fits) continue;
        double away = neighbours.distance(capacity(FlowRate.of(number, unit), drawdown)).map(Math::abs).orElse(least);
        if (away >= least) continue;
        likeliest = unit;
        least = away;
      }
    }
    if (likeliest == null) {
      return finding.so(Phrase.of("Measure the rate and the level again.", "Mida otra vez el gasto y el nivel."));
    }
    FlowRate meant = FlowRate.of(typed.get().quantity().in(typed.get().unit()), likeliest);
    return finding
        .because(Phrase.of(
            "A unit may have been mistaken: {0} was typed; {1} is {2} and would give {3}.",
            "Quizá se equivocó la unidad: se escribió {0}; {1} son {2} y darían {3}.",
            typed.get().text(), TestWords.typed(typed.get().quantity(), typed.get().unit(), likeliest),
            new Figure(meant, Scale.FLOW), TestWords.capacity(capacity(meant, drawdown))))
        .so(Phrase.of(
            "Did you mean {0}? If so, correct the entry; if not, time a pail.",
            "¿Quiso decir {0}? Entonces corrija el registro; si no, mida con cubeta y reloj.",
            TestWords.typed(typed.get().quantity(), typed.get().unit(), likeliest)));
  }

  private static Quantity capacity(FlowRate rate, Length drawdown) {
    return Scale.SPECIFIC_CAPACITY.dimension().of(rate.cubicMetresPerSecond() / drawdown.coherent());
  }

  private static Optional<Finding> inScreen(Well well, Run run) {
    Optional<Length> top = well.get(CasingString.PART).screenTop();
    Optional<Run.Drawdown> deepest = run.pumping().stream().max((a, b) -> a.size().compareTo(b.size()));
    if (top.isEmpty() || deepest.isEmpty()) return Optional.empty();
    Length depth = deepest.get().reading().depth().orElseThrow();
    if (!depth.isMoreThan(top.get())) return Optional.empty();
    return Optional.of(Finding.of(
            "test.level-in-screen", Weight.LOOK, TestStage.NAME,
            Phrase.of(
                "The pumping level, {0}, is below the top of the screen, {1}.",
                "El nivel dinámico, {0}, está por debajo del tope de la rejilla, {1}.", TestWords.depth(depth),
                TestWords.depth(top.get())))
        .comparing(TestWords.depth(depth), TestWords.depth(top.get()))
        .because(Phrase.of(
            "The rate is more than the well can give: air enters the screen, sand and encrustation follow.",
            "El gasto es más de lo que el pozo da: entra aire a la rejilla, y siguen arena e incrustación."))
        .so(Phrase.of("Lower the rate and let the level rise.", "Baje el gasto y deje subir el nivel."))
        .from(List.of(deepest.get().reading().entry())));
  }

  private static Optional<Finding> longTerm(Well well, RunReckoned reckoned) {
    Optional<Length> top = well.get(CasingString.PART).screenTop();
    Optional<Outcome> outcome = reckoned.longTerm();
    if (top.isEmpty() || outcome.isEmpty()) return Optional.empty();
    Length drawdown = (Length) outcome.get().quantity(LongTermDrawdown.LATER.name());
    Length level = reckoned.run().rest().orElseThrow().depth().orElseThrow().plus(drawdown);
    if (!level.isMoreThan(top.get())) return Optional.empty();
    return Optional.of(Finding.of(
            "test.rate-will-not-last", Weight.LOOK, TestStage.NAME,
            Phrase.of(
                "At this rate the level stands at {0} after 100 days, below the top of the screen, {1}.",
                "A este gasto el nivel queda a {0} después de 100 días, por debajo del tope de la rejilla, {1}.",
                TestWords.depth(level), TestWords.depth(top.get())))
        .comparing(TestWords.depth(level), TestWords.depth(top.get()))
        .so(Phrase.of("Certify a lower rate, or plan storage.", "Certifique un gasto menor, o prevea almacenamiento."))
        .shownBy(outcome.get())
        .from(List.of(reckoned.run().last().orElseThrow().reading().entry())));
  }

  private static String startEntry(Well well) {
    List<String> starts = well.get(LevelReadings.PART).starts();
    return starts.get(starts.size() - 1);
  }
}
