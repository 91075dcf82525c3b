package steening.stage.pump;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Pressure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.PumpSet;

/** Where the pressure switch and the tank are not as they should be. */
final class TankFindings {
  private TankFindings() {}

  static List<Finding> of(PumpSet pump) {
    return Stream.of(cutOut(pump), precharge(pump), tooSmall(pump)).flatMap(Optional::stream).toList();
  }

  private static Optional<Finding> cutOut(PumpSet pump) {
    Pressure in = pump.tank().cutIn();
    Pressure out = pump.tank().cutOut();
    if (out.pascals() > in.pascals()) return Optional.empty();
    Finding finding = finding(pump, "pump.cut-out", Weight.STOP, Phrase.of(
            "Cut-out {0} is not above cut-in {1}: the pump would not stop as it should.",
            "La presión de paro {0} no supera la de arranque {1}: la bomba no pararía como debe.",
            pressure(out), pressure(in)))
        .comparing(pressure(out), pressure(in))
        .so(Phrase.of(
            "Read the switch again and correct the entry.", "Lea otra vez el presostato y corrija el registro."));
    Optional<Pressure> meant = meant(out, in);
    return Optional.of(meant.isEmpty() ? finding : finding.because(Phrase.of(
        "Typed in kPa? Did you mean {0}?", "¿Escrito en kPa? ¿Quiso decir {0}?", pressure(meant.get()))));
  }

  /** The same number in psi, where that would be a usual cut-out above this cut-in. */
  private static Optional<Pressure> meant(Pressure out, Pressure in) {
    Pressure twin = Pressure.of(out.in(Unit.KILOPASCAL), Unit.PSI);
    boolean good = PumpEntries.CUT_OUT.isUsual(twin) && twin.pascals() > in.pascals();
    return good ? Optional.of(twin) : Optional.empty();
  }

  private static Optional<Finding> precharge(PumpSet pump) {
    Optional<Pressure> air = pump.tank().precharge();
    Pressure in = pump.tank().cutIn();
    if (air.isEmpty() || air.get().pascals() <= in.pascals()) return Optional.empty();
    Figure usual = pressure(PressureTank.usualPrecharge(in));
    return Optional.of(finding(pump, "pump.precharge", Weight.LOOK, Phrase.of(
            "Air in the empty tank {0}, cut-in {1}: the tank is empty before the pump starts.",
            "Aire en el tanque vacío {0}, arranque {1}: el tanque se vacía antes de que arranque la bomba.",
            pressure(air.get()), pressure(in)))
        .comparing(pressure(air.get()), usual)
        .so(Phrase.of(
            "Let air out to {0}, with no water in the tank.",
            "Deje salir aire hasta {0}, con el tanque sin agua.",
            usual)));
  }

  private static Optional<Finding> tooSmall(PumpSet pump) {
    Optional<Outcome> outcome = PumpFigures.tank(pump);
    if (outcome.isEmpty()) return Optional.empty();
    Quantity drawn = outcome.get().quantity(PressureTank.DRAWDOWN.name());
    Quantity needed = outcome.get().quantity(PressureTank.NEEDED.name());
    if (drawn.coherent() >= needed.coherent()) return Optional.empty();
    Figure gives = outcome.get().figure(PressureTank.DRAWDOWN.name());
    Figure asked = outcome.get().figure(PressureTank.NEEDED.name());
    Figure run = outcome.get().figure(PressureTank.THIS_RUN.name());
    Figure least = new Figure(PressureTank.leastRun(pump.power()), Scale.MINUTES);
    return Optional.of(finding(pump, "pump.tank-small", Weight.LOOK, Phrase.of(
            "The tank gives {0} at a time, {1} are needed: the pump runs {2} where {3} are asked for.",
            "El tanque da {0} por ciclo y hacen falta {1}: la bomba marcha {2} donde se piden {3}.",
            gives, asked, run, least))
        .comparing(gives, asked)
        .because(Phrase.of(
            "Too many starts wear out the motor. Sources differ: 1 min, or 2 min above 3/4 hp.",
            "Demasiados arranques gastan el motor. Las fuentes difieren: 1 min, o 2 min arriba de 3/4 hp."))
        .so(Phrase.of(
            "Fit a tank of {0} or more, and follow the motor maker's limit.",
            "Ponga un tanque de {0} o más y siga el límite del fabricante del motor.",
            outcome.get().figure(PressureTank.LEAST_TANK.name())))
        .shownBy(outcome.get()));
  }

  private static Finding finding(PumpSet pump, String code, Weight weight, Phrase text) {
    return Finding.of(code, weight, PumpStage.NAME, text).from(List.of(pump.entry()));
  }

  private static Figure pressure(Pressure pressure) {
    return new Figure(pressure, Scale.PRESSURE);
  }
}
