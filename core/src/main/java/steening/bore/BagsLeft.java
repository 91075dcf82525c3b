package steening.bore;

import java.util.List;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * How many more bags a stretch takes, with how sure that is, by what the hole took so far.
 *
 * <p>M = R V′ / b is as likely too little as too much; the mean is M 10^(1.151293 f), and so many of a hundred wells
 * take between M / 10^(z √f) and M 10^(z √f), z = 0.7064, 1.3968, 1.8595 for 50, 80, 90: Student's t with eight degrees
 * of freedom and not the normal curve, since how uneven the ground is was itself guessed, from no more than a few
 * stretches (eight is a judgement; common practice, no source). V′ what the stretch holds by the bit, b volume of a
 * bag, R and f as {@link Overbreak} has them, 1.151293 = ln 10 / 2; bags that went in since the tape are taken off.
 * Source, range, accuracy: as there.
 */
public final class BagsLeft {
  public static final Answer RATIO =
      new Answer("ratio", Phrase.of("ratio to reckon with", "razón con que contar"), Scale.NUMBER);
  public static final Answer AS_DRILLED =
      new Answer("as-drilled", Phrase.of("bags as drilled", "sacos según lo perforado"), Scale.NUMBER);
  public static final Answer MEAN =
      new Answer("mean", Phrase.of("bags still needed, mean", "sacos que faltan, media"), Scale.NUMBER);
  public static final Answer MOST = new Answer(
      "most", Phrase.of("nine times in ten no more than", "nueve de diez veces no más de"), Scale.NUMBER);
  public static final Answer WHOLE = new Answer(
      "bags", Phrase.of("whole bags to have for that", "sacos enteros que tener para eso"), Scale.NUMBER);
  private static final List<Band> BANDS =
      List.of(new Band(50, 0.7063866, "₅"), new Band(80, 1.396815, "₈"), new Band(90, 1.859548, "₉"));

  public static final List<Answer> ANSWERS = List.of(
      RATIO, AS_DRILLED, MEAN, MOST, WHOLE,
      BANDS.get(0).low(), BANDS.get(0).high(), BANDS.get(1).low(), BANDS.get(1).high(),
      BANDS.get(2).low(), BANDS.get(2).high());

  /** As many of a hundred wells lie within. */
  private record Band(int share, double deviations, String index) {
    Answer low() {
      return new Answer(
          "low-" + share,
          Phrase.of("{0} of 100 wells take at least", "{0} de 100 pozos llevan al menos", "" + share), Scale.NUMBER);
    }

    Answer high() {
      return new Answer(
          "high-" + share,
          Phrase.of("{0} of 100 wells take at most", "{0} de 100 pozos llevan a lo más", "" + share), Scale.NUMBER);
    }
  }

  private BagsLeft() {}

  /**
   * The answers for a stretch.
   *
   * @param to where it is to end
   * @param from where the tape found the top
   * @param bag volume of one bag
   * @param since bags that went in since the tape, whole
   */
  public static Outcome of(Overbreak overbreak, Annulus annulus, Length to, Length from, Term bag, Term since) {
    Term left = annulus.volume(
        "V′", "′", Phrase.of("left to fill, as drilled", "por llenar, según lo perforado"), to, from);
    Term length = Term.given("H′", Phrase.of("stretch left", "tramo que falta"), Scale.DEPTH, from.minus(to));
    Term variance = overbreak.ahead(length);
    Term deviation = variance.squareRoot()
        .named("x", Phrase.of("its standard deviation, in powers of ten", "su desviación, en potencias de diez"),
            Scale.NUMBER);
    Term drilled = left.over(bag).named("k", AS_DRILLED.label(), Scale.NUMBER);
    Term ratio = overbreak.ratio();
    Term middle = drilled.times(ratio)
        .named("M", Phrase.of("as likely more as less", "tan probable más como menos"), Scale.NUMBER);
    Term mean = less(middle.times(tenToThe(variance, 1.151293)), since).named("E", MEAN.label(), Scale.NUMBER);
    Term most = less(middle.times(tenToThe(deviation, 1.396815)), since).named("Q", MOST.label(), Scale.NUMBER);
    Outcome outcome = Outcome.empty().with(RATIO.name(), ratio).with(AS_DRILLED.name(), drilled)
        .with(MEAN.name(), mean).with(MOST.name(), most)
        .with(WHOLE.name(), most.roundedUp().named("B", WHOLE.label(), Scale.NUMBER));
    for (Band band : BANDS) {
      Term factor = tenToThe(deviation, band.deviations());
      outcome = outcome
          .with(band.low().name(),
              less(middle.over(factor), since).named("e" + band.index(), band.low().label(), Scale.NUMBER))
          .with(band.high().name(),
              less(middle.times(factor), since).named("E" + band.index(), band.high().label(), Scale.NUMBER));
    }
    return outcome;
  }

  private static Term tenToThe(Term exponent, double times) {
    return Term.number(10).power(Term.number(times).times(exponent));
  }

  private static Term less(Term bags, Term since) {
    return since.quantity().coherent() == 0 ? bags : bags.minus(since).most(Term.number(0));
  }

  /** Mean and ninetieth percentile, said to a tenth and to a bag. */
  public static Phrase said(Outcome left) {
    return Phrase.of(
        "{0}; nine times in ten no more than {1}", "{0}; nueve de diez veces no más de {1}",
        Bagged.about(left.quantity(MEAN.name())), Bagged.said(left.quantity(WHOLE.name())));
  }

  /** The bands for 50, 80 and 90 of a hundred wells, said. */
  public static Phrase bands(Outcome left) {
    return Phrase.of(
        "50 of 100 wells: {0}–{1}; 80: {2}–{3}; 90: {4}–{5}", "50 de 100 pozos: {0}–{1}; 80: {2}–{3}; 90: {4}–{5}",
        BANDS.stream().flatMap(b -> List.of(b.low(), b.high()).stream())
            .map(a -> (Object) Bagged.about(left.quantity(a.name()))).toArray());
  }
}
