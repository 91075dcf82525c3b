package steening.stage.development;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.well.CasingString;
import steening.well.Levels;
import steening.well.Losses;
import steening.well.Well;

/** The criteria that pack, yield and the fluid pumped off must meet. */
final class WellCriteria {
  private static final Length SETTLED = Length.of(0.1, Unit.FOOT);
  private static final Quantity STEADY = Measure.of(5, Unit.PERCENT);
  /** Of the standing water: UFGS 02521 (seen). */
  private static final int TIMES = 3;

  private static final Phrase PRACTICE = Phrase.of("common practice, no source", "práctica común, sin fuente");
  private static final Phrase PACK = Phrase.of("pack went down, each cycle", "descenso del filtro por ciclo");
  private static final Phrase CAPACITY =
      Phrase.of("specific capacity, change in the last cycle", "caudal específico, cambio en el último ciclo");
  private static final Phrase FLUID =
      Phrase.of("pumped off, three times the standing water and the mud lost",
          "bombeado, tres veces el agua en reposo y el lodo perdido");

  private WellCriteria() {}

  /** A tape is good to 0.2 ft, so that only several cycles between two soundings can tell. */
  static StopRule.Criterion pack(Well well) {
    Figure limit = new Figure(SETTLED, Scale.DEPTH);
    Optional<PackSettling> settling = PackSettling.of(well);
    long cycles = settling.map(s -> well.get(Development.PART).cycles().stream()
        .filter(c -> c.at().isAfter(s.before().at()) && !c.at().isAfter(s.after().at())).count()).orElse(0L);
    if (cycles == 0) {
      Phrase missing = Phrase.of("sound the pack after the next cycles", "sondee el filtro tras los próximos ciclos");
      return new StopRule.Criterion(PACK, limit, missing, StopRule.State.UNKNOWN, PRACTICE);
    }
    Length each = Length.ofMetres(settling.get().fallen().max(Length.ZERO).coherent() / cycles);
    return new StopRule.Criterion(PACK, limit, new Figure(each, Scale.DEPTH),
        StopRule.State.of(each.isLessThan(SETTLED)), PRACTICE);
  }

  static StopRule.Criterion capacity(Well well) {
    Figure limit = new Figure(STEADY, Scale.SHARE);
    List<CycleCapacity> all = CycleCapacity.all(well);
    double before = all.size() < 2 ? 0 : all.get(all.size() - 2).size().coherent();
    if (!(before > 0)) {
      boolean rested = well.get(Levels.PART).atRest().isPresent();
      Phrase missing = rested
          ? Phrase.of("needs rate and level in two cycles", "faltan gasto y nivel en dos ciclos")
          : Phrase.of("needs the static level", "falta el nivel estático");
      return new StopRule.Criterion(CAPACITY, limit, missing, StopRule.State.UNKNOWN, PRACTICE);
    }
    Quantity change =
        new Measure(Dimension.NUMBER, Math.abs(all.get(all.size() - 1).size().coherent() / before - 1));
    boolean met = change.coherent() <= STEADY.coherent();
    return new StopRule.Criterion(CAPACITY, limit, new Figure(change, Scale.SHARE), StopRule.State.of(met), PRACTICE);
  }

  static StopRule.Criterion fluid(Well well) {
    Phrase source = Phrase.of("UFGS 02521 (seen)", "UFGS 02521 (visto)");
    Figure pumped = new Figure(pumped(well.get(Development.PART)), Scale.LIQUID);
    Optional<Figure> least = standing(well).map(v -> new Figure(v.times(TIMES), Scale.LIQUID));
    if (least.isEmpty()) {
      return new StopRule.Criterion(FLUID, Phrase.same("–"),
          Phrase.of("needs the static level and the casing", "faltan el nivel estático y el ademe"),
          StopRule.State.UNKNOWN, source);
    }
    boolean tooLittle = pumped.quantity().coherent() < least.get().quantity().coherent();
    if (!tooLittle && !well.get(Losses.PART).zones().isEmpty()) {
      return new StopRule.Criterion(FLUID, least.get(),
          Phrase.of("{0}; mud was lost, how much is not known", "{0}; se perdió lodo, no se sabe cuánto", pumped),
          StopRule.State.UNKNOWN, source);
    }
    boolean rated = well.get(Development.PART).cycles().stream().allMatch(c -> c.rate().isPresent());
    if (tooLittle && !rated) {
      return new StopRule.Criterion(FLUID, least.get(),
          Phrase.of("{0}; some cycles have no rate", "{0}; hay ciclos sin gasto", pumped), StopRule.State.UNKNOWN,
          source);
    }
    return new StopRule.Criterion(FLUID, least.get(), pumped, StopRule.State.of(!tooLittle), source);
  }

  /** By the cycles whose rate is known. */
  private static Volume pumped(Development development) {
    double cubicMetres = 0;
    for (Development.Cycle cycle : development.cycles()) {
      if (cycle.rate().isEmpty() || cycle.minutes().isEmpty()) continue;
      cubicMetres += cycle.rate().get().coherent() * cycle.minutes().get().coherent();
    }
    return new Volume(cubicMetres);
  }

  /** In the casing, from the static level to the bottom of the string. */
  private static Optional<Volume> standing(Well well) {
    CasingString string = well.get(CasingString.PART);
    Optional<Levels.Level> rest = well.get(Levels.PART).atRest();
    if (rest.isEmpty() || string.bottom().isEmpty() || string.inside().isEmpty()) return Optional.empty();
    Length column = string.bottom().get().minus(rest.get().depth().max(Length.ZERO));
    if (!column.isMoreThan(Length.ZERO)) return Optional.empty();
    double inside = string.inside().get().coherent();
    return Optional.of(new Volume(Annulus.QUARTER_PI * inside * inside * column.coherent()));
  }
}
