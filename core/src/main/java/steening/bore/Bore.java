package steening.bore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.quantity.Length;

/**
 * A round hole or pipe whose diameter may change with depth: reaches from the top down, not overlapping. Where there is
 * no reach the diameter is not known for a hole, and nothing for a pipe.
 */
public record Bore(List<Reach> reaches) {
  public static final Bore NONE = new Bore(List.of());

  /** Deeper than any hole: the lower end of one whose depth is no matter here. */
  static final Length ENDLESS = Length.feet(1_000_000);

  public Bore {
    List<Reach> sorted = new ArrayList<>(reaches);
    sorted.sort((a, b) -> a.from().compareTo(b.from()));
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).from().isLessThan(sorted.get(i - 1).to())) {
        throw new IllegalArgumentException("reaches overlap");
      }
    }
    reaches = List.copyOf(sorted);
  }

  /** One diameter all the way. */
  public static Bore straight(Length diameter, Length from, Length to) {
    return new Bore(List.of(new Reach(from, to, diameter)));
  }

  /** One diameter from the ground down, as far as anyone asks. */
  public static Bore even(Length diameter) {
    return straight(diameter, Length.ZERO, ENDLESS);
  }

  public boolean isEmpty() {
    return reaches.isEmpty();
  }

  /** The diameter just below a depth. */
  public Optional<Length> diameterBelow(Length depth) {
    return reaches.stream()
        .filter(r -> !depth.isLessThan(r.from()) && depth.isLessThan(r.to()))
        .map(Reach::diameter)
        .findFirst();
  }

  /** The deepest end; ground level for no bore at all. */
  public Length bottom() {
    return isEmpty() ? Length.ZERO : reaches.get(reaches.size() - 1).to();
  }

  /** The same bore with another reach drilled over whatever was there: reaming widens, deepening lengthens. */
  public Bore with(Reach drilled) {
    List<Reach> all = new ArrayList<>();
    for (Reach old : reaches) {
      if (old.from().isLessThan(drilled.from())) {
        all.add(new Reach(old.from(), old.to().min(drilled.from()), old.diameter()));
      }
      if (old.to().isMoreThan(drilled.to())) {
        all.add(new Reach(old.from().max(drilled.to()), old.to(), old.diameter()));
      }
    }
    all.add(drilled);
    return new Bore(all);
  }

  /** The depths between two others at which the diameter changes. */
  List<Length> changes(Length from, Length to) {
    List<Length> changes = new ArrayList<>();
    for (Reach reach : reaches) {
      for (Length end : List.of(reach.from(), reach.to())) {
        if (end.isMoreThan(from) && end.isLessThan(to) && !changes.contains(end)) changes.add(end);
      }
    }
    return changes;
  }
}
