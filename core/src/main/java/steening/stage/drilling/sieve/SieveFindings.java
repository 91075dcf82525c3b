package steening.stage.drilling.sieve;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.ground.SieveCurve;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.NotReckonable;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.hole.HoleFindings;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Well;

/** Sieve analyses that make no curve, or come from where nothing was drilled. */
public final class SieveFindings {
  private SieveFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Length deepest = well.get(Hole.PART).depth()
        .max(well.get(GroundLog.PART).bottom()).max(well.get(Drilling.PART).rodDepth());
    for (Sieved.Sample sample : well.get(Sieved.PART).samples()) {
      if (sample.to().minus(deepest).isMoreThan(HoleFindings.AGREES)) findings.add(below(sample, deepest));
      try {
        SieveCurve.of(sample.openings(), sample.finer());
      } catch (NotReckonable contradiction) {
        findings.add(finding("drilling.sieve-unclear", contradiction.sentence(), sample));
      }
    }
    return findings;
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
