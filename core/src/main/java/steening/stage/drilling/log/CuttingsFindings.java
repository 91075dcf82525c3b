package steening.stage.drilling.log;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingFold;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.fluid.UpHoleVelocity;
import steening.well.GroundLog;
import steening.well.Stratum;
import steening.well.Well;

/** Cuttings whose depth cannot be, and boundaries of the log that were put where the bit was. */
public final class CuttingsFindings {
  /** Cuttings may be written down before their rod is. Common practice, no source. */
  private static final Length A_ROD = Length.feet(20);

  /** A log is kept to the tenth of a foot at best. Common practice, no source. */
  private static final Length TENTH = Length.of(0.1, Unit.FOOT);

  /** Less than this is not worth a word: samples are caught every 5 ft. A judgement, no source. */
  private static final Length WORTH_SAYING = Length.feet(1);

  private CuttingsFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Length deepest = DrillingFold.depthSoFar(well);
    for (Drilling.Cuttings caught : well.get(Drilling.PART).cuttings()) {
      if (deepest.isMoreThan(Length.ZERO) && caught.bitDepth().isMoreThan(deepest.plus(A_ROD))) {
        findings.add(tooDeep(caught, deepest));
      } else {
        notCorrected(well, caught).ifPresent(findings::add);
        notLifted(caught).ifPresent(findings::add);
      }
    }
    return findings;
  }

  /**
   * The depth the cuttings come from, and the lag; nothing without a rig, or where the mud does not bring them. Where
   * no penetration rate was told, the hours of the rods tell it; where a size was told, the cuttings slip.
   */
  public static Optional<Outcome> lag(Drilling drilling, Drilling.Cuttings caught) {
    Optional<Quantity> penetration =
        caught.penetration().or(() -> Penetration.at(drilling.rods(), caught.bitDepth()));
    Optional<Quantity> slip = CuttingsSlip.of(caught).map(o -> o.quantity(CuttingsSlip.SLIP.name()));
    return caught.rig().flatMap(
        rig -> Outcome.ifReckonable(() -> CuttingsLag.of(rig, caught.bitDepth(), penetration, slip)));
  }

  /** Too coarse for the mud to lift. */
  private static Optional<Finding> notLifted(Drilling.Cuttings caught) {
    Optional<Outcome> slip = CuttingsSlip.of(caught).filter(s -> caught.rig().isPresent() && !CuttingsSlip.isLifted(s));
    return slip.flatMap(s -> caught.rig().flatMap(rig -> Outcome.ifReckonable(() -> UpHoleVelocity.of(rig))).map(v -> {
      Figure falls = s.figure(CuttingsSlip.SLIP.name());
      Figure rises = v.figure("velocity");
      return Finding.of(
              "drilling.cuttings-not-lifted", Weight.LOOK, DrillingStage.NAME,
              Phrase.of(
                  "Cuttings of {0} fall at up to {1} in this mud, which rises at {2}.",
                  "Los recortes de {0} caen hasta a {1} en este lodo, que sube a {2}.",
                  new Figure(caught.size().orElseThrow(), Scale.GRAIN), falls, rises))
          .comparing(rises, falls)
          .because(Phrase.of(
              "The coarsest stay in the hole or come up late, and their depth is not known.",
              "Los más gruesos quedan en el barreno o suben tarde, y no se sabe de dónde vienen."))
          .so(Phrase.of(
              "Thicken the mud or pump more; circulate before each connection.",
              "Espese el lodo o bombee más; circule antes de cada conexión."))
          .shownBy(s)
          .from(List.of(caught.entry()));
    }));
  }

  private static Finding tooDeep(Drilling.Cuttings caught, Length deepest) {
    return Finding.of(
            "drilling.cuttings-below-hole", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "Cuttings are entered with the bit at {0}, but the hole is {1} deep.",
                "Los recortes se registraron con la barrena a {0}, pero el barreno tiene {1}.",
                depth(caught.bitDepth()), depth(deepest)))
        .comparing(depth(caught.bitDepth()), depth(deepest))
        .because(Phrase.of("Feet and metres, or a rod miscounted.", "Pies y metros, o un tubo mal contado."))
        .so(Phrase.of(
            "Count the rods; correct the one that is wrong.", "Cuente los tubos; corrija el dato equivocado."))
        .from(List.of(caught.entry()));
  }

  private static Optional<Finding> notCorrected(Well well, Drilling.Cuttings caught) {
    Optional<Outcome> lag = lag(well.get(Drilling.PART), caught)
        .filter(o -> o.answers().containsKey(CuttingsLag.CAME_FROM.name()));
    if (lag.isEmpty()) return Optional.empty();
    Length from = (Length) lag.get().quantity(CuttingsLag.CAME_FROM.name());
    if (!caught.bitDepth().minus(from).isMoreThan(WORTH_SAYING)) return Optional.empty();
    return well.get(GroundLog.PART).strata().stream()
        .filter(s -> s.from().isMoreThan(Length.ZERO) && agrees(s.from(), caught.bitDepth()))
        .findFirst()
        .map(stratum -> boundary(stratum, caught, from, lag.get()));
  }

  private static Finding boundary(Stratum stratum, Drilling.Cuttings caught, Length from, Outcome lag) {
    return Finding.of(
            "drilling.log-not-corrected", Weight.NOTE, DrillingStage.NAME,
            Phrase.of(
                "The log changes at {0}, where the bit was; the cuttings caught then come from {1}.",
                "El registro cambia a {0}, donde estaba la barrena; los recortes tomados entonces vienen de {1}.",
                depth(stratum.from()), depth(from)))
        .comparing(depth(stratum.from()), depth(from))
        .because(Phrase.of(
            "Cuttings need {0} to the surface, and the bit goes on meanwhile.",
            "Los recortes tardan {0} en subir, y mientras tanto la barrena avanza.", lag.figure("lag")))
        .so(Phrase.of(
            "Correct the boundary, unless the bit itself told the change.",
            "Corrija el límite, salvo que la barrena misma haya avisado el cambio."))
        .shownBy(lag)
        .from(List.of(stratum.entry(), caught.entry()));
  }

  private static boolean agrees(Length one, Length other) {
    return !one.minus(other).isMoreThan(TENTH) && !other.minus(one).isMoreThan(TENTH);
  }
}
