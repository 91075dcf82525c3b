package steening.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.eclipsesource.json.Json;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TranslatorTest {
  private static final String TABLE = """
      # holes by hand
      hole_in,length_ft,"volume, ft3",remark
      8,100,23.86,"a ""gauge"" hole"
      8,100,29.9,wide
      8,100,,nothing printed
      """;
  private static final String TOLD = """
      [{"files": "holes.csv", "id": "{hole_in} in {remark}",
        "cases": [
          {"where": {"remark": "!wide"}, "reckoning": "annulus-volume",
           "inputs": {"hole": "{hole_in} in", "casing": "4.5 in", "from": "0 ft", "to": "{length_ft} ft"},
           "answers": {"volume": "{#3} ft3 ± 0.1 %"}},
          {"where": {"remark": "w*"}, "reason": ["washed out", "socavado"]}]}]
      """;

  @Test
  void turnsRowsIntoCases() {
    List<Verdict> verdicts = CaseBook.of(List.of(TOLD)).judge("others/holes.csv", TABLE);
    assertThat(verdicts).extracting(Verdict::id, Verdict::status).containsExactly(
        tuple("8 in a \"gauge\" hole", Verdict.Status.PASSED),
        tuple("8 in wide", Verdict.Status.NOT_COVERED),
        tuple("8 in nothing printed", Verdict.Status.NOT_COVERED));
  }

  @Test
  void refusesAnUnevenTable() {
    assertThatThrownBy(() -> CaseBook.of(List.of(TOLD)).judge("holes.csv", TABLE + "8,100\n"))
        .isInstanceOf(UnreadableCases.class)
        .hasMessage("Line 6 has 2 values where there are 4 columns.");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "{hole} in | 8 in", "{share * 100} % | 15 %", "{4.5 / ratio} in | 0.25 in", "{2 of hole} ft | 8; 8 ft",
    "{hole + 1 - 3} | 6",
    "{levels} m | 0.20; 0.27 m", "{levels.1} m | 0.27 m", "{nominal in inside} in | 4.026 in", "{small} | 0.0000743",
    "no holes | no holes"
  })
  void fillsTemplates(String template, String filled) {
    assertThat(new Template(template).fill(row(), Map.of("inside", Map.of("4 in", "4.026")))).contains(filled);
  }

  @ParameterizedTest
  @CsvSource({
    "{absent} ft", "{nothing} ft", "{blank} ft", "{absent * 3} ft", "{nominal in outside} in", "{levels.7} m"
  })
  void fillsNothingFromNothing(String template) {
    assertThat(new Template(template).fill(row(), Map.of())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"{hole", "{hole ^ 2}", "{nominal * 2}"})
  void refusesATemplateThatCannotBeRead(String template) {
    assertThatThrownBy(() -> new Template(template).fill(row(), Map.of())).isInstanceOf(UnreadableCases.class);
  }

  @Test
  void saysWhichExpectedAnswersNobodyGives() {
    String told = """
        [{"files": "x.json", "expected": "expected", "cases": [
          {"reckoning": "annulus-volume",
           "inputs": {"hole": "{hole} in", "casing": "4.5 in", "from": "0 ft", "to": "1 ft"},
           "answers": {"volume": "{expected.volume} ft3 ± 0.1 %"}}]}]
        """;
    String text = "{\"id\": \"X\", \"inputs\": {\"hole\": 8}, \"expected\": {\"volume\": 0.2386, \"colour\": 3}}";
    List<Verdict> verdicts = CaseBook.of(List.of(told)).judge("x.json", text);
    assertThat(verdicts).extracting(Verdict::id, Verdict::status).containsExactly(
        tuple("X", Verdict.Status.PASSED),
        tuple("X colour", Verdict.Status.NOT_COVERED));
  }

  private static Row row() {
    String json = """
        {"inputs": {"hole": 8, "share": 0.15}, "ratio": 18, "levels": [0.20, 0.27], "nominal": "4 in", "nothing": null,
         "blank": " ", "small": 7.43e-5}
        """;
    return JsonRow.rows(Json.parse(json), "").get(0);
  }
}
