package steening.stage.plan;

import java.util.Optional;
import steening.field.QuantityField;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Plan;

/** The plan as it was entered, with what follows from it. */
final class PlanSheet {
  private PlanSheet() {}

  static Sheet of(Plan plan) {
    Sheet sheet = Sheet.EMPTY;
    for (QuantityField field : Plan.FIELDS) {
      Optional<Quantity> amount = plan.amount(field);
      if (amount.isPresent()) sheet = sheet.line(field.label(), new Figure(amount.get(), field.scale()));
    }
    Optional<Outcome> sides = PlanFigures.eachSide(plan);
    if (sides.isPresent()) {
      sheet = sheet.line(PlanFigures.EACH_SIDE_LABEL, sides.get().figure(PlanFigures.EACH_SIDE), sides.get());
    }
    Optional<Outcome> string = PlanFigures.string(plan);
    if (string.isPresent()) {
      sheet = sheet.line(PlanFigures.STRING_LENGTH_LABEL, string.get().figure(PlanFigures.STRING_LENGTH), string.get());
    }
    return sheet;
  }
}
