package steening.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import steening.field.SeriesField;
import steening.number.Decimal;
import steening.quantity.Length;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Progress;
import steening.stage.plan.GroundOfEarlierWells;
import steening.well.Fill;
import steening.well.GroundLog;
import steening.well.Material;
import steening.well.Plan;
import steening.well.Site;
import steening.well.Stratum;
import steening.well.Took;
import steening.well.Well;
import steening.well.WellAnnulus;

/**
 * What the firm's finished wells took over their drilled size, beside one that is to be drilled.
 *
 * @param ground what this one's pack will mostly stand in, where its log says so
 * @param wells the nearest first; those whose place is not known at the end
 */
public record EarlierWells(Optional<Material> ground, List<One> wells) {
  /**
   * One of them.
   *
   * @param pack placed over drilled, pack and chips
   * @param grout the same of the grout, with what came back at the surface
   */
  public record One(
      String name, String id, double pack, Optional<Double> grout, Optional<Material> ground,
      Optional<Length> distance) {}

  public static EarlierWells of(Job here, List<Job> others) {
    List<One> wells = new ArrayList<>();
    for (Job other : others) {
      if (!other.well().id().equals(here.well().id())) one(here, other).ifPresent(wells::add);
    }
    wells.sort(Comparator.comparing(w -> w.distance().map(Length::inFeet).orElse(Double.MAX_VALUE)));
    return new EarlierWells(packedIn(here.well()), wells);
  }

  /** Those in the same ground; all of them where this well's ground is not known, or none of them stands in it. */
  public List<One> alike() {
    List<One> same = wells.stream().filter(w -> ground.isPresent() && w.ground().equals(ground)).toList();
    return same.isEmpty() ? wells : same;
  }

  public boolean isOfSameGround() {
    return ground.isPresent() && alike().stream().allMatch(w -> w.ground().equals(ground));
  }

  /** Mean and spread to reckon with, from the ratios as they are shown; none without a well. */
  public Optional<Outcome> proposed() {
    if (wells.isEmpty()) return Optional.empty();
    List<String> ratios = alike().stream().map(w -> Decimal.fixed(w.pack(), 2)).toList();
    return Outcome.ifReckonable(() -> GroundOfEarlierWells.RECKONING.of(
        Inputs.none().with(GroundOfEarlierWells.RATIOS, SeriesField.joined(ratios))));
  }

  private static Optional<One> one(Job here, Job other) {
    boolean finished = Stages.named("seal").orElseThrow().progress(other.well()) == Progress.DONE;
    Optional<Double> pack = finished ? Took.pack(other.well()).flatMap(EarlierWells::ratio) : Optional.empty();
    return pack.map(p -> new One(
        WellName.of(other.journal()), other.well().id(), p, Took.grout(other.well()).flatMap(EarlierWells::ratio),
        packedIn(other.well()), distance(here.well(), other.well())));
  }

  private static Optional<Double> ratio(Took took) {
    return Outcome.ifReckonable(() -> Outcome.empty().with(
            "holds", took.annulus().volume("V", Plan.PACK_TOP.label(), took.top(), took.bottom())))
        .map(o -> took.volume().cubicMetres() / o.quantity("holds").coherent());
  }

  private static Optional<Length> distance(Well here, Well there) {
    Optional<Site.Place> from = here.get(Site.PART).place();
    Optional<Site.Place> to = there.get(Site.PART).place();
    return from.isPresent() && to.isPresent() ? from.get().distanceTo(to.get()) : Optional.empty();
  }

  /** What most of the stretch round the pack is, by the log. */
  private static Optional<Material> packedIn(Well well) {
    Optional<Length> top = well.get(Fill.PACK).top().or(() -> well.get(Plan.PART).length(Plan.PACK_TOP));
    Length bottom = WellAnnulus.of(well).hole().bottom();
    if (top.isEmpty() || !bottom.isMoreThan(top.get())) return Optional.empty();
    Map<Material, Long> lengths = new TreeMap<>();
    for (Stratum stratum : well.get(GroundLog.PART).between(top.get(), bottom)) {
      Length within = stratum.to().min(bottom).minus(stratum.from().max(top.get()));
      lengths.merge(stratum.material(), within.nanometres(), Long::sum);
    }
    return lengths.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
  }
}
