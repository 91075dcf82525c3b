package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Reach;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.pipe.Collapse;
import steening.quantity.Density;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Mass;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Plan;
import steening.well.Well;

/**
 * What liquid grout does to the casing: presses it in, and lifts it where its bottom is closed. Until somebody says
 * what is in it, the casing is taken as full of water, as it should be kept.
 *
 * @param column height of the grout
 * @param thickness of the grout beside the casing, where the hole is widest, as drilled or as found
 */
record CasingLoad(
    Recipe recipe, Density grout, Length outside, Length inside, Length column, Length thickness, boolean isClosed,
    double safety, Optional<Readiness> readiness) {
  /**
   * Cement warms the casing by 17 to 26 °F round 1.5 in of grout, and up to 180 °F in a washout: Johnson, Kurt and
   * Dunham 1980, Ground Water (abstract, seen). Taken: 26 °F above the 73 °F of the ratings.
   */
  private static final Quantity WARMED = Measure.of(99, Unit.FAHRENHEIT);

  static Optional<CasingLoad> of(Well well) {
    CasingString string = well.get(CasingString.PART);
    Plan plan = well.get(Plan.PART);
    Optional<Length> outside = string.outside().or(() -> plan.length(Plan.CASING_OUTSIDE));
    Optional<Length> inside = string.inside().or(plan::casingInside);
    Optional<Sealing> sealing = Sealing.of(well).filter(s -> s.bottom().isMoreThan(s.top()));
    Recipe recipe = Grouting.recipe(well);
    Optional<Density> grout = Outcome.ifReckonable(() -> GroutMix.of(recipe)).map(o -> (Density) o.quantity("density"));
    if (outside.isEmpty() || inside.isEmpty() || sealing.isEmpty() || grout.isEmpty()) return Optional.empty();
    boolean closed = string.pieces().isEmpty()
        ? plan.length(Plan.SUMP).filter(s -> s.isMoreThan(Length.ZERO)).isPresent()
        : string.count(Piece.Sort.SUMP) > 0;
    Length column = sealing.get().bottom().minus(sealing.get().top());
    return Optional.of(new CasingLoad(
        recipe, grout.get(), outside.get(), inside.get(), column, thickness(sealing.get(), outside.get()), closed,
        plan.collapseSafety(), well.get(Readiness.PART)));
  }

  private static Length thickness(Sealing sealing, Length outside) {
    Length widest = sealing.annulus().hole().reaches().stream()
        .filter(r -> r.from().isLessThan(sealing.bottom()) && r.to().isMoreThan(sealing.top()))
        .map(Reach::diameter).max(Length::compareTo).orElse(outside)
        .max(found(sealing).orElse(outside));
    return new Length(widest.minus(outside).max(Length.ZERO).nanometres() / 2);
  }

  /** As wide as the grout that is in shows the hole to be. */
  private static Optional<Length> found(Sealing sealing) {
    return sealing.lastTagOfTheDay().flatMap(sealing::filled).map(o -> (Length) o.quantity("apparent-diameter"));
  }

  /** What is in the casing. */
  Density within() {
    return readiness.map(Readiness::within).orElse(Buoyancy.WATER);
  }

  boolean isEmpty() {
    return within().coherent() <= 0;
  }

  boolean isHeld() {
    return readiness.filter(Readiness::held).isPresent();
  }

  Phrase filling() {
    if (isEmpty()) return Phrase.of("empty", "vacío");
    return within().equals(Buoyancy.WATER)
        ? Phrase.of("full of water", "lleno de agua")
        : Phrase.of("filled with {0}", "lleno con {0}", new Figure(within(), Scale.DENSITY));
  }

  /** Collapse of the casing, filled as it is. */
  Optional<Outcome> pressed() {
    return pressed(within());
  }

  /** Collapse with something else in it. */
  Optional<Outcome> pressed(Density within) {
    Length wall = new Length(outside.minus(inside).nanometres() / 2);
    Quantity temperature = recipe.material().isCement() ? WARMED : Collapse.COOL;
    return Outcome.ifReckonable(() -> Collapse.margin(outside, wall, temperature, grout, within, column, safety));
  }

  /** Whether such a pressure leaves less than the safety wanted. */
  boolean isTooMuch(Outcome pressed) {
    String margin = Collapse.SAFETY.name();
    return pressed.answers().containsKey(margin) && pressed.quantity(margin).coherent() < safety;
  }

  /** The weights of as much of the string as stands in grout. */
  Optional<Outcome> lifted() {
    return isClosed
        ? Outcome.ifReckonable(() -> Buoyancy.of(outside, inside, Optional.empty(), column, grout, within()))
        : Optional.empty();
  }

  /** What would hold it, where it floats. */
  Optional<Outcome> held() {
    return lifted().flatMap(weights -> Outcome.ifReckonable(
        () -> UpliftHold.of(weights, inside, within(), column, Optional.empty())));
  }

  /** The upward force; none where the string is heavier than what it displaces. */
  Optional<Mass> uplift() {
    return lifted().map(o -> o.quantity("closed").coherent()).filter(n -> n < 0).map(n -> new Mass(-n));
  }

  List<String> entries() {
    List<String> entries = new ArrayList<>(recipe.entries());
    readiness.ifPresent(r -> entries.add(r.entry()));
    return entries;
  }
}
