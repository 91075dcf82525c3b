package steening.stage.casing;

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
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Well;

/**
 * How fast the water enters the screen, and what the screen can pass at the velocity that is not to be exceeded.
 *
 * <p>v = Q / (o f); C = V o f; half of it with half the openings blocked; f₁ = Q / (V o). For a continuous slot
 * o = π D s / (s + w). Q rate, o open area per length, f screen length, V limit, D outside diameter, s slot, w wire
 * width.
 *
 * <p>Source: limit 0.1 ft/s: TI 814-01 (US Army, 1998) page 5-16, Montana ARM 36.21.652 and Louisiana LAC 56:I.331 (all
 * seen). Other views reach from 2 ft/min to 1.5 ft/s: rules are not to be mixed. The open area is the maker's figure;
 * half blocked by pack grains is practice (memory). Range: even inflow is assumed; short screens draw unevenly.
 */
public final class EntranceVelocity {
  static final QuantityField RATE = Plan.RATE;
  static final QuantityField LENGTH = CasingEntries.SCREEN_LENGTH;
  static final QuantityField OPEN_AREA = Plan.OPEN_AREA;
  static final QuantityField OUTSIDE =
      CasingEntries.OUTSIDE.labelled("screen outside diameter", "diámetro exterior de la rejilla");
  static final QuantityField SLOT = Plan.SLOT.optional();
  static final QuantityField WIRE = QuantityField.of(
          "wire", Scale.DIAMETER, Phrase.of("wire width of a continuous slot", "ancho del alambre de ranura continua"),
          "0.090 in", "2.3 mm")
      .between("0.005 in", "1 in").usually("0.03 in", "0.3 in").optional();
  static final QuantityField LIMIT = QuantityField.of(
          "limit", Scale.ENTRANCE_VELOCITY,
          Phrase.of("velocity not to be exceeded", "velocidad que no se debe rebasar"), "0.1 ft/s", "0.03 m/s")
      .between("0.001 ft/s", "5 ft/s").usually("0.01 ft/s", "1.5 ft/s").optional();

  /** The default; see the source above. */
  public static final Quantity USUAL_LIMIT = Measure.of(0.1, Unit.FOOT_PER_SECOND);

  static final Answer VELOCITY =
      new Answer("velocity", Phrase.of("entrance velocity", "velocidad de entrada"), Scale.ENTRANCE_VELOCITY);
  static final Answer CAPACITY = new Answer(
      "capacity", Phrase.of("what the screen passes at the limit", "lo que deja pasar la rejilla en el límite"),
      Scale.FLOW);
  static final Answer HALF =
      new Answer("capacity-half-blocked", Phrase.of("the same, half blocked", "lo mismo, medio tapada"), Scale.FLOW);
  static final Answer NEEDED =
      new Answer("length-needed", Phrase.of("screen length needed", "longitud de rejilla necesaria"), Scale.DEPTH);
  static final Answer OPEN = new Answer("open-area", Plan.OPEN_AREA.label(), Scale.OPEN_AREA);
  static final Answer SHARE =
      new Answer("open-share", Phrase.of("open share of the wall", "parte abierta de la pared"), Scale.SHARE);

  static final Reckoning RECKONING = new Reckoning(
      "entrance-velocity",
      CasingStage.NAME,
      Phrase.of("Entrance velocity", "Velocidad de entrada"),
      List.of(RATE, LENGTH, OPEN_AREA, OUTSIDE, SLOT, WIRE, LIMIT),
      List.of(VELOCITY, CAPACITY, HALF, NEEDED, OPEN, SHARE),
      Source.seen(
          "Limit 0.1 ft/s: TI 814-01 (US Army, 1998) p. 5-16; Montana ARM 36.21.652; Louisiana LAC 56:I.331.",
          "Límite 0.1 ft/s: TI 814-01 (US Army, 1998) p. 5-16; Montana ARM 36.21.652; Luisiana LAC 56:I.331."),
      List.of(Phrase.of(
          "Even inflow. The open area is the maker's figure; pack grains block about half of it.",
          "Entrada pareja. El área abierta es la del fabricante; los granos del filtro tapan cerca de la mitad.")),
      EntranceVelocity::reckon);

  private EntranceVelocity() {}

  /** At the planned rate, through the screens lowered so far, by the smallest open area any of them has. */
  static Optional<Outcome> at(Well well) {
    Plan plan = well.get(Plan.PART);
    Length screen = well.get(CasingString.PART).length(Piece.Sort.SCREEN);
    Optional<Quantity> open = well.get(Tally.PART).openings().stream()
        .flatMap(o -> o.openArea().stream())
        .min((a, b) -> Double.compare(a.coherent(), b.coherent()))
        .or(() -> plan.amount(Plan.OPEN_AREA));
    if (open.isEmpty() || plan.rate().isEmpty() || !screen.isMoreThan(Length.ZERO)) return Optional.empty();
    Inputs inputs = Inputs.none().with(RATE, plan.rate().get()).with(LENGTH, screen).with(OPEN_AREA, open.get())
        .with(LIMIT, limit(plan));
    return Outcome.ifReckonable(() -> RECKONING.of(inputs));
  }

  /** The firm's own, where the plan has one. */
  public static Quantity limit(Plan plan) {
    return plan.amount(Plan.ENTRANCE_LIMIT).orElse(USUAL_LIMIT);
  }

  private static Outcome reckon(Inputs inputs) {
    Term rate = inputs.given("Q", RATE);
    Term length = inputs.given("f", LENGTH);
    Term limit = inputs.given("V", LIMIT, USUAL_LIMIT);
    Term open = inputs.find(OPEN_AREA).isPresent() ? inputs.given("o", OPEN_AREA) : continuousSlot(inputs);
    Term flow = Coefficient.giving(Scale.FLOW, 1).of(Scale.ENTRANCE_VELOCITY).of(Scale.OPEN_AREA).of(Scale.DEPTH)
        .term();
    Term velocity = rate.over(flow.times(open).times(length)).named("v", VELOCITY.label(), VELOCITY.scale());
    Term capacity = flow.times(limit).times(open).times(length).named("C", CAPACITY.label(), CAPACITY.scale());
    Outcome outcome = Outcome.empty()
        .with(VELOCITY.name(), velocity)
        .with(CAPACITY.name(), capacity)
        .with(HALF.name(), capacity.over(2).named("C₂", HALF.label(), HALF.scale()))
        .with(NEEDED.name(), rate.over(flow.times(limit).times(open)).named("f₁", NEEDED.label(), NEEDED.scale()))
        .with(OPEN.name(), open);
    return isContinuousSlot(inputs) ? outcome.with(SHARE.name(), share(inputs)) : outcome;
  }

  private static boolean isContinuousSlot(Inputs inputs) {
    return inputs.find(SLOT).isPresent() && inputs.find(WIRE).isPresent();
  }

  private static Term continuousSlot(Inputs inputs) {
    if (inputs.find(OUTSIDE).isEmpty() || !isContinuousSlot(inputs)) {
      throw new NotReckonable(
          "Give the open area, or the outside diameter, slot and wire width of a continuous-slot screen.",
          "Dé el área abierta, o diámetro exterior, ranura y ancho del alambre de una rejilla de ranura continua.");
    }
    return Coefficient.giving(Scale.OPEN_AREA, 4 * Annulus.QUARTER_PI).of(Scale.DIAMETER).of(Scale.SHARE).term()
        .times(inputs.given("D", OUTSIDE))
        .times(share(inputs))
        .named("o", OPEN.label(), OPEN.scale());
  }

  /** Slot over slot and wire; both read in inches or millimetres here, whatever the slot's own unit. */
  private static Term share(Inputs inputs) {
    Term slot = Term.given("s", SLOT.label(), Scale.DIAMETER, inputs.length(SLOT));
    return Coefficient.giving(Scale.SHARE, 1).of(Scale.NUMBER).term()
        .times(slot)
        .over(slot.plus(inputs.given("w", WIRE)))
        .named("q", SHARE.label(), SHARE.scale());
  }
}
