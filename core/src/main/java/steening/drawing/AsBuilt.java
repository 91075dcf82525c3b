package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.Reach;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.well.CasingString;
import steening.well.Closing;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Levels;
import steening.well.MovedOver;
import steening.well.Plan;
import steening.well.Plugs;
import steening.well.PumpSet;
import steening.well.Screen;
import steening.well.Well;

/**
 * What of a well can be drawn, with the gaps closed by what is most likely.
 *
 * @param hole as drilled; empty before the first foot
 * @param pipe as set; of the planned diameter where none was measured
 * @param fills from the bottom up
 * @param intake depth of the pump's intake
 * @param plugs of a hole that is closed for good, from the bottom up
 * @param cut how far below ground its casing was cut
 */
record AsBuilt(
    Plan plan,
    GroundLog log,
    Bore hole,
    CasingString string,
    Bore pipe,
    List<FillReach> fills,
    Levels levels,
    Optional<Length> intake,
    List<PlugReach> plugs,
    Optional<Length> cut) {
  private static final Length USUAL_PIPE = Length.of(4.5, Unit.INCH);
  static final Length USUAL_HOLE = Length.of(7.875, Unit.INCH);

  AsBuilt {
    fills = List.copyOf(fills);
    plugs = List.copyOf(plugs);
  }

  static AsBuilt of(Well well) {
    Plan plan = well.get(Plan.PART);
    Bore hole = well.get(Hole.PART).bore();
    CasingString string = well.get(CasingString.PART);
    Optional<Closing> closing = well.get(Plugs.PART).closing();
    Bore pipe = pipe(string, plan, closing);
    // a hole that is given up or closed is not built to its plan any more
    boolean over = closing.isPresent() || well.get(MovedOver.AWAY).isPresent();
    Optional<Length> inside = closing.flatMap(Closing::inside).or(string::inside).or(plan::casingInside);
    if (over && !pipe.isEmpty() && inside.isPresent()) {
      string = string.of(pipe.reaches().get(0).diameter(), inside.get());
    }
    return new AsBuilt(
        over ? Plan.PART.empty() : plan, well.get(GroundLog.PART), hole, string, pipe, fills(well, plan, hole, pipe),
        well.get(Levels.PART),
        closing.isPresent() ? Optional.empty() : well.get(PumpSet.PART).map(PumpSet::setting), PlugReach.of(well),
        pipe.isEmpty() ? Optional.empty() : closing.flatMap(Closing::cut));
  }

  private static Bore pipe(CasingString string, Plan plan, Optional<Closing> closing) {
    if (string.bottom().isEmpty() || closing.filter(c -> c.pipe() == Closing.Casing.REMOVED).isPresent()) {
      return Bore.NONE;
    }
    Length top = closing.flatMap(Closing::cut).orElse(Length.ZERO.minus(string.stickUp().orElse(Length.ZERO)));
    if (!string.bottom().get().isMoreThan(top)) return Bore.NONE;
    Length outside = string.outside().or(() -> plan.length(Plan.CASING_OUTSIDE)).orElse(USUAL_PIPE);
    return Bore.straight(outside, top, string.bottom().get());
  }

  private static List<FillReach> fills(Well well, Plan plan, Bore hole, Bore pipe) {
    Annulus annulus = new Annulus(hole, pipe);
    Length bottom = hole.isEmpty() ? plan.length(Plan.DEPTH).orElse(pipe.bottom()) : hole.bottom();
    List<FillReach> fills = new ArrayList<>();
    for (Filling filling : Filling.values()) {
      Length from = bottom;
      if (!fills.isEmpty()) from = fills.get(fills.size() - 1).top();
      else if (filling != Filling.PACK) from = filling.plannedBottom(plan).orElse(bottom);
      FillReach.of(filling, well.get(filling.part()), annulus, from).ifPresent(fills::add);
    }
    return fills;
  }

  /** The string while it is lowered, from the ground down; none before its first piece, or once it is set. */
  Bore hanging() {
    if (string.isSet() || !string.length().isMoreThan(Length.ZERO)) return Bore.NONE;
    Length outside = string.outside().or(() -> plan.length(Plan.CASING_OUTSIDE)).orElse(USUAL_PIPE);
    return Bore.straight(outside, Length.ZERO, string.length());
  }

  /** The planned pipe; none where the plan gives it no length. */
  Bore plannedPipe() {
    Length stickUp = plan.length(Plan.STICK_UP).orElse(Length.ZERO);
    boolean hasLength = plan.stringBottom().filter(bottom -> bottom.plus(stickUp).isMoreThan(Length.ZERO)).isPresent();
    return hasLength ? plan.pipe() : Bore.NONE;
  }

  /** Where its ends are planned and in order. */
  Optional<Screen> plannedScreen() {
    Optional<Length> bottom = plan.length(Plan.SCREEN_BOTTOM);
    return plan.length(Plan.SCREEN_TOP).filter(top -> bottom.isPresent() && bottom.get().isMoreThan(top))
        .map(top -> new Screen(top, bottom.get(), ""));
  }

  /** What the plan still wants drilled; nothing once a string is set. */
  Optional<Reach> restToDrill() {
    boolean known = plan.length(Plan.HOLE).isPresent() && plan.length(Plan.DEPTH).isPresent();
    if (!known || string.isSet()) return Optional.empty();
    Length depth = plan.length(Plan.DEPTH).get();
    if (!depth.isMoreThan(hole.bottom().max(Length.ZERO))) return Optional.empty();
    return Optional.of(new Reach(hole.bottom().max(Length.ZERO), depth, plan.length(Plan.HOLE).get()));
  }

  /** What the plan still wants filled with something, above whatever is there; at its top as wide as the hole. */
  Optional<Reach> restToFill(Filling filling) {
    Optional<Length> top = filling.plannedTop(plan);
    Optional<Length> there = fills.stream().map(FillReach::top).min(Length::compareTo);
    Optional<Length> bottom = filling.plannedBottom(plan).map(planned -> planned.min(there.orElse(planned)));
    if (top.isEmpty() || bottom.isEmpty() || !bottom.get().isMoreThan(top.get())) return Optional.empty();
    return Optional.of(new Reach(top.get(), bottom.get(), holeBetween(top.get(), bottom.get()).get(0).diameter()));
  }

  /** Whether something lies on it already, so that no more of it will come. */
  boolean isCovered(Filling filling) {
    return fills.stream().anyMatch(f -> f.filling().compareTo(filling) > 0);
  }

  Optional<FillReach> fill(Filling filling) {
    return fills.stream().filter(f -> f.filling() == filling).findFirst();
  }

  /** The hole between two depths; of the planned diameter, or a usual one, where it was not drilled. */
  List<Reach> holeBetween(Length from, Length to) {
    Length planned = plan.length(Plan.HOLE).orElse(USUAL_HOLE);
    List<Reach> reaches = new ArrayList<>();
    Length top = from;
    for (Reach reach : hole.reaches()) {
      if (!reach.to().isMoreThan(top) || !reach.from().isLessThan(to)) continue;
      if (reach.from().isMoreThan(top)) reaches.add(new Reach(top, reach.from(), planned));
      Length end = reach.to().min(to);
      reaches.add(new Reach(reach.from().max(top), end, reach.diameter()));
      top = end;
    }
    if (to.isMoreThan(top)) reaches.add(new Reach(top, to, planned));
    return reaches;
  }
}
