package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.Fill;
import steening.well.Plan;

/**
 * How high the pack stands above the screen. Three to five feet is common practice, no source; published rules range
 * from at least 10 ft (TM 5-813-1) to at most 5 ft (UFGS 02521, contaminated sites), both seen: the plan says what
 * holds.
 */
final class HeightFindings {
  private static final Phrase SOURCES_DIFFER = Phrase.of(
      "Sources differ: 3 to 5 ft is common practice, TM 5-813-1 asks at least 10 ft, UFGS 02521 at most 5 ft. The plan"
          + " says what holds here.",
      "Las fuentes difieren: 0.9 a 1.5 m es práctica común, TM 5-813-1 pide al menos 3 m, UFGS 02521 a lo más 1.5 m."
          + " El plan dice qué vale aquí.");

  private HeightFindings() {}

  /**
   * What is wrong with the height as last sounded.
   *
   * @param sealed whether something was put on the pack already
   */
  static Optional<Finding> finding(Pouring pouring, boolean sealed) {
    Optional<Fill.Tag> tag = pouring.pack().lastTag().filter(t -> t.bags() > 0);
    if (tag.isEmpty() || pouring.screenTop().isEmpty()) return Optional.empty();
    Length above = pouring.screenTop().get().minus(tag.get().depth());
    boolean finished = sealed || tag.get().bags() == pouring.pack().bags() && isAllIn(pouring);
    if (above.isLessThan(Length.ZERO)) {
      return finished ? Optional.of(shortOfScreen(pouring, tag.get(), above)) : Optional.empty();
    }
    Length least = pouring.plan().packAboveLeast();
    if (above.isLessThan(least)) return finished ? Optional.of(low(tag.get(), above, least)) : Optional.empty();
    Length most = pouring.plan().packAboveMost();
    return above.isMoreThan(most.plus(grace(pouring))) ? Optional.of(high(tag.get(), above, most)) : Optional.empty();
  }

  static boolean isAllIn(Pouring pouring) {
    return PackPlan.volume(pouring.plan())
        .filter(o -> pouring.pack().volume().cubicMetres() >= o.quantity("volume").coherent()).isPresent();
  }

  /** Bags are whole: a height that only the plan's own top implies may be passed by one bag. */
  private static Length grace(Pouring pouring) {
    if (pouring.plan().length(Plan.PACK_ABOVE_MOST).isPresent()) return Length.ZERO;
    return pouring.lastBagHeight().orElse(Length.ZERO);
  }

  private static Finding shortOfScreen(Pouring pouring, Fill.Tag tag, Length above) {
    Figure found = new Figure(tag.depth(), Scale.DEPTH);
    Figure screen = new Figure(pouring.screenTop().orElseThrow(), Scale.DEPTH);
    return Finding.of("pack.short", Weight.STOP, PackStage.NAME, Phrase.of(
            "The pack stands at {0}, below the top of the screen at {1}: {2} of screen has no sand round it.",
            "El filtro está a {0}, más abajo que el tope de la rejilla a {1}: {2} de rejilla sin arena.",
            found, screen, new Figure(Length.ZERO.minus(above), Scale.DEPTH)))
        .comparing(found, screen)
        .because(
            Phrase.of("A washout, a loss, or bags still to pour.", "Una socavación, una pérdida, o sacos por verter."))
        .so(Phrase.of(
            "Add sand and sound again before anything is put on it.",
            "Agregue arena y sondee de nuevo antes de poner algo encima."))
        .from(List.of(tag.entry()));
  }

  private static Finding low(Fill.Tag tag, Length above, Length least) {
    return compared("pack.low", tag, above, least,
        Phrase.of(
            "The pack stands {0} above the screen; at least {1} is wanted. It settles in development.",
            "El filtro está {0} sobre la rejilla; se quiere al menos {1}. En el desarrollo se asienta."),
        Phrase.of("Top it up while it can be reached.", "Complételo mientras se pueda."));
  }

  private static Finding high(Fill.Tag tag, Length above, Length most) {
    return compared("pack.high", tag, above, most,
        Phrase.of(
            "The pack stands {0} above the screen; {1} is the most wanted.",
            "El filtro está {0} sobre la rejilla; lo más que se quiere es {1}."),
        Phrase.of(
            "See that it does not join two aquifers and leaves room for the seal your rules ask for.",
            "Vea que no una dos acuíferos y deje lugar para el sello que pidan sus normas."));
  }

  private static Finding compared(String code, Fill.Tag tag, Length above, Length bound, Phrase text, Phrase next) {
    Figure found = new Figure(above, Scale.DEPTH);
    Figure wanted = new Figure(bound, Scale.DEPTH);
    return Finding.of(code, Weight.LOOK, PackStage.NAME, text.about(found, wanted))
        .comparing(found, wanted).because(SOURCES_DIFFER).so(next).from(List.of(tag.entry()));
  }
}
