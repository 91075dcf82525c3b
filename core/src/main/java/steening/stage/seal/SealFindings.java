package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.Fill;
import steening.well.Losses;
import steening.well.PumpingTest;
import steening.well.Sounding;
import steening.well.Well;

/** Where the seal is not as expected. */
final class SealFindings {
  private SealFindings() {}

  static List<Finding> of(Well well) {
    Fill chips = well.get(Fill.CHIPS);
    Fill grout = well.get(Fill.GROUT);
    List<Finding> findings = new ArrayList<>();
    chips.aside().forEach(s -> findings.add(adrift(s)));
    grout.aside().forEach(s -> findings.add(adrift(s)));
    unsounded(well).ifPresent(findings::add);
    CureFindings.of(well).ifPresent(findings::add);
    FlowingFindings.of(well).ifPresent(findings::add);
    aboveGround(chips).ifPresent(findings::add);
    aboveGround(grout).ifPresent(findings::add);
    Sealing.of(well).ifPresent(s -> {
      ChipsFindings.of(s).ifPresent(findings::add);
      findings.addAll(ChipsTiming.of(s));
      PlacingFindings.of(s, well.get(Losses.PART)).ifPresent(findings::add);
      if (!Grouted.isDone(well)) {
        findings.addAll(Standing.ofTremie(s));
        Stopped.of(s).ifPresent(findings::add);
      }
      findings.addAll(TruckFindings.of(well, s));
    });
    Grouting grouting = well.get(Grouting.PART);
    findings.addAll(MixFindings.of(grouting));
    ReturnFindings.of(well).ifPresent(findings::add);
    boolean mixed = grouting.recipe().isPresent() || grout.isBegun();
    if (mixed && !hasSet(well)) {
      CasingLoad.of(well).ifPresent(l -> findings.addAll(CasingLoadFindings.of(l, grout.isBegun())));
      Sealing.of(well).ifPresent(s -> findings.addAll(WrongGrout.of(well, s)));
    }
    return findings;
  }

  /** Somebody came back the day after, or went on to the next stage; before that the grout may still be liquid. */
  private static boolean hasSet(Well well) {
    boolean nextDay = well.get(Grouting.PART).looks().stream().anyMatch(Grouting.Look::nextDay);
    return nextDay || well.get(PumpingTest.PART).started().isPresent();
  }

  /** Something was put on a pack that nobody sounded. */
  private static Optional<Finding> unsounded(Well well) {
    Fill pack = well.get(Fill.PACK);
    List<Fill.Pour> on = new ArrayList<>(well.get(Fill.CHIPS).pours());
    on.addAll(well.get(Fill.GROUT).pours());
    if (on.isEmpty() || pack.top().isPresent() && pack.bagsSinceTag() == 0) return Optional.empty();
    return Optional.of(Finding.of("seal.pack-not-sounded", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The seal was begun before the top of the pack was sounded.",
            "Se empezó el sello sin sondear el tope del filtro."))
        .because(Phrase.of(
            "A bridge or a short pack under it would let grout into the screen.",
            "Un puente o un filtro corto dejaría pasar lechada a la rejilla."))
        .so(Phrase.of(
            "Enter the tape reading if there is one; if not, stop and sound while it can be reached.",
            "Registre la lectura si la hay; si no, pare y sondee mientras se pueda."))
        .from(List.of(on.get(0).entry())));
  }

  private static Optional<Finding> aboveGround(Fill fill) {
    Optional<Fill.Tag> tag = fill.lastTag().filter(t -> t.depth().isLessThan(Length.ZERO.minus(Grouted.READ_TO)));
    return tag.map(t -> Finding.of("seal.above-ground", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The reading puts the top {0} above the ground.", "La lectura pone el tope {0} por encima del terreno.",
            new Figure(Length.ZERO.minus(t.depth()), Scale.DEPTH)))
        .so(Phrase.of(
            "Read it again; check whether it was from the ground or from the top of casing.",
            "Léala de nuevo; vea si fue desde el terreno o desde la boca del ademe."))
        .from(List.of(t.entry())));
  }

  private static Finding adrift(Sounding sounding) {
    return Finding.of("seal.datum-unknown", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The tape read {0} from the top of casing, but how far that stood above the ground was not known then.",
            "La sonda leyó {0} desde la boca del ademe, pero no se sabía a qué altura estaba sobre el terreno.",
            new Figure(sounding.reading(), Scale.DEPTH)))
        .so(Phrase.of(
            "Enter when the string was set, with its stick-up, before this reading; or give the reading from the"
                + " ground.",
            "Registre antes de esta lectura la colocación de la columna con su altura sobre el terreno, o dé la"
                + " lectura desde el terreno."))
        .from(List.of(sounding.entry()));
  }
}
