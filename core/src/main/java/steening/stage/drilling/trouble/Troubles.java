package steening.stage.drilling.trouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.well.Part;

/**
 * Fill and lost tools, as far as only this room needs them; mud lost is the whole well's.
 *
 * @param fills in order of time
 * @param fish what was lost last; nothing where nothing was, or where it is out again
 * @param costs of fishing as last said
 */
record Troubles(List<Fill> fills, Optional<Fish> fish, Optional<Costs> costs) {
  static final Part<Troubles> PART =
      Part.ofHole("troubles", new Troubles(List.of(), Optional.empty(), Optional.empty()));

  Troubles {
    fills = List.copyOf(fills);
  }

  /**
   * Fill tagged in the hole.
   *
   * @param hole how deep it was, as far as anything said so
   */
  record Fill(Length tagged, Length hole, Optional<Quantity> shovelled, String entry) {
    Length height() {
      return hole.minus(tagged);
    }
  }

  /**
   * What is left in the hole.
   *
   * @param hole how deep it was
   * @param felt where its top was felt
   * @param inHole rods that the journal says are still in the hole, and their length; where rods out were counted
   * @param hours of tries that failed
   */
  record Fish(
      List<Quantity> lengths, Length hole, Optional<Length> felt, Optional<Rest> inHole, double hours, String entry) {
    Fish {
      lengths = List.copyOf(lengths);
    }

    Length length() {
      return lengths.stream().map(l -> (Length) l).reduce(Length.ZERO, Length::plus);
    }

    Quantity tried() {
      return Measure.of(hours, Unit.HOUR);
    }

    Fish triedFor(double more) {
      return new Fish(lengths, hole, felt, inHole, hours + more, entry);
    }
  }

  /** Rods by the journal: how many went down, how many came out, and the length of those that did not. */
  record Rest(int down, int out, Length length, Length longest) {}

  /** What the choice between fishing and drilling again rests on. */
  record Costs(
      Quantity hour, Optional<Quantity> caveRisk, Quantity hole, Quantity fish, Quantity redrill, Quantity sealing,
      String entry) {}

  Troubles with(Fill fill) {
    List<Fill> more = new ArrayList<>(fills);
    more.add(fill);
    return new Troubles(more, fish, costs);
  }

  Troubles with(Fish lost) {
    return new Troubles(fills, Optional.of(lost), costs);
  }

  Troubles with(Costs said) {
    return new Troubles(fills, fish, Optional.of(said));
  }

  /** One try at fishing. */
  Troubles tried(double hours, boolean caught) {
    return new Troubles(fills, caught ? Optional.empty() : fish.map(f -> f.triedFor(hours)), costs);
  }
}
