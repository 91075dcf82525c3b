package steening.journal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.language.Reader;

class JournalFileTest {
  private static final String ENTRY =
      "{\"id\":\"0197a3c0-5b1e-7d42-9c1f-3f6a2b8c4d10\",\"well\":\"w1\",\"device\":\"d1\",\"sequence\":1,\"who\":\"\","
          + "\"happenedAt\":\"2026-05-06T14:05:00-05:00\",\"recordedAt\":\"2026-05-06T14:07:31-05:00\","
          + "\"kind\":\"note\",\"schema\":1,\"body\":{},\"replaces\":[]}";

  @Test
  void everyLineIsAnEntryOrAFault() {
    JournalFile file =
        JournalFile.read("\uFEFF# a remark\r\n" + ENTRY + "\r\n\r\n  {\"id\": 7}  \n" + ENTRY + "\nnonsense");
    assertThat(file.entries()).hasSize(2);
    assertThat(file.faults()).extracting(Fault::lineNumber).containsExactly(4, 6);
    assertThat(file.faults()).extracting(Fault::line).containsExactly("{\"id\": 7}", "nonsense");
    assertThat(file.faults().get(0).phrase().shownTo(Reader.US_ENGLISH)).contains("\"well\" is missing");
    assertThat(file.isSound()).isFalse();
  }

  @Test
  void anEmptyFileIsSound() {
    assertThat(JournalFile.read("").isSound()).isTrue();
    assertThat(JournalFile.read("\n\n# nothing yet\n").entries()).isEmpty();
  }

  @Test
  void theLastLineNeedsNoEnd() {
    assertThat(JournalFile.read(ENTRY).entries()).hasSize(1);
    assertThat(JournalFile.read(ENTRY + "\n").entries()).hasSize(1);
  }
}
