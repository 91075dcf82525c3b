package steening.stage.casing.choice;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.ground.PackGrading;
import steening.ground.SlotChoice;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.casing.EntranceVelocity;
import steening.stage.casing.Tally;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Well;

/** The three choices as this well has them, by the firm's rule where the plan holds one, else by the published one. */
final class Choice {
  private Choice() {}

  /** What pack the finest sand in the screen asks for, and how the known one compares. */
  static Inputs grading(Well well, Governing governing, Optional<PackKnown> pack) {
    Inputs inputs = Inputs.none().with(PackGrading.D30, governing.curve().quantity("d30"));
    if (governing.curve().shown("d50").isPresent()) {
      inputs = inputs.with(PackGrading.D50, governing.curve().quantity("d50"));
    }
    inputs = and(and(inputs, well, Plan.PACK_TIMES_LEAST, PackGrading.LEAST), well, Plan.PACK_TIMES_MOST,
        PackGrading.MOST);
    List<Quantity> sieved = pack.filter(PackKnown::sieved).map(PackKnown::d30).orElse(List.of());
    return sieved.isEmpty() ? inputs : inputs.with(PackGrading.AT_HAND, sieved.get(0));
  }

  /** The slot for a pack, and what the slot of the string, or of the plan until it is lowered, lets through. */
  static Inputs slot(Well well, PackKnown pack) {
    Inputs inputs = and(pack.sieves().with(SlotChoice.ROUND, "pack"), well, Plan.SLOT_RETAINS, SlotChoice.RETAINED);
    return slot(well).map(slot -> inputs.with(SlotChoice.AT_HAND, slot)).orElse(inputs);
  }

  /** The slot that the sand itself asks for, if no pack were put round the screen. */
  static Inputs natural(Governing governing) {
    return Inputs.of(governing.sample().body()).with(SlotChoice.ROUND, "formation");
  }

  /** The widest slot lowered, else the planned one. */
  static Optional<Quantity> slot(Well well) {
    return well.get(Tally.PART).openings().stream().map(Tally.Opening::slot).max(Length::compareTo)
        .map(slot -> (Quantity) slot)
        .or(() -> well.get(Plan.PART).amount(Plan.SLOT));
  }

  /** The length the rate asks for; none where rate or open area is not known. */
  static Optional<Outcome> length(Well well) {
    Plan plan = well.get(Plan.PART);
    Optional<Quantity> open = well.get(Tally.PART).openings().stream()
        .flatMap(opening -> opening.openArea().stream())
        .min((a, b) -> Double.compare(a.coherent(), b.coherent()))
        .or(() -> plan.amount(Plan.OPEN_AREA));
    if (open.isEmpty() || plan.rate().isEmpty()) return Optional.empty();
    Inputs inputs = Inputs.none()
        .with(ScreenLength.RATE, plan.rate().get()).with(ScreenLength.OPEN_AREA, open.get())
        .with(ScreenLength.LIMIT, EntranceVelocity.limit(plan));
    return Outcome.ifReckonable(() -> ScreenLength.RECKONING.of(inputs));
  }

  /** As lowered, once the string is set, else as planned. */
  static Optional<Length> screen(Well well) {
    CasingString string = well.get(CasingString.PART);
    if (string.isSet()) return Optional.of(string.length(Piece.Sort.SCREEN)).filter(l -> l.isMoreThan(Length.ZERO));
    Plan plan = well.get(Plan.PART);
    return plan.length(Plan.SCREEN_BOTTOM)
        .flatMap(bottom -> plan.length(Plan.SCREEN_TOP).filter(bottom::isMoreThan).map(bottom::minus));
  }

  private static Inputs and(Inputs inputs, Well well, QuantityField planned, QuantityField field) {
    return well.get(Plan.PART).amount(planned).map(own -> inputs.with(field, own)).orElse(inputs);
  }
}
