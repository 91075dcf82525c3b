package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Field;
import steening.field.Kind;
import steening.field.Reading;
import steening.job.Stages;
import steening.language.Reader;

/** What no string can be: refused with a sentence, or asked about with what was typed, even when it is insisted on. */
class StringSlipsTest {
  @ParameterizedTest
  @CsvSource({
    "joint, overall, 46 ft", "joint, overall, 0 ft", "joint, overall, -20 ft", "joint, bell, 2 ft",
    "joint, bell, -1 in",
    "cut-piece, length, 46 ft", "cut-piece, cut-from, 46 ft", "screen, length, 0 ft", "sump, length, -2 ft",
    "string-set, outside, 0 in", "string-set, outside, -4.5 in", "string-set, wall, 0 in", "string-set, wall, -0.2 in",
    "hole, diameter, 0 in", "hole, diameter, -7.875 in", "drilling, bit, 0 in", "drilling, rod, -2 in"
  })
  void isNotTaken(String kind, String field, String typed) {
    for (boolean sure : new boolean[] {false, true}) {
      Reading reading = field(kind, field).read(typed, Reader.US_ENGLISH, sure);
      assertThat(reading).isNotInstanceOf(Reading.Taken.class);
      if (reading instanceof Reading.Refused refused) {
        assertThat(refused.sentence().shownTo(Reader.US_ENGLISH)).contains("is outside");
      }
    }
  }

  private static Field field(String kind, String name) {
    Kind found = Stages.kind(kind).orElseThrow();
    return found.field(name).orElseThrow();
  }
}
