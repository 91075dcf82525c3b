package steening.stage.site;

import java.util.ArrayList;
import java.util.List;
import steening.quantity.Length;
import steening.well.Part;

/** The distances measured on the site, in the order they were entered. */
record Setbacks(List<Setback> measured) {
  static final Part<Setbacks> PART = Part.ofJob("setbacks", new Setbacks(List.of()));

  Setbacks {
    measured = List.copyOf(measured);
  }

  /**
   * One distance.
   *
   * @param remark what the driller says about it; may be empty
   */
  record Setback(Hazard hazard, Length distance, Length required, String remark, String entry) {
    boolean isShort() {
      return distance.isLessThan(required);
    }
  }

  Setbacks with(Setback setback) {
    List<Setback> more = new ArrayList<>(measured);
    more.add(setback);
    return new Setbacks(more);
  }

  boolean isMeasured(Hazard hazard) {
    return measured.stream().anyMatch(s -> s.hazard() == hazard);
  }
}
