package steening.stage.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Field;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.pump.line.HazenWilliams;

/**
 * What the pump has to lift: total dynamic head, and the power that takes.
 *
 * <p>H = z + a + r + P/(ρg) + f, with z pumping level, a allowance for a dry year, r rise of the tank above the
 * ground, P cut-out pressure, f friction; all as heights. Friction by Hazen and Williams: f = 10.67 (Q/C)^(1/0.54) /
 * d^(2.63/0.54) (l + e) in metres and cubic metres per second, Q rate, C smoothness of the pipe, d inside diameter, l
 * length, e length that the fittings are worth. Power of the water W = ρ g Q H; of the motor B = W/η.
 *
 * <p>Source: handbooks on pumps and irrigation (TDH = level + rise + 2.31 psi + friction, gpm × ft / 3960: seen); the
 * metric form of Hazen and Williams from memory, held against the friction tables of 77 Illinois Administrative Code
 * 906. Range: water at 60 °F, full pipe, turbulent flow, C 130 to 150. Accuracy: the trade's rounded 2.31 ft/psi and
 * 3960 differ by 0.05 %; published forms of Hazen and Williams differ by 0.8 % in friction; real pipe by more.
 */
final class PumpHead {
  static final QuantityField LEVEL = QuantityField.of(
          "pumping-level", Scale.DEPTH,
          Phrase.of("pumping water level below ground", "nivel dinámico bajo el terreno"), "45.6 ft", "13.9 m")
      .between("-100 ft", "6000 ft").usually("0 ft", "600 ft");
  static final QuantityField ALLOWANCE = PumpEntries.ALLOWANCE;
  static final QuantityField RISE = PumpEntries.RISE;
  static final QuantityField CUT_OUT = PumpEntries.CUT_OUT;
  static final QuantityField RATE = PumpEntries.RATE;
  static final QuantityField INSIDE = PumpEntries.PIPE_INSIDE;
  static final QuantityField LENGTH = PumpEntries.PIPE_LENGTH;
  static final QuantityField FITTINGS = PumpEntries.FITTINGS;
  static final QuantityField SMOOTHNESS = HazenWilliams.SMOOTHNESS;
  static final QuantityField EFFICIENCY = QuantityField.of(
          "efficiency", Scale.SHARE, Phrase.of("efficiency of the pump", "eficiencia de la bomba"), "55 %", "55 %")
      .between("5 %", "95 %").usually("25 %", "85 %").optional();

  static final Answer FRICTION = new Answer(
      "friction", Phrase.of("friction in the pipe", "fricción en la tubería"), Scale.DEPTH);
  static final Answer PRESSURE = new Answer(
      "pressure-head", Phrase.of("cut-out pressure as height", "presión de paro como altura"), Scale.DEPTH);
  static final Answer HEAD = new Answer("head", Phrase.of("total dynamic head", "carga dinámica total"), Scale.DEPTH);
  static final Answer WATER_POWER = new Answer(
      "water-power", Phrase.of("power of the water", "potencia del agua"), Scale.POWER);
  static final Answer MOTOR_POWER = new Answer(
      "motor-power", Phrase.of("power the motor needs", "potencia que necesita el motor"), Scale.POWER);

  static final Reckoning RECKONING = new Reckoning(
      "pump-head",
      PumpStage.NAME,
      Phrase.of("Total dynamic head", "Carga dinámica total"),
      List.<Field>of(LEVEL, ALLOWANCE, RISE, CUT_OUT, RATE, INSIDE, LENGTH, FITTINGS, SMOOTHNESS, EFFICIENCY),
      List.of(FRICTION, PRESSURE, HEAD, WATER_POWER, MOTOR_POWER),
      Source.seen(
          "Handbooks: level + rise + 2.31 ft/psi + friction; gpm × ft / 3960. Friction by Hazen and Williams, checked "
              + "against 77 Ill. Adm. Code 906, Appendix A, Exhibit I.",
          "Manuales: nivel + desnivel + 2.31 ft/psi + fricción; gpm × ft / 3960. Fricción según Hazen y Williams, "
              + "comprobada con 77 Ill. Adm. Code 906, apéndice A, tabla I."),
      List.of(
          Phrase.of(
              "Water at 60 °F in full pipe. Fittings of one size differ by up to four times from table to table.",
              "Agua a 16 °C en tubo lleno. Los accesorios de un tamaño difieren hasta cuatro veces entre tablas."),
          Phrase.of(
              "The maker's curve decides which pump gives this head; check the flow at cut-in as well.",
              "La curva del fabricante decide qué bomba da esta carga; vea también el gasto al arranque.")),
      PumpHead::reckon);

  /** Weight of water in N/m³: 999.0 kg/m³ at 60 °F (handbook, from memory) under standard gravity. */
  private static final double WATER_WEIGHT = 999.0 * 9.80665;

  /** Of a small submersible pump (common practice, no source). */
  private static final Quantity SMALL_PUMP = new Measure(Dimension.NUMBER, 0.55);

  private static final Phrase WITHOUT_PIPE = Phrase.of(
      "The pipe is not given, so its friction is left out.", "No se dio la tubería; falta su fricción.");

  private PumpHead() {}

  private static Outcome reckon(Inputs inputs) {
    Outcome outcome = Outcome.empty();
    Optional<Term> friction = friction(inputs);
    if (friction.isPresent()) outcome = outcome.with(FRICTION.name(), friction.get());
    else outcome = outcome.remarking(WITHOUT_PIPE);
    Term pressure = Coefficient.giving(Scale.DEPTH, 1 / WATER_WEIGHT).of(Scale.PRESSURE).term()
        .times(inputs.given("P", CUT_OUT))
        .named("p", PRESSURE.label(), Scale.DEPTH);
    List<Term> heights = new ArrayList<>(List.of(inputs.given("z", LEVEL)));
    if (inputs.find(ALLOWANCE).isPresent()) heights.add(inputs.given("a", ALLOWANCE));
    if (inputs.find(RISE).isPresent()) heights.add(inputs.given("r", RISE));
    heights.add(pressure);
    friction.ifPresent(heights::add);
    Term head = Term.sum(heights).named("H", HEAD.label(), Scale.DEPTH);
    Term water = Coefficient.giving(Scale.POWER, WATER_WEIGHT).of(Scale.FLOW).of(Scale.DEPTH).term()
        .times(inputs.given("Q", RATE))
        .times(head)
        .named("W", WATER_POWER.label(), Scale.POWER);
    Term motor = Coefficient.giving(Scale.POWER, 1).of(Scale.POWER).of(Scale.SHARE, -1).term()
        .times(water)
        .over(inputs.given("η", EFFICIENCY, SMALL_PUMP))
        .named("B", MOTOR_POWER.label(), Scale.POWER);
    return outcome.with(PRESSURE.name(), pressure).with(HEAD.name(), head)
        .with(WATER_POWER.name(), water).with(MOTOR_POWER.name(), motor);
  }

  /** Empty where the pipe's diameter or length is not given. */
  private static Optional<Term> friction(Inputs inputs) {
    if (inputs.find(INSIDE).isEmpty() || inputs.find(LENGTH).isEmpty()) return Optional.empty();
    Term length = inputs.given("l", LENGTH);
    if (inputs.find(FITTINGS).isPresent()) length = length.plus(inputs.given("e", FITTINGS));
    Term smoothness = inputs.given("C", SMOOTHNESS, HazenWilliams.PLASTIC);
    Term friction = HazenWilliams.friction(inputs.given("Q", RATE), smoothness, inputs.given("d", INSIDE), length);
    return Optional.of(friction.named("f", FRICTION.label(), Scale.DEPTH));
  }
}
