package steening.stage.pump;

import java.util.List;
import java.util.Optional;
import steening.journal.Body;
import steening.quantity.Length;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.stage.pump.line.OperatingPoint;
import steening.stage.pump.motor.CableDrop;
import steening.stage.pump.motor.MotorCooling;
import steening.well.CasingString;
import steening.well.Levels;
import steening.well.Part;
import steening.well.Well;

/**
 * What was taken down of the pump's curve, motor and cable, under the names of the reckonings' own inputs.
 *
 * @param body of the entry
 */
record Equipment(Body body, String entry) {
  static final Part<Optional<Equipment>> PART = Part.ofHole("pump-equipment", Optional.empty());

  /** Empty where the curve is not known, or no level to lift from. */
  Optional<Inputs> curve(Well well) {
    if (!OperatingPoint.FLOWS.isIn(body) || !OperatingPoint.HEADS.isIn(body)) return Optional.empty();
    Optional<Length> tested = well.get(Levels.PART).pumping().map(Levels.Level::depth);
    Optional<Length> level = PumpEntries.LIFT_FROM.length(body).or(() -> tested);
    return level.map(l -> Inputs.of(body).with(OperatingPoint.LEVEL, l))
        .filter(i -> PumpEntries.PIPE_INSIDE.isIn(body) && PumpEntries.PIPE_LENGTH.isIn(body));
  }

  Optional<Outcome> operating(Well well) {
    return curve(well).flatMap(inputs -> made(OperatingPoint.RECKONING, inputs));
  }

  /** Empty where voltage, current or cable is not known. */
  Optional<Outcome> cable() {
    boolean known = CableDrop.RECKONING.inputs().stream().allMatch(f -> !f.isRequired() || f.isIn(body));
    return known ? made(CableDrop.RECKONING, Inputs.of(body)) : Optional.empty();
  }

  /** Past a 4-inch motor where its diameter was not taken down; empty where the casing is not known. */
  Optional<Outcome> cooling(Well well) {
    return well.get(CasingString.PART).inside()
        .flatMap(inside -> made(MotorCooling.RECKONING, Inputs.of(body).with(MotorCooling.CASING, inside)));
  }

  /** Why a curve that was typed cannot be reckoned with; empty where it can, or none was. */
  Optional<NotReckonable> contradiction(Well well) {
    try {
      curve(well).ifPresent(OperatingPoint.RECKONING::of);
      return Optional.empty();
    } catch (NotReckonable refused) {
      return Optional.of(refused);
    }
  }

  List<String> entries() {
    return List.of(entry);
  }

  private static Optional<Outcome> made(Reckoning reckoning, Inputs inputs) {
    return Outcome.ifReckonable(() -> reckoning.of(inputs));
  }
}
