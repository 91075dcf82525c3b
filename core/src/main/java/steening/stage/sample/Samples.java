package steening.stage.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import steening.well.Part;

/**
 * All bottles, in the order they were filled.
 *
 * @param unmatched ids of receipts and results of which no bottle is known
 */
record Samples(List<Sample> bottles, List<String> unmatched) {
  static final Part<Samples> PART = Part.ofHole("samples", new Samples(List.of(), List.of()));

  Samples {
    bottles = List.copyOf(bottles);
    unmatched = List.copyOf(unmatched);
  }

  Samples with(Sample sample) {
    List<Sample> more = new ArrayList<>(bottles);
    more.add(sample);
    return new Samples(more, unmatched);
  }

  /** The bottle of that number, or the last one, changed; an entry that names no bottle we know is kept aside. */
  Samples changing(Optional<String> bottle, String entry, UnaryOperator<Sample> change) {
    List<Sample> all = new ArrayList<>(bottles);
    for (int i = all.size() - 1; i >= 0; i--) {
      if (bottle.isPresent() && !bottle.get().equals(all.get(i).bottle())) continue;
      all.set(i, change.apply(all.get(i)));
      return new Samples(all, unmatched);
    }
    List<String> more = new ArrayList<>(unmatched);
    more.add(entry);
    return new Samples(bottles, more);
  }

  Optional<Sample> last() {
    return bottles.isEmpty() ? Optional.empty() : Optional.of(bottles.get(bottles.size() - 1));
  }

  /** What the laboratory found, in the order the bottles were filled. */
  List<Sample.Result> results() {
    return bottles.stream().flatMap(b -> b.result().stream()).toList();
  }
}
