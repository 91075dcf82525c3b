package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/** Own scenario: the truck counted before the pour and again. */
class TruckTest {
  private static final JobInSteps COUNTED = EverydayPackTest.DRILLED.then("on-truck", "pack", "20", "joints", "3");

  /** Pallet of 16, four left: twelve are gone, eleven were entered. */
  @Test
  void thePalletIsHeldAgainstTheTally() {
    JobInSteps poured = EverydayPackTest.DRILLED.then("on-truck", "pack", "16").then("pack-bags", "bags", "11");
    Finding pallet = poured.then("on-truck", "pack", "4").finding("pack.pallet").orElseThrow();
    assertThat(pallet.text().shownTo(Reader.US_ENGLISH)).isEqualTo("Pallet 16 − 4 left = 12; the tally says 11.");
    assertThat(pallet.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC))).startsWith("Tarima 16 − 4");
    assertThat(pallet.entries()).hasSize(2);
    assertThat(poured.then("on-truck", "pack", "5").finding("pack.pallet")).isEmpty();
    assertThat(poured.then("on-truck", "grout", "9").finding("pack.pallet")).isEmpty();
  }

  /** Fetched bags raise the count; that is no slip. */
  @Test
  void moreBagsThanBeforeWereFetched() {
    assertThat(COUNTED.then("on-truck", "pack", "30").finding("pack.pallet")).isEmpty();
  }

  @Test
  void aCountGoesBeforeThePlansLoad() {
    assertThat(PackSheetTest.line(COUNTED.then("pack-bags", "bags", "3"), "on the truck, by the last count"))
        .isEqualTo("17 bags");
    Finding truck = EverydayPackTest.DRILLED.then("on-truck", "pack", "12").finding("pack.truck").orElseThrow();
    assertThat(truck.text().shownTo(Reader.US_ENGLISH)).endsWith("On the truck by the last count: 12 bags.");
    assertThat(truck.cause().orElseThrow().shownTo(Reader.US_ENGLISH)).startsWith("Holes here usually take 1.13");
    assertThat(COUNTED.finding("pack.truck")).isEmpty();
  }

  /** 126.5 ft of casing above the screen: six joints of 20 ft and a piece of a seventh. */
  @Test
  void jointsAreCountedAgainstWhatIsStillToCome() {
    JobInSteps planned = steening.stage.EverydayWell.drilled();
    Finding joints = planned.then("on-truck", "joints", "6").finding("casing.truck").orElseThrow();
    assertThat(joints.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("126.50 ft of casing are still to come, 7 joints; by the last count 6 are on the truck.");
    assertThat(planned.then("on-truck", "joints", "7").finding("casing.truck")).isEmpty();
  }
}
