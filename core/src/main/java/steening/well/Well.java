package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * One well as built, part by part. Immutable. Where a hole was given up and the rig moved over, the parts are those of
 * the present hole, and the earlier holes are wells in themselves.
 */
public final class Well {
  private final String id;
  private final int number;
  private final Map<String, Held> parts;
  private final List<Well> earlier;

  private Well(String id, int number, Map<String, Held> parts, List<Well> earlier) {
    this.id = id;
    this.number = number;
    this.parts = parts;
    this.earlier = earlier;
  }

  /** A part under its key, which knows whether the part goes over to the next hole. */
  private record Held(Part<?> part, Object value) {}

  /** A well of which nothing is known but its id. */
  public static Well named(String id) {
    return new Well(id, 1, Map.of(), List.of());
  }

  public String id() {
    return id;
  }

  public <T> T get(Part<T> part) {
    Held held = parts.get(part.name());
    if (held == null) return part.empty();
    @SuppressWarnings("unchecked") // only with() puts a part in, under its own key
    T typed = (T) held.value();
    return typed;
  }

  public <T> Well with(Part<T> part, T value) {
    Map<String, Held> more = new TreeMap<>(parts);
    more.put(part.name(), new Held(part, value));
    return new Well(id, number, more, earlier);
  }

  /** A new hole under the same job: what is the job's stays, what is the hole's begins anew. */
  public Well movedOver() {
    Map<String, Held> kept = new TreeMap<>();
    parts.forEach((name, held) -> {
      if (held.part().of() == Part.Of.JOB) kept.put(name, held);
    });
    List<Well> all = new ArrayList<>(earlier);
    all.add(new Well(id, number, parts, List.of()));
    return new Well(id, number + 1, kept, List.copyOf(all));
  }

  /** The holes given up under this job before the present one, the first first; an earlier hole knows of no others. */
  public List<Well> earlier() {
    return earlier;
  }

  /** The same hole without the earlier ones. */
  public Well alone() {
    return new Well(id, number, parts, List.of());
  }

  /** Which hole of the job this is: 1, 2, 3 and so on. */
  public int number() {
    return number;
  }

  /** A hole of the job by its number, this one or an earlier one. */
  public Optional<Well> hole(int number) {
    if (number == this.number) return Optional.of(this);
    return number < 1 || number > earlier.size() ? Optional.empty() : Optional.of(earlier.get(number - 1));
  }

  /** The same with something done in one of its holes; as it is where there is no such hole. */
  public Well inHole(int number, UnaryOperator<Well> done) {
    if (number == this.number) return done.apply(this);
    if (number < 1 || number > earlier.size()) return this;
    List<Well> all = new ArrayList<>(earlier);
    all.set(number - 1, done.apply(all.get(number - 1)));
    return new Well(id, this.number, parts, List.copyOf(all));
  }

  /** Wells are equal when all that is known of them is. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Well well
        && id.equals(well.id)
        && number == well.number
        && parts.equals(well.parts)
        && earlier.equals(well.earlier);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }
}
