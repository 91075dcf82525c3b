package steening.stage.casing;

import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Well;

/**
 * What is still to be lowered for the string to end where it is planned, so that the cut piece is known before the saw.
 *
 * @param string length of the planned string: planned bottom and stick-up
 * @param lowered what hangs already
 * @param sump still to come
 * @param screen still to come
 * @param joint laying length of a joint: the mean of those measured, or 20 ft
 */
record ToCome(Length string, Length lowered, Length sump, Length screen, Length joint) {
  /** Common practice, no source. */
  static final Length USUAL_JOINT = Length.feet(20);

  /** A piece that is shorter than planned by less than this is not waited for. */
  static final Length AGREES = Length.of(0.5, Unit.FOOT);

  /** Less than a saw cut is nothing. */
  private static final Length NOTHING = Length.of(0.05, Unit.FOOT);

  private static final Phrase CASING = Phrase.of("casing still to come", "ademe que falta");
  private static final Phrase JOINTS = Phrase.of("whole joints that fit", "tubos enteros que caben");
  private static final Phrase CUT_PIECE = CasingEntries.CUT_PIECE_LENGTH.label();

  /** Empty where no plan says where the string is to end. */
  static Optional<ToCome> of(Well well) {
    Plan plan = well.get(Plan.PART);
    CasingString string = well.get(CasingString.PART);
    Length stickUp = plan.length(Plan.STICK_UP).orElse(Length.ZERO);
    Length screen = plan.length(Plan.SCREEN_BOTTOM)
        .flatMap(bottom -> plan.length(Plan.SCREEN_TOP).map(bottom::minus)).orElse(Length.ZERO);
    return plan.stringBottom().map(bottom -> new ToCome(
        bottom.plus(stickUp),
        string.length(),
        missing(plan.length(Plan.SUMP).orElse(Length.ZERO), string.length(Piece.Sort.SUMP)),
        missing(screen, string.length(Piece.Sort.SCREEN)),
        meanJoint(string)));
  }

  Length casing() {
    return string.minus(lowered).minus(sump).minus(screen);
  }

  boolean isComplete() {
    return !casing().isMoreThan(NOTHING);
  }

  long joints() {
    return Math.max(0, casing().nanometres() / joint.nanometres());
  }

  /** The answers {@code casing}, {@code joints} and {@code cut-piece}. */
  Outcome outcome() {
    Term rest = given("S", Phrase.of("planned string", "columna planeada"), string)
        .minus(given("K", Phrase.of("lowered so far", "bajado hasta ahora"), lowered));
    if (sump.isMoreThan(Length.ZERO)) rest = rest.minus(given("u", Plan.SUMP.label(), sump));
    if (screen.isMoreThan(Length.ZERO)) rest = rest.minus(given("f", CasingEntries.SCREEN_LENGTH.label(), screen));
    Term casing = rest.named("R", CASING, Scale.DEPTH);
    Term joints = Inputs.count("n", JOINTS, joints());
    Term cut = casing
        .minus(joints.times(given("l", Phrase.of("laying length of a joint", "longitud útil de un tubo"), joint)))
        .named("c", CUT_PIECE, Scale.DEPTH);
    return Outcome.empty().with("casing", casing).with("joints", joints).with("cut-piece", cut);
  }

  private static Length missing(Length planned, Length lowered) {
    Length missing = planned.minus(lowered).max(Length.ZERO);
    return missing.isMoreThan(AGREES) || lowered.equals(Length.ZERO) ? missing : Length.ZERO;
  }

  private static Length meanJoint(CasingString string) {
    long joints = string.count(Piece.Sort.JOINT);
    if (joints == 0) return USUAL_JOINT;
    Length mean = new Length(string.length(Piece.Sort.JOINT).nanometres() / joints);
    return mean.isMoreThan(Length.ZERO) ? mean : USUAL_JOINT;
  }

  private static Term given(String symbol, Phrase label, Length length) {
    return Term.given(symbol, label, Scale.DEPTH, length);
  }
}
