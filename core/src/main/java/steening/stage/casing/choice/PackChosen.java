package steening.stage.casing.choice;

import java.util.Optional;
import steening.field.Kind;
import steening.ground.SieveWeights;
import steening.ground.Sieves;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.well.Grade;
import steening.well.Part;
import steening.well.Well;

/** The pack that was bought or is to be bought, before any of it is poured: its grade, its sieves, or both. */
public record PackChosen(Body body, String entry) {
  static final Part<Optional<PackChosen>> PART = Part.ofJob("pack-chosen", Optional.empty());

  public static final Kind KIND = Kind.of(
          "pack-chosen", Phrase.of("Pack chosen", "Filtro elegido"), Grade.FIELD,
          Sieves.OPENINGS.optional(), Sieves.FINER, SieveWeights.RETAINED, SieveWeights.PAN)
      .carrying(Sieves.OPENINGS);

  public static Well fold(Well well, Entry entry) {
    return well.with(PART, Optional.of(new PackChosen(entry.body(), entry.id())));
  }

  Optional<Grade> grade() {
    return Grade.FIELD.text(body).map(Grade::new);
  }

  /** Whether anything of a sieve analysis was written down. */
  boolean isSieved() {
    return Sieves.FINER.isIn(body) || SieveWeights.RETAINED.isIn(body);
  }
}
