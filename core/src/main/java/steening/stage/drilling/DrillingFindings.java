package steening.stage.drilling;

import java.util.ArrayList;
import java.util.List;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.drilling.ahead.AheadFindings;
import steening.stage.drilling.fluid.MudFindings;
import steening.stage.drilling.fluid.UpHoleVelocity;
import steening.stage.drilling.hole.FirstHole;
import steening.stage.drilling.hole.HoleFindings;
import steening.stage.drilling.hole.RodFindings;
import steening.stage.drilling.log.BreakFindings;
import steening.stage.drilling.log.CuttingsFindings;
import steening.stage.drilling.log.LogFindings;
import steening.stage.drilling.sieve.SieveFindings;
import steening.stage.drilling.start.StartFindings;
import steening.stage.drilling.trouble.TroubleFindings;
import steening.well.Well;

/** Where the drilling is not as expected. */
public final class DrillingFindings {
  private DrillingFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    findings.addAll(upHoleVelocity(well.get(Drilling.PART)));
    findings.addAll(upsideDown(well.get(Drilling.PART)));
    findings.addAll(HoleFindings.of(well));
    findings.addAll(FirstHole.findings(well));
    findings.addAll(LogFindings.of(well));
    findings.addAll(RodFindings.of(well));
    findings.addAll(MudFindings.of(well));
    findings.addAll(SieveFindings.of(well));
    findings.addAll(CuttingsFindings.of(well));
    findings.addAll(BreakFindings.of(well));
    findings.addAll(TroubleFindings.of(well));
    findings.addAll(StartFindings.of(well));
    findings.addAll(AheadFindings.of(well));
    return findings;
  }

  public static Figure depth(Length depth) {
    return new Figure(depth, Scale.DEPTH);
  }

  private static List<Finding> upHoleVelocity(Drilling drilling) {
    if (drilling.rig().isEmpty()) return List.of();
    Drilling.Rig rig = drilling.rig().get();
    try {
      Outcome velocity = UpHoleVelocity.of(rig);
      if (velocity.quantity("velocity").coherent() >= UpHoleVelocity.ADVISED.coherent()) return List.of();
      Figure reckoned = velocity.figure("velocity");
      Figure advised = new Figure(UpHoleVelocity.ADVISED, Scale.UPHOLE_VELOCITY);
      return List.of(Finding.of(
              "drilling.up-hole-velocity", Weight.NOTE, DrillingStage.NAME,
              Phrase.of(
                  "The mud rises at {0}; {1} is advised. Small rigs rely on the mud's viscosity to carry the cuttings.",
                  "El lodo sube a {0}; se aconsejan {1}. En equipos pequeños la viscosidad del lodo sube los recortes.",
                  reckoned, advised))
          .comparing(reckoned, advised)
          .so(Phrase.of(
              "Keep the funnel up, and circulate before each connection.",
              "Mantenga la viscosidad y circule antes de cada conexión."))
          .shownBy(velocity)
          .from(List.of(rig.entry())));
    } catch (NotReckonable rodsAsWideAsTheHole) {
      return List.of(Finding.of(
              "drilling.rods-too-wide", Weight.LOOK, DrillingStage.NAME,
              Phrase.of(
                  "The rods, {0}, are not narrower than the bit, {1}.",
                  "La tubería, {0}, no es más angosta que la barrena, {1}.",
                  new Figure(rig.rod(), Scale.DIAMETER), new Figure(rig.bit(), Scale.DIAMETER)))
          .so(Phrase.of("Correct one of the two.", "Corrija uno de los dos."))
          .from(List.of(rig.entry())));
    }
  }

  private static List<Finding> upsideDown(Drilling drilling) {
    return drilling.upsideDown().stream()
        .map(mistake -> Finding.of(
                "drilling.upside-down", Weight.LOOK, DrillingStage.NAME,
                Phrase.of(
                    "From {0} to {1}: the lower end is not below the upper one, so this was left out.",
                    "De {0} a {1}: el extremo inferior no está debajo del superior, así que no se tomó en cuenta.",
                    depth(mistake.from()), depth(mistake.to())))
            .so(Phrase.of("Correct the entry.", "Corrija el registro."))
            .from(List.of(mistake.entry())))
        .toList();
  }
}
