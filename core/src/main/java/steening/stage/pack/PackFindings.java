package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.well.Fill;
import steening.well.Losses;
import steening.well.Well;

/** Where the pack is not as expected. */
final class PackFindings {
  private PackFindings() {}

  static List<Finding> of(Well well) {
    Fill pack = well.get(Fill.PACK);
    boolean sealed = well.get(Fill.CHIPS).isBegun() || well.get(Fill.GROUT).isBegun();
    List<Finding> findings = new ArrayList<>();
    pack.aside().forEach(s -> findings.add(TapeFindings.adrift(s)));
    if (!sealed) TapeFindings.untagged(pack).ifPresent(findings::add);
    Pouring.of(well).ifPresent(p -> findings.addAll(of(p, sealed, well.get(Losses.PART))));
    findings.replaceAll(f -> f.code().equals(Washout.CODE) ? EarlyTape.explaining(f, well) : f);
    return findings;
  }

  private static List<Finding> of(Pouring pouring, boolean sealed, Losses losses) {
    List<Finding> findings = new ArrayList<>();
    Optional<Finding> miscounted = BagFindings.count(pouring);
    miscounted.ifPresent(findings::add);
    BagFindings.size(pouring).ifPresent(findings::add);
    TruckFindings.pallet(pouring).ifPresent(findings::add);
    Optional<Finding> odd = TapeFindings.odd(pouring);
    odd.ifPresent(findings::add);
    if (miscounted.isPresent() || odd.filter(f -> TapeFindings.IMPOSSIBLE.contains(f.code())).isPresent()) {
      return findings;
    }
    Optional<Finding> bridge = Bridge.finding(pouring);
    bridge.ifPresent(findings::add);
    if (bridge.isPresent()) return findings;
    if (odd.isEmpty()) Washout.finding(pouring, losses).ifPresent(findings::add);
    Optional<Finding> height = HeightFindings.finding(pouring, sealed);
    height.ifPresent(findings::add);
    if (!sealed && odd.isEmpty() && height.isEmpty()) SettlingFindings.finding(pouring).ifPresent(findings::add);
    if (!sealed && odd.isEmpty()) TruckFindings.finding(pouring).ifPresent(findings::add);
    return findings;
  }
}
