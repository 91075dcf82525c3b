package steening.stage.drilling.hole;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Reach;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.CasingString;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Plan;
import steening.well.Stratum;
import steening.well.Well;

/** The hole's depth against whatever else tells how deep it is. */
public final class HoleFindings {
  /** Two counts of a hole's depth agree as well as this. Common practice, no source. */
  public static final Length AGREES = Length.feet(1);

  private static final double FEET_A_METRE = 1 / 0.3048;
  private static final double NEAR = 0.02;

  private HoleFindings() {}

  public static List<Finding> of(Well well) {
    Hole hole = well.get(Hole.PART);
    if (!hole.isBegun()) return List.of();
    List<Finding> findings = new ArrayList<>(gaps(well));
    Optional<Finding> metres = metresForFeet(well);
    metres.or(() -> againstTheLog(well)).ifPresent(findings::add);
    return findings;
  }

  /** Whether the hole's depth looks like a slip of units; what else differs then follows from it. */
  static Optional<Finding> metresForFeet(Well well) {
    Length hole = well.get(Hole.PART).depth();
    List<Length> witnesses = new ArrayList<>();
    witnesses.add(well.get(GroundLog.PART).bottom());
    witnesses.add(well.get(Drilling.PART).rodDepth());
    well.get(Plan.PART).length(Plan.DEPTH).ifPresent(witnesses::add);
    for (Length witness : witnesses) if (isNear(ratio(hole, witness), 1)) return Optional.empty();
    return witnesses.stream()
        .filter(w -> isNear(ratio(hole, w), FEET_A_METRE) || isNear(ratio(w, hole), FEET_A_METRE))
        .findFirst()
        .map(other -> Finding.of(
                "drilling.metres-for-feet", Weight.STOP, DrillingStage.NAME,
                Phrase.of(
                    "The hole is entered as {0}, but {1} is known otherwise: about 3.28 times as much or as little.",
                    "El barreno está registrado con {0}, pero también se dice {1}: unas 3.28 veces más o menos.",
                    depth(hole), depth(other)))
            .comparing(depth(hole), depth(other))
            .because(Phrase.of("Metres for feet, or feet for metres.", "Metros por pies, o pies por metros."))
            .so(Phrase.of("Correct the hole's depth.", "Corrija la profundidad del barreno."))
            .from(entries(well)));
  }

  private static Optional<Finding> againstTheLog(Well well) {
    Length hole = well.get(Hole.PART).depth();
    GroundLog log = well.get(GroundLog.PART);
    if (log.strata().isEmpty()) return Optional.empty();
    if (log.bottom().minus(hole).isMoreThan(AGREES)) return shallowerThanTheLog(well);
    if (!hole.minus(log.bottom()).isMoreThan(AGREES) || isStillDrilled(well)) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.log-short", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The log ends at {0}, the hole at {1}.", "El registro termina a {0}, el barreno a {1}.",
                depth(log.bottom()), depth(hole)))
        .comparing(depth(log.bottom()), depth(hole))
        .so(Phrase.of("Log the rest, or correct the depth.", "Registre lo que falta o corrija la profundidad."))
        .from(entries(well)));
  }

  /** Not as deep as planned, and nothing lowered: the log of the last rod may still be to come. */
  private static boolean isStillDrilled(Well well) {
    Length planned = well.get(Plan.PART).length(Plan.DEPTH).orElse(Length.ZERO);
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    return !lowered && planned.minus(well.get(Hole.PART).depth()).isMoreThan(AGREES);
  }

  /** Heavy once nothing more will be drilled, or where the log was deeper already when the hole was entered. */
  private static Optional<Finding> shallowerThanTheLog(Well well) {
    Length hole = well.get(Hole.PART).depth();
    Length logged = well.get(GroundLog.PART).bottom();
    Drilling drilling = well.get(Drilling.PART);
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    boolean knownDeeper = drilling.lastStretch().known().minus(hole).isMoreThan(AGREES);
    boolean drillingOn = !lowered && !knownDeeper;
    if (drillingOn && drilling.rodDepth().isMoreThan(hole)) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.hole-shallower-than-log", drillingOn ? Weight.LOOK : Weight.STOP, DrillingStage.NAME,
            Phrase.of(
                "The hole is entered as {0} deep, but the log goes to {1}.",
                "El barreno está registrado con {0}, pero el registro llega a {1}.", depth(hole), depth(logged)))
        .comparing(depth(hole), depth(logged))
        .because(Phrase.of(
            "A slip in one of the two depths, or a stretch not entered.",
            "Un error en una de las dos, o un tramo sin registrar."))
        .so(Phrase.of(
            "Correct the hole or the log before anything is set.",
            "Corrija el barreno o el registro antes de colocar nada."))
        .from(entries(well)));
  }

  private static List<Finding> gaps(Well well) {
    List<Finding> findings = new ArrayList<>();
    Length end = Length.ZERO;
    for (Reach reach : well.get(Hole.PART).bore().reaches()) {
      if (reach.from().isMoreThan(end)) {
        findings.add(Finding.of(
                "drilling.hole-gap", Weight.LOOK, DrillingStage.NAME,
                Phrase.of(
                    "The hole's diameter between {0} and {1} is not known.",
                    "No se conoce el diámetro del barreno entre {0} y {1}.",
                    depth(end), depth(reach.from())))
            .so(Phrase.of("Enter that stretch of hole.", "Registre ese tramo del barreno."))
            .from(entries(well)));
      }
      end = reach.to();
    }
    return findings;
  }

  private static double ratio(Length one, Length other) {
    return other.nanometres() > 0 ? one.in(Unit.METRE) / other.in(Unit.METRE) : 0;
  }

  private static boolean isNear(double ratio, double wanted) {
    return Math.abs(ratio - wanted) < NEAR * wanted;
  }

  /** The deepest of the log, then the stretches of hole. */
  private static List<String> entries(Well well) {
    List<String> entries = new ArrayList<>();
    List<Stratum> strata = well.get(GroundLog.PART).strata();
    if (!strata.isEmpty()) entries.add(strata.get(strata.size() - 1).entry());
    for (Drilling.Stretch stretch : well.get(Drilling.PART).stretches()) entries.add(stretch.entry());
    return entries;
  }
}
