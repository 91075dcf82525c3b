package steening.cases;

import java.util.List;
import java.util.Optional;

/** One row of somebody's table, or one object of somebody's JSON. */
interface Row {
  /** The text under a name; empty where there is none, or nothing in it. */
  Optional<String> text(String name);

  /** Names of what stands under a name; none where nothing does. */
  default List<String> names(String name) {
    return List.of();
  }
}
