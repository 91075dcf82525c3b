package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.bore.CarriedTop;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.Well;

/** What to expect of the chips and the grout, before it is poured, mixed or sounded. */
final class SealExpectations {
  private SealExpectations() {}

  static List<Expectation> of(Well well) {
    if (Grouted.isDone(well)) return List.of();
    return Sealing.of(well).map(s -> of(s, well.get(CasingString.PART))).orElse(List.of());
  }

  private static List<Expectation> of(Sealing sealing, CasingString string) {
    List<Expectation> expectations = new ArrayList<>();
    if (!sealing.grout().isBegun()) {
      if (sealing.chips().bagsSinceTag() > 0) {
        sealing.chipsTop().ifPresent(o -> expectations.add(tape(
            Phrase.of(
                "tape on the chips after {0}", "sonda sobre los pellets tras {0}", Bagged.said(sealing.chips().bags())),
            o, readFromCasing(sealing.chips(), string))));
      }
      sealing.planned(Bagged.NO_OVERAGE).ifPresent(o -> {
        expectations.addAll(beforeMixing(o));
        ReturnBags.of(sealing, o).ifPresent(expectations::add);
      });
      GroutForecast.left(sealing).ifPresent(o -> expectations.add(left(o)));
      return expectations;
    }
    if (sealing.grout().bagsSinceTag() > 0) {
      Standing.expected(sealing).ifPresent(o -> expectations.add(pumped(sealing, string, o)));
    }
    GroutForecast.left(sealing).ifPresent(o -> expectations.add(left(o)));
    return expectations;
  }

  private static Expectation left(Outcome left) {
    Phrase what = Phrase.of(
        "bags of grout still needed: {0} in the mean, nine times in ten no more than",
        "sacos de lechada que faltan: {0} en promedio, nueve de diez veces no más de",
        Bagged.about(left.quantity(BagsLeft.MEAN.name())));
    return new Expectation(what, left.figure(BagsLeft.WHOLE.name()), Optional.empty(), left);
  }

  private static List<Expectation> beforeMixing(Outcome planned) {
    return List.of(
        new Expectation(Phrase.of("bags of grout, as drilled", "sacos de lechada, según lo perforado"),
            planned.figure("bags"), Optional.empty(), planned),
        new Expectation(
            Phrase.of("water for them", "agua para ellos"), planned.figure("water"), Optional.empty(), planned));
  }

  private static Expectation pumped(Sealing sealing, CasingString string, Outcome outcome) {
    Length top = (Length) outcome.quantity(GroutTop.TOP.name());
    if (!top.isMoreThan(sealing.top())) {
      return new Expectation(
          Phrase.of("grout back at the surface by now; its top", "lechada ya de regreso en la superficie; su tope"),
          new Figure(sealing.top(), Scale.DEPTH), Optional.empty(), outcome);
    }
    Phrase what = Phrase.of(
        "tape on the grout after {0}", "sonda sobre la lechada tras {0}", Bagged.said(sealing.grout().bags()));
    return tape(what, outcome, readFromCasing(sealing.grout(), string));
  }

  /** As it will be read: from the top of casing where the last reading was. */
  private static Expectation tape(Phrase what, Outcome outcome, Optional<Length> stickUp) {
    Length top = (Length) outcome.quantity(GroutTop.TOP.name());
    Optional<Figure> band = Optional.of(CarriedTop.BAND.name()).filter(outcome.answers()::containsKey)
        .map(outcome::figure);
    return stickUp
        .map(up -> new Expectation(
            Phrase.of("{0}, from the top of casing", "{0}, desde la boca del ademe", what),
            new Figure(top.plus(up), Scale.DEPTH), band, outcome))
        .orElseGet(() -> new Expectation(what, new Figure(top, Scale.DEPTH), band, outcome));
  }

  private static Optional<Length> readFromCasing(Fill fill, CasingString string) {
    return fill.lastTag().filter(t -> t.from() == DepthFrom.TOP_OF_CASING).flatMap(t -> string.stickUp());
  }
}
