package steening.stage.development;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Whether the sand falls away with time: its half-life early and late, and the floor it falls to.
 *
 * <p>Halving from reading i to k: h = (t_k − t_i) log 2 / log(c_i / c_k), for the first and the second half of the
 * course; the curve of {@link SandCurve} for half-life and floor with their standard errors. Source: exponential decay
 * to a floor, least squares; that sand which does not fall to the limit is a fault of slot, pack or rate is common
 * practice, no source. Range: one method of work at one rate; sand grows with about the square of the rate. Accuracy:
 * see the standard errors; readings of one fall are not independent, so the true ones are larger.
 */
public final class SandDecay {
  static final QuantityField LIMIT = QuantityField.of(
          "limit", Scale.CONCENTRATION, Phrase.of("limit for the use", "límite para el uso"), "5 mg/L", "5 mg/L")
      .between("0 mg/L", "10000 mg/L").usually("0.5 mg/L", "100 mg/L").optional();

  static final Answer EARLY = new Answer(
      "half-life-early", Phrase.of("half-life, first half", "vida media, primera mitad"), Scale.MINUTES);
  static final Answer LATE = new Answer(
      "half-life-late", Phrase.of("half-life, second half", "vida media, segunda mitad"), Scale.MINUTES);
  static final Answer HALF_LIFE = new Answer(
      "half-life", Phrase.of("half-life of all readings", "vida media de todas las lecturas"), Scale.MINUTES);
  static final Answer HALF_LIFE_ERROR = new Answer(
      "half-life-error", Phrase.of("standard error of the half-life", "error estándar de la vida media"), Scale.SHARE);
  static final Answer FLOOR = new Answer(
      "floor", Phrase.of("floor that it falls to", "piso al que baja"), Scale.CONCENTRATION);
  static final Answer FLOOR_ERROR = new Answer(
      "floor-error", Phrase.of("standard error of the floor", "error estándar del piso"), Scale.CONCENTRATION);
  static final Answer TO_LIMIT = new Answer(
      "to-limit", Phrase.of("pumping yet to the limit", "bombeo que falta hasta el límite"), Scale.MINUTES);
  static final Answer FOUND = Answer.word("found", Phrase.of("found", "resultado"));

  static final Phrase DOWN = Phrase.of("the limit is reached", "el límite se alcanzó");
  static final Phrase TIME = Phrase.of("a matter of time", "es cuestión de tiempo");
  static final Phrase NOT_TIME = Phrase.of("not a matter of time", "no es cuestión de tiempo");
  static final Phrase OPEN = Phrase.of("these readings do not tell", "estas lecturas no lo dicen");

  public static final Reckoning RECKONING = new Reckoning(
      "sand-decay",
      DevelopmentStage.NAME,
      Phrase.of("Sand over pumped time", "Arena según el tiempo bombeado"),
      List.of(SandSeries.TIMES, SandSeries.CONTENTS, LIMIT),
      List.of(EARLY, LATE, HALF_LIFE, HALF_LIFE_ERROR, FLOOR, FLOOR_ERROR, TO_LIMIT, FOUND),
      Source.derived(
          "Decay to a floor by least squares. What it means for a well: common practice, no source.",
          "Descenso hasta un piso por mínimos cuadrados. Lo que significa para un pozo: práctica común, sin fuente."),
      List.of(
          Phrase.of("One method at one rate: sand grows with about the square of the rate.",
              "Un solo método y gasto: la arena crece como el cuadrado del gasto, más o menos."),
          Phrase.of(
              "Readings of one fall are not independent: the true errors are larger than those printed.",
              "Las lecturas de un mismo descenso no son independientes: el error real es mayor que el impreso."),
          Phrase.of("Without another limit, 5 mg/L for a house (from memory).",
              "Sin otro límite, 5 mg/L para una casa (de memoria).")),
      SandDecay::reckon);

  /** So many standard errors the floor must be away from the limit (common practice, no source). */
  private static final double SURE = 2;

  private SandDecay() {}

  private static Outcome reckon(Inputs inputs) {
    SandSeries series = SandSeries.in(inputs);
    double limit = inputs.find(LIMIT).orElse(SandReadings.LIMIT).in(Scale.CONCENTRATION.us());
    int last = series.size() - 1;
    Halving halving = new Halving(series);
    Outcome outcome = halving.answered(Outcome.empty());
    if (series.most() <= 0) return outcome.naming(FOUND.name(), DOWN);
    SandCurve curve = SandCurve.through(series);
    boolean down = series.content(last) <= limit;
    if (!curve.isFalling()) {
      boolean rises = series.content(last) >= series.content(0);
      return outcome.naming(FOUND.name(), down ? DOWN : rises || series.size() > 3 ? NOT_TIME : OPEN);
    }
    outcome = fitted(outcome, curve, series.size() == 3);
    if (down) return outcome.naming(FOUND.name(), DOWN);
    boolean told = curve.floorError() < Double.MAX_VALUE;
    double unsure = SURE * curve.floorError();
    if (told && curve.floor() - unsure > limit) return outcome.naming(FOUND.name(), NOT_TIME);
    if (!told || curve.floor() + unsure >= limit) {
      boolean stuck = curve.floor() > limit && halving.isLengthening();
      return outcome.naming(FOUND.name(), stuck ? NOT_TIME : OPEN);
    }
    return left(outcome, inputs, series).naming(FOUND.name(), TIME);
  }

  private static Outcome fitted(Outcome outcome, SandCurve curve, boolean exact) {
    boolean told = curve.halfLifeError() < Double.MAX_VALUE;
    Outcome more = outcome.with(FLOOR.name(), given("f", FLOOR, content(curve.floor())));
    if (told || exact) {
      more = more.with(HALF_LIFE.name(), given("h", HALF_LIFE, Measure.of(curve.halfLife(), Unit.MINUTE)));
    }
    if (!told) {
      return more.remarking(Phrase.of(
          "These readings give half-life and floor no error, so the floor alone decides nothing. Take more.",
          "Estas lecturas no dan error a la vida media ni al piso; el piso solo no decide nada. Tome más."));
    }
    return more
        .with(HALF_LIFE_ERROR.name(), given("εh", HALF_LIFE_ERROR, Measure.of(curve.halfLifeError(), Unit.ONE)))
        .with(FLOOR_ERROR.name(), given("εf", FLOOR_ERROR, content(curve.floorError())));
  }

  /** t = h log((c − f)/(c_L − f)) / log 2, from the last reading on. */
  private static Outcome left(Outcome outcome, Inputs inputs, SandSeries series) {
    int last = series.size() - 1;
    Term floor = outcome.term(FLOOR.name());
    if (!(series.content(last) > floor.quantity().in(Scale.CONCENTRATION.us()))) return outcome;
    Term now = Halving.content("cₙ", series.content().get(last));
    Term limit = inputs.given("cL", LIMIT, SandReadings.LIMIT);
    Term left = outcome.term(HALF_LIFE.name()).times(now.minus(floor).over(limit.minus(floor)).log10())
        .over(Term.number(2).log10());
    return outcome.with(TO_LIMIT.name(), left.named("tL", TO_LIMIT.label(), TO_LIMIT.scale()));
  }

  private static Term given(String symbol, Answer answer, Quantity quantity) {
    return Term.given(symbol, answer.label(), answer.scale(), quantity);
  }

  private static Quantity content(double milligrams) {
    return Measure.of(milligrams, Unit.MILLIGRAM_PER_LITRE);
  }
}
