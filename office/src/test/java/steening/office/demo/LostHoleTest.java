package steening.office.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Finding;
import steening.job.Holes;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.report.CompletionReport;
import steening.report.Paper;
import steening.stage.Progress;
import steening.well.Hole;
import steening.well.Plug;
import steening.well.Plugs;
import steening.well.Well;

/** The demo firm's lost hole, by hand: 0.33824 ft³ to the foot; 9 sacks fill 10.56 ft³ or 31.2 ft, 17 bags 11.73. */
class LostHoleTest {
  private static final double CUBIC_FEET = 0.3048 * 0.3048 * 0.3048;
  private static final List<Entry> ENTRIES = DemoFirm.well("lost-hole");
  private static final Job JOB = Job.of(ENTRIES.get(0).well(), Journal.of(ENTRIES));
  private static final Well FIRST = JOB.well().earlier().get(0);

  @Test
  void theFirstHoleHasItsOwnVolumes() {
    List<Plug> plugs = FIRST.get(Plugs.PART).plugs();
    assertThat(FIRST.get(Hole.PART).depth().inFeet()).isEqualTo(92);
    assertThat(plugs.get(0).fill().volume().cubicMetres() / CUBIC_FEET).isCloseTo(10.56, within(0.01));
    assertThat(plugs.get(1).fill().volume().cubicMetres() / CUBIC_FEET).isCloseTo(11.73, within(0.001));
    assertThat(Stages.named("decommissioning").orElseThrow().progress(JOB.well())).isEqualTo(Progress.DONE);
  }

  @Test
  void theSecondIsUnderWayAndOnlyTheFishStandsOut() {
    assertThat(JOB.present().name()).isEqualTo("drilling");
    assertThat(JOB.well().number()).isEqualTo(2);
    assertThat(JOB.isDone()).isFalse();
    assertThat(JOB.findings()).extracting(Finding::code)
        .containsExactlyInAnyOrder("drilling.up-hole-velocity", "decommissioning.blocked");
    assertThat(Holes.findings(FIRST)).extracting(Finding::code)
        .containsExactlyInAnyOrder("drilling.up-hole-velocity", "decommissioning.blocked");
  }

  /** While it was open it was said so: as it was known the evening before the plugs. */
  @Test
  void beforeThePlugsItWasOpen() {
    Job then = Job.of(JOB.well().id(), Journal.of(ENTRIES).asOf(Moment.parse("2026-06-02T15:45:00-04:00")));
    assertThat(then.findings()).extracting(Finding::code).contains("decommissioning.open-hole");
  }

  @Test
  void theReportHasThePartOfTheHoleAndTheRecordOfItsPlugs() {
    for (Reader reader : List.of(Reader.US_ENGLISH, new Reader(Language.SPANISH, UnitSystem.METRIC))) {
      boolean english = reader.language() == Language.ENGLISH;
      String paper = CompletionReport.xhtml(JOB, reader, Paper.LETTER, "sans", Moment.parse("2026-06-03T12:00:00-04:00"));
      assertThat(paper)
          .contains(english ? "Record of a plugged hole" : "Registro de un barreno sellado")
          .contains(english ? "Given up on 2026-06-02 at 92.00 ft: lost tools." : "herramienta perdida")
          .contains(english ? "neat cement" : "lechada de cemento");
    }
  }
}
