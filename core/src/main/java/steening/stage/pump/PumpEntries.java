package steening.stage.pump;

import java.util.Optional;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Pressure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.stage.pump.line.OperatingPoint;
import steening.stage.pump.motor.Cable;
import steening.stage.pump.motor.CableDrop;
import steening.stage.pump.motor.MotorCooling;
import steening.well.PumpSet;

/** The pump that was set, with its tank. */
final class PumpEntries {
  static final TextField MODEL = TextField.of("model", Phrase.of("pump", "bomba"), "4 in submersible, 10 gpm, 1 hp");
  static final QuantityField POWER = amount("horsepower", Scale.POWER, "motor", "motor", "1 hp", "0.75 kW")
      .between("0.05 hp", "1000 hp").usually("0.33 hp", "15 hp");
  static final QuantityField SETTING = amount(
          "setting", Scale.DEPTH, "depth of the intake", "profundidad de instalación", "85 ft", "26 m")
      .between("1 ft", "6000 ft").usually("15 ft", "600 ft");
  static final QuantityField RATE = amount("rate", Scale.FLOW, "pump rate", "gasto de la bomba", "10 gpm", "0.63 L/s")
      .between("0.1 gpm", "5000 gpm").usually("1 gpm", "60 gpm");
  static final QuantityField CUT_IN = amount(
          "cut-in", Scale.PRESSURE, "cut-in pressure", "presión de arranque", "40 psi", "275 kPa")
      .between("1 psi", "300 psi").usually("20 psi", "60 psi");
  static final QuantityField CUT_OUT = amount(
          "cut-out", Scale.PRESSURE, "cut-out pressure", "presión de paro", "60 psi", "415 kPa")
      .between("1 psi", "300 psi").usually("30 psi", "80 psi");
  static final QuantityField TANK = amount(
          "tank", Scale.LIQUID, "pressure tank", "tanque hidroneumático", "86 gal", "325 L")
      .between("0.1 gal", "20000 gal").usually("2 gal", "300 gal");
  static final QuantityField PRECHARGE = amount(
          "precharge", Scale.PRESSURE, "air in the empty tank", "aire en el tanque vacío", "38 psi", "262 kPa")
      .between("0 psi", "300 psi").usually("10 psi", "60 psi").optional();
  static final TextField SERIAL =
      TextField.of("serial", Phrase.of("serial number", "número de serie"), "0042-1187").optional();
  static final QuantityField PIPE_INSIDE = amount(
          "pipe-inside", Scale.DIAMETER,
          "drop pipe, inside diameter", "columna de bombeo, diámetro interior", "1.049 in", "26.6 mm")
      .between("0.2 in", "24 in").usually("0.75 in", "4 in").optional();
  static final QuantityField PIPE_LENGTH = amount(
          "pipe-length", Scale.DEPTH, "pipe from pump to tank", "tubería de la bomba al tanque", "170 ft", "52 m")
      .between("1 ft", "20000 ft").usually("20 ft", "1500 ft").optional();
  static final QuantityField RISE = amount(
          "tank-rise", Scale.DEPTH,
          "tank above the ground at the well", "altura del tanque sobre el terreno del pozo", "6 ft", "1.8 m")
      .between("-1000 ft", "2000 ft").usually("-20 ft", "100 ft").optional();
  static final QuantityField FITTINGS = amount(
          "fittings-length", Scale.DEPTH,
          "length of pipe the fittings are worth", "longitud de tubo equivalente de los accesorios", "24 ft", "7 m")
      .between("0 ft", "5000 ft").usually("0 ft", "200 ft").optional();
  static final QuantityField LIFT_FROM = amount(
          "lift-from", Scale.DEPTH,
          "pumping level in the long run, below ground", "nivel dinámico a la larga, bajo el terreno",
          "45.6 ft", "13.9 m")
      .between("-100 ft", "6000 ft").usually("0 ft", "600 ft").optional();
  static final QuantityField ALLOWANCE = amount(
          "dry-allowance", Scale.DEPTH, "allowance for a dry year", "margen para un año seco", "10 ft", "3 m")
      .between("0 ft", "1000 ft").usually("0 ft", "60 ft").optional();
  static final Kind PUMP = Kind.of(
      "pump", Phrase.of("Pump and tank", "Bomba y tanque"),
      MODEL, POWER, SETTING, RATE, CUT_IN, CUT_OUT, TANK, PRECHARGE, SERIAL, PIPE_INSIDE, PIPE_LENGTH, RISE,
      FITTINGS, LIFT_FROM, ALLOWANCE, OperatingPoint.FLOWS.optional(), OperatingPoint.HEADS.optional(),
      CableDrop.VOLTAGE.optional(), CableDrop.CURRENT.optional(), Cable.FIRST_SIZE.optional(), Cable.FIRST.optional(),
      Cable.SECOND_SIZE, Cable.SECOND, MotorCooling.MOTOR)
      .seldom(Cable.SECOND_SIZE, Cable.SECOND, MotorCooling.MOTOR);

  private PumpEntries() {}

  /** The pump of an entry; empty where an amount it cannot do without is absent. */
  static Optional<PumpSet> pump(Entry entry) {
    Body body = entry.body();
    Optional<Quantity> power = POWER.in(body);
    Optional<Length> setting = SETTING.length(body);
    Optional<FlowRate> rate = RATE.in(body).map(q -> (FlowRate) q);
    Optional<PumpSet.Tank> tank = tank(body);
    if (power.isEmpty() || setting.isEmpty() || rate.isEmpty() || tank.isEmpty()) return Optional.empty();
    PumpSet.DropPipe pipe = new PumpSet.DropPipe(
        PIPE_INSIDE.length(body), PIPE_LENGTH.length(body), RISE.length(body), FITTINGS.length(body));
    PumpSet.Lift lift = new PumpSet.Lift(LIFT_FROM.length(body), ALLOWANCE.length(body));
    String model = MODEL.text(body).orElse("");
    return Optional.of(new PumpSet(
        model, SERIAL.text(body), power.get(), setting.get(), rate.get(), tank.get(), pipe, lift, entry.id()));
  }

  private static Optional<PumpSet.Tank> tank(Body body) {
    Optional<Volume> size = TANK.in(body).map(q -> (Volume) q);
    Optional<Pressure> cutIn = CUT_IN.in(body).map(q -> (Pressure) q);
    Optional<Pressure> cutOut = CUT_OUT.in(body).map(q -> (Pressure) q);
    if (size.isEmpty() || cutIn.isEmpty() || cutOut.isEmpty()) return Optional.empty();
    Optional<Pressure> precharge = PRECHARGE.in(body).map(q -> (Pressure) q);
    return Optional.of(new PumpSet.Tank(size.get(), cutIn.get(), cutOut.get(), precharge));
  }

  private static QuantityField amount(
      String name, Scale scale, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, scale, Phrase.of(english, spanish), us, metric);
  }
}
