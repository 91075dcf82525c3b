package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.Fill;
import steening.well.Sounding;

/** Readings of the tape that cannot be right, or say nothing. */
final class TapeFindings {
  /** Common practice, no source: sand can bridge with every bag. */
  private static final int BAGS_BETWEEN = 3;

  /** Readings that say nothing of the pack. */
  static final List<String> IMPOSSIBLE = List.of("pack.above-ground", "pack.below-hole");

  private TapeFindings() {}

  /** A reading whose depth below ground nobody knows. */
  static Finding adrift(Sounding sounding) {
    return Finding.of("pack.datum-unknown", Weight.LOOK, PackStage.NAME, Phrase.of(
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

  /** Too many bags since the last reading. */
  static Optional<Finding> untagged(Fill pack) {
    int since = pack.bagsSinceTag();
    if (since <= BAGS_BETWEEN) return Optional.empty();
    List<String> entries = new ArrayList<>();
    pack.lastTag().ifPresent(t -> entries.add(t.entry()));
    entries.add(pack.pours().get(pack.pours().size() - 1).entry());
    return Optional.of(Finding.of("pack.untagged", Weight.LOOK, PackStage.NAME, Phrase.of(
            "{0} went in since the tape was last read; a bridge shows only on the tape.",
            "Se vertieron {0} desde la última lectura; un puente solo se nota con la sonda.",
            Bagged.said(since)))
        .so(Phrase.of("Sound the pack before the next bag.", "Sondee el filtro antes del próximo saco."))
        .from(entries));
  }

  /** What is odd about the last reading by itself, or beside the one before. */
  static Optional<Finding> odd(Pouring pouring) {
    Optional<Fill.Tag> last = pouring.pack().lastTag();
    if (last.isEmpty()) return Optional.empty();
    Fill.Tag tag = last.get();
    if (tag.depth().isLessThan(Length.ZERO)) return Optional.of(aboveGround(tag));
    Length bottom = pouring.annulus().hole().bottom();
    if (tag.depth().isMoreThan(bottom.plus(ExpectedTape.READ_TO))) return Optional.of(belowHole(tag, bottom));
    return pouring.before(tag).flatMap(before -> beside(before, tag));
  }

  private static Optional<Finding> beside(Fill.Tag before, Fill.Tag tag) {
    Length rise = before.depth().minus(tag.depth());
    if (rise.isMoreThan(ExpectedTape.READ_TO)) return Optional.empty();
    boolean same = !rise.isLessThan(Length.ZERO.minus(ExpectedTape.READ_TO));
    Figure found = new Figure(tag.depth(), Scale.DEPTH);
    Figure earlier = new Figure(before.depth(), Scale.DEPTH);
    Phrase more = Bagged.said(tag.bags() - before.bags());
    Finding finding = same
        ? Finding.of("pack.repeated", Weight.LOOK, PackStage.NAME, Phrase.of(
                "The tape reads {0}, as it did {1} ago ({2}).", "La sonda lee {0}, igual que hace {1} ({2}).",
                found, more, earlier))
            .because(Phrase.of(
                "The weight may rest on a bridge, or the sand has not settled yet.",
                "El peso puede estar sobre un puente, o la arena aún no se asienta."))
        : Finding.of("pack.deeper", Weight.LOOK, PackStage.NAME, Phrase.of(
                "The tape reads {0}, deeper than {2} {1} ago.", "La sonda lee {0}, más abajo que {2} hace {1}.",
                found, more, earlier))
            .because(Phrase.of(
                "A bridge may have broken, the sand ran away, or one of the readings is wrong.",
                "Puede haberse roto un puente, haberse ido la arena, o una de las lecturas está mal."));
    return Optional.of(finding
        .so(Phrase.of(
            "Wait, lift the weight, let it drop and read again.",
            "Espere, levante el peso, déjelo caer y lea de nuevo."))
        .from(List.of(before.entry(), tag.entry())));
  }

  private static Finding aboveGround(Fill.Tag tag) {
    return Finding.of("pack.above-ground", Weight.LOOK, PackStage.NAME, Phrase.of(
            "The reading puts the pack {0} above the ground.", "La lectura pone el filtro {0} por encima del terreno.",
            new Figure(Length.ZERO.minus(tag.depth()), Scale.DEPTH)))
        .so(Phrase.of(
            "Read it again; check whether it was from the ground or from the top of casing.",
            "Léala de nuevo; vea si fue desde el terreno o desde la boca del ademe."))
        .from(List.of(tag.entry()));
  }

  private static Finding belowHole(Fill.Tag tag, Length bottom) {
    Figure found = new Figure(tag.depth(), Scale.DEPTH);
    Figure hole = new Figure(bottom, Scale.DEPTH);
    return Finding.of("pack.below-hole", Weight.LOOK, PackStage.NAME, Phrase.of(
            "The tape reads {0}, but the hole is {1} deep.",
            "La sonda lee {0}, pero el barreno tiene {1} de profundidad.",
            found, hole))
        .comparing(found, hole)
        .so(Phrase.of(
            "Read it again, or correct the depth of the hole.",
            "Léala de nuevo, o corrija la profundidad del barreno."))
        .from(List.of(tag.entry()));
  }
}
