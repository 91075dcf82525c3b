package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.field.Field;
import steening.field.Reading;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.stage.Progress;

/** What comes back is to weigh what goes in: Minn. 4725.3050, Mich. R 325.1633a, NR 812.20 (seen). */
class ReturnFindingsTest {
  private static final JobInSteps FOUR = EverydaySealTest.CHIPPED
      .then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal")
      .then("grout-batch", "bags", "4", "water", "96 gal", "returns", "no");

  @Test
  void thinReturnsArePumpedOn() {
    JobInSteps thin = FOUR.then("grout-batch", "bags", "4", "water", "96 gal", "weight", "9.5 lb/gal",
        "returns", "yes", "return-weight", "9.1 lb/gal");
    Finding finding = thin.finding("seal.thin-return").orElseThrow();
    assertThat(finding.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("What comes back weighs 9.10 lb/gal; 9.50 lb/gal is pumped.");
    assertThat(thin.stage("seal").progress(thin.job().well())).isEqualTo(Progress.UNDER_WAY);
    JobInSteps same = thin.then("grout-batch", "bags", "1", "water", "24 gal",
        "returns", "yes", "return-weight", "9.45 lb/gal");
    assertThat(EverydaySealTest.codes(same)).isEmpty();
    assertThat(same.stage("seal").progress(same.job().well())).isEqualTo(Progress.DONE);
  }

  @Test
  void groutThatComesBackTooSoonHasChannelled() {
    JobInSteps early = FOUR.then("grout-batch", "bags", "1", "water", "24 gal", "returns", "yes");
    Finding finding = early.finding("seal.early-return").orElseThrow();
    // by hand: 109.6 × 1.704 = 186.8 gal; 5 × 26.306
    assertThat(finding.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "Grout came back with 131.5 gal in the hole after 5 bags; the annulus takes at least 186.8 gal.");
    assertThat(EverydaySealTest.codes(early.then("grout-batch", "bags", "3", "water", "72 gal", "returns", "yes")))
        .isEmpty();
  }

  @Test
  void aBatchWithoutWaterOrBagsOrHeavierThanWaterIsRefusedInASentence() {
    assertThat(refused("bags", "0")).isEqualTo("bags: 0 is outside 1 to 2000. Example: 3.");
    assertThat(refused("water", "0 gal")).startsWith("water in all, by the meter: 0.0 gal is outside");
    assertThat(refused("water", "")).isNotBlank();
    assertThat(refused("weight", "8.1 lb/gal")).startsWith("weight by the balance: 8.10 lb/gal is outside 8.30 lb/gal");
    assertThat(refused("return-weight", "7 lb/gal")).startsWith("weight of what came back: 7.00 lb/gal is outside");
  }

  private static String refused(String field, String typed) {
    Field asked = GroutEntries.BATCH.field(field).orElseThrow();
    Reading reading = GroutEntries.BATCH.read(Map.of(field, typed), Reader.US_ENGLISH).get(asked);
    assertThat(reading).isInstanceOf(Reading.Refused.class);
    return ((Reading.Refused) reading).sentence().shownTo(Reader.US_ENGLISH);
  }
}
