package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.Progress;

/** Own scenario, arithmetic checked by hand: a pack that bridges under the ninth bag. */
class BridgedPackTest {
  private static final JobInSteps SET = JobInSteps.nothing()
      .then("plan", "hole-diameter", "7.875 in", "hole-depth", "97 ft", "casing-outside", "4.5 in",
          "casing-wall", "0.214 in", "stick-up", "1.5 ft", "screen-top", "84 ft", "screen-bottom", "94 ft",
          "sump", "2 ft", "slot", "20 slot",
          "pack-top", "74 ft", "grout-top", "0 ft", "rate", "10 gpm")
      .then("hole", "from", "0 ft", "to", "97 ft", "diameter", "7.875 in")
      .then("sump", "length", "2 ft").then("screen", "length", "10 ft", "slot", "20 slot")
      .then("joint", "number", "1", "overall", "20 ft").then("joint", "number", "2", "overall", "20 ft")
      .then("joint", "number", "3", "overall", "20 ft").then("joint", "number", "4", "overall", "20 ft")
      .then("cut-piece", "length", "5.5 ft").then("string-set", "stick-up", "1.5 ft");
  private static final JobInSteps SIX = poured(poured(SET, "91.1 ft"), "84.6 ft");
  static final JobInSteps NINE = poured(SIX, "71.2 ft");
  static final JobInSteps BROKEN = NINE.then("pack-tape", "reading", "77.9 ft", "from", "ground");

  @Test
  void saysNothingWhileTheTapeComesNear() {
    assertThat(SIX.findings("pack")).isEmpty();
  }

  @Test
  void stopsAtTheNinthBagWithBothNumbers() {
    Finding bridged = NINE.finding("pack.bridged").orElseThrow();
    assertThat(bridged.weight()).isEqualTo(Weight.STOP);
    assertThat(bridged.measured().orElseThrow().quantity().in(Unit.FOOT)).isCloseTo(71.2, within(1e-9));
    assertThat(bridged.expected().orElseThrow().quantity().in(Unit.FOOT)).isCloseTo(77.7, within(0.05));
    assertThat(bridged.entries()).endsWith("pack-tape-16").contains("pack-bags-15", "pack-tape-14");
    assertThat(english(bridged)).isEqualTo(
        "After bag 9 the tape finds the pack at 71.20 ft; 77.73 ft was expected, give or take 1.63 ft."
            + " It stands 6.53 ft too high.");
  }

  @Test
  void reckonsTheChanceThePlugTheVoidAndTheBareScreen() {
    Finding bridged = NINE.finding("pack.bridged").orElseThrow();
    Outcome working = bridged.working().orElseThrow();
    assertThat(working.quantity("chance").coherent()).isGreaterThan(0.999).isLessThanOrEqualTo(1);
    assertThat(working.quantity("difference").coherent() / working.quantity("deviation").coherent())
        .isCloseTo(-8, within(0.05));
    // by hand: 1.5 / 0.2278 = 6.6 ft of plug, 13.4 − 6.6 = 6.8 ft of void, 84.6 − 84 = 0.6 ft of screen
    assertThat(bridged.cause().orElseThrow().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "The last 3 bags would make the hole 6.39 in wide. A bridge, most likely: a plug 6.58 ft long over a void of"
            + " 1.55 ft³, 6.82 ft deep. It leaves 0.60 ft of the screen without sand."
            + " Only swelling clay or a caved wall could narrow a hole so: ask the log.");
    assertThat(bridged.next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .startsWith("Stop pouring; no chips, no grout on it.").endsWith(
            "the tape should find 77.73 ft. If it does, 2 bags more as drilled to the planned top.");
  }

  @Test
  void expectsTheTapeAfterTheBridgeIsBroken() {
    List<Expectation> expectations = NINE.expectations("pack");
    assertThat(expectations).hasSize(1);
    assertThat(expectations.get(0).what().shownTo(Reader.US_ENGLISH)).isEqualTo("tape after bag 9, the bridge broken");
    assertThat(expectations.get(0).figure().quantity().in(Unit.FOOT)).isCloseTo(77.7, within(0.05));
  }

  @Test
  void asksForTheTapeAgain() {
    assertThat(NINE.stage("pack").nextKind(NINE.job().well())).isEqualTo("pack-tape");
    assertThat(BROKEN.stage("pack").nextKind(BROKEN.job().well())).isEqualTo("pack-bags");
  }

  @Test
  void fallsSilentWhenTheTapeComesBack() {
    assertThat(BROKEN.findings("pack")).isEmpty();
    // by hand: 3.9 ft × 0.2278 = 0.888 ft³, 1.8 bags: two
    assertThat(PackSheetTest.line(BROKEN, "bags still needed to the planned top")).isEqualTo("2");
    assertThat(BROKEN.expectations("pack")).hasSize(2);
    assertThat(BROKEN.expectations("pack").get(0).what().shownTo(Reader.US_ENGLISH)).isEqualTo("tape after bag 11");
    assertThat(BROKEN.expectations("pack").get(1).what().shownTo(Reader.US_ENGLISH)).startsWith("bags of pack still needed");
    JobInSteps eleven = BROKEN.then("pack-bags", "bags", "2").then("pack-tape", "reading", "73.5 ft", "from", "ground");
    assertThat(eleven.findings("pack")).isEmpty();
    assertThat(eleven.stage("pack").progress(eleven.job().well())).isEqualTo(Progress.DONE);
  }

  /** A bridge that nobody broke is still one, though the bags poured on it stand as high as they should. */
  @Test
  void doesNotForgetABridgeUnderMoreBags() {
    JobInSteps more = poured(NINE, "64.6 ft");
    assertThat(more.finding("pack.bridged")).isPresent();
    assertThat(more.findings("pack")).hasSize(1);
  }

  /** A washout low down must not hide a bridge above it. */
  @Test
  void findsABridgeAboveAWashout() {
    JobInSteps washed = SET
        .then("pack-bags", "bags", "3").then("pack-tape", "reading", "93.4 ft", "from", "ground")
        .then("pack-bags", "bags", "3").then("pack-tape", "reading", "86.9 ft", "from", "ground");
    assertThat(washed.findings("pack")).isEmpty();
    assertThat(poured(washed, "80.3 ft").findings("pack")).isEmpty();
    assertThat(poured(washed, "75 ft").finding("pack.bridged")).isPresent();
  }

  @Test
  void speaksOfTheTapeAsItIsReadFromTheCasing() {
    JobInSteps casing = SIX.then("pack-bags", "bags", "3")
        .then("pack-tape", "reading", "72.7 ft", "from", "top-of-casing");
    Finding bridged = casing.finding("pack.bridged").orElseThrow();
    assertThat(bridged.measured().orElseThrow().quantity().in(Unit.FOOT)).isCloseTo(71.2, within(1e-9));
    assertThat(bridged.next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .contains("77.73 ft (79.23 ft from the top of casing)");
    Expectation expectation = casing.expectations("pack").get(0);
    assertThat(expectation.figure().shownTo(Reader.US_ENGLISH)).isEqualTo("79.23 ft");
    assertThat(expectation.what().shownTo(Reader.US_ENGLISH)).endsWith("from the top of casing");
  }

  @Test
  void speaksSpanishAndMetres() {
    Reader reader = new Reader(Language.SPANISH, UnitSystem.METRIC);
    assertThat(NINE.finding("pack.bridged").orElseThrow().text().shownTo(reader)).isEqualTo(
        "Tras el saco 9 la sonda halla el filtro a 21.70 m; se esperaba 23.69 m, más o menos 0.50 m."
            + " Está 1.99 m demasiado alto.");
  }

  private static JobInSteps poured(JobInSteps job, String tape) {
    return job.then("pack-bags", "bags", "3").then("pack-tape", "reading", tape, "from", "ground");
  }

  private static String english(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
