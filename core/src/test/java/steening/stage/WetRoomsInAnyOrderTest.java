package steening.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.well.Well;

/** Development, pumping test and disinfection answer for any well, whatever was entered and in whatever order. */
class WetRoomsInAnyOrderTest {
  private static final List<String> ROOMS = List.of("development", "test", "disinfection");
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** Ordinary and odd: nothing at minute zero, levels above ground, a well that flows, no water to settle from. */
  private static final List<List<String>> ENTRIES = List.of(
      List.of("site", "address", "x", "neighbours-specific-capacity", "0.85 gpm/ft", "neighbours-spread", "1"),
      List.of("site", "address", "x", "neighbours-specific-capacity", "0.85 gpm/ft", "neighbours-spread", "1.6"),
      List.of("plan", "hole-diameter", "7 7/8 in", "hole-depth", "142 ft", "casing-outside", "4.5 in", "casing-wall",
          "3 in",
          "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft", "sump", "2 ft", "slot", "20 slot",
          "pack-top", "115 ft", "grout-top", "0 ft", "rate", "12 gpm"),
      List.of("hole", "from", "0 ft", "to", "142 ft", "diameter", "7 7/8 in"),
      List.of("sump", "length", "2 ft"),
      List.of("screen", "length", "10 ft", "slot", "0.020 in"),
      List.of("joint", "number", "1", "overall", "20 ft"),
      List.of("string-set", "stick-up", "1.5 ft", "outside", "4.5 in", "wall", "0.214 in"),
      List.of("pack-bags", "bags", "14"),
      List.of("pack-tape", "reading", "15 ft", "from", "ground"),
      List.of("development", "method", "air-lift", "minutes", "30 min", "sand", "1 mL", "water", "5 gal"),
      List.of("development", "method", "over-pumping", "minutes", "0 min", "rate", "18 gpm", "level", "50 ft", "from",
          "top-of-casing"),
      List.of("development", "method", "over-pumping", "minutes", "30 min", "rate", "18 gpm", "level", "3 ft"),
      List.of("development-tape", "reading", "130 ft", "from", "top-of-casing"),
      List.of("static-level", "level", "-4 ft", "from", "ground"),
      List.of("static-level", "level", "31 m", "from", "top-of-casing"),
      List.of("pumping-start", "rate", "12 gpm"),
      List.of("pumping-start", "rate", "5000 gpm"),
      List.of("pumping-level", "minutes", "0 min", "level", "31 ft", "from", "top-of-casing"),
      List.of("pumping-level", "minutes", "0 min", "level", "31 ft", "from", "ground"),
      List.of("pumping-level", "minutes", "10 min", "level", "41.58 ft", "from", "top-of-casing"),
      List.of("pumping-level", "minutes", "10 min", "level", "-3 ft", "from", "ground"),
      List.of("pumping-level", "minutes", "100 min", "level", "42.9 ft", "from", "top-of-casing"),
      List.of("pumping-level", "minutes", "100000 min", "level", "6000 ft", "from", "ground"),
      List.of("pumping-stop"),
      List.of("recovery-level", "minutes", "0 min", "level", "42 ft", "from", "top-of-casing"),
      List.of("recovery-level", "minutes", "5 min", "level", "33 ft", "from", "ground"),
      List.of("recovery-level", "minutes", "10 min", "level", "32 ft", "from", "ground"),
      List.of("disinfection", "product", "bleach", "strength", "12.5 %", "amount", "22 fl oz", "target", "100 mg/L",
          "contact", "0 h"),
      List.of("disinfection", "product", "calcium-hypochlorite", "strength", "65 %", "target", "100 mg/L", "contact",
          "24 h"),
      List.of("residual", "chlorine", "0 mg/L"),
      List.of("casing-cut", "stick-up", "1 ft"));

  @Test
  void nothingIsThrownAndEverythingCanBeSaid() {
    Random random = new Random(20260520);
    int said = 0;
    for (int round = 0; round < 300; round++) {
      List<List<String>> order = new ArrayList<>(ENTRIES);
      Collections.shuffle(order, random);
      JobInSteps job = JobInSteps.nothing();
      for (List<String> entry : order.subList(0, random.nextInt(order.size() + 1))) {
        job = job.then(entry.get(0), entry.subList(1, entry.size()).toArray(String[]::new));
      }
      JobInSteps whole = job;
      assertThatCode(() -> say(whole)).as(whole.entries().toString()).doesNotThrowAnyException();
      assertThat(job.job().unread()).isEmpty();
      said += say(job);
    }
    assertThat(said).as("findings said in all").isGreaterThan(500);
  }

  private static int say(JobInSteps job) {
    Well well = job.job().well();
    int findings = 0;
    for (String room : ROOMS) {
      Stage stage = job.stage(room);
      for (Reader reader : List.of(Reader.US_ENGLISH, SPANISH)) {
        for (Finding finding : stage.findings(well)) {
          finding.text().shownTo(reader);
          finding.cause().ifPresent(c -> c.shownTo(reader));
          finding.next().ifPresent(n -> n.shownTo(reader));
          finding.working().ifPresent(w -> w.working(reader));
          findings++;
        }
        for (Expectation expectation : stage.expectations(well)) {
          expectation.what().shownTo(reader);
          expectation.figure().shownTo(reader);
          expectation.working().working(reader);
        }
        for (Sheet.Line line : stage.sheet(well).lines()) {
          line.value().shownTo(reader);
          line.working().ifPresent(w -> w.working(reader));
        }
        for (Sheet.Table table : stage.sheet(well).tables()) table.rows().forEach(r ->
            r.forEach(c -> c.shownTo(reader)));
      }
      stage.loads(well);
      stage.progress(well);
      assertThat(stage.kinds()).anyMatch(k -> k.name().equals(stage.nextKind(well)));
    }
    return findings;
  }
}
