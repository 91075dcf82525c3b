package steening.stage.seal;

import steening.quantity.Length;
import steening.quantity.Unit;
import steening.well.Fill;
import steening.well.Plan;
import steening.well.Well;

/** Whether the grout is where it should be. */
final class Grouted {
  /** A tape is read to about so much (common practice, no source). */
  static final Length READ_TO = Length.of(0.5, Unit.FOOT);

  private Grouted() {}

  /** It came back at the surface as heavy as it went in, or its top was sounded at the planned depth, and nothing was pumped since. */
  static boolean isDone(Well well) {
    Fill grout = well.get(Fill.GROUT);
    if (!grout.isBegun()) return false;
    if (grout.bagsSinceTag() > 0) {
      return well.get(Grouting.PART).lastBatch()
          .filter(b -> b.returned().orElse(false) && ReturnFindings.thin(b).isEmpty()).isPresent();
    }
    Length planned = well.get(Plan.PART).length(Plan.GROUT_TOP).orElse(Length.ZERO);
    return grout.top().filter(top -> !top.isMoreThan(planned.plus(READ_TO))).isPresent();
  }
}
