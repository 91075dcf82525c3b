package steening.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.cases.CaseFiles;
import steening.field.Hands;
import steening.language.BothLanguages;
import steening.language.Phrase;
import steening.language.Reader;
import steening.stage.EverydayWell;
import steening.stage.Sheet;
import steening.stage.Stage;

/** The cautions against the list of hazards with their sources, cases/construction/C20_safety.csv. */
class CautionsTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Job NEW = JobInSteps.nothing().job();

  /** By hazard as the list names it: figures or words of it, which one caution must hold together. */
  private static final Map<String, List<String>> ROWS = rows();

  private static Map<String, List<String>> rows() {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    rows.put("overhead line, cranes etc.", List.of("10 ft", "15 ft", "20 ft", "25 ft", "35 ft", "45 ft", "1000 kV"));
    rows.put("overhead line, voltage unknown", List.of("20 ft", "350 kV", "50 ft", "1926.1409"));
    rows.put("scope caution", List.of("4 in", "10 kV", "1910.333(c)(3)"));
    rows.put("mast", List.of("mast up", "Walk round", "on the level"));
    rows.put("why", List.of("21 well drillers", "1992 to 2000", "19"));
    rows.put("buried utilities", List.of("811", "two to three working days", "18 in", "24 in", "owner's own lines"));
    rows.put("silica", List.of("50 µg/m³", "25", "1926.1153"));
    rows.put("bentonite / cement dust", List.of("dust", "mask", "1926.55"));
    rows.put("compressed air, cleaning", List.of("30 psi", "never on people", "1910.242(b)"));
    rows.put("compressed air, hoses", List.of("1/2 in", "at the source", "relief valve"));
    rows.put("air on PVC", List.of("rating", "top open", "clear of the discharge"));
    rows.put("rotating rod", List.of("no loose clothing", "emergency stop", "every shift", "wrench off"));
    rows.put("noise", List.of("90 dBA", "85", "6 ft", "12 ft"));
    rows.put("electrical pump work", List.of("lock", "tag", "dead", "ground"));
    rows.put("pits and confined space", List.of("19.5 to 23.5 %", "10 %", "10 ppm", "one person outside"));
    rows.put("mud pit edge / trench", List.of("5 ft", "25 ft", "4 ft", "fence"));
    rows.put("flowing artesian", List.of("70 gpm", "10 psi", "4725.3450"));
    rows.put("gas", List.of("5 to 15 %", "100", "20 ppm", "vent the casing"));
    rows.put("hypochlorite", List.of("Dry hypochlorite", "fuel, oil and grease"));
    rows.put("acid", List.of("into water", "chlorine", "gas out"));
    rows.put("hoisting", List.of("weighs", "clamp", "sling angle", "under the load"));
    rows.put("PVC cement vapour", List.of("THF, MEK, cyclohexanone", "open air"));
    rows.put("open hole", List.of("Cover and cap", "whenever work stops", "26.04.04.16"));
    rows.put("traffic, heat, lightning, slips", List.of("10 mi", "30 minutes"));
    return rows;
  }

  @Test
  void everyHazardOfTheListIsSaidWithItsMark() {
    List<String> all = Stages.all().stream().flatMap(s -> NEW.cautions(s).stream()).map(c -> c.shownTo(US)).toList();
    List<String> met = new ArrayList<>();
    for (String line : CaseFiles.text("construction/C20_safety.csv").lines().skip(1).toList()) {
      String hazard = ROWS.keySet().stream().filter(h -> line.startsWith(h + ",") || line.startsWith("\"" + h + "\","))
          .findFirst().orElseThrow(() -> new AssertionError("nothing is known of " + line));
      met.add(hazard);
      String mark = line.replaceAll("^.*,\"?(seen|memory)( \\([^)]*\\))?\"?$", "$1");
      assertThat(mark).as(line).isIn("seen", "memory");
      assertThat(all).as(hazard).anyMatch(c -> ROWS.get(hazard).stream().allMatch(c::contains) && c.contains(mark));
    }
    assertThat(met).containsExactlyInAnyOrderElementsOf(ROWS.keySet());
  }

  @Test
  void everyCautionNamesItsSourceInBothLanguages() {
    for (Stage stage : Stages.all()) {
      for (Phrase caution : Cautions.of(stage)) {
        assertThat(caution.shownTo(US)).containsAnyOf(", seen).", ", from memory).").doesNotContain("{");
        assertThat(caution.shownTo(Hands.SPANISH)).containsAnyOf(", leído).", ", de memoria).").doesNotContain("{");
        BothLanguages.assertSpokenIn((Phrase) caution.arguments().get(0));
        assertThat(caution.shownTo(Hands.METRIC)).as("metres for a metric reader").doesNotContain(" ft");
      }
    }
    BothLanguages.assertSpokenIn(Cautions.DEFER);
  }

  /** A sample bottle hurts nobody that the list knows of. */
  @Test
  void everyStageButTheSampleHasSome() {
    Job lost = JobInSteps.nothing()
        .then("moved-over", "depth", "88 ft", "why", "caved", "distance", "12 ft", "direction", "east").job();
    assertThat(Stages.all().stream().filter(s -> lost.cautions(s).isEmpty()).map(Stage::name)).containsExactly("sample");
    assertThat(NEW.cautions(Stages.named("decommissioning").orElseThrow())).as("no hole was given up").isEmpty();
  }

  @Test
  void nothingIsSaidTwiceInAStageAndTheCodeComesLast() {
    for (Stage stage : Stages.all()) {
      List<Phrase> cautions = NEW.sheet(stage).cautions();
      assertThat(cautions).doesNotHaveDuplicates();
      if (!cautions.isEmpty()) assertThat(cautions.get(cautions.size() - 1)).isEqualTo(Cautions.DEFER);
    }
  }

  @Test
  void cautionsGoWhenTheStageIsDone() {
    JobInSteps lowered = EverydayWell.lowered();
    assertThat(casing(lowered).cautions()).anyMatch(c -> c.shownTo(US).startsWith("Hoisting"));
    Sheet done = casing(EverydayWell.set(lowered));
    assertThat(done.cautions()).isEmpty();
    assertThat(done.tables()).isNotEmpty();
  }

  private static Sheet casing(JobInSteps job) {
    return job.job().sheet(job.stage("casing"));
  }
}
