package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Length;
import steening.stage.Sheet;
import steening.well.Part;
import steening.well.Well;

/** Where the string is held in the middle of the hole. */
record Centralisers(List<Centraliser> all) {
  static final Part<Centralisers> PART = Part.ofHole("centralisers", new Centralisers(List.of()));

  /** One of them; the depth is below ground, with the string set. */
  record Centraliser(Length depth, String entry) {}

  Centralisers {
    all = List.copyOf(all);
  }

  static Well fold(Well well, Entry entry) {
    return CasingEntries.CENTRALISER_DEPTH.length(entry.body()).map(depth -> {
      List<Centraliser> more = new ArrayList<>(well.get(PART).all);
      more.add(new Centraliser(depth, entry.id()));
      return well.with(PART, new Centralisers(more));
    }).orElse(well);
  }

  /** The highest first. */
  static Sheet on(Sheet sheet, Well well) {
    List<List<Shown>> rows = new ArrayList<>();
    well.get(PART).all.stream().map(Centraliser::depth).sorted()
        .forEach(depth -> rows.add(List.of(CasingFindings.depth(depth))));
    return sheet.table(
        Phrase.of("Centralisers", "Centralizadores"), List.of(Phrase.of("Depth", "Profundidad")), rows);
  }
}
