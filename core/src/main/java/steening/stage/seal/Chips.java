package steening.stage.seal;

import java.util.Optional;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Volume;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.Plan;
import steening.well.Sounding;
import steening.well.Well;

/** Chips or pellets poured on the pack, and their top, sounded. */
final class Chips {
  static final CountField BAGS = CountField.of("bags", Phrase.of("bags", "sacos"), 1, 2000).usuallyUpTo(20);
  static final QuantityField BAG_VOLUME = Plan.CHIPS_BAG_VOLUME.named("bag-volume");

  static final Kind KIND = Kind.of("chips", Phrase.of("Chips poured", "Pellets vertidos"), BAGS, BAG_VOLUME);

  static final Kind TAPE =
      Kind.of(
          "chips-tape", Phrase.of("Tape on the chips", "Sonda sobre los pellets"), Sounding.READING, DepthFrom.FIELD);

  private Chips() {}

  static Well pour(Well well, Entry entry) {
    Optional<Integer> bags = BAGS.in(entry.body());
    if (bags.isEmpty()) return well;
    Volume bag = BAG_VOLUME.in(entry.body()).map(v -> (Volume) v).orElseGet(well.get(Plan.PART)::chipsBagVolume);
    Fill.Pour pour = new Fill.Pour(bags.get(), bag.times(bags.get()), entry.happenedAt(), entry.id());
    return well.with(Fill.CHIPS, well.get(Fill.CHIPS).with(pour));
  }

  static Well sound(Well well, Entry entry) {
    return Sounding.in(entry, well).map(s -> well.with(Fill.CHIPS, well.get(Fill.CHIPS).with(s))).orElse(well);
  }
}
