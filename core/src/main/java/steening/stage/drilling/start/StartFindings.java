package steening.stage.drilling.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.drilling.DrillingStage;
import steening.well.CasingString;
import steening.well.Well;

/** Overhead lines before the mast goes up, and the water for the mud. */
public final class StartFindings {
  private StartFindings() {}

  public static List<Finding> of(Well well) {
    Start start = well.get(Start.PART);
    List<Finding> findings = new ArrayList<>();
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    if (lowered) return findings;
    PitSize.of(well).ifPresent(findings::add);
    start.walk().filter(Start.WalkRound::seen).flatMap(StartFindings::lines).ifPresent(findings::add);
    start.water().ifPresent(w -> findings.addAll(WaterFindings.of(w)));
    return findings;
  }

  /** What to ask before the first foot: how far the nearest line is, and how much chlorine the water carries. */
  public static List<Expectation> asked(Well well) {
    List<Expectation> expectations = new ArrayList<>();
    if (!Start.isBeforeTheFirstFoot(well)) return expectations;
    Start start = well.get(Start.PART);
    if (start.walk().isEmpty()) {
      Outcome clearance = LineClearance.of(Optional.empty());
      expectations.add(new Expectation(
          Phrase.of(
              "walk round the rig before the mast goes up: nearest overhead line, at least",
              "camine alrededor antes de izar el mástil: línea aérea más cercana, por lo menos"),
          clearance.figure(LineClearance.TABLE.name()), Optional.empty(), clearance));
    }
    if (start.water().isEmpty()) expectations.add(WaterFindings.residual());
    return expectations;
  }

  private static Optional<Finding> lines(Start.WalkRound walk) {
    Optional<Outcome> reckoned = Outcome.ifReckonable(() -> LineClearance.of(walk.kilovolts()));
    return reckoned.flatMap(clearance -> {
      Figure keep = distance(LineClearance.toKeep(clearance));
      if (walk.distance().isEmpty()) {
        return Optional.of(stop("drilling.line-not-measured", walk, Phrase.of(
            "Overhead lines were seen, and their distance is not written down; {0} must be kept.",
            "Se vieron líneas aéreas y no se anotó su distancia; hay que guardar {0}.", keep), clearance));
      }
      Length measured = walk.distance().get();
      if (!measured.isLessThan(LineClearance.toKeep(clearance))) return Optional.empty();
      return Optional.of(stop("drilling.line-near", walk, near(walk, distance(measured), keep), clearance)
          .comparing(distance(measured), keep));
    });
  }

  private static Phrase near(Start.WalkRound walk, Figure measured, Figure keep) {
    return walk.kilovolts().isPresent()
        ? Phrase.of(
            "Overhead line at {0} from the raised mast; {1} must be kept at {2} kV.",
            "Línea aérea a {0} del mástil izado; con {2} kV hay que guardar {1}.",
            measured, keep, new Figure(walk.kilovolts().get(), Scale.NUMBER))
        : Phrase.of(
            "Overhead line at {0} from the raised mast; {1} must be kept while the voltage is not known.",
            "Línea aérea a {0} del mástil izado; hay que guardar {1} si no se conoce el voltaje.", measured, keep);
  }

  private static Finding stop(String code, Start.WalkRound walk, Phrase text, Outcome clearance) {
    return Finding.of(code, Weight.STOP, DrillingStage.NAME, text)
        .because(Phrase.of(
            "Most drillers who died by electricity died by the rig touching a line.",
            "La mayoría de los perforadores muertos por electricidad murieron al tocar el equipo una línea."))
        .so(Phrase.of(
            "The mast stays down until the line's owner has cut the power or the rig stands farther. Local law"
                + " decides.",
            "El mástil queda abajo hasta que el dueño corte la línea o el equipo esté más lejos. Decide la ley local."))
        .shownBy(clearance)
        .from(List.of(walk.entry()));
  }

  private static Figure distance(Length length) {
    return new Figure(length, Scale.DISTANCE);
  }
}
