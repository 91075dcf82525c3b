package steening.stage.decommissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.well.CasingString;
import steening.well.Closing;
import steening.well.Hole;
import steening.well.MovedOver;
import steening.well.Plan;
import steening.well.Plug;
import steening.well.Plugs;
import steening.well.Well;

/**
 * One hole that has to be closed, or is.
 *
 * @param bore what is to be filled: the hole, or the inside of a casing that stays and the hole below it
 * @param bottom of what can be reached
 */
record Plugging(Well hole, Plugs plugs, Bore bore, Length bottom) {
  /** The casing comes off, and the plug may end, so far below ground (Ohio 3745-9-10(C)(2)(a), seen). */
  static final Length BELOW_GROUND = Length.feet(3);

  /** Two soundings, or a sounding and a stretch as meant, agree as well as this (common practice, no source). */
  static final Length AGREES = Length.of(0.5, Unit.FOOT);

  static final String TOP = "top";
  private static final Phrase PUT_IN = Phrase.of("put in", "vertido");

  /** Part of a hole with nothing in it. */
  record Stretch(Length from, Length to) {}

  static Plugging of(Well hole) {
    Plugs plugs = hole.get(Plugs.PART);
    Bore bore = bore(hole, plugs.closing());
    Length deepest = bore.bottom();
    return new Plugging(hole, plugs, bore, plugs.closing().flatMap(Closing::obstruction).orElse(deepest).min(deepest));
  }

  /** Every hole of the job that was given up, or that somebody began to close. */
  static List<Plugging> all(Well well) {
    List<Plugging> all = new ArrayList<>();
    for (Well hole : well.earlier()) all.add(of(hole));
    boolean here = well.get(MovedOver.AWAY).isPresent() || well.get(Plugs.PART).isBegun();
    if (here) all.add(of(well));
    return all;
  }

  /** The hole that an entry without a number means: the last one that is open and should not be, else this one. */
  static int meant(Well well) {
    int meant = well.number();
    for (Well hole : well.earlier()) if (!of(hole).isDone()) meant = hole.number();
    return meant;
  }

  private static Bore bore(Well hole, Optional<Closing> closing) {
    Bore drilled = hole.get(Hole.PART).bore();
    CasingString string = hole.get(CasingString.PART);
    Optional<Length> inside = closing.flatMap(Closing::inside).or(string::inside)
        .or(() -> hole.get(Plan.PART).casingInside());
    boolean stays = closing.map(c -> c.pipe() == Closing.Casing.LEFT).orElse(string.isSet());
    if (!stays || inside.isEmpty()) return drilled;
    Length end = string.bottom().orElse(drilled.bottom());
    if (!end.isMoreThan(Length.ZERO)) return drilled;
    return Bore.straight(inside.get(), Length.ZERO, end);
  }

  /** How far up it has to be filled. */
  Length upTo() {
    return plugs.closing().flatMap(Closing::cut).orElse(BELOW_GROUND).max(BELOW_GROUND);
  }

  /** Filled from the bottom that can be reached to near the ground, with no gap, and something to close it known. */
  boolean isDone() {
    return !plugs.plugs().isEmpty() && bottom.isMoreThan(Length.ZERO) && open().isEmpty();
  }

  /** The stretches that are still open, from the bottom up. */
  List<Stretch> open() {
    List<Stretch> open = new ArrayList<>();
    Length filled = bottom;
    for (Plug plug : plugs.upward()) {
      if (filled.minus(AGREES).isMoreThan(plug.to())) open.add(new Stretch(plug.to(), filled));
      filled = filled.min(plug.top());
    }
    if (filled.minus(AGREES).isMoreThan(upTo())) open.add(new Stretch(upTo(), filled));
    return open;
  }

  /** Where a plug should stand by what was put in before its tape was read, or until now. */
  Optional<Outcome> expectedTop(Plug plug, Volume putIn) {
    Phrase label = Phrase.of("expected top of the plug", "tope esperado del tapón");
    return Outcome.ifReckonable(() -> Outcome.empty().with(
        TOP, new Annulus(bore, Bore.NONE).top("z", label, plug.to(), Term.given("V", PUT_IN, Scale.VOLUME, putIn))));
  }

  /** What closes a stretch with bags like those that went in. */
  Optional<Outcome> needed(Plug plug) {
    if (plug.fill().bags() == 0) return Optional.empty();
    Volume bag = plug.fill().volume().times(1.0 / plug.fill().bags());
    if (!(bag.cubicMetres() > 0)) return Optional.empty();
    return Outcome.ifReckonable(
        () -> PlugVolume.of(bore, plug.from(), plug.to(), Filler.bag(bag), PlugVolume.TEN_PERCENT));
  }

  String number() {
    return Integer.toString(hole.number());
  }
}
