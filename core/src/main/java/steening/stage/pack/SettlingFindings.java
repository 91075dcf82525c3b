package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.Settling;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.well.Fill;

/** A pack that stands high enough now, and will not once it has settled. */
final class SettlingFindings {
  private SettlingFindings() {}

  /** Where the pack that was sounded last will stand; none where that is not known. */
  static Optional<Outcome> forecast(Pouring pouring) {
    return pouring.pack().lastTag().filter(t -> t.bags() > 0 && t.bags() == pouring.pack().bags())
        .filter(t -> pouring.bottom().isMoreThan(t.depth()))
        .map(t -> Settling.of(t.depth(), pouring.bottom(), pouring.screenTop()));
  }

  /** Spoken of while more can be poured: by the least settling it comes too low, or by the most the screen is bared. */
  static Optional<Finding> finding(Pouring pouring) {
    Optional<Outcome> forecast =
        forecast(pouring).filter(o -> o.answers().containsKey(Settling.ABOVE.name()));
    if (forecast.isEmpty() || !HeightFindings.isAllIn(pouring)) return Optional.empty();
    Length least = pouring.plan().packAboveLeast();
    boolean low = ((Length) forecast.get().quantity(Settling.ABOVE.name())).isLessThan(least);
    boolean bare = ((Length) forecast.get().quantity(Settling.ABOVE_LEAST.name())).isLessThan(Length.ZERO);
    if (!low && !bare) return Optional.empty();
    Fill.Tag tag = pouring.pack().lastTag().orElseThrow();
    Figure now = new Figure(pouring.screenTop().orElseThrow().minus(tag.depth()), Scale.DEPTH);
    Figure wanted = new Figure(least, Scale.DEPTH);
    return Optional.of(Finding.of("pack.settles-low", Weight.LOOK, PackStage.NAME, Phrase.of(
            "The pack stands {0} above the screen. Settling takes {1} to {2}: then {3} to {4} are left; {5} are"
                + " wanted.{6}",
            "El filtro está {0} sobre la rejilla. Al asentarse baja {1} a {2}: quedan {3} a {4}; se quieren {5}.{6}",
            now, forecast.get().figure(Settling.FALLS.name()), forecast.get().figure(Settling.FALLS_MOST.name()),
            left(forecast.get(), Settling.ABOVE_LEAST), left(forecast.get(), Settling.ABOVE), wanted,
            bare
                ? Phrase.of(" At worst the screen is bared.", " En el peor caso la rejilla queda descubierta.")
                : Phrase.same("")))
        .comparing(now, wanted)
        .because(Phrase.of(
            "Sources differ: 5 to 10 % of the height, 10 to 20 % of what was placed (from memory).",
            "Las fuentes difieren: 5 a 10 % de la altura, 10 a 20 % de lo vertido (de memoria)."))
        .so(next(pouring, tag, least, forecast.get()))
        .shownBy(forecast.get()).from(List.of(tag.entry())));
  }

  private static Figure left(Outcome forecast, Answer above) {
    return new Figure(((Length) forecast.quantity(above.name())).max(Length.ZERO), Scale.DEPTH);
  }

  private static Phrase next(Pouring pouring, Fill.Tag tag, Length least, Outcome forecast) {
    Length shortBy = least.minus((Length) forecast.quantity(Settling.ABOVE_LEAST.name()));
    return Outcome.ifReckonable(() -> Bagged.of(
            pouring.annulus(), tag.depth().minus(shortBy), tag.depth(), pouring.nextBag(), Bagged.NO_OVERAGE))
        .map(o -> Phrase.of(
            "To make up for the most of it: {0} more now; or develop before the seal and top up then.",
            "Para compensar lo máximo: {0} más ahora; o desarrolle antes del sello y complete entonces.",
            Bagged.said(o.quantity(Bagged.BAGS.name()))))
        .orElse(Phrase.of(
            "Develop before the seal, sound again and top up.",
            "Desarrolle antes del sello, sondee de nuevo y complete."));
  }
}
