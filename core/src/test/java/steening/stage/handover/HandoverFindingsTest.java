package steening.stage.handover;

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
import steening.stage.Sheet;

/** Own scenario: permit of 28 April, ticket asked for on 6 May, drilled on 12 May, complete on 27 May 2026. */
class HandoverFindingsTest {
  private static final HandoverStage STAGE = new HandoverStage();
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void findsNothingWhereAllAgrees() {
    assertThat(complete("2026-05-27").codes("handover")).isEmpty();
    assertThat(new Notebook().codes("handover")).isEmpty();
    assertThat(drilled().codes("handover")).isEmpty();
  }

  @Test
  void comparesTagAndPermit() {
    Finding finding = drilled().write("tag", "number", "0047813", "permit", "AC-2026-0171")
        .finding("handover.tag-permit");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(english(finding)).isEqualTo("The tag says permit AC-2026-0171; the permit says AC-2026-0117.");
    assertThat(finding.entries()).containsExactly("permit-1", "tag-5");
    assertThat(drilled().write("tag", "number", "0047813", "permit", "ac 2026 0117").codes("handover")).isEmpty();
    assertThat(drilled().write("tag", "number", "0047813").codes("handover")).isEmpty();
    assertThat(new Notebook().write("tag", "number", "0047813", "permit", "X").codes("handover")).isEmpty();
  }

  /** 03/06 is 3 June to the hand that wrote it, and 6 March to the form: before the ticket was asked for. */
  @Test
  void seesTheMonthAndTheDayTurnedRound() {
    Reading reading = HandoverEntries.DATE.read("03/06/2026", Reader.US_ENGLISH, false);
    assertThat(((Reading.Asked) reading).meanings()).containsExactly("2026-03-06", "2026-06-03");
    Notebook turned = drilled().at("2026-06-04T17:00:00-05:00")
        .write("completion", "date", "2026-03-06", "driller", "Ida Marsh", "licence", "WD-0419");
    assertThat(turned.codes("handover")).containsExactly("handover.completed-too-early");
    Finding finding = turned.finding("handover.completed-too-early");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(english(finding)).isEqualTo("Completed on 2026-03-06, but drilling began on 2026-05-12.");
    assertThat(finding.cause().get().shownTo(SPANISH)).isEqualTo("¿Día y mes invertidos? ¿Quiso decir 2026-06-03?");
  }

  @Test
  void seesACompletionBeforeTheTicket() {
    Notebook undrilled = papers().at("2026-06-04T17:00:00-05:00")
        .write("completion", "date", "2026-05-05", "driller", "Ida Marsh", "licence", "WD-0419");
    Finding finding = undrilled.finding("handover.completed-too-early");
    assertThat(english(finding))
        .isEqualTo("Completed on 2026-05-05, but the locate ticket was requested on 2026-05-06.");
    assertThat(finding.cause()).as("5 May turned round is 5 May").isEmpty();
    assertThat(complete("2026-05-12").codes("handover")).isEmpty();
  }

  @Test
  void seesACompletionThatHasNotHappened() {
    Finding finding = drilled().at("2026-06-04T17:00:00-05:00")
        .write("completion", "date", "2026-12-05", "driller", "Ida Marsh", "licence", "WD-0419")
        .finding("handover.completed-too-late");
    assertThat(english(finding)).isEqualTo("Completed on 2026-12-05, but that was written on 2026-06-04.");
    assertThat(finding.cause()).as("12 May is a day of the job").isPresent();
    assertThat(finding.cause().get().shownTo(Reader.US_ENGLISH)).endsWith("Did you mean 2026-05-12?");
  }

  @Test
  void asksForASignature() {
    Notebook nobody = drilled().at("2026-05-27T17:00:00-05:00").write("completion", "date", "2026-05-27");
    assertThat(english(nobody.finding("handover.unsigned"))).isEqualTo("Nobody is named who answers for this well.");
    Notebook unlicensed = drilled().at("2026-05-27T17:00:00-05:00")
        .write("completion", "date", "2026-05-27", "driller", "Ida Marsh");
    assertThat(english(unlicensed.finding("handover.unsigned"))).isEqualTo("No licence number for Ida Marsh.");
    assertThat(unlicensed.finding("handover.unsigned").weight()).isEqualTo(Weight.LOOK);
  }

  /** 30, 45, 60 and 90 days: the rules named in DueDates (seen). */
  @Test
  void countsTheDaysToTheReport() {
    Sheet sheet = STAGE.sheet(complete("2026-05-27").well());
    assertThat(sheet.tables().get(0).rows()).extracting(r -> r.get(1).shownTo(Reader.US_ENGLISH))
        .containsExactly("2026-06-26", "2026-07-11", "2026-07-26", "2026-08-25");
    Notebook onTime = drilled().at("2026-06-26T17:00:00-05:00")
        .write("completion", "date", "2026-05-27", "driller", "Ida Marsh", "licence", "WD-0419");
    assertThat(onTime.codes("handover")).isEmpty();
    Notebook late = drilled().at("2026-06-27T17:00:00-05:00")
        .write("completion", "date", "2026-05-27", "driller", "Ida Marsh", "licence", "WD-0419");
    assertThat(late.finding("handover.report-late").weight()).isEqualTo(Weight.NOTE);
    assertThat(english(late.finding("handover.report-late"))).startsWith("Written down 31.0 d after completion.");
  }

  @Test
  void seesAScreenBelowTheHole() {
    Notebook notebook = cased("124 ft");
    assertThat(notebook.codes("handover")).as("before the completion it is the casing room's").isEmpty();
    Finding finding = signed(notebook).finding("handover.screen-too-deep");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(english(finding)).isEqualTo("Screen to 135.00 ft, hole only 124.00 ft deep.");
    assertThat(signed(cased("136 ft")).codes("handover")).containsExactly("handover.string-too-deep");
    assertThat(signed(cased("137 ft")).codes("handover")).isEmpty();
  }

  @Test
  void goesFromTagToCompletion() {
    assertThat(STAGE.progress(drilled().well())).isEqualTo(Progress.NOT_BEGUN);
    assertThat(STAGE.nextKind(drilled().well())).isEqualTo("tag");
    Notebook tagged = drilled().write("tag", "number", "0047813");
    assertThat(STAGE.nextKind(tagged.well())).isEqualTo("completion");
    assertThat(STAGE.progress(tagged.well())).isEqualTo(Progress.UNDER_WAY);
    assertThat(STAGE.progress(complete("2026-05-27").well())).isEqualTo(Progress.DONE);
    assertThat(STAGE.loads(drilled().well())).isEmpty();
  }

  private static Notebook papers() {
    return new Notebook().at("2026-04-28T09:00:00-05:00")
        .write("permit", "number", "AC-2026-0117", "issued", "2026-04-28", "expires", "2027-04-28")
        .write(
            "locate-ticket", "number", "T-1", "requested", "2026-05-06",
            "dig-from", "2026-05-09", "dig-until", "2026-06-05");
  }

  private static Notebook drilled() {
    return papers().at("2026-05-12T08:00:00-05:00")
        .write("hole", "from", "0 ft", "to", "100 ft", "diameter", "7 7/8 in")
        .write("hole", "from", "100 ft", "to", "142 ft", "diameter", "7 7/8 in");
  }

  /** Screen to 135 ft, string to 137 ft. */
  private static Notebook cased(String holeDepth) {
    Notebook notebook = papers().at("2026-05-12T08:00:00-05:00")
        .write("hole", "from", "0 ft", "to", holeDepth, "diameter", "7 7/8 in")
        .write("sump", "length", "2 ft").write("screen", "length", "10 ft", "slot", "20 slot");
    for (String joint : List.of("1", "2", "3", "4", "5", "6")) {
      notebook.write("joint", "number", joint, "overall", "20 ft");
    }
    return notebook.write("cut-piece", "length", "6.5 ft").write("string-set", "stick-up", "1.5 ft");
  }

  private static Notebook complete(String date) {
    return drilled().at("2026-05-27T17:00:00-05:00")
        .write("tag", "number", "0047813", "permit", "AC-2026-0117")
        .write("completion", "date", date, "driller", "Ida Marsh", "licence", "WD-0419");
  }

  private static Notebook signed(Notebook notebook) {
    return notebook.at("2026-05-27T17:00:00-05:00")
        .write("completion", "date", "2026-05-27", "driller", "Ida Marsh", "licence", "WD-0419");
  }

  private static String english(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
