package steening.stage.drilling.log;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.ground.SettlingVelocity;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Dimension;
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
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.fluid.UpHoleVelocity;

/**
 * How fast a cutting falls back through the mud, and whether the mud still lifts it.
 *
 * <p>ν = m − 25; R = (G ρ − W) / W; w as in {@link SettlingVelocity} with R for G − 1; s = w; r = v − s. m Marsh
 * funnel, G specific gravity of the cutting and x its size, ρ density of water, W mud weight, v up-hole velocity, r
 * speed at which it rises.
 *
 * <p>Source: Ferguson and Church 2004; the funnel as a viscosity by Pitt 2000 (both from memory). Range: single grains;
 * a funnel above 26 s/qt; water of 10 °C where neither funnel nor viscosity is given. Accuracy: 25 % in water, a factor
 * of two in mud, whose gel holds cuttings up: this is a most.
 */
public final class CuttingsSlip {
  static final QuantityField SIZE =
      QuantityField.of("size", Scale.GRAIN, Phrase.of("size of a cutting", "tamaño de un recorte"), "2 mm", "2 mm")
          .between("0.01 mm", "150 mm").usually("0.07 mm", "40 mm");
  static final QuantityField FUNNEL = DrillingEntries.MUD_FUNNEL;
  static final QuantityField VISCOSITY = QuantityField.of(
          "viscosity", Scale.VISCOSITY,
          Phrase.of("kinematic viscosity, if known better", "viscosidad cinemática, si se conoce mejor"), "13 mm2/s",
          "13 mm2/s")
      .between("0.5 mm2/s", "1000 mm2/s").usually("0.7 mm2/s", "100 mm2/s").optional();
  static final QuantityField WEIGHT = DrillingEntries.MUD_WEIGHT.optional();
  static final QuantityField GRAVITY = QuantityField.of(
          "specific-gravity", Scale.NUMBER, Phrase.of("specific gravity of it", "su densidad relativa"), "2.65", "2.65")
      .between("1.1", "8").usually("2", "3.2").optional();
  static final QuantityField RATE = UpHoleVelocity.RATE.optional();
  static final QuantityField HOLE = UpHoleVelocity.HOLE.optional();
  static final QuantityField ROD = UpHoleVelocity.ROD.optional();

  static final Answer THICKNESS =
      new Answer("viscosity", Phrase.of("viscosity by the funnel", "viscosidad según el embudo"), Scale.VISCOSITY);
  static final Answer SLIP =
      new Answer("slip", Phrase.of("settling speed of the cuttings", "velocidad de caída de los recortes"),
          Scale.UPHOLE_VELOCITY);
  static final Answer RISING =
      new Answer("rising", Phrase.of("speed at which it rises", "velocidad con que sube"), Scale.UPHOLE_VELOCITY);

  public static final Reckoning RECKONING = new Reckoning(
      "cuttings-slip",
      DrillingStage.NAME,
      Phrase.of("Slip of the cuttings", "Caída de los recortes en el lodo"),
      List.of(SIZE, FUNNEL, VISCOSITY, WEIGHT, GRAVITY, RATE, HOLE, ROD),
      List.of(THICKNESS, SLIP, RISING),
      Source.memory(
          "Ferguson and Church (2004) for the fall of natural grains; Pitt (2000) for the viscosity by the funnel.",
          "Ferguson y Church (2004) para la caída de granos naturales; Pitt (2000) para la viscosidad del embudo."),
      List.of(
          Phrase.of(
              "Single round grains; flat ones and crowds fall slower. Water of 10 °C where no funnel is given.",
              "Granos sueltos y redondos; los planos o en masa caen más lento. Agua a 10 °C si no se da el embudo."),
          Phrase.of(
              "Mud is thicker at rest than in the funnel, so that this is the most; good to a factor of two.",
              "El lodo en reposo es más espeso que en el embudo: esto es lo más; bueno al doble o la mitad.")),
      CuttingsSlip::reckon);

  private static final double WATER_SECONDS = 25;
  private static final double MM2_S = 1e-6;
  private static final Quantity COLD_WATER = Measure.of(1.3, Unit.SQUARE_MILLIMETRE_PER_SECOND);
  private static final Quantity QUARTZ = new Measure(Dimension.NUMBER, 2.65);

  private CuttingsSlip() {}

  /** For cuttings whose size was told; nothing without it. */
  static Optional<Outcome> of(Drilling.Cuttings caught) {
    return caught.size().flatMap(size -> {
      Inputs inputs = Inputs.none().with(SIZE, size);
      Inputs muddy = caught.mud().map(m -> inputs.with(WEIGHT, m.weight())).orElse(inputs);
      Inputs thick =
          caught.mud().flatMap(Drilling.Mud::funnel).map(f -> muddy.with(FUNNEL, f)).orElse(muddy);
      Inputs rigged = caught.rig().map(
              r -> thick.with(RATE, r.pumpRate()).with(HOLE, r.bit()).with(ROD, r.rod())).orElse(thick);
      return Outcome.ifReckonable(() -> RECKONING.of(rigged));
    });
  }

  static boolean isLifted(Outcome slip) {
    return slip.answers().containsKey(RISING.name());
  }

  private static Outcome reckon(Inputs inputs) {
    Term weight = inputs.given("W", WEIGHT, Buoyancy.WATER);
    Term water = Term.given("ρ", Phrase.of("density of water", "densidad del agua"), Scale.DENSITY, Buoyancy.WATER);
    Term heavier = inputs.given("G", GRAVITY, QUARTZ).times(water).minus(weight).over(weight)
        .named("R", Phrase.of("heavier than the mud by", "más denso que el lodo en"), Scale.NUMBER);
    if (!(heavier.quantity().coherent() > 0)) {
      throw new NotReckonable(
          "Mud as heavy as the cutting carries it: it does not fall.",
          "El lodo es tan denso como el recorte: no cae.");
    }
    Outcome outcome = Outcome.empty();
    Term viscosity = viscosity(inputs);
    if (inputs.find(VISCOSITY).isEmpty() && inputs.find(FUNNEL).isPresent()) {
      outcome = outcome.with(THICKNESS.name(), viscosity);
    }
    Term fall = SettlingVelocity.velocity(inputs.given("x", SIZE), heavier, viscosity, SettlingVelocity.SAND_DRAG);
    Term slip = Coefficient.giving(Scale.UPHOLE_VELOCITY, 1).of(Scale.ENTRANCE_VELOCITY).term().times(fall)
        .named("s", SLIP.label(), SLIP.scale());
    outcome = outcome.with(SLIP.name(), slip);
    return inputs.find(RATE).isPresent() && inputs.find(HOLE).isPresent() && inputs.find(ROD).isPresent()
        ? lifted(outcome, inputs, slip) : outcome;
  }

  private static Term viscosity(Inputs inputs) {
    if (inputs.find(VISCOSITY).isPresent()) return inputs.given("ν", VISCOSITY);
    if (inputs.find(FUNNEL).isEmpty()) {
      Phrase label = Phrase.of("kinematic viscosity of water at 10 °C", "viscosidad cinemática del agua a 10 °C");
      return Term.given("ν", label, Scale.VISCOSITY, COLD_WATER);
    }
    if (!(inputs.amount(FUNNEL).in(Unit.FUNNEL_SECOND) > WATER_SECONDS)) {
      throw new NotReckonable(
          "Clean water runs through the funnel in 26 s; less is a misreading.",
          "El agua limpia pasa por el embudo en 26 s; menos es una lectura errada.");
    }
    return Coefficient.giving(Scale.VISCOSITY, MM2_S).of(Scale.FUNNEL).term()
        .times(inputs.given("m", FUNNEL).minus(Term.number(WATER_SECONDS)))
        .named("ν", THICKNESS.label(), THICKNESS.scale());
  }

  private static Outcome lifted(Outcome outcome, Inputs inputs, Term slip) {
    Term velocity = UpHoleVelocity.velocity(Inputs.none()
        .with(UpHoleVelocity.RATE, inputs.value(RATE)).with(UpHoleVelocity.HOLE, inputs.value(HOLE))
        .with(UpHoleVelocity.ROD, inputs.value(ROD)));
    Term rising = velocity.minus(slip).named("r", RISING.label(), RISING.scale());
    if (rising.quantity().coherent() > 0) return outcome.with(RISING.name(), rising);
    return outcome.remarking(Phrase.of(
        "Cuttings of this size fall as fast as the mud rises: they do not come up.",
        "Los recortes de este tamaño caen tan rápido como sube el lodo: no llegan arriba."));
  }
}
