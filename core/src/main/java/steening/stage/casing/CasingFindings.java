package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import steening.finding.Finding;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.stage.casing.choice.ChoiceFindings;
import steening.well.Well;

/** Where the string is not as expected. */
final class CasingFindings {
  private CasingFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    findings.addAll(GroundFindings.of(well));
    findings.addAll(ChoiceFindings.of(well));
    findings.addAll(HoleFindings.of(well));
    findings.addAll(TallyFindings.of(well));
    Stopped.finding(well).ifPresent(findings::add);
    Offcut.finding(well).ifPresent(findings::add);
    JointFindings.of(well).ifPresent(findings::add);
    findings.addAll(PlanFindings.of(well));
    findings.addAll(CentraliserFindings.of(well));
    Cementing.unreckoned(well).ifPresent(findings::add);
    return findings;
  }

  static Figure depth(Length depth) {
    return new Figure(depth, Scale.DEPTH);
  }

  static Figure across(Length diameter) {
    return new Figure(diameter, Scale.DIAMETER);
  }

  static boolean differ(Length one, Length other, Length by) {
    return one.max(other).minus(one.min(other)).isMoreThan(by);
  }
}
