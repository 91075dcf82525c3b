package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.pipe.Collapse;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Mass;
import steening.quantity.Pressure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;

/** What liquid grout would do to the casing as it stands. */
final class CasingLoadFindings {
  /** Twice the grout that 17 to 26 °F were measured round (a judgement, no source). */
  private static final Length THICK = Length.of(3, Unit.INCH);

  private CasingLoadFindings() {}

  /**
   * All of them.
   *
   * @param pumping whether grout has been pumped already
   */
  static List<Finding> of(CasingLoad load, boolean pumping) {
    List<Finding> findings = new ArrayList<>();
    rapid(load).ifPresent(findings::add);
    Optional<Finding> collapse = collapse(load);
    collapse.ifPresent(findings::add);
    if (collapse.isEmpty() && !pumping) fillFirst(load).ifPresent(findings::add);
    floating(load).ifPresent(findings::add);
    heat(load).ifPresent(findings::add);
    return findings;
  }

  /** It is pressed in, filled as it is. */
  private static Optional<Finding> collapse(CasingLoad load) {
    return load.pressed().filter(load::isTooMuch).map(o -> {
      Figure presses = o.figure(Collapse.DIFFERENTIAL.name());
      Figure bears = o.figure(Collapse.RATING_B.name());
      return Finding.of("seal.collapse", Weight.STOP, SealStage.NAME, Phrase.of(
              "{0} of this grout presses on the casing with {1} more than what is inside; it collapses at {2}.",
              "{0} de esta lechada presionan el ademe con {1} más que lo de adentro; colapsa a {2}.",
              new Figure(load.column(), Scale.DEPTH), presses, bears))
          .comparing(presses, bears)
          .because(load.isEmpty()
              ? Phrase.of("The casing is empty.", "El ademe está vacío.")
              : Phrase.of(
                  "That is less than the safety wanted, with the casing full.",
                  "Es menos que la seguridad deseada, con el ademe lleno."))
          .so(instead(load, o)).shownBy(GroutLifts.of(o, load.column())).from(load.entries());
    });
  }

  /** Fill it, where that is enough; else lifts. */
  private static Phrase instead(CasingLoad load, Outcome margin) {
    Optional<Outcome> full = load.pressed(Buoyancy.WATER).filter(o -> load.isEmpty() && !load.isTooMuch(o));
    if (full.isPresent()) {
      return Phrase.of(
          "Fill the casing with water before pumping: that leaves {0}.",
          "Llene el ademe con agua antes de bombear: así quedan {0}.",
          full.get().figure(Collapse.DIFFERENTIAL.name()));
    }
    Outcome lifts = GroutLifts.of(margin, load.column());
    return Phrase.of(
        "Place it in lifts of at most {0}: {1} of them, each set (12 to 24 h, your code) before the next; keep the"
            + " casing full.",
        "Colóquela en etapas de a lo más {0}: {1}, cada una fraguada (12 a 24 h, su norma) antes de la otra; mantenga"
            + " lleno el ademe.",
        lifts.figure(Collapse.HIGHEST.name()), lifts.figure(GroutLifts.LIFTS.name()));
  }

  /** Full it holds, empty it would not, and nobody has said which it is. */
  private static Optional<Finding> fillFirst(CasingLoad load) {
    if (load.readiness().isPresent()) return Optional.empty();
    Optional<Outcome> full = load.pressed();
    return load.pressed(Readiness.EMPTY).filter(load::isTooMuch).flatMap(empty -> full.map(water -> {
      Figure presses = empty.figure(Collapse.DIFFERENTIAL.name());
      Figure allowed = new Figure(
          new Pressure(empty.quantity(Collapse.RATING_B.name()).coherent() / load.safety()), Scale.PRESSURE);
      return Finding.of("seal.fill-first", Weight.LOOK, SealStage.NAME, Phrase.of(
              "{0} of this grout on the casing: empty inside {1}, where {2} is allowed; filled with water {3}.",
              "{0} de esta lechada sobre el ademe: vacío {1}, donde se admiten {2}; lleno de agua {3}.",
              new Figure(load.column(), Scale.DEPTH), presses, allowed,
              water.figure(Collapse.DIFFERENTIAL.name())))
          .comparing(presses, allowed)
          .so(Phrase.of(
              "Fill the casing before pumping, keep it full until the grout has set, and enter how it stands.",
              "Llene el ademe antes de bombear, manténgalo lleno hasta que fragüe y registre cómo está."))
          .shownBy(empty).from(load.entries());
    }));
  }

  /** It is lifted; bentonite grout lifts it by little and the pack holds it, so only cement is spoken of. */
  private static Optional<Finding> floating(CasingLoad load) {
    if (!load.recipe().material().isCement() || load.isHeld()) return Optional.empty();
    Optional<Mass> force = load.uplift();
    return load.held().filter(o -> force.isPresent()).map(o -> Finding.of(
            "seal.uplift", Weight.LOOK, SealStage.NAME, Phrase.of(
                "While this cement is liquid the closed casing, {0}, floats with {1}.",
                "Mientras este cemento está líquido el ademe cerrado, {0}, flota con {1}.",
                load.filling(), new Figure(force.get(), Scale.WEIGHT)))
        .so(Phrase.of(
            "Hold it down: chain it to the rig, put {0} and more on it, or fill it with mud of {1}. Leave it so until"
                + " the cement has set, and enter that it is held.",
            "Sujételo: encadénelo al equipo, póngale {0} o más encima, o llénelo con lodo de {1}. Déjelo así hasta que"
                + " fragüe y registre que está sujeto.",
            o.figure(UpliftHold.UPLIFT.name()), o.figure(UpliftHold.NEEDED.name())))
        .shownBy(o).from(load.entries()));
  }

  /** Cement warms as it sets; PVC softens. */
  private static Optional<Finding> heat(CasingLoad load) {
    if (!load.recipe().material().isCement()) return Optional.empty();
    boolean thick = load.thickness().isMoreThan(THICK);
    return Optional.of(Finding.of("seal.heat", thick ? Weight.LOOK : Weight.NOTE, SealStage.NAME, Phrase.of(
            "Setting cement warms plastic casing by 17 to 26 °F where it is 1.5 in thick; here it is up to {0} thick.",
            "El cemento al fraguar calienta el ademe plástico 9 a 14 °C con 38 mm de espesor; aquí llega a {0}.",
            new Figure(load.thickness(), Scale.DIAMETER)))
        .because(Phrase.of(
            "In washouts a rise of up to 180 °F was measured; above 140 °F PVC has no strength to rely on.",
            "En socavaciones se midió un aumento de hasta 100 °C; arriba de 60 °C el PVC no resiste."))
        .so(Phrase.of(
            "No quick-setting cement. Keep the casing full of water, better circulating, until it has set.",
            "Nada de cemento rápido. Mantenga el ademe lleno de agua, mejor circulando, hasta que fragüe."))
        .from(load.entries()));
  }

  private static Optional<Finding> rapid(CasingLoad load) {
    if (load.recipe().material() != DryGrout.RAPID_CEMENT) return Optional.empty();
    return Optional.of(Finding.of("seal.rapid-cement", Weight.STOP, SealStage.NAME, Phrase.of(
            "Quick-setting cement beside plastic casing.", "Cemento rápido junto a ademe plástico."))
        .because(Phrase.of(
            "It gets hot while it sets and the casing softens; Minn. 4725.3050 forbids it (seen).",
            "Se calienta al fraguar y el ademe se ablanda; Minn. 4725.3050 lo prohíbe (leído)."))
        .so(Phrase.of(
            "Plain Portland cement or bentonite grout, as your code has it.",
            "Cemento Portland común o lechada de bentonita, según su norma."))
        .from(load.entries()));
  }
}
