package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

/** Own scenario, arithmetic checked by hand: a pack planned no higher than it must be. */
class SettlingFindingsTest {
  /** 27 ft of pack go down by 1.35 to 5.40 ft: 4.6 to 8.65 ft are left of ten above the screen. */
  @Test
  void saysHowFarAPackGoesDown() {
    Outcome settled = PackSettles.RECKONING.of(Inputs.none()
        .with(PackSettles.TOP, "115 ft").with(PackSettles.BOTTOM, "142 ft").with(PackSettles.SCREEN_TOP, "125 ft"));
    assertThat(settled.quantity("falls-least").in(Unit.FOOT)).isCloseTo(1.35, within(1e-6));
    assertThat(settled.quantity("falls-most").in(Unit.FOOT)).isCloseTo(5.40, within(1e-6));
    assertThat(settled.quantity("above-most").in(Unit.FOOT)).isCloseTo(8.65, within(1e-6));
    assertThat(settled.quantity("above-least").in(Unit.FOOT)).isCloseTo(4.60, within(1e-6));
  }

  /** 20.3 ft of pack, 3.3 ft above the screen: by the least settling, 1.02 ft, 2.29 ft are left of three. */
  @Test
  void speaksWhilePackCanStillBePoured() {
    JobInSteps poured = planned("121.5 ft").then("pack-bags", "bags", "11")
        .then("pack-tape", "reading", "121.7 ft", "from", "ground");
    Finding low = poured.finding("pack.settles-low").orElseThrow();
    assertThat(low.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "The pack stands 3.30 ft above the screen. Settling takes 1.02 ft to 4.06 ft: then 0.00 ft to 2.29 ft are"
            + " left; 3.00 ft are wanted. At worst the screen is bared.");
    // 3.76 ft × 0.2278 = 0.857 ft³: two bags
    assertThat(low.next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .startsWith("To make up for the most of it: 2 bags more now");
    assertThat(low.cause().orElseThrow().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .startsWith("Las fuentes difieren");
    assertThat(poured.then("chips", "bags", "1").finding("pack.settles-low")).as("sealed already").isEmpty();
  }

  @Test
  void isSilentWhereThePackIsHighEnough() {
    JobInSteps poured = planned("115 ft").then("pack-bags", "bags", "14")
        .then("pack-tape", "reading", "114.8 ft", "from", "ground");
    assertThat(poured.findings("pack")).isEmpty();
  }

  private static JobInSteps planned(String top) {
    return JobInSteps.nothing()
        .then("plan", "hole-diameter", "7.875 in", "hole-depth", "142 ft", "casing-outside", "4.5 in",
            "casing-wall", "0.214 in", "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft",
            "sump", "2 ft", "slot", "20 slot", "pack-top", top, "grout-top", "0 ft", "rate", "12 gpm")
        .then("hole", "from", "0 ft", "to", "142 ft", "diameter", "7.875 in");
  }
}
