package steening.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/**
 * Fourteen slips of a tired hand in the everyday well, each alone. Either the form asks back and offers what was meant,
 * or a finding shows both numbers. The slips and what an expert sees in them are our own scenario.
 */
class EntryMistakesTest {
  private static final List<Entry> EVERYDAY = DemoFirm.well("everyday-well");

  @Test
  void withoutASlipNothingStandsOutButTheSlowMud() {
    assertThat(findings(EVERYDAY)).extracting(Finding::code).containsExactly("drilling.up-hole-velocity");
  }

  @Test
  void holeInFeetForInches() {
    assertThat(asked("plan", "hole-diameter", "7.875 ft")).contains("7.875 in");
  }

  @Test
  void screenInInchesForFeet() {
    assertThat(asked("screen", "length", "10 in")).contains("10 ft");
    assertThat(codes(with("screen", "length", "10 in"))).contains("casing.screen-length");
  }

  @Test
  void slotInInchesForThousandths() {
    assertThat(asked("screen", "slot", "20 in"))
        .anyMatch(meaning -> meaning.startsWith("20") && meaning.endsWith("slot"));
  }

  @Test
  void staticLevelInMetresForFeet() {
    assertThat(stops(with("static-level", "level", "31 m"))).contains("test.level-above-static");
  }

  @Test
  void rateInGallonsForLitres() {
    List<Finding> findings = findings(with("pumping-start", "rate", "45 gpm"));
    assertThat(findings).extracting(Finding::code).contains("test.specific-capacity-unlikely");
  }

  @Test
  void holeDepthWithItsDigitsTurnedRound() {
    assertThat(stops(with("hole", "to", "124 ft")))
        .anyMatch(code -> code.startsWith("casing.") || code.startsWith("drilling."));
  }

  @Test
  void staticFromGroundWithLevelsFromTheCasing() {
    assertThat(codes(with("static-level", "from", "ground"))).contains("test.mixed-datums");
  }

  @Test
  void bagsOfKilogramsForPounds() {
    assertThat(asked("pack-bags", "weight", "50 kg")).contains("50 lb");
    List<Entry> all = new ArrayList<>();
    for (Entry entry : EVERYDAY) all.add(entry.kind().equals("pack-bags") ? changed(entry, "weight", "50 kg") : entry);
    assertThat(codes(all)).anyMatch(code -> code.startsWith("pack."));
  }

  @Test
  void bleachStrongerThanItWasTakenFor() {
    assertThat(codes(with("disinfection", "strength", "12.5 %"))).contains("disinfection.over-target");
  }

  @Test
  void cutOutInKilopascalsForPounds() {
    assertThat(asked("pump", "cut-out", "60 kPa")).contains("60 psi");
    assertThat(stops(with("pump", "cut-out", "60 kPa"))).anyMatch(code -> code.startsWith("pump."));
  }

  @Test
  void dayAndMonthTurnedRound() {
    assertThat(asked("completion", "date", "03/06/2026")).containsExactly("2026-03-06", "2026-06-03");
    assertThat(stops(with("completion", "date", "2026-03-06"))).anyMatch(code -> code.startsWith("handover."));
  }

  @Test
  void longitudeWithoutItsSign() {
    assertThat(asked("site", "longitude", "83.1")).anyMatch(meaning -> meaning.startsWith("-83.1"));
  }

  @Test
  void depthOfAMetricProjectInFeet() {
    assertThat(stops(with("hole", "to", "142 m"))).anyMatch(code -> code.startsWith("drilling."));
  }

  @Test
  void aBagTooManyDigits() {
    assertThat(asked("pack-bags", "bags", "113")).isNotEmpty();
    assertThat(stops(with("pack-bags", "bags", "113"))).anyMatch(code -> code.startsWith("pack."));
  }

  @Test
  void everyFindingSaysSomethingInBothLanguages() {
    Reader spanish = new Reader(Language.SPANISH, UnitSystem.METRIC);
    for (Finding finding : findings(with("hole", "to", "124 ft"))) {
      assertThat(finding.text().shownTo(spanish)).isNotBlank().isNotEqualTo(finding.text().shownTo(Reader.US_ENGLISH));
    }
  }

  /** What the form offers when this is typed; fails where the form just takes it. */
  private static List<String> asked(String kind, String field, String typed) {
    Kind declared = Stages.kind(kind).orElseThrow();
    Field asked = declared.field(field).orElseThrow();
    Reading reading = declared.read(Map.of(field, typed), Reader.US_ENGLISH).get(asked);
    assertThat(reading).as("%s of %s typed as %s", field, kind, typed).isInstanceOf(Reading.Asked.class);
    return ((Reading.Asked) reading).meanings();
  }

  private static List<Entry> with(String kind, String field, String text) {
    List<Entry> all = new ArrayList<>(EVERYDAY);
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).kind().equals(kind)) {
        all.set(i, changed(all.get(i), field, text));
        return all;
      }
    }
    throw new IllegalArgumentException("no " + kind + " in the everyday well");
  }

  private static Entry changed(Entry entry, String field, String text) {
    Body body = entry.body().with(field, text);
    return new Entry(
        entry.id(), entry.well(), entry.device(), entry.sequence(), entry.who(), entry.happenedAt(), entry.recordedAt(),
        entry.kind(), entry.schema(), body, entry.replaces());
  }

  private static List<Finding> findings(List<Entry> entries) {
    return Job.of(entries.get(0).well(), Journal.of(entries)).findings();
  }

  private static Set<String> codes(List<Entry> entries) {
    return findings(entries).stream().map(Finding::code).collect(Collectors.toSet());
  }

  private static Set<String> stops(List<Entry> entries) {
    return findings(entries).stream()
        .filter(f -> f.weight() == Weight.STOP)
        .map(Finding::code)
        .collect(Collectors.toSet());
  }
}
