package steening.stage.drilling.sieve;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.ground.SieveCurve;
import steening.ground.SieveWeights;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.hole.HoleFindings;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Sieved;
import steening.well.Well;

/** Sieve analyses that make no curve, or come from where nothing was drilled. */
public final class SieveFindings {
  /** A laboratory allows 0.3 % (ASTM C136, memory); at the rig, common practice, no source. */
  private static final double LOST_PERCENT = 1;

  private SieveFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Length deepest = well.get(Hole.PART).depth()
        .max(well.get(GroundLog.PART).bottom()).max(well.get(Drilling.PART).rodDepth());
    for (Sieved.Sample sample : well.get(Sieved.PART).samples()) {
      if (sample.to().minus(deepest).isMoreThan(HoleFindings.AGREES)) findings.add(below(sample, deepest));
      try {
        lost(sample, SieveCurve.of(sample.body())).ifPresent(findings::add);
      } catch (NotReckonable contradiction) {
        findings.add(finding("drilling.sieve-unclear", contradiction.sentence(), sample));
      }
    }
    return findings;
  }

  private static Optional<Finding> lost(Sieved.Sample sample, Outcome curve) {
    if (curve.shown("loss").isEmpty() || Math.abs(curve.quantity("loss").in(Unit.PERCENT)) <= LOST_PERCENT) {
      return Optional.empty();
    }
    Figure weighed = new Figure(SieveWeights.SAMPLE.in(sample.body()).orElseThrow(), Scale.SAMPLE_WEIGHT);
    return Optional.of(Finding.of("drilling.sieve-loss", Weight.LOOK, DrillingStage.NAME, Phrase.of(
            "Sieves and pan hold {0}, the sample weighed {1}: they differ by {2}.",
            "Tamices y fondo tienen {0}, la muestra pesó {1}: difieren {2}.",
            curve.figure("total"), weighed, curve.figure("loss")))
        .comparing(curve.figure("total"), weighed)
        .because(Phrase.of(
            "A weight misread, a sieve left out, fines blown off, or the sample was weighed wet.",
            "Un peso mal leído, un tamiz omitido, finos perdidos, o la muestra se pesó húmeda."))
        .so(Phrase.of("Weigh again, or sieve another part of it.", "Pese de nuevo o tamice otra parte."))
        .shownBy(curve)
        .from(List.of(sample.entry())));
  }

  private static Finding below(Sieved.Sample sample, Length deepest) {
    return finding(
            "drilling.sieve-below-hole",
            Phrase.of(
                "A sample from {0} to {1} was sieved, and the hole is {2} deep.",
                "Se tamizó una muestra de {0} a {1} y el barreno tiene {2}.",
                depth(sample.from()), depth(sample.to()), depth(deepest)),
            sample)
        .comparing(depth(sample.to()), depth(deepest));
  }

  private static Finding finding(String code, Phrase text, Sieved.Sample sample) {
    return Finding.of(code, Weight.LOOK, DrillingStage.NAME, text)
        .so(Phrase.of(
            "Correct the entry before a screen is chosen by it.",
            "Corrija el registro antes de elegir la rejilla con él."))
        .from(List.of(sample.entry()));
  }
}
