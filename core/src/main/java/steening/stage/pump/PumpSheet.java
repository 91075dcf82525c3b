package steening.stage.pump;

import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.reckoning.Answer;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.pump.line.OperatingPoint;
import steening.stage.pump.motor.CableDrop;
import steening.stage.pump.motor.MotorCooling;
import steening.well.PumpSet;
import steening.well.Well;

/** The pump and its tank, with what they were reckoned to be. */
final class PumpSheet {
  private PumpSheet() {}

  static Sheet of(Well well) {
    Optional<PumpSet> set = well.get(PumpSet.PART);
    if (set.isEmpty()) return Sheet.EMPTY;
    PumpSet pump = set.get();
    Sheet sheet = Sheet.EMPTY.line(PumpEntries.MODEL.label(), Phrase.same(pump.model()));
    if (pump.serial().isPresent()) sheet = sheet.line(PumpEntries.SERIAL.label(), Phrase.same(pump.serial().get()));
    sheet = with(sheet, PumpEntries.POWER, pump.power());
    sheet = with(sheet, PumpEntries.SETTING, pump.setting());
    sheet = with(sheet, PumpEntries.RATE, pump.rate());
    sheet = with(sheet, PumpEntries.CUT_IN, pump.tank().cutIn());
    sheet = with(sheet, PumpEntries.CUT_OUT, pump.tank().cutOut());
    sheet = with(sheet, PumpEntries.TANK, pump.tank().size());
    if (pump.tank().precharge().isPresent()) sheet = with(sheet, PumpEntries.PRECHARGE, pump.tank().precharge().get());
    if (pump.pipe().inside().isPresent()) sheet = with(sheet, PumpEntries.PIPE_INSIDE, pump.pipe().inside().get());
    if (pump.pipe().length().isPresent()) sheet = with(sheet, PumpEntries.PIPE_LENGTH, pump.pipe().length().get());
    if (pump.pipe().rise().isPresent()) sheet = with(sheet, PumpEntries.RISE, pump.pipe().rise().get());
    Optional<Outcome> head = PumpFigures.head(well);
    if (head.isPresent()) {
      sheet = sheet.line(PumpHead.HEAD.label(), head.get().figure(PumpHead.HEAD.name()), head.get());
      sheet = with(sheet, PumpHead.MOTOR_POWER, head.get());
    }
    sheet = equipment(sheet, well);
    Optional<Outcome> tank = PumpFigures.tank(pump);
    if (tank.isEmpty()) return sheet;
    return with(with(sheet, PressureTank.DRAWDOWN, tank.get()), PressureTank.LEAST_TANK, tank.get());
  }

  /** What follows from curve, cable and casing, where they are known. */
  private static Sheet equipment(Sheet sheet, Well well) {
    Optional<Equipment> equipment = well.get(Equipment.PART);
    if (equipment.isEmpty()) return sheet;
    Sheet more = sheet;
    Optional<Outcome> operating = equipment.get().operating(well);
    if (operating.isPresent()) {
      more = with(with(more, OperatingPoint.FLOW_IN, operating.get()), OperatingPoint.FLOW_OUT, operating.get());
    }
    Optional<Outcome> cable = equipment.get().cable();
    if (cable.isPresent()) more = with(more, CableDrop.SHARE, cable.get());
    Optional<Outcome> cooling = equipment.get().cooling(well);
    return cooling.isPresent() ? with(more, MotorCooling.PAST, cooling.get()) : more;
  }

  private static Sheet with(Sheet sheet, QuantityField field, Quantity quantity) {
    return sheet.line(field.label(), new Figure(quantity, field.scale()));
  }

  private static Sheet with(Sheet sheet, Answer answer, Outcome outcome) {
    return sheet.line(answer.label(), outcome.figure(answer.name()), outcome);
  }
}
