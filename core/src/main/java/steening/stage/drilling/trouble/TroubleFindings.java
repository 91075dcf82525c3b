package steening.stage.drilling.trouble;

import java.util.ArrayList;
import java.util.List;
import steening.finding.Finding;
import steening.well.Well;

/** What goes wrong in the hole. */
public final class TroubleFindings {
  private TroubleFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>(LossFindings.of(well));
    findings.addAll(CavingFindings.of(well));
    findings.addAll(FishFindings.of(well));
    return findings;
  }
}
