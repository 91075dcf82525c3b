package steening.stage.seal;

import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
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
 * What liquid grout does to the casing: presses it in, and lifts it where its bottom is closed. The casing is taken as
 * full of water, as it should be kept; empty it is pressed much harder.
 *
 * @param column height of the grout
 */
record CasingLoad(
    Recipe recipe, Density grout, Length outside, Length inside, Length column, boolean isClosed, double safety) {
  private static final Density EMPTY = new Density(0);

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
    Optional<Length> column = Sealing.of(well).map(s -> s.bottom().minus(s.top()))
        .filter(c -> c.isMoreThan(Length.ZERO));
    Recipe recipe = Grouting.recipe(well);
    Optional<Density> grout = Outcome.ifReckonable(() -> GroutMix.of(recipe)).map(o -> (Density) o.quantity("density"));
    if (outside.isEmpty() || inside.isEmpty() || column.isEmpty() || grout.isEmpty()) return Optional.empty();
    boolean closed = string.pieces().isEmpty()
        ? plan.length(Plan.SUMP).filter(s -> s.isMoreThan(Length.ZERO)).isPresent()
        : string.count(Piece.Sort.SUMP) > 0;
    return Optional.of(new CasingLoad(
        recipe, grout.get(), outside.get(), inside.get(), column.get(), closed, plan.collapseSafety()));
  }

  /** Collapse of the casing full of water. */
  Optional<Outcome> pressed() {
    return pressed(Buoyancy.WATER);
  }

  /** Collapse of the empty casing. */
  Optional<Outcome> pressedEmpty() {
    return pressed(EMPTY);
  }

  private Optional<Outcome> pressed(Density within) {
    Length wall = new Length(outside.minus(inside).nanometres() / 2);
    Quantity temperature = recipe.material() == DryGrout.CEMENT ? WARMED : Collapse.COOL;
    return Outcome.ifReckonable(() -> Collapse.margin(outside, wall, temperature, grout, within, column, safety));
  }

  /** The weights of as much of the string as stands in grout, full of water. */
  Optional<Outcome> lifted() {
    return isClosed
        ? Outcome.ifReckonable(() -> Buoyancy.of(outside, inside, Optional.empty(), column, grout, Buoyancy.WATER))
        : Optional.empty();
  }

  /** The upward force; none where the string is heavier than what it displaces. */
  Optional<Mass> uplift() {
    return lifted().map(o -> o.quantity("closed").coherent()).filter(n -> n < 0).map(n -> new Mass(-n));
  }

  /** It is pressed in, even full of water. */
  Optional<Finding> collapse() {
    return pressed().filter(o -> o.answers().containsKey("safety") && o.quantity("safety").coherent() < safety)
        .map(o -> {
      Figure load = o.figure("differential");
      Figure bears = o.figure("rating-b");
      return Finding.of("seal.collapse", Weight.STOP, SealStage.NAME, Phrase.of(
              "{0} of this grout presses on the casing with {1} more than the water inside; it collapses at {2}.",
              "{0} de esta lechada presionan el ademe con {1} más que el agua de adentro; colapsa a {2}.",
              new Figure(column, Scale.DEPTH), load, bears))
          .comparing(load, bears)
          .because(Phrase.of(
              "That is less than the safety wanted, with the casing full.",
              "Es menos que la seguridad deseada, con el ademe lleno."))
          .so(Phrase.of(
              "Place it in lifts of at most {0}, each set before the next; keep the casing full.",
              "Colóquela en etapas de a lo más {0}, cada una fraguada antes de la otra; mantenga lleno el ademe.",
              o.figure("max-column")))
          .shownBy(o).from(recipe.entries());
    });
  }

  /** It is lifted; bentonite grout lifts it by little and the pack holds it, so only cement is spoken of. */
  Optional<Finding> floating() {
    if (recipe.material() != DryGrout.CEMENT) return Optional.empty();
    return uplift().map(force -> Finding.of("seal.uplift", Weight.LOOK, SealStage.NAME, Phrase.of(
            "While this cement is liquid it lifts the closed casing, full of water, with {0}.",
            "Mientras este cemento está líquido levanta el ademe cerrado, lleno de agua, con {0}.",
            new Figure(force, Scale.WEIGHT)))
        .so(Phrase.of(
            "Hold it down: chain it to the rig before pumping, and leave it so until the cement has set.",
            "Sujételo: encadénelo al equipo antes de bombear y déjelo así hasta que fragüe."))
        .shownBy(lifted().orElseThrow()).from(recipe.entries()));
  }

  /** Cement warms as it sets; PVC softens. */
  Optional<Finding> heat() {
    if (recipe.material() != DryGrout.CEMENT) return Optional.empty();
    return Optional.of(Finding.of("seal.heat", Weight.NOTE, SealStage.NAME, Phrase.of(
            "Setting cement warms plastic casing, most of all in a washout.",
            "El cemento al fraguar calienta el ademe plástico, sobre todo en una socavación."))
        .so(Phrase.of(
            "No quick-setting cement. Keep the casing full of water, better circulating, until it has set.",
            "Nada de cemento rápido. Mantenga el ademe lleno de agua, mejor circulando, hasta que fragüe."))
        .from(recipe.entries()));
  }
}
