package steening.stage.pump;

import java.util.Optional;
import steening.quantity.Length;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.well.Levels;
import steening.well.PumpSet;
import steening.well.Well;

/** The reckonings of this room with the numbers of one well; empty where they cannot be made. */
final class PumpFigures {
  private PumpFigures() {}

  /**
   * From the level the pump was chosen for; where none was given, from the deepest of the test, which is not the last
   * word.
   */
  static Optional<Outcome> head(Well well) {
    Optional<PumpSet> pump = well.get(PumpSet.PART);
    if (pump.isEmpty()) return Optional.empty();
    Optional<Length> tested = well.get(Levels.PART).pumping().map(Levels.Level::depth);
    Optional<Length> level = pump.get().lift().level().or(() -> tested);
    if (level.isEmpty()) return Optional.empty();
    Inputs inputs = Inputs.none()
        .with(PumpHead.LEVEL, level.get())
        .with(PumpHead.CUT_OUT, pump.get().tank().cutOut())
        .with(PumpHead.RATE, pump.get().rate());
    PumpSet.DropPipe pipe = pump.get().pipe();
    if (pipe.inside().isPresent()) inputs = inputs.with(PumpHead.INSIDE, pipe.inside().get());
    if (pipe.length().isPresent()) inputs = inputs.with(PumpHead.LENGTH, pipe.length().get());
    if (pipe.rise().isPresent()) inputs = inputs.with(PumpHead.RISE, pipe.rise().get());
    if (pipe.fittings().isPresent()) inputs = inputs.with(PumpHead.FITTINGS, pipe.fittings().get());
    Optional<Length> allowance = pump.get().lift().allowance();
    if (allowance.isPresent()) inputs = inputs.with(PumpHead.ALLOWANCE, allowance.get());
    return made(PumpHead.RECKONING, inputs);
  }

  /** Empty as well where cut-out, cut-in and precharge contradict each other. */
  static Optional<Outcome> tank(PumpSet pump) {
    PumpSet.Tank tank = pump.tank();
    Inputs inputs = Inputs.none()
        .with(PressureTank.RATE, pump.rate())
        .with(PressureTank.RUN, PressureTank.leastRun(pump.power()))
        .with(PressureTank.CUT_IN, tank.cutIn())
        .with(PressureTank.CUT_OUT, tank.cutOut())
        .with(PressureTank.TANK, tank.size());
    if (tank.precharge().isPresent()) inputs = inputs.with(PressureTank.PRECHARGE, tank.precharge().get());
    return made(PressureTank.RECKONING, inputs);
  }

  private static Optional<Outcome> made(Reckoning reckoning, Inputs inputs) {
    try {
      return Optional.of(reckoning.of(inputs));
    } catch (NotReckonable contradiction) {
      return Optional.empty();
    }
  }
}
