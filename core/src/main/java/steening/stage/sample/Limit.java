package steening.stage.sample;

import java.util.List;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Unit;

/**
 * One limit of the United States for water of public systems; for a private well it is a guide.
 *
 * @param rank what it is there for
 * @param isLeast whether it is the least that is wanted, not the most
 * @param citation where it stands in the Code of Federal Regulations
 * @param asOf when the text, or the list that repeats it, was current; how it was read
 */
record Limit(Rank rank, Quantity bound, boolean isLeast, String citation, Phrase asOf) {
  /** What a limit is there for. */
  enum Rank {
    PRIMARY(Weight.STOP, "primary limit", "límite primario"),
    /** Of lead and copper, which mostly come from pipes. */
    ACTION(Weight.STOP, "action level", "nivel de acción"),
    SECONDARY(Weight.NOTE, "secondary limit", "límite secundario");

    final Weight weight;
    final Phrase label;

    Rank(Weight weight, String english, String spanish) {
      this.weight = weight;
      this.label = Phrase.of(english, spanish);
    }
  }

  private static final Phrase LIST_2023 =
      Phrase.of("2023, in a list that repeats it", "2023, en una lista que lo repite");
  private static final Phrase LIST_2009 =
      Phrase.of("2009, in a list that repeats it", "2009, en una lista que lo repite");
  private static final Phrase READ_2024 = Phrase.of("2024, read", "2024, leído");
  private static final Phrase REMEMBERED = Phrase.of(
      "from memory; a lower one is said to come", "de memoria; se dice que vendrá uno menor");

  static Limit primary(double milligrams) {
    return new Limit(Rank.PRIMARY, milligrams(milligrams), false, "40 CFR 141.62", LIST_2023);
  }

  static Limit uranium() {
    return new Limit(Rank.PRIMARY, Measure.of(30, Unit.MICROGRAM_PER_LITRE), false, "40 CFR 141.66", LIST_2009);
  }

  static Limit lead() {
    return new Limit(Rank.ACTION, milligrams(0.015), false, "40 CFR 141.80", REMEMBERED);
  }

  static Limit copper() {
    return new Limit(Rank.ACTION, milligrams(1.3), false, "40 CFR 141.80", LIST_2023);
  }

  static Limit secondary(double milligrams) {
    return new Limit(Rank.SECONDARY, milligrams(milligrams), false, "40 CFR 143.3", READ_2024);
  }

  /** Both ends of a range of pH. */
  static List<Limit> range(double least, double most) {
    return List.of(
        new Limit(Rank.SECONDARY, Measure.of(least, Unit.ONE), true, "40 CFR 143.3", READ_2024),
        new Limit(Rank.SECONDARY, Measure.of(most, Unit.ONE), false, "40 CFR 143.3", READ_2024));
  }

  boolean isBrokenBy(Quantity found) {
    return isLeast ? found.coherent() < bound.coherent() : found.coherent() > bound.coherent();
  }

  private static Quantity milligrams(double value) {
    return Measure.of(value, Unit.MILLIGRAM_PER_LITRE);
  }
}
