package steening.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

class CodecTest {
  private static final String ID = "0197a3c0-5b1e-7d42-9c1f-3f6a2b8c4d10";
  private static final String LINE =
      "{\"id\":\"" + ID + "\",\"well\":\"w1\",\"device\":\"d1\",\"sequence\":17,\"who\":\"Ana\","
          + "\"happenedAt\":\"2026-05-06T14:05:00-05:00\",\"recordedAt\":\"2026-05-06T14:07:31.250-05:00\","
          + "\"kind\":\"joint-run\",\"schema\":1,\"body\":{\"length\":\"19.98 ft\",\"size\":\"4 in\"},"
          + "\"replaces\":[\"0197a3c0-5b1e-7d42-9c1f-3f6a2b8c4d0f\"]}";

  @Test
  void readsWhatItWrote() {
    Entry entry = Codec.read(LINE);
    assertThat(entry.sequence()).isEqualTo(17);
    assertThat(entry.who()).isEqualTo("Ana");
    assertThat(entry.happenedAt()).isEqualTo(Moment.parse("2026-05-06T14:05:00-05:00"));
    assertThat(entry.recordedAt().epochMillis() % 1000).isEqualTo(250);
    assertThat(entry.body().text("length")).contains("19.98 ft");
    assertThat(entry.replaces()).containsExactly("0197a3c0-5b1e-7d42-9c1f-3f6a2b8c4d0f");
    assertThat(Codec.write(entry)).isEqualTo(LINE);
  }

  @Test
  void writesEqualEntriesAlikeHoweverTheyWereSpelled() {
    String other =
        LINE.replace(
                "\"length\":\"19.98 ft\",\"size\":\"4 in\"",
                "\"size\" : \"4 in\" ,\t\"length\":\"19.98 \\u0066t\"")
            .replace("14:05:00-05:00", "14:05-05:00")
            .replace(ID, ID.toUpperCase(java.util.Locale.ROOT));
    assertThat(other).isNotEqualTo(LINE);
    assertThat(Codec.read(other)).isEqualTo(Codec.read(LINE));
    assertThat(Codec.write(Codec.read(other))).isEqualTo(LINE);
  }

  @Test
  void carriesEveryCharacter() {
    String text = "1½\" × ñ ≤ \t\n\r\u0000\u2028 \"\\ /</script> \uD83D\uDCA7";
    Entry entry = Codec.read(LINE);
    Entry said = new Entry(
        ID, "w1", "d1", 1, text, entry.happenedAt(), entry.recordedAt(), "note", 1, Body.of(text, text), List.of());
    String line = Codec.write(said);
    assertThat(line).doesNotContain("\n").doesNotContain("\r");
    assertThat(Codec.read(line)).isEqualTo(said);
  }

  @Test
  void keepsANumberAsItWasWritten() {
    Entry entry = Codec.read(LINE.replace("\"19.98 ft\"", "6.50").replace("\"4 in\"", "1e-7"));
    assertThat(entry.body().values()).containsEntry("length", "6.50").containsEntry("size", "1e-7");
  }

  @Test
  void carriesKindsAndSchemasItDoesNotKnow() {
    Entry entry = Codec.read(LINE.replace("joint-run", "moon-landing").replace("\"schema\":1", "\"schema\":999"));
    assertThat(entry.kind()).isEqualTo("moon-landing");
    assertThat(entry.schema()).isEqualTo(999);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
    "\"who\":\"Ana\", | ~~ | The field \"who\" is missing; example: \"who\": \"Ana\".",
    "\"who\":\"Ana\", | \"who\":7, | The field \"who\" must be a text in quotes",
    "\"who\":\"Ana\", | \"who\":\"A\",\"who\":\"B\",| \"who\" is given twice",
    "\"who\":\"Ana\", | \"who\":\"A\",\"hwo\":\"B\",| There is no field \"hwo\"",
    "\"sequence\":17 | \"sequence\":0 | The field \"sequence\" must be a whole number from 1",
    "\"sequence\":17 | \"sequence\":1.5 | The field \"sequence\" must be a whole number from 1",
    "\"sequence\":17 | \"sequence\":\"17\" | The field \"sequence\" must be a whole number from 1",
    "\"sequence\":17 | \"sequence\":9999999999999999| The field \"sequence\" must be a whole number from 1",
    "\"schema\":1 | \"schema\":-1 | The field \"schema\" must be a whole number from 1",
    "\"well\":\"w1\" | \"well\":\"../etc\" | The field \"well\" must be 1 to 64 letters",
    "\"kind\":\"joint-run\" | \"kind\":\"\" | The field \"kind\" must be 1 to 64 letters",
    "14:05:00-05:00 | 14:05:00 | \"happenedAt\" must be a time with its offset from UTC",
    "2026-05-06T14:05 | 2026-02-30T14:05 | \"happenedAt\" must be a time with its offset from UTC",
    "3f6a2b8c4d10 | 3f6a2b8c4d1 | The field \"id\" must be an id in the form of a UUID",
    "3f6a2b8c4d0f | 3f6a2b8c4d0g | \"replaces\" must be a list of ids in the form of UUIDs",
    "\"19.98 ft\" | true | The value \"length\" in \"body\" must be a text or a number",
    "\"size\":\"4 in\" | \"length\":\"4 in\" | \"length\" is given twice",
    "\"4 in\" | \"\\ud83d\" | The line holds half a character",
    "\"4 in\" | 4 in | The line is not JSON from its character",
  })
  void saysWhatIsWrongAndShowsTheRightForm(String right, String wrong, String sentence) {
    assertThat(LINE).contains(right);
    String line = LINE.replace(right, wrong);
    UnreadableEntry trouble = catchThrowableOfType(UnreadableEntry.class, () -> Codec.read(line));
    assertThat(trouble).as(line).isNotNull();
    String english = trouble.phrase().shownTo(Reader.US_ENGLISH);
    assertThat(english).contains(sentence).endsWith(".");
    assertThat(trouble.phrase().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isNotEqualTo(english).endsWith(".");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"[]", "7", "null", "{}", "{", "{} {}"})
  void refusesWhatIsNoEntry(String line) {
    assertThat(catchThrowableOfType(UnreadableEntry.class, () -> Codec.read(line))).isNotNull();
  }
}
