package steening.stage.pump.motor;

import java.util.List;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Water past a submersible motor, and the sleeve that makes it pass fast enough.
 *
 * <p>v = Q / (π/4 (D² − d²)); least rate q = w π/4 (D² − d²); widest sleeve s = √(d² + Q / (π/4 w)): Q rate, D inside
 * of
 * casing, d outside of motor, w least velocity. Source: a pump manufacturer's manual, Table 8: 0.25 ft/s for 4-inch
 * motors, 0.5 ft/s for 6-inch ones, water to 86 °F (seen); outside diameters 3.75 and 5.375 in (memory). Range: all
 * water
 * comes from below the motor. Accuracy: within 8 % of the table.
 */
public final class MotorCooling {
  public static final QuantityField RATE = QuantityField.of(
          "rate", Scale.FLOW, Phrase.of("pump rate", "gasto de la bomba"), "10 gpm", "0.63 L/s")
      .between("0.1 gpm", "5000 gpm").usually("1 gpm", "200 gpm");
  public static final QuantityField CASING = QuantityField.of(
          "casing-inside", Scale.DIAMETER, Phrase.of("casing, inside diameter", "ademe, diámetro interior"),
          "4.95 in", "125.7 mm")
      .between("2 in", "60 in").usually("3.9 in", "18 in");
  public static final QuantityField MOTOR = QuantityField.of(
          "motor-outside", Scale.DIAMETER, Phrase.of("motor, outside diameter", "motor, diámetro exterior"),
          "3.75 in", "95.3 mm")
      .between("1 in", "24 in").usually("2.8 in", "10 in").optional();
  public static final QuantityField VELOCITY = QuantityField.of(
          "least-velocity", Scale.ENTRANCE_VELOCITY,
          Phrase.of("least velocity past the motor", "velocidad mínima junto al motor"), "0.25 ft/s", "0.0762 m/s")
      .between("0.01 ft/s", "12 ft/s").usually("0.1 ft/s", "3 ft/s").optional();

  public static final Answer PAST = new Answer(
      "velocity", Phrase.of("velocity past the motor", "velocidad junto al motor"), Scale.ENTRANCE_VELOCITY);
  public static final Answer LEAST = new Answer(
      "least-rate", Phrase.of("rate that cools without a sleeve", "gasto que enfría sin camisa"), Scale.FLOW);
  public static final Answer SLEEVE = new Answer(
      "widest-sleeve", Phrase.of("widest sleeve that cools, inside", "camisa más ancha que enfría, interior"),
      Scale.DIAMETER);

  public static final Reckoning RECKONING = new Reckoning(
      "motor-cooling",
      "pump",
      Phrase.of("Cooling of the motor", "Enfriamiento del motor"),
      List.of(RATE, CASING, MOTOR, VELOCITY),
      List.of(PAST, LEAST, SLEEVE),
      Source.seen(
          "A pump manufacturer's manual, Table 8: 0.25 ft/s (4 in), 0.5 ft/s (6 in). Diameters of motors: memory.",
          "Manual de un fabricante de bombas, tabla 8: 0.25 ft/s (4 in), 0.5 ft/s (6 in). Diámetros: de memoria."),
      List.of(
          Phrase.of(
              "All water from below the motor, to 86 °F; warmer water needs more. The motor maker goes first.",
              "Toda el agua viene de abajo del motor, hasta 30 °C; más caliente pide más. Vale antes el fabricante."),
          Phrase.of(
              "Without inputs a 4-inch motor of 3.75 in at 0.25 ft/s.",
              "Sin datos, un motor de 4 pulgadas de 95 mm a 0.076 m/s.")),
      MotorCooling::reckon);

  /** Of a 4-inch motor (memory). */
  private static final Quantity FOUR_INCH = Length.of(3.75, Unit.INCH);

  /** Of a 4-inch motor (seen). */
  public static final Quantity SLOWEST = Measure.of(0.25, Unit.FOOT_PER_SECOND);

  private MotorCooling() {}

  private static Outcome reckon(Inputs inputs) {
    Quantity motor = inputs.find(MOTOR).orElse(FOUR_INCH);
    if (motor.coherent() >= inputs.amount(CASING).coherent()) {
      throw new NotReckonable(
          "The motor of {0} does not go into a casing of {1}.", "El motor de {0} no entra en un ademe de {1}.",
          new Figure(motor, Scale.DIAMETER), new Figure(inputs.amount(CASING), Scale.DIAMETER));
    }
    Term rate = inputs.given("Q", RATE);
    Term outside = inputs.given("d", MOTOR, FOUR_INCH);
    Term slowest = inputs.given("w", VELOCITY, SLOWEST);
    Term squares = inputs.given("D", CASING).squared().minus(outside.squared());
    Term past = Coefficient.giving(Scale.ENTRANCE_VELOCITY, 1 / Annulus.QUARTER_PI)
        .of(Scale.FLOW).of(Scale.DIAMETER, -2).term()
        .times(rate).over(squares)
        .named("v", PAST.label(), PAST.scale());
    Term least = Coefficient.giving(Scale.FLOW, Annulus.QUARTER_PI)
        .of(Scale.DIAMETER, 2).of(Scale.ENTRANCE_VELOCITY).term()
        .times(slowest).times(squares)
        .named("q", LEAST.label(), LEAST.scale());
    Term area = Coefficient.giving(Scale.DIAMETER, 1 / Annulus.QUARTER_PI)
        .of(Scale.FLOW).of(Scale.ENTRANCE_VELOCITY, -1).of(Scale.DIAMETER, -1).term();
    Term sleeve = outside.squared().plus(area.times(rate).over(slowest)).squareRoot()
        .named("s", SLEEVE.label(), SLEEVE.scale());
    Outcome outcome = Outcome.empty()
        .with(PAST.name(), past).with(LEAST.name(), least).with(SLEEVE.name(), sleeve);
    double needed = inputs.find(VELOCITY).orElse(SLOWEST).coherent();
    if (past.quantity().coherent() >= needed) return outcome;
    return outcome.remarking(Phrase.of(
        "{0} past the motor, where {1} are needed: fit a sleeve of {2} inside at most.",
        "{0} junto al motor, donde hacen falta {1}: ponga una camisa de {2} interior a lo más.",
        new Figure(past.quantity(), Scale.ENTRANCE_VELOCITY),
        new Figure(inputs.find(VELOCITY).orElse(SLOWEST), Scale.ENTRANCE_VELOCITY),
        new Figure(sleeve.quantity(), Scale.DIAMETER)));
  }
}
