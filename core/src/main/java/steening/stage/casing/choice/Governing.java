package steening.stage.casing.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.ground.SieveCurve;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.Sieved;
import steening.well.Well;

/**
 * The finest sand that was sieved within the screen: pack and slot go by it, whatever the rest is like.
 *
 * @param count samples from within the screen that have a D30
 */
record Governing(Sieved.Sample sample, Outcome curve, int count) {
  /** None while nothing was sieved from within the screen as it stands, or as planned until it stands. */
  static Optional<Governing> of(Well well) {
    List<Screen> screens = screens(well);
    Optional<Governing> finest = Optional.empty();
    int count = 0;
    for (Sieved.Sample sample : well.get(Sieved.PART).samples()) {
      if (screens.stream().noneMatch(screen -> touches(screen, sample))) continue;
      Optional<Outcome> curve = Outcome.ifReckonable(() -> SieveCurve.of(sample.body()))
          .filter(c -> c.shown("d30").isPresent());
      if (curve.isEmpty()) continue;
      count++;
      double size = curve.get().quantity("d30").coherent();
      if (finest.isEmpty() || size < finest.get().curve.quantity("d30").coherent()) {
        finest = Optional.of(new Governing(sample, curve.get(), 0));
      }
    }
    int all = count;
    return finest.map(f -> new Governing(f.sample, f.curve, all));
  }

  private static boolean touches(Screen screen, Sieved.Sample sample) {
    return sample.from().isLessThan(screen.bottom()) && sample.to().isMoreThan(screen.top());
  }

  private static List<Screen> screens(Well well) {
    CasingString string = well.get(CasingString.PART);
    if (string.isSet()) return string.screens();
    Plan plan = well.get(Plan.PART);
    Optional<Length> top = plan.length(Plan.SCREEN_TOP);
    Optional<Length> bottom = plan.length(Plan.SCREEN_BOTTOM);
    List<Screen> planned = new ArrayList<>();
    if (top.isPresent() && bottom.isPresent()) planned.add(new Screen(top.get(), bottom.get(), ""));
    return planned;
  }
}
