package steening.well;

import steening.bore.Annulus;
import steening.bore.Bore;

/** The annulus of a well: as drilled and as set; as planned where that is not done yet. */
public final class WellAnnulus {
  private WellAnnulus() {}

  public static Annulus of(Well well) {
    return new Annulus(hole(well), pipe(well));
  }

  /** As planned, whatever was drilled. */
  public static Annulus planned(Well well) {
    Plan plan = well.get(Plan.PART);
    return new Annulus(plan.hole(), plan.pipe());
  }

  private static Bore hole(Well well) {
    Hole hole = well.get(Hole.PART);
    return hole.isBegun() ? hole.bore() : well.get(Plan.PART).hole();
  }

  private static Bore pipe(Well well) {
    Bore set = well.get(CasingString.PART).pipe();
    return set.isEmpty() ? well.get(Plan.PART).pipe() : set;
  }
}
