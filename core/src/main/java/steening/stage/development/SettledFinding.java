package steening.stage.development;

import java.util.List;
import java.util.Optional;
import steening.bore.Settling;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Plan;
import steening.well.Well;

/** A pack that went down while the well was developed: whether that is settling, and what it still covers. */
final class SettledFinding {
  private SettledFinding() {}

  static Optional<Finding> of(Well well) {
    return PackSettling.of(well).filter(PackSettling::isClear).map(s -> of(well, s));
  }

  private static Finding of(Well well, PackSettling now) {
    Optional<Length> above = well.get(CasingString.PART).screenTop().map(s -> s.minus(now.top()));
    boolean bare = above.filter(a -> a.isLessThan(Length.ZERO)).isPresent();
    boolean covered = above.filter(a -> !a.isLessThan(well.get(Plan.PART).packAboveLeast())).isPresent();
    Optional<Outcome> usual = now.usually(well);
    boolean asUsual = usual.filter(o ->
        now.fallen().coherent() <= o.quantity(Settling.FALLS_MOST.name()).coherent()).isPresent();
    Weight weight = bare ? Weight.STOP : covered && asUsual ? Weight.NOTE : Weight.LOOK;
    Finding finding = Finding.of(
            "development.pack-settled", weight, DevelopmentStage.NAME, text(now, bare, above.orElse(Length.ZERO)))
        .comparing(depth(now.top()), depth(now.before().depth()))
        .because(cause(asUsual, usual))
        .so(Phrase.of("Top up the pack and sound it again.", "Rellene el filtro y sondéelo de nuevo."))
        .from(List.of(now.before().entry(), now.after().entry()));
    Optional<Outcome> bags = now.toTopUp(well);
    if (bags.isEmpty()) return finding;
    return finding
        .so(Phrase.of(
            "Top up with {0} bags ({1}) and sound it again.", "Rellene con {0} sacos ({1}) y sondéelo de nuevo.",
            bags.get().figure("bags"), bags.get().figure("volume")))
        .shownBy(bags.get());
  }

  private static Phrase text(PackSettling now, boolean bare, Length above) {
    if (bare) {
      return Phrase.of(
          "The pack went down by {0}, from {1} to {2}: the top of the screen is bare.",
          "El filtro bajó {0}, de {1} a {2}: el tope de la rejilla quedó descubierto.",
          depth(now.fallen()), depth(now.before().depth()), depth(now.top()));
    }
    Phrase fell = Phrase.of(
        "The pack went down by {0} during development, from {1} to {2}.",
        "El filtro bajó {0} durante el desarrollo, de {1} a {2}.",
        depth(now.fallen()), depth(now.before().depth()), depth(now.top()));
    if (!above.isMoreThan(Length.ZERO)) return fell;
    return Phrase.of(
        "{0} It still stands {1} above the screen.", "{0} Aún está {1} sobre la rejilla.", fell, depth(above));
  }

  private static Phrase cause(boolean asUsual, Optional<Outcome> usual) {
    if (usual.isEmpty()) {
      return Phrase.of(
          "Pack settles and fills what was washed out; a bridge may have come down.",
          "El filtro se asienta y llena lo lavado; quizá se soltó un puente.");
    }
    return asUsual
        ? Phrase.of(
            "Pack settles by {0} to {1} (sources differ, from memory).",
            "El filtro se asienta {0} a {1} (las fuentes difieren, de memoria).",
            usual.get().figure(Settling.FALLS.name()), usual.get().figure(Settling.FALLS_MOST.name()))
        : Phrase.of(
            "Settling takes {0} to {1} (from memory): more than that filled what was washed out, or a bridge came"
                + " down.",
            "Al asentarse baja {0} a {1} (de memoria): lo demás llenó lo lavado, o se soltó un puente.",
            usual.get().figure(Settling.FALLS.name()), usual.get().figure(Settling.FALLS_MOST.name()));
  }

  private static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }
}
