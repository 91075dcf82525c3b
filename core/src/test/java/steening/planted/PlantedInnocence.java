package steening.planted;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Does what the core may, near to what it may not, so that the test would be seen to cry out for nothing. */
public final class PlantedInnocence {
  String joined(int sticks, long bags, char unit, boolean dry, Object thing) {
    return sticks + " sticks, " + bags + " bags " + unit + dry + thing;
  }

  double allowed(double x) {
    return Math.abs(Math.sqrt(Math.max(x, 0))) + Math.floor(x) + Math.floorMod(7, 3) + Math.multiplyExact(2L, 3L);
  }

  String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  Map<String, String> ordered() {
    return new LinkedHashMap<>(Map.of("one", "only"));
  }

  Set<String> single() {
    return Set.of("only");
  }

  Map<Integer, List<String>> groups(List<String> names) {
    return names.stream().collect(Collectors.groupingBy(String::length, TreeMap::new, Collectors.toList()));
  }
}
