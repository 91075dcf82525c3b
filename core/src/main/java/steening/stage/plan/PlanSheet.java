package steening.stage.plan;

import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Plan;
import steening.well.UsualGround;
import steening.well.Well;

/** The plan as it was entered, with what follows from it. */
final class PlanSheet {
  private PlanSheet() {}

  static Sheet of(Well well) {
    Plan plan = well.get(Plan.PART);
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
    Optional<UsualGround> ground = well.get(UsualGround.PART);
    return ground.isPresent() ? ground(sheet, ground.get()) : sheet;
  }

  private static Sheet ground(Sheet sheet, UsualGround ground) {
    Sheet with = sheet.line(
        Phrase.of("holes here take, times the drilled size", "aquí los barrenos llevan, por lo perforado"),
        Phrase.of("{0}, give or take {1}", "{0}, más o menos {1}",
            Decimal.fixed(ground.overbreak().mean().coherent(), 2),
            Decimal.fixed(ground.overbreak().spread().coherent(), 2)));
    return ground.wells().isPresent()
        ? with.line(UsualGround.WELLS.label(), Phrase.same(ground.wells().get()))
        : with;
  }
}
