package steening.stage.pump.line;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Pressure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Where a pump's curve meets the well and its pipe: the flow at cut-in, which is the largest, and at cut-out.
 *
 * <p>System: H = z + a + r + P/(ρ g) + f(Q), z pumping level, a allowance for a dry year, r rise of the tank, P
 * pressure,
 * f friction by Hazen and Williams. Pump: straight between the points of its curve. Q where both are one, by halving.
 * Source: the usual graph of handbooks (common practice). Range: within the curve's first and last point. Accuracy: as
 * good as the points; the level itself follows the flow, and is taken as given.
 */
public final class OperatingPoint {
  public static final SeriesField FLOWS = SeriesField.of(
      QuantityField.of("curve-flows", Scale.FLOW, Phrase.of("flows of the pump curve", "gastos de la curva"),
          "10 gpm", "0.63 L/s").between("0 gpm", "5000 gpm"),
      1, "0; 4; 8; 12; 16 gpm", "0; 0.25; 0.5; 0.75; 1 L/s");
  public static final SeriesField HEADS = SeriesField.of(
      QuantityField.of("curve-heads", Scale.DEPTH, Phrase.of("heads of the pump curve", "cargas de la curva"),
          "200 ft", "61 m").between("0 ft", "6000 ft"),
      1, "310; 292; 255; 195; 110 ft", "95; 89; 78; 60; 34 m");
  public static final QuantityField LEVEL = QuantityField.of(
          "pumping-level", Scale.DEPTH,
          Phrase.of("pumping water level below ground", "nivel dinámico bajo el terreno"), "45.6 ft", "13.9 m")
      .between("-100 ft", "6000 ft").usually("0 ft", "600 ft");
  static final QuantityField ALLOWANCE = QuantityField.of(
          "dry-allowance", Scale.DEPTH, Phrase.of("allowance for a dry year", "margen para un año seco"),
          "10 ft", "3 m")
      .between("0 ft", "1000 ft").usually("0 ft", "60 ft").optional();
  static final QuantityField RISE = QuantityField.of(
          "tank-rise", Scale.DEPTH,
          Phrase.of("tank above the ground at the well", "altura del tanque sobre el terreno del pozo"), "6 ft",
          "1.8 m")
      .between("-1000 ft", "2000 ft").usually("-20 ft", "100 ft").optional();
  static final QuantityField CUT_IN = pressure("cut-in", "cut-in pressure", "presión de arranque", "40 psi", "275 kPa");
  static final QuantityField CUT_OUT = pressure("cut-out", "cut-out pressure", "presión de paro", "60 psi", "415 kPa");

  public static final Answer FLOW_IN = new Answer(
      "flow-cut-in", Phrase.of("flow at cut-in", "gasto al arranque"), Scale.FLOW);
  static final Answer HEAD_IN = new Answer(
      "head-cut-in", Phrase.of("head at cut-in", "carga al arranque"), Scale.DEPTH);
  public static final Answer FLOW_OUT = new Answer(
      "flow-cut-out", Phrase.of("flow at cut-out", "gasto al paro"), Scale.FLOW);
  static final Answer HEAD_OUT = new Answer(
      "head-cut-out", Phrase.of("head at cut-out", "carga al paro"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "operating-point",
      "pump",
      Phrase.of("Where the pump's curve meets the well", "Punto de operación de la bomba"),
      List.of(FLOWS, HEADS, LEVEL, ALLOWANCE, RISE, CUT_IN, CUT_OUT, PipeFriction.INSIDE, PipeFriction.LENGTH,
          PipeFriction.FITTINGS, HazenWilliams.SMOOTHNESS),
      List.of(FLOW_IN, HEAD_IN, FLOW_OUT, HEAD_OUT),
      Source.derived(
          "The graph of system and pump curve of handbooks, solved; friction by Hazen and Williams.",
          "La gráfica de curvas del sistema y de la bomba de los manuales, resuelta; fricción de Hazen y Williams."),
      List.of(
          Phrase.of(
              "Within the points of the curve, which are joined by straight lines; one pump, one speed.",
              "Dentro de los puntos de la curva, unidos con rectas; una bomba, una velocidad."),
          Phrase.of(
              "The flow at cut-in must not be more than the well gives, or must be limited.",
              "El gasto al arranque no debe pasar de lo que da el pozo, o debe limitarse.")),
      OperatingPoint::reckon);

  /** 999.0 kg/m³ at 60 °F (handbook, from memory) under standard gravity. */
  private static final double WATER_WEIGHT = 999.0 * 9.80665;
  private static final int HALVINGS = 100;

  private OperatingPoint() {}

  private static QuantityField pressure(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.PRESSURE, Phrase.of(english, spanish), us, metric)
        .between("0 psi", "300 psi").usually("20 psi", "80 psi");
  }

  private static Outcome reckon(Inputs inputs) {
    Pressure in = (Pressure) inputs.amount(CUT_IN);
    Pressure out = (Pressure) inputs.amount(CUT_OUT);
    if (out.pascals() <= in.pascals()) {
      throw new NotReckonable(
          "Cut-out must be above cut-in: {0} against {1}.",
          "La presión de paro debe superar la de arranque: {0} contra {1}.",
          new Figure(out, Scale.PRESSURE), new Figure(in, Scale.PRESSURE));
    }
    PumpCurve curve = PumpCurve.of(inputs.value(FLOWS), inputs.value(HEADS));
    Term length = inputs.given("l", PipeFriction.LENGTH);
    if (inputs.find(PipeFriction.FITTINGS).isPresent()) length = length.plus(inputs.given("e", PipeFriction.FITTINGS));
    Term run = length.named("L", PipeFriction.RUN.label(), Scale.DEPTH);
    Outcome outcome = Outcome.empty();
    outcome = met(outcome, inputs, curve, run, CUT_IN, "₁", FLOW_IN, HEAD_IN);
    return met(outcome, inputs, curve, run, CUT_OUT, "₂", FLOW_OUT, HEAD_OUT);
  }

  private static Outcome met(
      Outcome outcome, Inputs inputs, PumpCurve curve, Term run, QuantityField pressure, String mark, Answer flow,
      Answer head) {
    Term height = standing(inputs, pressure, mark);
    double at = flow(inputs, curve, run, height, pressure);
    Phrase found = Phrase.of("{0}, by halving", "{0}, por bisección", flow.label());
    Term rate = Term.given("Q" + mark, found, Scale.FLOW, new FlowRate(at));
    Term friction = friction(inputs, rate, run)
        .named("f" + mark, Phrase.of("friction there", "fricción ahí"), Scale.DEPTH);
    Term system = height.plus(friction).named("H" + mark, head.label(), head.scale());
    return outcome.with(flow.name(), rate).with(head.name(), system);
  }

  /** What is to be overcome without any flow. */
  private static Term standing(Inputs inputs, QuantityField pressure, String mark) {
    List<Term> heights = new ArrayList<>(List.of(inputs.given("z", LEVEL)));
    if (inputs.find(ALLOWANCE).isPresent()) heights.add(inputs.given("a", ALLOWANCE));
    if (inputs.find(RISE).isPresent()) heights.add(inputs.given("b", RISE));
    heights.add(Coefficient.giving(Scale.DEPTH, 1 / WATER_WEIGHT).of(Scale.PRESSURE).term()
        .times(inputs.given("P" + mark, pressure)));
    return Term.sum(heights).named("S" + mark, Phrase.of("head without flow", "carga sin gasto"), Scale.DEPTH);
  }

  private static Term friction(Inputs inputs, Term rate, Term run) {
    Term smoothness = inputs.given("C", HazenWilliams.SMOOTHNESS, HazenWilliams.PLASTIC);
    return HazenWilliams.friction(rate, smoothness, inputs.given("d", PipeFriction.INSIDE), run);
  }

  /** In cubic metres a second. */
  private static double flow(Inputs inputs, PumpCurve curve, Term run, Term height, QuantityField pressure) {
    double low = curve.least();
    double high = curve.most();
    if (spare(inputs, curve, run, height, low) < 0) {
      throw new NotReckonable(
          "{0}: the pump reaches {1} at most; {2} are to be overcome. It would run and never stop, or give nothing.",
          "{0}: la bomba alcanza {1} a lo más; hay que vencer {2}. Marcharía sin parar, o no daría nada.",
          pressure.label(), PumpCurve.head(Length.ofMetres(curve.head(low))),
          PumpCurve.head(height.quantity()));
    }
    if (spare(inputs, curve, run, height, high) > 0) {
      throw new NotReckonable(
          "{0}: at {1}, the end of its curve, the pump still has head to spare. Throttle it, or take a smaller one.",
          "{0}: con {1}, el fin de su curva, a la bomba le sobra carga. Estrangúlela o use una menor.",
          pressure.label(), PumpCurve.flow(new FlowRate(high)));
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (spare(inputs, curve, run, height, middle) > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }

  /** What the pump has over what it must overcome, in metres. */
  private static double spare(Inputs inputs, PumpCurve curve, Term run, Term height, double flow) {
    Term rate = Term.given("Q", FLOW_IN.label(), Scale.FLOW, new FlowRate(flow));
    double friction = flow <= 0 ? 0 : friction(inputs, rate, run).in(UnitSystem.METRIC);
    return curve.head(flow) - height.in(UnitSystem.METRIC) - friction;
  }
}
