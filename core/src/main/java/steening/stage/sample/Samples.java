package steening.stage.sample;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.well.Part;

/**
 * All bottles, in the order they were filled.
 *
 * @param unmatched ids of receipts and results of which no bottle is known
 */
record Samples(PVector<Sample> bottles, PVector<String> unmatched) {
  static final Part<Samples> PART = Part.ofHole("samples", new Samples(TreePVector.empty(), TreePVector.empty()));

  Samples with(Sample sample) {
    return new Samples(bottles.plus(sample), unmatched);
  }

  /** The bottle of that number, or the last one, changed; an entry that names no bottle we know is kept aside. */
  Samples changing(Optional<String> bottle, String entry, UnaryOperator<Sample> change) {
    for (int i = bottles.size() - 1; i >= 0; i--) {
      if (bottle.isPresent() && !bottle.get().equals(bottles.get(i).bottle())) continue;
      return new Samples(bottles.with(i, change.apply(bottles.get(i))), unmatched);
    }
    return new Samples(bottles, unmatched.plus(entry));
  }

  Optional<Sample> last() {
    return bottles.isEmpty() ? Optional.empty() : Optional.of(bottles.get(bottles.size() - 1));
  }

  /** What was found in the last bottle that was tested for it. */
  Optional<Sample.Result> testedFor(Constituent constituent) {
    return results().stream().filter(r -> r.amount(constituent).isPresent()).reduce((a, b) -> b);
  }

  /** What the laboratory found, in the order the bottles were filled. */
  List<Sample.Result> results() {
    return bottles.stream().flatMap(b -> b.result().stream()).toList();
  }
}
