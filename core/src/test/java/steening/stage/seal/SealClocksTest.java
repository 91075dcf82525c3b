package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.Clock;
import steening.stage.seal.placing.WorkingTime;

/** Working time and set of grout; each entry happens ten minutes after the one before, from 08:00 on 12 May. */
class SealClocksTest {
  private static final JobInSteps MIXED = EverydaySealTest.CHIPPED
      .then("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal");

  /** 15 to 30 min at 60 °F, from memory; half of it at 78 °F, common practice. */
  @Test
  void warmGroutStiffensSooner() {
    Outcome cool = time("material", "bentonite", "temperature", "60 °F");
    assertThat(cool.quantity("least").in(Unit.MINUTE)).isCloseTo(15, within(1e-9));
    assertThat(cool.quantity("most").in(Unit.MINUTE)).isCloseTo(30, within(1e-9));
    assertThat(time("material", "bentonite", "temperature", "78 °F").quantity("least").in(Unit.MINUTE))
        .isCloseTo(7.5, within(1e-6));
    assertThat(time("material", "bentonite", "temperature", "40 °F").quantity("most").in(Unit.MINUTE))
        .isCloseTo(30, within(1e-9));
    assertThat(time("material", "cement").quantity("least").in(Unit.MINUTE)).isCloseTo(45, within(1e-9));
    assertThatThrownBy(() -> time("material", "rapid-cement")).isInstanceOf(NotReckonable.class);
  }

  @Test
  void theBatchRunsFromItsOwnTime() {
    // the eighth entry, at 09:20
    JobInSteps job = MIXED.then("grout-batch", "bags", "4", "water", "96 gal", "returns", "no", "temperature", "60 °F");
    assertThat(told(job, Reader.US_ENGLISH))
        .containsExactly("the batch stays workable, 15.0 min to 30.0 min: 2026-05-12T09:35:00-05:00");
    assertThat(told(job, new Reader(Language.SPANISH, UnitSystem.METRIC)).get(0))
        .startsWith("la mezcla sigue trabajable, 15.0 min a 30.0 min");
  }

  @Test
  void groutThatIsUpIsSoundedInTheMorning() {
    JobInSteps up = MIXED.then("grout-batch", "bags", "8", "water", "192 gal", "returns", "yes");
    assertThat(told(up, Reader.US_ENGLISH))
        .containsExactly("sound the grout again, and top it up: 2026-05-13T07:00:00-05:00");
    assertThat(told(up.then("grout-tape", "reading", "0.3 ft", "from", "ground", "after", "next-day"),
        Reader.US_ENGLISH)).isEmpty();
  }

  /** C21 of the published rules, seen: 24 h in Minnesota and Michigan, 12 h for rapid cement, 72 h in a county. */
  @Test
  void cementIsLeftToSet() {
    JobInSteps cement = EverydaySealTest.CHIPPED
        .then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal")
        .then("grout-batch", "bags", "22", "water", "114 gal", "returns", "yes");
    assertThat(told(cement, Reader.US_ENGLISH))
        .contains("the cement is left to set: 2026-05-13T09:20:00-05:00");
    assertThat(SealSheetTest.line(cement, "the cement is left to set")).isEqualTo("24.0 h");
    Finding early = cement.then("development", "method", "surging", "minutes", "30 min")
        .finding("development.before-set").orElseThrow();
    assertThat(early.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("Developed 0.2 h after the cement was placed; it is left 24.0 h to set.");
    JobInSteps county = EverydaySealTest.CHIPPED
        .then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal", "set-time", "72 h")
        .then("grout-batch", "bags", "22", "water", "114 gal", "returns", "yes");
    assertThat(told(county, Reader.US_ENGLISH)).contains("the cement is left to set: 2026-05-15T09:20:00-05:00");
    JobInSteps bentonite = MIXED.then("grout-batch", "bags", "8", "water", "192 gal", "returns", "yes")
        .then("development", "method", "surging", "minutes", "30 min");
    assertThat(bentonite.finding("development.before-set")).isEmpty();
  }

  @Test
  void aStopLongerThanTheGroutKeepsIsAskedAbout() {
    JobInSteps two = MIXED.then("grout-batch", "bags", "2", "water", "48 gal", "returns", "no")
        .then("grout-batch", "bags", "2", "water", "48 gal", "returns", "no");
    assertThat(EverydaySealTest.codes(two)).isEmpty();
    JobInSteps late = later(two, 75);
    Finding stopped = late.finding("seal.stopped").orElseThrow();
    assertThat(stopped.text().shownTo(Reader.US_ENGLISH))
        .isEqualTo("85.0 min between two batches; this grout stays workable for 30.0 min.");
    assertThat(stopped.next().orElseThrow().shownTo(Reader.US_ENGLISH)).contains("lift the tremie clear");
    JobInSteps filled = later(
        MIXED.then("grout-batch", "bags", "2", "water", "48 gal", "returns", "no")
            .then("tremie", "outside", "1.05 in", "inside", "0.824 in", "length", "100 ft", "end", "95 ft",
                "refilled", "yes")
            .then("grout-batch", "bags", "2", "water", "48 gal", "returns", "no"), 75);
    assertThat(EverydaySealTest.codes(filled)).isEmpty();
  }

  /** The last entry so many minutes later. */
  private static JobInSteps later(JobInSteps job, int minutes) {
    List<Entry> entries = new ArrayList<>(job.entries());
    Entry last = entries.remove(entries.size() - 1);
    Moment at = last.happenedAt().plusMinutes(minutes);
    entries.add(new Entry(last.id(), last.well(), last.device(), last.sequence(), last.who(), at, at, last.kind(),
        last.schema(), last.body(), last.replaces()));
    return new JobInSteps(entries);
  }

  private static List<String> told(JobInSteps job, Reader reader) {
    List<Clock> clocks = job.stage("seal").clocks(job.job().well());
    return clocks.stream().map(c -> c.what().shownTo(reader) + ": " + c.until()).toList();
  }

  private static Outcome time(String... namesAndTexts) {
    return WorkingTime.RECKONING.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
