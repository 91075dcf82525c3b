package steening.cases;

import java.util.List;
import java.util.Map;

/**
 * What a reckoning must answer.
 *
 * @param reckoning its name
 * @param inputs texts by the names of its fields, as they would be typed by a hand in US units
 * @param expected what it must answer; nothing where it must refuse
 */
record Case(String id, String reckoning, Map<String, String> inputs, List<Expected> expected) {
  Case {
    expected = List.copyOf(expected);
  }

  boolean mustBeRefused() {
    return expected.isEmpty();
  }
}
