package steening.stage.pump.line;

import java.util.List;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.number.Decimal;
import steening.quantity.Dimension;
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
 * Friction in a pipe with its fittings, by Hazen and Williams and by Darcy and Weisbach.
 *
 * <p>L = l + e; v = Q / (π/4 d²); Re = v d / ν; h = f L v² / (2 g d), f = 64/Re below Re 2300, by Colebrook from 4000
 * on; in between flow has no fixed friction and Darcy's answer is refused. Source: Colebrook 1939; roughness of drawn
 * plastic 0.0015 mm Moody 1944 (memory); water at 60 °F 1.131 mm²/s (handbook, memory). Accuracy: Colebrook's equation
 * 0.05 %, real pipe 10 %.
 */
public final class PipeFriction {
  public static final QuantityField RATE = QuantityField.of(
          "rate", Scale.FLOW, Phrase.of("rate through the pipe", "gasto por la tubería"), "10 gpm", "0.63 L/s")
      .between("0.1 gpm", "5000 gpm").usually("1 gpm", "100 gpm");
  public static final QuantityField INSIDE = QuantityField.of(
          "pipe-inside", Scale.DIAMETER, Phrase.of("inside diameter of the pipe", "diámetro interior del tubo"),
          "1.049 in", "26.6 mm")
      .between("0.2 in", "24 in").usually("0.5 in", "6 in");
  public static final QuantityField LENGTH = QuantityField.of(
          "pipe-length", Scale.DEPTH, Phrase.of("length of the pipe", "longitud del tubo"), "170 ft", "52 m")
      .between("1 ft", "20000 ft").usually("10 ft", "2000 ft");
  public static final QuantityField FITTINGS = QuantityField.of(
          "fittings-length", Scale.DEPTH,
          Phrase.of("length of pipe the fittings are worth", "longitud de tubo equivalente de los accesorios"),
          "24 ft", "7 m")
      .between("0 ft", "5000 ft").usually("0 ft", "200 ft").optional();
  public static final QuantityField ROUGHNESS = QuantityField.of(
          "roughness", Scale.GRAIN, Phrase.of("roughness of the pipe", "rugosidad del tubo"), "0.0015 mm", "0.0015 mm")
      .between("0 mm", "5 mm").usually("0.001 mm", "0.5 mm").optional();
  public static final QuantityField VISCOSITY = QuantityField.of(
          "viscosity", Scale.VISCOSITY, Phrase.of("viscosity of the water", "viscosidad del agua"), "1.131 mm2/s",
          "1.131 mm2/s")
      .between("0.2 mm2/s", "2 mm2/s").usually("0.7 mm2/s", "1.8 mm2/s").optional();

  static final Answer RUN = new Answer(
      "equivalent-length", Phrase.of("pipe and fittings", "tubo y accesorios"), Scale.DEPTH);
  static final Answer VELOCITY = new Answer(
      "velocity", Phrase.of("velocity in the pipe", "velocidad en el tubo"), Scale.ENTRANCE_VELOCITY);
  static final Answer REYNOLDS = new Answer(
      "reynolds", Phrase.of("Reynolds number", "número de Reynolds"), Scale.NUMBER);
  static final Answer FACTOR = new Answer(
      "friction-factor", Phrase.of("friction factor", "factor de fricción"), Scale.NUMBER);
  static final Answer DARCY = new Answer(
      "friction-darcy", Phrase.of("friction after Darcy and Weisbach", "fricción según Darcy y Weisbach"), Scale.DEPTH);
  static final Answer HAZEN = new Answer(
      "friction-hazen", Phrase.of("friction after Hazen and Williams", "fricción según Hazen y Williams"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "pipe-friction",
      "pump",
      Phrase.of("Friction in a pipe", "Fricción en una tubería"),
      List.of(RATE, INSIDE, LENGTH, FITTINGS, HazenWilliams.SMOOTHNESS, ROUGHNESS, VISCOSITY),
      List.of(RUN, VELOCITY, REYNOLDS, FACTOR, DARCY, HAZEN),
      Source.memory(
          "Darcy and Weisbach with Colebrook 1939, roughness Moody 1944; Hazen and Williams.",
          "Darcy y Weisbach con Colebrook 1939, rugosidad Moody 1944; Hazen y Williams."),
      List.of(
          Phrase.of(
              "Clean water in full pipe. Refused between Reynolds 2300 and 4000, where friction is not settled.",
              "Agua limpia en tubo lleno. Se rechaza entre Reynolds 2300 y 4000, donde la fricción no es fija."),
          Phrase.of(
              "The two forms differ by some percent in small pipe; Hazen and Williams is for turbulent flow only.",
              "Las dos formas difieren algo en tubo pequeño; Hazen y Williams es solo para flujo turbulento.")),
      PipeFriction::reckon);

  private static final double GRAVITY = 9.80665;
  private static final Quantity PLASTIC = Length.of(0.0015, Unit.MILLIMETRE);
  private static final Quantity COOL_WATER = Measure.of(1.131, Unit.SQUARE_MILLIMETRE_PER_SECOND);

  private PipeFriction() {}

  private static Outcome reckon(Inputs inputs) {
    Term rate = inputs.given("Q", RATE);
    Term inside = inputs.given("d", INSIDE);
    Term length = inputs.given("l", LENGTH);
    if (inputs.find(FITTINGS).isPresent()) length = length.plus(inputs.given("e", FITTINGS));
    Term run = length.named("L", RUN.label(), RUN.scale());
    Term velocity = Coefficient.giving(Scale.ENTRANCE_VELOCITY, 1 / Annulus.QUARTER_PI)
        .of(Scale.FLOW).of(Scale.DIAMETER, -2).term()
        .times(rate).over(inside.squared())
        .named("v", VELOCITY.label(), VELOCITY.scale());
    Term reynolds = Coefficient.giving(Scale.NUMBER, 1)
        .of(Scale.ENTRANCE_VELOCITY).of(Scale.DIAMETER).of(Scale.VISCOSITY, -1).term()
        .times(velocity).times(inside).over(inputs.given("ν", VISCOSITY, COOL_WATER))
        .named("Re", REYNOLDS.label(), REYNOLDS.scale());
    Term factor = factor(inputs, reynolds);
    Term darcy = Coefficient.giving(Scale.DEPTH, 1 / (2 * GRAVITY))
        .of(Scale.DEPTH).of(Scale.ENTRANCE_VELOCITY, 2).of(Scale.DIAMETER, -1).term()
        .times(factor).times(run).times(velocity.squared()).over(inside)
        .named("h", DARCY.label(), DARCY.scale());
    Term smoothness = inputs.given("C", HazenWilliams.SMOOTHNESS, HazenWilliams.PLASTIC);
    Term hazen = HazenWilliams.friction(rate, smoothness, inside, run).named("k", HAZEN.label(), HAZEN.scale());
    return Outcome.empty()
        .with(RUN.name(), run).with(VELOCITY.name(), velocity).with(REYNOLDS.name(), reynolds)
        .with(FACTOR.name(), factor).with(DARCY.name(), darcy).with(HAZEN.name(), hazen);
  }

  private static Term factor(Inputs inputs, Term reynolds) {
    double number = reynolds.in(UnitSystem.METRIC);
    if (number < Colebrook.LAMINAR) return Term.number(64).over(reynolds).named("f", FACTOR.label(), FACTOR.scale());
    if (number < Colebrook.TURBULENT) {
      throw new NotReckonable(
          "Reynolds number {0}: between {1} and {2} the flow goes to and fro and friction has no fixed value.",
          "Número de Reynolds {0}: entre {1} y {2} el flujo oscila y la fricción no tiene valor fijo.",
          Decimal.fixed(number, 0), Decimal.fixed(Colebrook.LAMINAR, 0), Decimal.fixed(Colebrook.TURBULENT, 0));
    }
    double roughness = inputs.find(ROUGHNESS).orElse(PLASTIC).coherent() / inputs.length(INSIDE).coherent();
    return Term.given("f", Phrase.of("{0}, by trial from Colebrook's equation", "{0}, por tanteo de Colebrook",
        FACTOR.label()), FACTOR.scale(), new Measure(Dimension.NUMBER, Colebrook.factor(number, roughness)));
  }
}
