package steening.stage.drilling.ahead;

import java.util.Optional;
import steening.ground.GoingOn;
import steening.ground.Outlook;
import steening.ground.SandAhead;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.drilling.DrillingFold;
import steening.well.CasingString;
import steening.well.GroundLog;
import steening.well.Plan;
import steening.well.Stratum;
import steening.well.Well;

/**
 * Where the hole stands between what was forecast and what was agreed, while it is still drilled.
 *
 * @param logged how deep the log goes: only logged ground says that the sand is not there
 * @param drilled how deep the hole is
 * @param wanted the sand the well is drilled for, where anything is expected of it
 * @param next the first sand below that
 * @param met whether sand was logged that can be the wanted one, or one below it
 */
record Ahead(
    Plan plan, Length logged, Length drilled, Optional<Outlook> wanted, Optional<Outlook> next, boolean met) {
  /** The usual rod; common practice, no source. */
  static final Length A_ROD = Length.feet(20);

  /** With less of a chance than one in ten nobody drills on unasked. A judgement, no source. */
  private static final double WORTH_A_ROD = 0.1;

  /** Depths to drill to are agreed in steps of so many feet. Common practice, no source. */
  private static final double STEP_FT = 5;

  /** Nothing once something was lowered: the hole is as deep as it will be. */
  static Optional<Ahead> of(Well well) {
    if (!well.get(CasingString.PART).pieces().isEmpty()) return Optional.empty();
    GroundLog log = well.get(GroundLog.PART);
    Length logged = log.bottom();
    Length drilled = DrillingFold.depthSoFar(well);
    Optional<Outlook> wanted = Outlook.of(well, Outlook.WANTED);
    Length shallow = wanted.map(Outlook::shallow).orElse(Length.ZERO);
    boolean met = log.strata().stream().anyMatch(s -> isSand(s) && s.to().isMoreThan(shallow));
    return Optional.of(
        new Ahead(well.get(Plan.PART), logged, drilled, wanted, Outlook.next(well, logged), met));
  }

  static boolean isSand(Stratum stratum) {
    return stratum.material().givesWater() || stratum.waterBearing() && !stratum.material().isTight();
  }

  /** Below the interval that holds nine times in ten, and no sand. */
  boolean isPassed() {
    return !met && wanted.map(w -> logged.isMoreThan(w.deep())).orElse(false);
  }

  Optional<Length> agreed() {
    return plan.length(Plan.AUTHORISED);
  }

  /** Whether the next sand is expected deeper than the customer agreed to. */
  boolean isNextTooDeep() {
    return next.isPresent() && agreed().map(a -> next.get().likely().isMoreThan(a)).orElse(false);
  }

  /** How deep one has to go to have the next sand nineteen times in twenty, if it is there. */
  Optional<Length> goal() {
    return next.map(n -> Length.of(Math.ceil(n.deep().in(Unit.FOOT) / STEP_FT) * STEP_FT, Unit.FOOT));
  }

  /** What the feet to the next sand cost, and by expected value whether they are worth it. */
  Optional<Outcome> toNext() {
    return goal().flatMap(goal -> GoingOn.of(plan, logged, goal, next.map(Outlook::chance)));
  }

  Length rodDown() {
    return logged.plus(A_ROD);
  }

  /** The same for one more rod after the wanted sand. */
  Optional<Outcome> oneRod() {
    return oneRod(logged);
  }

  private Optional<Outcome> oneRod(Length from) {
    Length to = from.plus(A_ROD);
    Optional<Quantity> chance = wanted.flatMap(w -> w.ahead(from, to)).map(o -> o.quantity("found-by"));
    return GoingOn.of(plan, from, to, chance);
  }

  /**
   * The depth at which the customer must be called, if the wanted sand has not come. Where the next one lies deeper
   * than agreed that is the first foot below the forecast at which another rod is not worth it; else the depth agreed.
   */
  Optional<Length> callAt() {
    if (wanted.isEmpty() || !isNextTooDeep()) return agreed();
    Length depth = Length.of(Math.ceil(wanted.get().deep().in(Unit.FOOT)), Unit.FOOT);
    while (depth.isLessThan(agreed().get()) && isWorthARod(depth)) depth = depth.plus(Length.feet(1));
    return agreed().map(depth::min);
  }

  boolean isTimeToCall() {
    return isNextTooDeep() && callAt().map(depth -> !logged.isLessThan(depth)).orElse(false);
  }

  /** By expected value where the plan has the prices; else by the chance that is left. */
  private boolean isWorthARod(Length from) {
    Optional<Outcome> balance = oneRod(from).filter(o -> o.shown(GoingOn.BALANCE.name()).isPresent());
    if (balance.isPresent()) return balance.get().quantity(GoingOn.BALANCE.name()).coherent() > 0;
    return wanted.flatMap(w -> w.ahead(from))
        .map(left -> left.quantity(SandAhead.AHEAD.name()).coherent() >= WORTH_A_ROD)
        .orElse(false);
  }
}
