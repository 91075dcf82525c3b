package steening.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
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
      2, "4 14 45 80 98 %", "4 14 45 80 98 %");


  /** One sieve: its opening, and the share of the sample that passes it. */
  public record Sieve(Length opening, Quantity finer) {}

  public Sieves {
    all = List.copyOf(all);
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
    List<Sieve> sieves = new ArrayList<>();
    for (int i = 0; i < openings.size(); i++) sieves.add(new Sieve((Length) openings.get(i), finer.get(i)));
    sieves.sort(Comparator.comparing(Sieve::opening));
    for (int i = 1; i < sieves.size(); i++) inOrder(sieves.get(i - 1), sieves.get(i));
    return new Sieves(sieves);
  }

  private static void inOrder(Sieve small, Sieve large) {
    Figure opening = new Figure(large.opening(), Scale.GRAIN);
    if (small.opening().equals(large.opening())) {
      throw new NotReckonable("The sieve of {0} stands there twice.", "El tamiz de {0} aparece dos veces.", opening);
    }
    if (small.finer().coherent() <= large.finer().coherent()) return;
    throw new NotReckonable(
        "{0} passes the sieve of {1}, but only {2} the wider one of {3}. "
            + "Percent finer is needed, not percent retained.",
        "Por el tamiz de {1} pasa {0}, pero por el más abierto de {3} solo {2}. "
            + "Hace falta el porcentaje que pasa, no el retenido.",
        new Figure(small.finer(), Scale.SHARE), new Figure(small.opening(), Scale.GRAIN),
        new Figure(large.finer(), Scale.SHARE), opening);
  }

  /** The size that so many percent are finer than, as a term; nothing beyond the end sieves. */
  Optional<Term> size(int percent, Phrase label) {
    for (int i = 1; i < all.size(); i++) {
      double below = percent(all.get(i - 1));
      double above = percent(all.get(i));
      if (below <= percent && percent <= above && below < above) return Optional.of(between(i - 1, i, percent, label));
    }
    return Optional.empty();
  }

  private Term between(int lower, int upper, int percent, Phrase label) {
    Term low = opening(lower);
    Term share = Term.number(percent).minus(finer(lower)).over(finer(upper).minus(finer(lower)));
    return low.times(opening(upper).over(low).power(share)).named("D" + Term.index(percent), label, Scale.GRAIN);
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
        "opening of sieve {0}, from the finest", "abertura del tamiz {0}, desde el más fino", name(i));
    return Term.given("d" + Term.index(i + 1), label, Scale.GRAIN, all.get(i).opening());
  }

  private Term finer(int i) {
    Phrase label = Phrase.of("finer than sieve {0}", "pasa el tamiz {0}", name(i));
    return Term.given("p" + Term.index(i + 1), label, Scale.SHARE, all.get(i).finer());
  }

  private static String name(int i) {
    return Integer.toString(i + 1);
  }

  private static double percent(Sieve sieve) {
    return sieve.finer().in(Scale.SHARE.us());
  }
}
