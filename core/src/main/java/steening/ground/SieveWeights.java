package steening.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * Percent finer from what each sieve and the pan hold.
 *
 * <p>pᵢ = (w₀ + w₁ + … + wᵢ₋₁) / W; W = w₀ + w₁ + … + wₙ; l = (M − W) / M. w₀ pan, w₁ finest sieve, W all that was
 * found again, M the sample before sieving, l what was lost.
 *
 * <p>Source: the usual arithmetic of a sieve analysis. A laboratory sieves again where more than 0.3 % is missing (ASTM
 * C136, memory). Percents are of what was found, so that what was lost is shared among the sieves.
 *
 * @param sieves the finest first
 * @param total W
 * @param loss l, where the sample was weighed before
 */
public record SieveWeights(List<Sieves.Sieve> sieves, Term total, Optional<Term> loss) {
  public static final SeriesField RETAINED = SeriesField.of(
          weight("retained", Phrase.of("weight each sieve retained", "peso retenido por tamiz"), "155 g"), 2,
          "50 155 175 90 10 g", "50 155 175 90 10 g")
      .optional();
  public static final QuantityField PAN = weight("pan", Phrase.of("weight in the pan", "peso en el fondo"), "20 g");
  public static final QuantityField SAMPLE =
      weight("sample-weight", Phrase.of("sample before sieving, dry", "muestra seca antes de tamizar"), "500 g");

  static final Answer TOTAL = new Answer(
      "total", Phrase.of("weight on the sieves and in the pan", "peso en los tamices y el fondo"), Scale.SAMPLE_WEIGHT);
  static final Answer LOSS =
      new Answer("loss", Phrase.of("lost while sieving", "perdido al tamizar"), Scale.SHARE);

  private static final double SAME_PERCENT = 1;
  private static final double LABORATORY_PERCENT = 0.3;

  /** None where nothing was weighed. */
  static Optional<SieveWeights> of(Inputs inputs) {
    Optional<List<Quantity>> retained = inputs.find(RETAINED);
    if (retained.isEmpty()) return Optional.empty();
    List<Quantity> openings = inputs.value(Sieves.OPENINGS);
    if (openings.size() != retained.get().size()) {
      throw new NotReckonable(
          "{0} sieve openings, but {1} weights: each sieve needs both; the pan has a field of its own.",
          "{0} aberturas, pero {1} pesos: cada tamiz necesita los dos; el fondo tiene su propio campo.",
          Integer.toString(openings.size()), Integer.toString(retained.get().size()));
    }
    if (inputs.find(PAN).isEmpty()) {
      throw new NotReckonable(
          "Weigh the pan too, or put 0 g if nothing passed the finest sieve.",
          "Pese también el fondo, o ponga 0 g si nada pasó el tamiz más fino.");
    }
    return Optional.of(weighed(inputs, openings, retained.get()));
  }

  private static SieveWeights weighed(Inputs inputs, List<Quantity> openings, List<Quantity> retained) {
    Map<Length, Quantity> sorted = new TreeMap<>();
    for (int i = 0; i < openings.size(); i++) {
      if (sorted.put((Length) openings.get(i), retained.get(i)) != null) throw Sieves.twice(openings.get(i));
    }
    List<Term> held = new ArrayList<>(List.of(inputs.given("w₀", PAN)));
    for (Quantity weight : sorted.values()) {
      String number = Integer.toString(held.size());
      held.add(Term.given("w" + Term.index(held.size()), Phrase.of(
          "retained by sieve {0}, from the finest", "retenido por el tamiz {0}, desde el más fino", number),
          Scale.SAMPLE_WEIGHT, weight));
    }
    Term total = Term.sum(held).named("W", TOTAL.label(), TOTAL.scale());
    if (total.quantity().coherent() <= 0) {
      throw new NotReckonable("The sieves and the pan hold nothing.", "Los tamices y el fondo están vacíos.");
    }
    List<Sieves.Sieve> sieves = new ArrayList<>();
    for (Length opening : sorted.keySet()) {
      int number = sieves.size() + 1;
      Term finer = percent().times(Term.sum(held.subList(0, number))).over(total)
          .named("p" + Term.index(number), Sieves.finerThan(number), Scale.SHARE);
      sieves.add(new Sieves.Sieve(opening, finer));
    }
    return new SieveWeights(List.copyOf(sieves), total, inputs.find(SAMPLE).map(m -> loss(inputs, total)));
  }

  private static Term loss(Inputs inputs, Term total) {
    Term sample = inputs.given("M", SAMPLE);
    return percent().times(sample.minus(total)).over(sample).named("l", LOSS.label(), LOSS.scale());
  }

  private static Term percent() {
    return Coefficient.giving(Scale.SHARE, 1).of(Scale.NUMBER).term();
  }

  /** Percents that were typed as well must be the same to a point. */
  SieveWeights agreeingWith(Optional<Sieves> typed) {
    for (int i = 0; typed.isPresent() && i < sieves.size(); i++) {
      Quantity said = typed.get().all().get(i).finer();
      Quantity weighed = sieves.get(i).finer();
      if (Math.abs(said.in(Unit.PERCENT) - weighed.in(Unit.PERCENT)) <= SAME_PERCENT) continue;
      throw new NotReckonable(
          "By the weights {0} passes the sieve of {1}, but {2} was typed: leave out one of the two.",
          "Según los pesos, por el tamiz de {1} pasa {0}, pero se escribió {2}: quite uno de los dos.",
          new Figure(weighed, Scale.SHARE), new Figure(sieves.get(i).opening(), Scale.GRAIN),
          new Figure(said, Scale.SHARE));
    }
    return this;
  }

  Outcome on(Outcome outcome) {
    Outcome with = outcome.with(TOTAL.name(), total);
    if (loss.isEmpty()) return with;
    with = with.with(LOSS.name(), loss.get());
    return Math.abs(loss.get().quantity().in(Unit.PERCENT)) <= LABORATORY_PERCENT ? with : with.remarking(Phrase.of(
        "Sample and sieves differ by more than 0.3 %: a laboratory would sieve again (ASTM C136, from memory).",
        "Muestra y tamices difieren más de 0.3 %: un laboratorio tamizaría de nuevo (ASTM C136, de memoria)."));
  }

  private static QuantityField weight(String name, Phrase label, String example) {
    return QuantityField.of(name, Scale.SAMPLE_WEIGHT, label, example, example)
        .between("0 g", "100 kg").usually("0 g", "5 kg").optional();
  }
}
