package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.stage.EverydayWell;
import steening.stage.Sheet;

/** Own scenarios, arithmetic checked by hand. The sand is the curve of W-FILT-01: D30 0.195 mm. */
class ChoiceTest {
  private static final String OPENINGS = "0.075 0.15 0.25 0.425 0.85 mm";
  private static final String SAND = "4 14 45 80 98 %";

  private static JobInSteps sand() {
    return EverydayWell.drilled()
        .then("sieve", "from", "118 ft", "to", "130 ft", "openings", "0.15 0.3 0.6 1.2 mm", "finer", "5 20 60 95 %")
        .then("sieve", "from", "130 ft", "to", "138 ft", "openings", OPENINGS, "finer", SAND)
        .then("sieve", "from", "61 ft", "to", "78 ft", "openings", "0.075 0.15 0.25 mm", "finer", "20 60 99 %");
  }

  private static String value(JobInSteps job, String label) {
    return job.stage("casing").sheet(job.job().well()).lines().stream()
        .filter(line -> line.label().shownTo(US).startsWith(label)).findFirst()
        .map(Sheet.Line::value).map(v -> v.shownTo(US)).orElse("");
  }

  /** Both samples reach into the screen, 125 to 135 ft; the silty sand above is finer and does not count. */
  @Test
  void theFinestSandInTheScreenGoverns() {
    assertThat(value(sand(), "sand that governs"))
        .isEqualTo("130.00 ft to 138.00 ft, D30 0.195 mm, the finest of 2 sieved in the screen");
    assertThat(value(sand(), "D30 of the pack")).isEqualTo("0.781 mm to 1.17 mm");
    assertThat(value(sand(), "slot without a pack")).isEqualTo("0.011 in (11 slot), keeps 50.0 % of the formation");
    assertThat(sand().findings("casing")).isEmpty();
  }

  /** W-FILT-03: half of it is finer than 8.4 thousandths. */
  @Test
  void aSlotTooFineForNoPackIsSaid() {
    JobInSteps job = EverydayWell.drilled().then(
        "sieve", "from", "118 ft", "to", "138 ft", "openings", OPENINGS, "finer", "3 22 62 91 99 %");
    assertThat(value(job, "slot without a pack")).isEqualTo("0.008 in (8 slot), under 0.010 in (10 slot): put a pack (EPA)");
  }

  /** Slot 40 is 1.016 mm; 55 % of the pack is finer. */
  @Test
  void aSlotThatPassesHalfThePackStops() {
    JobInSteps job = EverydayWell.drilled()
        .then("pack-chosen", "openings", "0.508 1.016 2.032 mm", "finer", "10 55 100 %")
        .then("screen", "length", "10 ft", "slot", "0.040 in");
    Finding finding = job.finding("casing.slot-for-pack").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(finding.text().shownTo(US)).isEqualTo(
        "Slot 0.040 in (40 slot) passes 55.0 % of this pack, as sieved; 10.0 % at most is wanted.");
    assertThat(finding.next().orElseThrow().shownTo(US)).isEqualTo(
        "A slot no wider than 0.020 in (20 slot); or, if the slot is bought already, a pack that is coarser than "
            + "0.040 in (40 slot) but for 10.0 %.");
    assertThat(finding.text().shownTo(SPANISH)).startsWith("La ranura 1.02 mm");
    assertThat(finding.entries()).hasSize(2);
  }

  /** 0.425 to 0.85 mm (ASTM E11, from memory): log(0.508 / 0.425) / log 2 = 25.7 %. */
  @Test
  void theGradeAloneIsEnoughToAsk() {
    JobInSteps job = EverydayWell.drilled().then("pack-chosen", "grade", "20-40");
    Finding finding = job.finding("casing.slot-for-pack").orElseThrow();
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(US)).contains("passes 25.7 % of this pack, 20-40");
    assertThat(finding.cause().orElseThrow().shownTo(US)).contains("maker's sieve analysis");
  }

  /** The worked example of the design: sand of D30 0.20 mm, a 16-30 pack and slot 20 go together. */
  @Test
  void whatGoesTogetherRaisesNothing() {
    assertThat(sand().then("pack-chosen", "grade", "16-30").findings("casing")).isEmpty();
    assertThat(EverydayWell.cased().then("pack-bags", "bags", "3", "grade", "16-30").findings("casing")).isEmpty();
    assertThat(sand().then("pack-chosen", "grade", "local washed").findings("casing")).isEmpty();
  }

  @Test
  void whatIsPouredCountsMoreThanWhatWasChosen() {
    JobInSteps job = EverydayWell.cased().then("pack-chosen", "grade", "16-30")
        .then("pack-bags", "bags", "3", "grade", "20-40");
    assertThat(job.finding("casing.slot-for-pack").orElseThrow().text().shownTo(US)).contains("20-40");
  }

  /** D30 2 mm where 0.781 to 1.17 is wanted; then 0.4 mm. */
  @Test
  void aPackTooCoarseOrTooFineForTheSandIsFound() {
    JobInSteps coarse = sand().then("pack-chosen", "openings", "1.5 2 2.5 3 mm", "finer", "2 30 80 100 %");
    Finding finding = coarse.finding("casing.pack-coarse").orElseThrow();
    assertThat(finding.text().shownTo(US)).isEqualTo(
        "D30 of this pack is 2 mm; the finest sand sieved in the screen, 130.00 ft to 138.00 ft, asks for 0.781 mm "
            + "to 1.17 mm.");
    assertThat(finding.text().shownTo(SPANISH)).contains("pide de 0.781 mm a 1.17 mm");
    JobInSteps fine = sand().then("pack-chosen", "openings", "0.2 0.4 0.5 0.6 mm", "finer", "2 30 80 100 %");
    assertThat(fine.finding("casing.pack-fine")).isPresent();
    assertThat(sand().then("pack-chosen", "grade", "6-10").finding("casing.pack-coarse").orElseThrow().text()
        .shownTo(US)).startsWith("D30 of this pack is over 2 mm");
  }

  /** Cu = D60 / D10, D10 0.508 mm, D60 1.016 × 2^(5 / 45) = 1.097 mm: 2.16; then 0.2 and 1.2 mm: 6. */
  @Test
  void anUnevenPackIsFound() {
    JobInSteps even = EverydayWell.drilled()
        .then("pack-chosen", "openings", "0.508 1.016 2.032 mm", "finer", "10 55 100 %");
    assertThat(even.finding("casing.pack-uneven")).isEmpty();
    JobInSteps mixed = EverydayWell.drilled()
        .then("pack-chosen", "openings", "0.2 1.2 2 mm", "finer", "10 60 100 %");
    assertThat(mixed.finding("casing.pack-uneven").orElseThrow().text().shownTo(US))
        .isEqualTo("Cu of this pack is 6; 2.5 at most is wanted.");
  }

  @Test
  void aPackThatMakesNoCurveIsFound() {
    JobInSteps job = EverydayWell.drilled().then("pack-chosen", "finer", "10 60 100 %");
    assertThat(job.finding("casing.pack-unclear").orElseThrow().text().shownTo(US))
        .isEqualTo("Give the openings of the sieves.");
  }

  /** 0.3117 × 8.48 = 2.643 gpm to the foot: 40 gpm take 15.13 ft; 16 gpm 6.05 ft, half blocked 12.11 ft. */
  @Test
  void aScreenTooShortForTheRateIsFound() {
    Finding clear = planned("40 gpm").finding("casing.screen-short").orElseThrow();
    assertThat(clear.weight()).isEqualTo(Weight.LOOK);
    assertThat(clear.text().shownTo(US))
        .isEqualTo("10.00 ft of screen for 40.0 gpm; by its open area 15.13 ft are needed.");
    Finding half = planned("16 gpm").finding("casing.screen-short").orElseThrow();
    assertThat(half.weight()).isEqualTo(Weight.NOTE);
    assertThat(half.text().shownTo(SPANISH)).contains("3.05 m", "3.69 m");
    assertThat(planned("12 gpm").finding("casing.screen-short")).isEmpty();
  }

  /** By 0.5 ft/s the 40 gpm take 3.03 ft, half blocked 6.05 ft; 70 % kept lets 25.7 % through; 10 times 0.195 is 1.95. */
  @Test
  void theFirmsOwnRuleGoesBeforeThePublishedOne() {
    assertThat(planned("40 gpm", "entrance-limit", "0.5 ft/s").finding("casing.screen-short")).isEmpty();
    JobInSteps kept = planned("12 gpm", "slot-retains", "70 %").then("pack-chosen", "grade", "20-40");
    assertThat(kept.finding("casing.slot-for-pack")).isEmpty();
    JobInSteps times = planned("12 gpm", "pack-times-least", "8", "pack-times-most", "11")
        .then("sieve", "from", "118 ft", "to", "138 ft", "openings", OPENINGS, "finer", SAND)
        .then("pack-chosen", "openings", "1.5 2 2.5 3 mm", "finer", "2 30 80 100 %");
    assertThat(times.finding("casing.pack-coarse")).isEmpty();
    JobInSteps crossed = planned("12 gpm", "pack-times-least", "7", "pack-times-most", "5")
        .then("sieve", "from", "118 ft", "to", "138 ft", "openings", OPENINGS, "finer", SAND)
        .then("pack-chosen", "grade", "16-30");
    assertThat(crossed.finding("casing.pack-unclear").orElseThrow().text().shownTo(US)).contains("above the greatest");
  }

  /** The plan of the everyday well with another rate and a rule of the firm's own. */
  private static JobInSteps planned(String rate, String... rule) {
    Body body = EverydayWell.planned().entries().get(0).body().with("rate", rate);
    for (int i = 0; i < rule.length; i += 2) body = body.with(rule[i], rule[i + 1]);
    List<String> all = new ArrayList<>();
    body.values().forEach((key, value) -> all.addAll(List.of(key, value)));
    return JobInSteps.nothing().then("plan", all.toArray(String[]::new));
  }
}
