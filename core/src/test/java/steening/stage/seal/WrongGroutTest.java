package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/** COMAR 26.04.04.20 (mud thinned below the grout) and Minn. 4725.3050 (bentonite in loose ground), both seen. */
class WrongGroutTest {
  private static final JobInSteps CHIPPED = EverydaySealTest.CHIPPED;

  @Test
  void mudIsThinnedBelowTheGrout() {
    Finding heavy = mixed(CHIPPED.then("mud", "weight", "9.6 lb/gal")).finding("seal.heavy-mud").orElseThrow();
    assertThat(heavy.weight()).isEqualTo(Weight.LOOK);
    assertThat(heavy.text().shownTo(Reader.US_ENGLISH)).isEqualTo("The mud weighs 9.60 lb/gal, the grout 9.51 lb/gal.");
    assertThat(heavy.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("El lodo pesa 1150 kg/m³, la lechada 1140 kg/m³.");
    JobInSteps thinned = mixed(CHIPPED.then("mud", "weight", "9.6 lb/gal").then("mud", "weight", "8.8 lb/gal"));
    assertThat(EverydaySealTest.codes(thinned)).isEmpty();
    // mud weighed after the grout was begun is the next hole's
    JobInSteps after =
        mixed(CHIPPED).then("grout-batch", "bags", "2", "water", "48 gal").then("mud", "weight", "9.9 lb/gal");
    assertThat(EverydaySealTest.codes(after)).isEmpty();
  }

  @Test
  void bentoniteAgainstRockIsNoted() {
    JobInSteps rock = CHIPPED.then("log", "from", "40 ft", "to", "60 ft", "material", "limestone", "water", "no");
    Finding note = mixed(rock).finding("seal.bentonite-in-rock").orElseThrow();
    assertThat(note.weight()).isEqualTo(Weight.NOTE);
    assertThat(note.text().shownTo(Reader.US_ENGLISH)).isEqualTo("Bentonite grout against limestone at 40.00 ft.");
    JobInSteps deep = CHIPPED.then("log", "from", "115 ft", "to", "142 ft", "material", "limestone", "water", "yes");
    assertThat(mixed(deep).finding("seal.bentonite-in-rock")).isEmpty();
  }

  private static JobInSteps mixed(JobInSteps job) {
    return job.then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal");
  }
}
