package steening.stage.development;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;

/** The criteria that the water itself must meet. */
final class WaterCriteria {
  /** UFGS 02521 (seen). */
  private static final Quantity CLEAR = Measure.of(5, Unit.NTU);

  private static final Phrase TURBIDITY = Phrase.of("turbidity", "turbiedad");
  private static final Phrase SAND = Phrase.of("sand, mean of five", "arena, media de cinco");
  private static final Phrase COURSE = Phrase.of("sand falls with time", "la arena baja con el tiempo");

  private WaterCriteria() {}

  static StopRule.Criterion sand(Development development) {
    Phrase source = Phrase.of(
        "EP 1110-1-27, mean of five (seen); 5 mg/L for a house, EPA 1975 (memory)",
        "EP 1110-1-27, media de cinco (visto); 5 mg/L para una casa, EPA 1975 (de memoria)");
    Figure limit = new Figure(SandReadings.LIMIT, Scale.CONCENTRATION);
    List<Development.Cycle> last = SandReadings.last(development, Optional.empty());
    if (last.size() < SandReadings.MANY) {
      Phrase missing = Phrase.of("{0} of {1} readings", "{0} de {1} lecturas", Integer.toString(last.size()),
          Integer.toString(SandReadings.MANY));
      return new StopRule.Criterion(SAND, limit, missing, StopRule.State.UNKNOWN, source);
    }
    Outcome mean = SandReadings.mean(last);
    boolean met = mean.quantity("mean").coherent() <= SandReadings.LIMIT.coherent();
    return new StopRule.Criterion(SAND, limit, mean.figure("mean"), StopRule.State.of(met), source);
  }

  static StopRule.Criterion decay(Development development) {
    Phrase limit = Phrase.of("to the limit, not to a floor over it", "hasta el límite, no a un piso mayor");
    Phrase source = Phrase.of("common practice, no source", "práctica común, sin fuente");
    Optional<Phrase> found = SandCourse.of(development).flatMap(SandCourse::decay)
        .map(o -> o.words().get(SandDecay.FOUND.name()));
    if (found.isEmpty()) {
      return new StopRule.Criterion(COURSE, limit,
          Phrase.of("needs three readings of one method", "faltan tres lecturas de un mismo método"),
          StopRule.State.UNKNOWN, source);
    }
    boolean open = found.get().equals(SandDecay.OPEN);
    boolean met = !found.get().equals(SandDecay.NOT_TIME);
    StopRule.State state = open ? StopRule.State.UNKNOWN : StopRule.State.of(met);
    return new StopRule.Criterion(COURSE, limit, found.get(), state, source);
  }

  static StopRule.Criterion turbidity(Development development) {
    Figure limit = new Figure(CLEAR, Scale.TURBIDITY);
    Phrase source = Phrase.of("UFGS 02521 (seen)", "UFGS 02521 (visto)");
    Optional<Quantity> last =
        development.cycles().stream().flatMap(c -> c.turbidity().stream()).reduce((a, b) -> b);
    if (last.isEmpty()) {
      return new StopRule.Criterion(TURBIDITY, limit, Phrase.of("not measured", "sin medir"), StopRule.State.UNKNOWN,
          source);
    }
    boolean met = last.get().coherent() <= CLEAR.coherent();
    return new StopRule.Criterion(TURBIDITY, limit, new Figure(last.get(), Scale.TURBIDITY), StopRule.State.of(met),
        source);
  }
}
