package steening.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Scale;

/** What the neighbours' logs say, sand by sand. Of one sand in one well, what was written last holds. */
public record Neighbours(List<Log> logs) {
  public static final Part<Neighbours> PART = Part.ofJob("neighbours", new Neighbours(List.of()));

  /** How far a neighbour's well is. */
  public static final QuantityField DISTANCE = QuantityField.of(
          "distance", Scale.FAR, Phrase.of("distance to that well", "distancia a ese pozo"), "0.5 mi", "0.8 km")
      .between("10 ft", "100 mi").usually("50 ft", "5 mi");

  public Neighbours {
    logs = List.copyOf(logs);
  }

  /**
   * One sand in one neighbour's log. Depths are below the ground at that well.
   *
   * @param well its name or number
   * @param elevation of its ground above sea level
   * @param sand which sand, counted from the top: 1 is the wanted one
   * @param found whether that sand is there
   * @param depth of the finished well
   * @param atRest water level at rest
   */
  public record Log(
      String well, Length distance, Optional<Length> elevation, int sand, boolean found, Optional<Length> top,
      Optional<Length> bottom, Optional<Length> depth, Optional<Length> atRest, Optional<FlowRate> yield,
      String entry) {

    /** The top of the sand above sea level. */
    public Optional<Length> topElevation() {
      return found ? elevation.flatMap(e -> top.map(e::minus)) : Optional.empty();
    }

    private boolean isOf(Log other) {
      return well.equalsIgnoreCase(other.well) && sand == other.sand;
    }
  }

  public Neighbours with(Log log) {
    List<Log> more = new ArrayList<>(logs);
    more.removeIf(log::isOf);
    more.add(log);
    return new Neighbours(more);
  }

  /** The logs that say something of one sand. */
  public List<Log> of(int sand) {
    return logs.stream().filter(log -> log.sand() == sand).toList();
  }
}
