package steening.stage.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.field.QuantityField;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.Plan;

/** Where the numbers of a plan contradict each other. */
final class PlanFindings {
  /**
   * On every side: South Carolina R.61-71. Holes larger than the casing by so much: 2 in Michigan R 325.1633a, 3 in
   * Loudoun County well code 1040, 4 in (grouted by gravity) 10 NYCRR Appendix 5-B (all seen).
   */
  private static final Length THINNEST_ANNULUS = Length.of(1.5, Unit.INCH);

  private PlanFindings() {}

  static List<Finding> of(Plan plan) {
    return Stream.of(
        screen(plan), string(plan), pack(plan), chips(plan), grout(plan), hole(plan), annulus(plan), wall(plan),
        authorised(plan))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Finding> screen(Plan plan) {
    Optional<Finding> upsideDown = order(plan, "plan.screen-upside-down", Plan.SCREEN_TOP, Plan.SCREEN_BOTTOM, false);
    if (upsideDown.isPresent()) return upsideDown;
    return order(plan, "plan.screen-outside", Plan.SCREEN_BOTTOM, Plan.DEPTH, true);
  }

  /** Only where the screen itself is inside the hole: one finding for one slip. */
  private static Optional<Finding> string(Plan plan) {
    Optional<Length> depth = plan.length(Plan.DEPTH);
    Optional<Length> bottom = plan.stringBottom();
    boolean screenInside = plan.length(Plan.SCREEN_BOTTOM).isPresent() && depth.isPresent()
        && !plan.length(Plan.SCREEN_BOTTOM).get().isMoreThan(depth.get());
    if (!screenInside || !bottom.get().isMoreThan(depth.get())) return Optional.empty();
    Finding finding = stop("plan.string-too-deep", Phrase.of(
            "Screen and sump end at {0}; the hole is {1} deep.",
            "Rejilla y tramo ciego terminan a {0}; el barreno llega a {1}.",
            depth(bottom.get()), depth(depth.get())))
        .comparing(depth(bottom.get()), depth(depth.get()));
    Optional<Outcome> working = PlanFigures.string(plan);
    return Optional.of(working.isEmpty() ? finding : finding.shownBy(working.get()));
  }

  private static Optional<Finding> pack(Plan plan) {
    Optional<Finding> low = order(plan, "plan.pack-low", Plan.PACK_TOP, Plan.SCREEN_TOP, true);
    if (low.isPresent() || plan.plannedPackAbove().isEmpty()) return low;
    Length above = plan.plannedPackAbove().get();
    if (!above.isLessThan(plan.packAboveLeast())) return Optional.empty();
    return Optional.of(Finding.of("plan.pack-short", Weight.LOOK, PlanStage.NAME, Phrase.of(
            "Pack planned {0} above the screen; at least {1} are wanted.",
            "Filtro previsto {0} sobre la rejilla; se quieren al menos {1}.",
            depth(above), depth(plan.packAboveLeast())))
        .comparing(depth(above), depth(plan.packAboveLeast()))
        .because(Phrase.of("Pack settles while the well is developed.", "El filtro se asienta durante el desarrollo."))
        .so(Phrase.of(
            "Plan its top higher; some rules want 10 ft.", "Prevea el tope más alto; algunas normas piden 3 m.")));
  }

  private static Optional<Finding> chips(Plan plan) {
    return order(plan, "plan.chips-low", Plan.CHIPS_TOP, Plan.PACK_TOP, true);
  }

  private static Optional<Finding> grout(Plan plan) {
    QuantityField below = plan.length(Plan.CHIPS_TOP).isPresent() ? Plan.CHIPS_TOP : Plan.PACK_TOP;
    return order(plan, "plan.grout-low", Plan.GROUT_TOP, below, true);
  }

  /** The first must not lie deeper than the second, nor at the same depth unless that is allowed. */
  private static Optional<Finding> order(
      Plan plan, String code, QuantityField upper, QuantityField lower, boolean mayTouch) {
    Optional<Length> above = plan.length(upper);
    Optional<Length> below = plan.length(lower);
    if (above.isEmpty() || below.isEmpty()) return Optional.empty();
    boolean good = above.get().isLessThan(below.get()) || mayTouch && above.get().equals(below.get());
    if (good) return Optional.empty();
    return Optional.of(stop(code, Phrase.of(
            "{0} at {1}, {2} at {3}: the first must not be the deeper.",
            "{0} a {1}, {2} a {3}: lo primero no debe quedar más abajo.",
            upper.label(), depth(above.get()), lower.label(), depth(below.get())))
        .comparing(depth(above.get()), depth(below.get())));
  }

  private static Optional<Finding> hole(Plan plan) {
    Optional<Length> hole = plan.length(Plan.HOLE);
    Optional<Length> casing = plan.length(Plan.CASING_OUTSIDE);
    if (hole.isEmpty() || casing.isEmpty() || hole.get().isMoreThan(casing.get())) return Optional.empty();
    return Optional.of(stop("plan.hole-small", Phrase.of(
            "A casing of {0} does not go into a hole of {1}.", "Un ademe de {0} no entra en un barreno de {1}.",
            diameter(casing.get()), diameter(hole.get())))
        .comparing(diameter(hole.get()), diameter(casing.get())));
  }

  private static Optional<Finding> annulus(Plan plan) {
    Optional<Outcome> sides = PlanFigures.eachSide(plan);
    if (sides.isEmpty()) return Optional.empty();
    Length side = (Length) sides.get().quantity(PlanFigures.EACH_SIDE);
    if (!side.isMoreThan(Length.ZERO) || !side.isLessThan(THINNEST_ANNULUS)) return Optional.empty();
    return Optional.of(Finding.of("plan.annulus-thin", Weight.LOOK, PlanStage.NAME, Phrase.of(
            "{0} of annulus on each side; {1} are wanted at least, and less at a bell or coupling.",
            "{0} de espacio anular por lado; se quieren al menos {1}, y en las campanas hay menos.",
            diameter(side), diameter(THINNEST_ANNULUS)))
        .comparing(diameter(side), diameter(THINNEST_ANNULUS))
        .because(Phrase.of(
            "Rules differ: {0} a side (South Carolina), a hole {1} (Michigan), {2} (Loudoun) or {3} larger (New York).",
            "Difieren: {0} por lado (Carolina del Sur), barreno {1} (Míchigan), {2} (Loudoun), {3} mayor (Nueva York).",
            diameter(THINNEST_ANNULUS), inches(2), inches(3), inches(4)))
        .so(Phrase.of(
            "Drill larger, or look at the rule here; the tremie pipe must pass.",
            "Perfore más grande o vea la norma local; la tubería tremie debe pasar."))
        .shownBy(sides.get()));
  }

  private static Optional<Finding> wall(Plan plan) {
    Optional<Length> inside = plan.length(Plan.CASING_WALL).flatMap(w -> plan.casingInside());
    if (inside.isEmpty() || inside.get().isMoreThan(Length.ZERO)) return Optional.empty();
    Figure wall = diameter(plan.length(Plan.CASING_WALL).get());
    Figure outside = diameter(plan.length(Plan.CASING_OUTSIDE).get());
    return Optional.of(stop("plan.wall-thick", Phrase.of(
            "A wall of {0} leaves nothing inside a casing of {1}.",
            "Una pared de {0} no deja nada dentro de un ademe de {1}.",
            wall, outside))
        .comparing(wall, outside));
  }

  private static Optional<Finding> authorised(Plan plan) {
    Optional<Length> depth = plan.length(Plan.DEPTH);
    Optional<Length> agreed = plan.length(Plan.AUTHORISED);
    if (depth.isEmpty() || agreed.isEmpty() || !depth.get().isMoreThan(agreed.get())) return Optional.empty();
    return Optional.of(Finding.of("plan.depth-not-agreed", Weight.LOOK, PlanStage.NAME, Phrase.of(
            "The hole is planned to {0}; the customer agreed to {1}.",
            "El barreno se prevé hasta {0}; el cliente aceptó {1}.",
            depth(depth.get()), depth(agreed.get())))
        .comparing(depth(depth.get()), depth(agreed.get()))
        .so(Phrase.of(
            "Get the customer's word in writing before drilling past it.",
            "Obtenga el acuerdo del cliente por escrito antes de pasar de ahí.")));
  }

  private static Finding stop(String code, Phrase text) {
    return Finding.of(code, Weight.STOP, PlanStage.NAME, text)
        .so(Phrase.of(
            "Correct the plan before anything is built to it.", "Corrija el plan antes de construir según él."));
  }

  private static Figure inches(int inches) {
    return diameter(Length.of(inches, Unit.INCH));
  }

  private static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }

  private static Figure diameter(Length length) {
    return new Figure(length, Scale.DIAMETER);
  }
}
