package steening.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.language.Reader;

/** Answers that are words. */
class WordCasesTest {
  private static List<Verdict> judged(String expected) {
    return CaseBook.of(List.of()).judge("own.json", """
        {"id": "grain", "reckoning": "wentworth-grade", "inputs": {"size": "0.31 mm"},
         "expected": {%s}, "source": "Wentworth 1922"}
        """.formatted(expected));
  }

  @Test
  void aWordIsRightOrWrong() {
    Verdict right = judged("\"grade\": {\"word\": \"medium sand\"}").get(0);
    assertThat(right.status()).isEqualTo(Verdict.Status.PASSED);
    assertThat(right.got()).isEqualTo("medium sand");
    Verdict wrong = judged("\"grade\": {\"word\": \"fine sand\"}").get(0);
    assertThat(wrong.status()).isEqualTo(Verdict.Status.FAILED);
    assertThat(wrong.expected()).isEqualTo("fine sand");
    assertThat(VerdictsJson.of(List.of(wrong), Reader.US_ENGLISH).toString())
        .contains("\"expected\":\"fine sand\",\"got\":\"medium sand\"");
  }

  @Test
  void aWordIsNoNumberAndANumberNoWord() {
    assertThat(judged("\"phi\": {\"word\": \"two\"}").get(0).status()).isEqualTo(Verdict.Status.FAILED);
    assertThat(judged("\"grade\": {\"value\": 2, \"tolerance\": \"exact\"}").get(0).status())
        .isEqualTo(Verdict.Status.FAILED);
    assertThatThrownBy(() -> judged("\"grade\": {\"word\": \"medium sand\", \"tolerance\": \"exact\"}"))
        .isInstanceOf(UnreadableCases.class);
  }
}
