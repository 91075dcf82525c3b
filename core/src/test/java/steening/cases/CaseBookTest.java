package steening.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.eclipsesource.json.JsonObject;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

/** Numbers of annulus-volume by hand: π/4 (7.875² − 4.5²) 100 / 144 = 22.7796 ft³. */
class CaseBookTest {
  private static final CaseBook BOOK = CaseBook.of(List.of());
  private static final String CASE = """
      {"id": "A1", "reckoning": "annulus-volume", "source": "geometry",
       "inputs": {"hole": "7 7/8 in", "casing": "4.5 in", "from": "0 ft", "to": "100 ft"},
       "expected": {"volume": {"value": 22.78, "unit": "ft3", "tolerance": "0.5 %"}}}
      """;

  @Test
  void passesWhatIsWithinItsTolerance() {
    Verdict verdict = only(CASE);
    assertThat(verdict.status()).isEqualTo(Verdict.Status.PASSED);
    assertThat(verdict).extracting(Verdict::id, Verdict::reckoning, Verdict::expected, Verdict::got, Verdict::unit)
        .containsExactly("A1", "annulus-volume", "22.78", "22.7796", "ft3");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "22.78, \"unit\"       | 22.9, \"unit\"         | it is outside the tolerance of 0.5 %",
    "0.5 %                 | exact                  | it is outside the tolerance of exact",
    "\"volume\"            | \"depth\"              | annulus-volume gives no depth for this",
    "\"ft3\"               | \"psi\"                | volume is not measured in \"psi\"",
    "\"to\"                | \"until\"              | annulus-volume has no input until.",
    "100 ft                | deep                   | \"deep\" is not understood. Example: 142 ft.",
  })
  void failsWithBothValuesAndAReason(String right, String wrong, String reason) {
    Verdict verdict = only(CASE.replace(right, wrong));
    assertThat(verdict.status()).isEqualTo(Verdict.Status.FAILED);
    assertThat(verdict.expected()).isIn("22.78", "22.9");
    assertThat(verdict.reason().shownTo(Reader.US_ENGLISH)).endsWith(reason);
  }

  @Test
  void givesAVerdictForEachAnswer() {
    String liquid = "\"liquid\": {\"value\": 645.05, \"unit\": \"L\", \"tolerance\": \"0.1 L\"}";
    String two = CASE.replace("\"0.5 %\"}", "\"0.5 %\"}, " + liquid);
    List<Verdict> verdicts = BOOK.judge("own.json", "[" + two + "," + CASE + "]");
    assertThat(verdicts).extracting(Verdict::id, Verdict::status).containsExactly(
        tuple("A1 volume", Verdict.Status.PASSED),
        tuple("A1 liquid", Verdict.Status.PASSED),
        tuple("A1", Verdict.Status.PASSED));
  }

  @Test
  void canExpectARefusal() {
    String refused = CASE.replaceAll("\"expected\": .*", "\"expected\": {\"refused\": true}}");
    assertThat(only(refused).status()).isEqualTo(Verdict.Status.FAILED);
    assertThat(only(refused.replace("4.5 in", "9 in")).status()).isEqualTo(Verdict.Status.PASSED);
    assertThat(only(refused.replace("4.5 in", "wide")).status()).isEqualTo(Verdict.Status.PASSED);
  }

  @Test
  void doesNotCoverAReckoningThatIsNotThere() {
    Verdict verdict = only(CASE.replace("annulus-volume", "moon-phase"));
    assertThat(verdict.status()).isEqualTo(Verdict.Status.NOT_COVERED);
    assertThat(verdict.reason().shownTo(new Reader(Language.SPANISH, UnitSystem.US)))
        .isEqualTo("aquí no hay un cálculo llamado moon-phase");
  }

  @ParameterizedTest
  @ValueSource(strings = {"{\"seeds\": 3}", "[]", "[1, 2]", "3", "{}"})
  void doesNotCoverWhatNobodyToldItOf(String text) {
    assertThat(only(text).status()).isEqualTo(Verdict.Status.NOT_COVERED);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "\"source\": \"geometry\" | \"sauce\": \"geometry\" | Case A1: \"sauce\" is not understood.",
    "\"source\": \"geometry\", | | Case A1: \"source\" is missing.",
    "22.78 | \"22.78\" | Case A1: volume needs a \"value\": 22.78.",
    "0.5 % | about | Case A1: volume needs a \"tolerance\": \"0.5 %\", \"0.02 ft\" or \"exact\".",
    "\"100 ft\" | {} | Case A1: an input is a text, a number or a list.",
    "}} | } | It is not JSON from line 3 on.",
  })
  void saysWhyATextCannotBeRead(String right, String wrong, String reason) {
    String text = CASE.replace(right, wrong == null ? "" : wrong);
    UnreadableCases e = catchThrowableOfType(UnreadableCases.class, () -> BOOK.judge("own.json", text));
    assertThat(e.phrase().shownTo(Reader.US_ENGLISH)).isEqualTo(reason);
  }

  @Test
  void readsNumbersAndListsAsAHandWouldTypeThem() {
    String series = """
        {"id": "S", "reckoning": "casing-string", "source": "arithmetic",
         "inputs": {"joints": [20, 20.5, 2e1], "screen": 10, "sump": "2 ft", "stick-up": 1.5},
         "expected": {"string": {"value": 7.25e1, "unit": "ft", "tolerance": "exact"}}}
        """;
    assertThat(only(series)).extracting(Verdict::status, Verdict::got).containsExactly(Verdict.Status.PASSED, "72.5");
  }

  @Test
  void countsInJson() {
    List<Verdict> verdicts = BOOK.judge("own.json", "[" + CASE + "," + CASE.replace("22.78,", "23,") + "]");
    JsonObject json = VerdictsJson.of(verdicts, Reader.US_ENGLISH);
    assertThat(json.getInt("passed", -1)).isEqualTo(1);
    assertThat(json.getInt("failed", -1)).isEqualTo(1);
    assertThat(json.getInt("notCovered", -1)).isZero();
    assertThat(json.get("cases").asArray().get(1)).hasToString(
        "{\"id\":\"A1\",\"file\":\"own.json\",\"reckoning\":\"annulus-volume\",\"status\":\"failed\",\"expected\":23,"
            + "\"got\":22.7796,\"unit\":\"ft3\",\"reason\":\"it is outside the tolerance of 0.5 %\"}");
  }

  private static Verdict only(String text) {
    List<Verdict> verdicts = BOOK.judge("some/folder/own.json", text);
    assertThat(verdicts).hasSize(1);
    return verdicts.get(0);
  }
}
