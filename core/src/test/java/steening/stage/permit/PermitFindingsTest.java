package steening.stage.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Notebook;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.Progress;
import steening.well.Well;

class PermitFindingsTest {
  private static final PermitStage STAGE = new PermitStage();

  @Test
  void findsNothingWhereBothPapersHold() {
    assertThat(drilled(papers(), "2026-05-12T08:00:00-05:00").codes("permit")).isEmpty();
    assertThat(papers().codes("permit")).isEmpty();
    assertThat(new Notebook().codes("permit")).isEmpty();
  }

  /** First and last day hold. */
  @Test
  void countsBothEnds() {
    assertThat(drilled(papers(), "2026-05-09T00:00:00-05:00").codes("permit")).isEmpty();
    assertThat(drilled(papers(), "2026-06-05T23:59:00-05:00").codes("permit")).isEmpty();
    assertThat(drilled(papers(), "2026-05-08T23:59:00-05:00").codes("permit")).containsExactly("permit.ticket-not-yet");
    assertThat(drilled(papers(), "2026-06-06T00:00:00-05:00").codes("permit")).containsExactly("permit.ticket-expired");
  }

  @Test
  void missesThePapers() {
    Notebook notebook = drilled(new Notebook(), "2026-05-12T08:00:00-05:00");
    assertThat(notebook.codes("permit")).containsExactly("permit.missing", "permit.ticket-missing");
    assertThat(notebook.findings("permit")).allMatch(f -> f.weight() == Weight.STOP);
    assertThat(english(notebook.finding("permit.missing")))
        .isEqualTo("Drilling began on 2026-05-12, and no permit is written down.");
    assertThat(notebook.finding("permit.ticket-missing").text().shownTo(
        new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("La perforación empezó el 2026-05-12 y no hay solicitud de localización de servicios anotada.");
  }

  @Test
  void seesAPermitThatDidNotHold() {
    Notebook early = drilled(papers(), "2026-04-27T08:00:00-05:00");
    assertThat(english(early.finding("permit.not-yet-issued")))
        .isEqualTo("Drilling began on 2026-04-27; permit AC-17 was issued on 2026-04-28.");
    assertThat(early.finding("permit.not-yet-issued").entries()).containsExactly("permit-1");
    Notebook late = drilled(papers(), "2027-04-29T08:00:00-05:00");
    assertThat(english(late.finding("permit.expired")))
        .isEqualTo("Drilling began on 2027-04-29; permit AC-17 held until 2027-04-28.");
  }

  /** A ticket is renewed for the trench: the one that held when drilling began still counts. */
  @Test
  void letsPapersBeRenewed() {
    Notebook renewed = drilled(papers(), "2026-05-12T08:00:00-05:00")
        .at("2026-06-08T08:00:00-05:00")
        .write(
            "locate-ticket", "number", "T-2", "requested", "2026-06-05",
            "dig-from", "2026-06-09", "dig-until", "2026-07-06")
        .write("permit", "number", "AC-18", "issued", "2026-06-08", "expires", "2027-06-08");
    assertThat(renewed.codes("permit")).isEmpty();
  }

  @Test
  void seesDaysThatAreNotInOrder() {
    Notebook notebook = new Notebook()
        .write("permit", "number", "P", "issued", "2026-05-06", "expires", "2025-05-06")
        .write(
            "locate-ticket", "number", "T", "requested", "2026-06-05",
            "dig-from", "2026-05-08", "dig-until", "2026-06-05");
    List<Finding> findings = notebook.findings("permit");
    assertThat(findings).extracting(Finding::code).containsExactly("permit.dates", "permit.dates");
    assertThat(english(findings.get(0))).isEqualTo("Permit P ends on 2025-05-06, before it was issued on 2026-05-06.");
    assertThat(findings.get(1).weight()).isEqualTo(Weight.LOOK);
  }

  @Test
  void tellsTheFirstDayThatBothAllow() {
    Well well = papers().well();
    assertThat(STAGE.sheet(well).lines().get(0).value().shownTo(Reader.US_ENGLISH)).isEqualTo("2026-05-09");
    assertThat(STAGE.sheet(well).tables()).hasSize(2);
    Notebook never = new Notebook()
        .write("permit", "number", "P", "issued", "2026-06-08", "expires", "2027-05-06")
        .write(
            "locate-ticket", "number", "T", "requested", "2026-05-05",
            "dig-from", "2026-05-08", "dig-until", "2026-06-05");
    assertThat(STAGE.sheet(never.well()).lines()).isEmpty();
  }

  @Test
  void goesFromPermitToTicket() {
    Notebook notebook = new Notebook();
    assertThat(STAGE.progress(notebook.well())).isEqualTo(Progress.NOT_BEGUN);
    assertThat(STAGE.nextKind(notebook.well())).isEqualTo("permit");
    notebook.write("permit", "number", "P", "issued", "2026-05-06", "expires", "2027-05-06");
    assertThat(STAGE.progress(notebook.well())).isEqualTo(Progress.UNDER_WAY);
    assertThat(STAGE.nextKind(notebook.well())).isEqualTo("locate-ticket");
    assertThat(STAGE.progress(papers().well())).isEqualTo(Progress.DONE);
    assertThat(STAGE.loads(papers().well())).hasSize(1);
  }

  @Test
  void asksWhichIsTheMonth() {
    Reading reading = PermitEntries.REQUESTED.read("05/06/2026", Reader.US_ENGLISH, false);
    assertThat(((Reading.Asked) reading).question().shownTo(Reader.US_ENGLISH))
        .isEqualTo("requested on: does 05/06/2026 mean 2026-05-06 or 2026-06-05?");
  }

  private static Notebook papers() {
    return new Notebook()
        .at("2026-04-28T09:00:00-05:00")
        .write(
            "permit", "number", "AC-17", "issued", "2026-04-28", "expires", "2027-04-28", "authority", "Alder County")
        .write(
            "locate-ticket", "number", "T-1", "requested", "2026-05-06",
            "dig-from", "2026-05-09", "dig-until", "2026-06-05");
  }

  private static Notebook drilled(Notebook notebook, String begun) {
    return notebook.at(begun).write("hole", "from", "0 ft", "to", "20 ft", "diameter", "7 7/8 in");
  }

  private static String english(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
