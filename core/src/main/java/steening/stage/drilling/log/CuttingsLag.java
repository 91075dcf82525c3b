package steening.stage.drilling.log;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
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
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.fluid.UpHoleVelocity;

/**
 * How long cuttings take to the surface, how long the mud takes around, and how far the bit has gone on meanwhile.
 *
 * <p>T = z / (v − s); t = π/4 i² z / Q; C = t + z / v; e = r T; o = z − e. z bit depth, v up-hole velocity, s speed at
 * which cuttings fall through the mud, Q pump rate, i inside diameter of the rods, r penetration rate, o where the
 * cuttings come from.
 *
 * <p>Source: definitions (derived). Range: v more than s. Accuracy: that of the hole's diameter and of the pump rate;
 * the settling speed is seldom known, and cuttings smear, so the lag is a least.
 */
public final class CuttingsLag {
  static final QuantityField DEPTH = DrillingEntries.ROD_DEPTH.labelled("bit depth", "profundidad de la barrena");
  static final QuantityField ROD_INSIDE = DrillingEntries.ROD.named("rod-inside")
      .labelled("rod inside diameter", "diámetro interior de la tubería").optional();
  static final QuantityField SLIP = QuantityField.of(
          "slip", Scale.UPHOLE_VELOCITY,
          Phrase.of("settling speed of the cuttings", "velocidad de caída de los recortes"), "10 ft/min", "3 m/min")
      .between("0 ft/min", "500 ft/min").usually("0 ft/min", "80 ft/min").optional();
  static final QuantityField PENETRATION = DrillingEntries.PENETRATION;

  public static final Answer LAG =
      new Answer("lag", Phrase.of("lag time of the cuttings", "tiempo de retardo de los recortes"), Scale.MINUTES);
  static final Answer DOWN =
      new Answer("down-time", Phrase.of("time down the rods", "tiempo de bajada por la tubería"), Scale.MINUTES);
  static final Answer CYCLE = new Answer(
      "cycle", Phrase.of("once around, surface to surface", "una vuelta, de superficie a superficie"),
      Scale.MINUTES);
  static final Answer DEPTH_ERROR =
      new Answer("depth-error", Phrase.of("drilled on meanwhile", "avance mientras tanto"), Scale.DEPTH);
  public static final Answer CAME_FROM = new Answer(
      "came-from", Phrase.of("depth that the cuttings come from", "profundidad de donde vienen los recortes"),
      Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "cuttings-lag",
      DrillingStage.NAME,
      Phrase.of("Lag of the cuttings", "Retardo de los recortes"),
      List.of(DEPTH, UpHoleVelocity.RATE, UpHoleVelocity.HOLE, UpHoleVelocity.ROD, ROD_INSIDE, SLIP, PENETRATION),
      List.of(LAG, DOWN, CYCLE, DEPTH_ERROR, CAME_FROM),
      Source.derived("Definitions; geometry.", "Definiciones; geometría."),
      List.of(Phrase.of(
          "A hole in gauge; cuttings that settle or smear come later than this.",
          "Un barreno en calibre; los recortes que caen o se mezclan llegan más tarde.")),
      CuttingsLag::reckon);

  private static final Quantity NO_SLIP = Measure.of(0, Unit.FOOT_PER_MINUTE);

  private CuttingsLag() {}

  public static Outcome of(Drilling.Rig rig, Length depth) {
    return RECKONING.of(inputs(rig, depth));
  }

  /** With the penetration rate and the settling speed, as far as they are known. */
  public static Outcome of(
      Drilling.Rig rig, Length depth, Optional<Quantity> penetration, Optional<Quantity> slip) {
    Inputs known = inputs(rig, depth);
    Inputs faster = penetration.map(rate -> known.with(PENETRATION, rate)).orElse(known);
    return RECKONING.of(slip.map(s -> faster.with(SLIP, s)).orElse(faster));
  }

  private static Inputs inputs(Drilling.Rig rig, Length depth) {
    return Inputs.none()
        .with(DEPTH, depth)
        .with(UpHoleVelocity.RATE, rig.pumpRate())
        .with(UpHoleVelocity.HOLE, rig.bit())
        .with(UpHoleVelocity.ROD, rig.rod());
  }

  private static Outcome reckon(Inputs inputs) {
    Term velocity = UpHoleVelocity.velocity(inputs);
    Optional<Quantity> slip = inputs.find(SLIP).filter(s -> s.coherent() > 0);
    Term rising = slip.isPresent() ? velocity.minus(inputs.given("s", SLIP, NO_SLIP)) : velocity;
    if (slip.isPresent() && slip.get().coherent() >= velocity.quantity().coherent()) {
      throw new NotReckonable(
          "The cuttings settle as fast as the mud rises: they do not come up.",
          "Los recortes caen tan rápido como sube el lodo: no llegan arriba.");
    }
    Term depth = inputs.given("z", DEPTH);
    Term minutes = Coefficient.giving(Scale.MINUTES, 1).of(Scale.DEPTH).of(Scale.UPHOLE_VELOCITY, -1).term();
    Term lag = minutes.times(depth).over(rising).named("T", LAG.label(), LAG.scale());
    Outcome outcome = Outcome.empty().with(LAG.name(), lag);
    if (inputs.find(ROD_INSIDE).isPresent()) {
      Term down = Coefficient.giving(Scale.MINUTES, Annulus.QUARTER_PI)
          .of(Scale.DIAMETER, 2).of(Scale.DEPTH).of(Scale.FLOW, -1).term()
          .times(inputs.given("i", ROD_INSIDE).squared())
          .times(depth)
          .over(inputs.given("Q", UpHoleVelocity.RATE))
          .named("t", DOWN.label(), DOWN.scale());
      Term cycle = down.plus(minutes.times(depth).over(velocity)).named("C", CYCLE.label(), CYCLE.scale());
      outcome = outcome.with(DOWN.name(), down).with(CYCLE.name(), cycle);
    }
    if (inputs.find(PENETRATION).isEmpty()) return outcome;
    Term ahead = Coefficient.giving(Scale.DEPTH, 1).of(Scale.PENETRATION).of(Scale.MINUTES).term()
        .times(inputs.given("r", PENETRATION))
        .times(lag)
        .named("e", DEPTH_ERROR.label(), DEPTH_ERROR.scale());
    Outcome late = outcome.with(DEPTH_ERROR.name(), ahead);
    Term origin = depth.minus(ahead).named("o", CAME_FROM.label(), CAME_FROM.scale());
    // A bit that outruns the mud brings nothing up: then there is no depth to name.
    return origin.quantity().coherent() < 0 ? late : late.with(CAME_FROM.name(), origin);
  }
}
