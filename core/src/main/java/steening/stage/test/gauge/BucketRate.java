package steening.stage.test.gauge;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Rate by vessel and watch.
 *
 * <p>Q = n v / Σt: n fills of a vessel v in the times t; the times are added before dividing, not the rates. Error e
 * = n
 * w / Σt with w half a second of the hand on the watch (common practice, no source). Source: Oklahoma State University
 * Extension BAE-1502 (three fills, better five; seen); an Army training text asks for two minutes a fill (seen). Range:
 * fills of five seconds and more. Accuracy: the watch, and how well the vessel's mark is known.
 */
public final class BucketRate {
  public static final QuantityField VESSEL = QuantityField.of(
          "vessel", Scale.LIQUID, Phrase.of("volume of the vessel", "volumen del recipiente"), "5 gal", "20 L")
      .between("0.1 gal", "20000 gal").usually("1 gal", "600 gal");
  public static final SeriesField TIMES = SeriesField.of(
      QuantityField.of("fill-times", Scale.SECONDS, Phrase.of("times of the fills", "tiempos de llenado"), "30.1 s",
          "30.1 s")
          .between("0.1 s", "86400 s"),
      1, "29.8; 30.4; 30.1 s", "29.8; 30.4; 30.1 s");

  static final Answer SPREAD = new Answer(
      "spread", Phrase.of("longest less shortest fill, of the mean",
          "llenado más largo menos el más corto, del promedio"), Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "bucket-rate",
      "test",
      Phrase.of("Rate by vessel and watch", "Aforo con recipiente y reloj"),
      List.of(VESSEL, TIMES),
      List.of(RateBand.RATE, RateBand.LEAST, RateBand.MOST, SPREAD),
      Source.seen(
          "Oklahoma State University Extension BAE-1502. Half a second of the hand: common practice, no source.",
          "Oklahoma State University Extension BAE-1502. Medio segundo de la mano: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "Three fills at least, better five; a vessel that takes two minutes to fill is best.",
              "Tres llenados por lo menos, mejor cinco; lo mejor es un recipiente que tarde dos minutos."),
          Phrase.of(
              "Not for fills under {0}. The error is the watch's; know the vessel's own mark as well.",
              "No para llenados de menos de {0}. El error es el del reloj; conozca además la marca del recipiente.",
              seconds(5))),
      BucketRate::reckon);

  private static final double SHORTEST = 5;
  private static final double HAND = 0.5;
  private static final int FEW = 3;

  /** Fills further apart than this are no longer one rate (common practice, no source). */
  private static final double APART = 0.1;

  private BucketRate() {}

  private static Outcome reckon(Inputs inputs) {
    List<Quantity> times = inputs.value(TIMES);
    double sum = 0;
    double longest = 0;
    double shortest = Double.MAX_VALUE;
    for (Quantity time : times) {
      sum += time.coherent();
      longest = Math.max(longest, time.coherent());
      shortest = Math.min(shortest, time.coherent());
    }
    if (shortest < SHORTEST) {
      throw new NotReckonable(
          "A fill of {0} is too short for a watch; take a vessel that fills in {1} at least.",
          "Un llenado de {0} es muy corto para un reloj; use un recipiente que tarde al menos {1}.",
          seconds(shortest), seconds(SHORTEST));
    }
    Term n = Inputs.count("n", Phrase.of("number of fills", "número de llenados"), times.size());
    Term all = time("Σt", Phrase.of("sum of the times", "suma de los tiempos"), sum);
    Term hand = time("w", Phrase.of("hand on the watch", "mano en el reloj"), HAND);
    Term rate = Coefficient.giving(Scale.FLOW, 1).of(Scale.LIQUID).of(Scale.SECONDS, -1).term()
        .times(n).times(inputs.given("v", VESSEL)).over(all);
    Outcome outcome = RateBand.around(rate, RateBand.error(share().times(n).times(hand).over(all)));
    if (times.size() < FEW) {
      outcome = outcome.remarking(Phrase.of(
          "{0} fills only; three at least show whether they agree.",
          "Solo {0} llenados; con tres por lo menos se ve si concuerdan.", Integer.toString(times.size())));
    }
    if (times.size() < 2) return outcome;
    Term spread = share()
        .times(time("t₂", Phrase.of("longest fill", "llenado más largo"), longest)
            .minus(time("t₁", Phrase.of("shortest fill", "llenado más corto"), shortest)))
        .times(n).over(all).named("Δ", SPREAD.label(), SPREAD.scale());
    outcome = outcome.with(SPREAD.name(), spread);
    if (spread.quantity().coherent() <= APART) return outcome;
    return outcome.remarking(Phrase.of(
        "The fills lie {0} apart: the rate is not steady, or one was timed wrongly. Fill again.",
        "Los llenados difieren {0}: el gasto no es estable, o uno se midió mal. Llene otra vez.",
        new Figure(spread.quantity(), Scale.SHARE)));
  }

  private static Term share() {
    return Coefficient.giving(Scale.SHARE, 1).term();
  }

  private static Term time(String symbol, Phrase label, double seconds) {
    return Term.given(symbol, label, Scale.SECONDS, new Measure(Dimension.TIME, seconds));
  }

  private static Figure seconds(double seconds) {
    return new Figure(new Measure(Dimension.TIME, seconds), Scale.SECONDS);
  }
}
