package steening.stage.pack;

import java.util.Optional;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Mass;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.well.Fill;
import steening.well.Grade;
import steening.well.Plan;
import steening.well.Well;

/** A lot of pack poured: so many bags. */
final class PackBags {
  static final CountField BAGS = CountField.of("bags", Phrase.of("bags", "sacos"), 1, 2000).usuallyUpTo(20);
  static final QuantityField WEIGHT = QuantityField.of(
          "weight", Scale.WEIGHT, Phrase.of("weight of a bag", "peso de un saco"), "50 lb", "22.7 kg")
      .between("1 lb", "4000 lb").usually("40 lb", "100 lb").optional();
  static final QuantityField BAG_VOLUME = Plan.BAG_VOLUME;
  static final TextField GRADE = Grade.FIELD;

  static final Kind KIND =
      Kind.of("pack-bags", Phrase.of("Pack poured", "Filtro vertido"), BAGS, WEIGHT, BAG_VOLUME, GRADE)
          .carrying(WEIGHT, BAG_VOLUME, GRADE);

  /**
   * A hundred pounds of pack sand lie loose in one cubic foot; a supplier's technical bulletin on annular fill (seen),
   * good to 5 %: 95 to 105 lb/ft³.
   */
  private static final double LOOSE_SAND = Unit.POUND_PER_CUBIC_FOOT.toCoherent(100);

  private PackBags() {}

  static Well fold(Well well, Entry entry) {
    Optional<Integer> bags = BAGS.in(entry.body());
    if (bags.isEmpty()) return well;
    Volume volume = bagVolume(entry.body(), well.get(Plan.PART)).times(bags.get());
    Fill.Pour pour = new Fill.Pour(bags.get(), volume, entry.happenedAt(), entry.id());
    Optional<Grade> grade = GRADE.text(entry.body()).map(Grade::new);
    return well.with(Fill.PACK, well.get(Fill.PACK).with(pour)).with(Grade.PART, grade);
  }

  /** As printed on the bag, else from its weight, else as planned. */
  private static Volume bagVolume(Body body, Plan plan) {
    return BAG_VOLUME.in(body).map(v -> (Volume) v)
        .or(() -> WEIGHT.in(body).map(w -> new Volume(((Mass) w).kilograms() / LOOSE_SAND)))
        .orElseGet(plan::bagVolume);
  }
}
