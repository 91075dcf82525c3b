package steening.stage.casing;

import static steening.stage.casing.CasingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Sheet;
import steening.well.Part;
import steening.well.Well;

/**
 * What is left of the joint that a piece was cut from.
 *
 * @param whole the joint before the saw
 * @param piece what was lowered of it
 */
record Offcut(Length whole, Length piece, String entry) {
  static final Part<List<Offcut>> PART = Part.ofHole("offcuts", List.of());

  private static final Phrase LEFT = Phrase.of("left over from the cut joint", "sobrante del tubo cortado");

  static Well fold(Well well, Entry entry) {
    Optional<Length> whole = CasingEntries.CUT_FROM.length(entry.body());
    Optional<Length> piece = CasingEntries.CUT_PIECE_LENGTH.length(entry.body());
    if (whole.isEmpty() || piece.isEmpty()) return well;
    List<Offcut> offcuts = new ArrayList<>(well.get(PART));
    offcuts.add(new Offcut(whole.get(), piece.get(), entry.id()));
    return well.with(PART, List.copyOf(offcuts));
  }

  static Sheet on(Sheet sheet, Well well) {
    Sheet with = sheet;
    for (Offcut offcut : well.get(PART)) {
      if (offcut.isPossible()) with = with.line(LEFT, offcut.left().figure("left"), offcut.left());
    }
    return with;
  }

  static Optional<Finding> finding(Well well) {
    return well.get(PART).stream().filter(o -> !o.isPossible()).findFirst().map(o -> Finding.of(
            "casing.cut-longer-than-joint", Weight.LOOK, CasingStage.NAME, Phrase.of(
                "A piece of {0} was cut from a joint of {1}.", "De un tubo de {1} se cortó un tramo de {0}.",
                depth(o.piece), depth(o.whole)))
        .comparing(depth(o.piece), depth(o.whole))
        .because(Phrase.of("A slip in one of the two lengths.", "Un error en una de las dos longitudes."))
        .so(Phrase.of("Measure what is left of the joint.", "Mida lo que quedó del tubo."))
        .from(List.of(o.entry)));
  }

  private boolean isPossible() {
    return !piece.isMoreThan(whole);
  }

  private Outcome left() {
    Term left = Term.given("w", CasingEntries.CUT_FROM.label(), Scale.DEPTH, whole)
        .minus(Term.given("c", CasingEntries.CUT_PIECE_LENGTH.label(), Scale.DEPTH, piece))
        .named("r", LEFT, Scale.DEPTH);
    return Outcome.empty().with("left", left);
  }
}
