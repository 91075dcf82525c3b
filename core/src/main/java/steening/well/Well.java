package steening.well;

import java.util.Map;
import java.util.TreeMap;

/** One well as built, part by part. Immutable. */
public final class Well {
  private final String id;
  private final Map<String, Object> parts;

  private Well(String id, Map<String, Object> parts) {
    this.id = id;
    this.parts = parts;
  }

  /** A well of which nothing is known but its id. */
  public static Well named(String id) {
    return new Well(id, Map.of());
  }

  public String id() {
    return id;
  }

  public <T> T get(Part<T> part) {
    Object held = parts.get(part.name());
    if (held == null) return part.empty();
    @SuppressWarnings("unchecked") // only with() puts a part in, under its own key
    T typed = (T) held;
    return typed;
  }

  public <T> Well with(Part<T> part, T value) {
    Map<String, Object> more = new TreeMap<>(parts);
    more.put(part.name(), value);
    return new Well(id, more);
  }
}
