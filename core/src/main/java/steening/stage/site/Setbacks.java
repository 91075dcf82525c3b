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
   * @param hole it was measured from: 1 for the first of the job
   * @param remark what the driller says about it; may be empty
   */
  record Setback(Hazard hazard, Length distance, Length required, int hole, String remark, String entry) {
    boolean isShort() {
      return distance.isLessThan(required);
    }
  }

  Setbacks with(Setback setback) {
    List<Setback> more = new ArrayList<>(measured);
    more.add(setback);
    return new Setbacks(more);
  }

  /** Whether the same was measured from a later hole. */
  boolean isMeasuredAgain(Setback setback) {
    return measured.stream().anyMatch(s -> s.hazard() == setback.hazard() && s.hole() > setback.hole());
  }

  boolean isMeasured(Hazard hazard) {
    return measured.stream().anyMatch(s -> s.hazard() == hazard);
  }
}
