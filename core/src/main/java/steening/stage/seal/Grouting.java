package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Quantity;
import steening.quantity.Volume;
import steening.well.Part;
import steening.well.Plan;
import steening.well.Well;

/**
 * What only this room needs to know of the grout; how high it stands is in {@link steening.well.Fill#GROUT}.
 *
 * @param recipe as mixed from now on
 * @param batches in order of time
 * @param setTime that the rules here ask of cement, where somebody said so
 * @param looks what was said beside each tape reading
 */
record Grouting(Optional<Recipe> recipe, Optional<Quantity> setTime, List<Batch> batches, List<Look> looks) {
  static final Part<Grouting> PART = Part.ofHole("grouting", new Grouting(Optional.empty(), Optional.empty(), List.of(), List.of()));

  Grouting {
    batches = List.copyOf(batches);
    looks = List.copyOf(looks);
  }

  /**
   * Beside a tape reading.
   *
   * @param after when it was read, by its code, where somebody said so
   * @param inHose grout that had left the mixer and was not in the hole yet
   */
  record Look(String entry, Optional<String> after, Volume inHose) {
    /** It was read the day after. */
    boolean nextDay() {
      return after.filter(GroutEntries.NEXT_DAY::equals).isPresent();
    }

    /** It was read an hour after the pump stopped. */
    boolean anHourAfter() {
      return after.filter(GroutEntries.AFTER_AN_HOUR::equals).isPresent();
    }
  }

  Grouting mixing(Recipe recipe, Optional<Quantity> setTime) {
    return new Grouting(Optional.of(recipe), setTime, batches, looks);
  }

  Grouting with(Batch batch) {
    List<Batch> more = new ArrayList<>(batches);
    more.add(batch);
    return new Grouting(recipe, setTime, more, looks);
  }

  Grouting with(Look look) {
    List<Look> more = new ArrayList<>(looks);
    more.add(look);
    return new Grouting(recipe, setTime, batches, more);
  }

  /** As mixed, or as planned until somebody says how it is mixed. */
  static Recipe recipe(Well well) {
    return well.get(PART).recipe().orElseGet(() -> Recipe.of(well.get(Plan.PART)));
  }

  Optional<Batch> lastBatch() {
    return batches.isEmpty() ? Optional.empty() : Optional.of(batches.get(batches.size() - 1));
  }

  /** What was said beside the reading of an entry. */
  Optional<Look> beside(String entry) {
    return looks.stream().filter(l -> l.entry().equals(entry)).findFirst();
  }
}
