package steening.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Term;

/**
 * A sieve analysis, the finest sieve first. Between two sieves the curve is a straight line of percent finer over the
 * logarithm of the size; beyond the end sieves there is none.
 *
 * <p>D = d₁ (d₂ / d₁)^((p − p₁) / (p₂ − p₁)). Source: the usual semi-logarithmic plot of a sieve analysis.
 */
public record Sieves(List<Sieve> all) {
  public static final SeriesField OPENINGS = SeriesField.of(
      QuantityField.of(
              "openings", Scale.GRAIN, Phrase.of("sieve openings", "aberturas de los tamices"), "0.425 mm", "0.425 mm")
          .between("0.001 mm", "300 mm").usually("0.02 mm", "100 mm"),
      2, "0.075 0.15 0.25 0.425 0.85 mm", "0.075 0.15 0.25 0.425 0.85 mm");
  public static final SeriesField FINER = SeriesField.of(
      QuantityField.of(
              "finer", Scale.SHARE, Phrase.of("percent finer, by weight", "porcentaje que pasa, en peso"), "45 %",
              "45 %")
          .between("0 %", "100 %"),
      2, "4 14 45 80 98 %", "4 14 45 80 98 %").optional();

  /** One sieve: its opening, and the share of the sample that passes it, as the term it was given or reckoned as. */
  public record Sieve(Length opening, Term passing) {
    public Quantity finer() {
      return passing.quantity();
    }
  }

  public Sieves {
    all = List.copyOf(all);
  }

  /**
   * From percents finer, or from weights; where both are given they must agree.
   *
   * @throws NotReckonable where neither is given, or they do not belong together
   */
  public static Sieves of(Inputs inputs) {
    if (inputs.find(OPENINGS).isEmpty()) {
      throw new NotReckonable("Give the openings of the sieves.", "Dé las aberturas de los tamices.");
    }
    Optional<Sieves> typed = inputs.find(FINER).map(finer -> of(inputs.value(OPENINGS), finer));
    Optional<SieveWeights> weights = SieveWeights.of(inputs);
    if (weights.isPresent()) return new Sieves(weights.get().agreeingWith(typed).sieves());
    return typed.orElseThrow(() -> new NotReckonable(
        "Give what passes each sieve in percent, or the weight that each sieve and the pan retained.",
        "Dé el porcentaje que pasa cada tamiz, o el peso que retuvo cada tamiz y el fondo."));
  }

  /**
   * Sieves in any order.
   *
   * @throws NotReckonable where the two series do not belong together
   */
  public static Sieves of(List<Quantity> openings, List<Quantity> finer) {
    if (openings.size() != finer.size()) {
      throw new NotReckonable(
          "{0} sieve openings, but {1} percents finer: each sieve needs both.",
          "{0} aberturas, pero {1} porcentajes que pasan: cada tamiz necesita los dos.",
          Integer.toString(openings.size()), Integer.toString(finer.size()));
    }
    Map<Length, Quantity> sorted = new TreeMap<>();
    for (int i = 0; i < openings.size(); i++) {
      if (sorted.put((Length) openings.get(i), finer.get(i)) != null) throw twice(openings.get(i));
    }
    List<Sieve> sieves = new ArrayList<>();
    for (Map.Entry<Length, Quantity> sieve : sorted.entrySet()) {
      int number = sieves.size() + 1;
      Term passing = Term.given("p" + Term.index(number), finerThan(number), Scale.SHARE, sieve.getValue());
      sieves.add(new Sieve(sieve.getKey(), passing));
    }
    for (int i = 1; i < sieves.size(); i++) inOrder(sieves.get(i - 1), sieves.get(i));
    return new Sieves(sieves);
  }

  static NotReckonable twice(Quantity opening) {
    return new NotReckonable(
        "The sieve of {0} stands there twice.", "El tamiz de {0} aparece dos veces.", new Figure(opening, Scale.GRAIN));
  }

  private static void inOrder(Sieve small, Sieve large) {
    if (small.finer().coherent() <= large.finer().coherent()) return;
    throw new NotReckonable(
        "{0} passes the sieve of {1}, but only {2} the wider one of {3}. "
            + "Percent finer is needed, not percent retained.",
        "Por el tamiz de {1} pasa {0}, pero por el más abierto de {3} solo {2}. "
            + "Hace falta el porcentaje que pasa, no el retenido.",
        new Figure(small.finer(), Scale.SHARE), new Figure(small.opening(), Scale.GRAIN),
        new Figure(large.finer(), Scale.SHARE), new Figure(large.opening(), Scale.GRAIN));
  }

  /** The size that so many percent are finer than, as a term; nothing beyond the end sieves. */
  Optional<Term> size(int percent, Phrase label) {
    return size(Term.number(percent)).map(size -> size.named("D" + Term.index(percent), label, Scale.GRAIN));
  }

  /** The same for percents that a formula gives; it has no name yet. */
  Optional<Term> size(Term percent) {
    double wanted = percent.in(UnitSystem.US);
    for (int i = 1; i < all.size(); i++) {
      double below = percent(all.get(i - 1));
      double above = percent(all.get(i));
      if (below <= wanted && wanted <= above && below < above) return Optional.of(between(i - 1, i, percent));
    }
    return Optional.empty();
  }

  private Term between(int lower, int upper, Term percent) {
    Term low = opening(lower);
    Term share = percent.minus(finer(lower)).over(finer(upper).minus(finer(lower)));
    return low.times(opening(upper).over(low).power(share));
  }

  /** What passes an opening, in percent, without a name yet; nothing beyond the end sieves. */
  Optional<Term> passing(Term opening) {
    for (int i = 1; i < all.size(); i++) {
      Length wanted = (Length) opening.quantity();
      if (wanted.isLessThan(all.get(i - 1).opening()) || wanted.isMoreThan(all.get(i).opening())) continue;
      Term low = opening(i - 1);
      Term share = opening.over(low).log10().over(opening(i).over(low).log10());
      return Optional.of(finer(i - 1).plus(finer(i).minus(finer(i - 1)).times(share)));
    }
    return Optional.empty();
  }

  /** Why there are no such sizes, a sentence for each end of the curve. */
  List<Phrase> missing(List<Integer> percents) {
    Sieve finest = all.get(0);
    Sieve widest = all.get(all.size() - 1);
    StringBuilder below = new StringBuilder();
    StringBuilder above = new StringBuilder();
    for (int percent : percents) {
      StringBuilder names = percent(finest) > percent ? below : above;
      names.append(names.isEmpty() ? "" : ", ").append("D").append(percent);
    }
    List<Phrase> sentences = new ArrayList<>();
    if (!below.isEmpty()) {
      sentences.add(at(finest, Phrase.of(
          "No {0}: {1} still passes the finest sieve, {2}, and nothing is guessed beyond it.",
          "Sin {0}: por el tamiz más fino, {2}, aún pasa {1}, y más allá no se supone nada.", below.toString())));
    }
    if (!above.isEmpty()) {
      sentences.add(at(widest, Phrase.of(
          "No {0}: only {1} passes the widest sieve, {2}, and nothing is guessed beyond it.",
          "Sin {0}: por el tamiz más abierto, {2}, solo pasa {1}, y más allá no se supone nada.", above.toString())));
    }
    return sentences;
  }

  private static Phrase at(Sieve end, Phrase sentence) {
    return sentence.about(
        sentence.arguments().get(0), new Figure(end.finer(), Scale.SHARE), new Figure(end.opening(), Scale.GRAIN));
  }

  private Term opening(int i) {
    Phrase label = Phrase.of(
        "opening of sieve {0}, from the finest", "abertura del tamiz {0}, desde el más fino", Integer.toString(i + 1));
    return Term.given("d" + Term.index(i + 1), label, Scale.GRAIN, all.get(i).opening());
  }

  private Term finer(int i) {
    return all.get(i).passing();
  }

  static Phrase finerThan(int number) {
    return Phrase.of("finer than sieve {0}", "pasa el tamiz {0}", Integer.toString(number));
  }

  private static double percent(Sieve sieve) {
    return sieve.finer().in(Scale.SHARE.us());
  }
}
