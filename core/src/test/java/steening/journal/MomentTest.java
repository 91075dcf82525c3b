package steening.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MomentTest {
  @ParameterizedTest
  @CsvSource({
    "2026-05-06T14:05:00-05:00, 2026-05-06T14:05:00-05:00",
    "2026-05-06T14:05-05:00, 2026-05-06T14:05:00-05:00",
    "2026-05-06 14:05:00.250Z, 2026-05-06T14:05:00.250Z",
    "2024-02-29T00:00Z, 2024-02-29T00:00:00Z",
    "1969-12-31T23:59:59.007+05:45, 1969-12-31T23:59:59.007+05:45",
    "2026-05-06T14:05:00+00:00, 2026-05-06T14:05:00Z",
    "2026-05-06T14:05:00-00:30, 2026-05-06T14:05:00-00:30",
  })
  void readsItsForms(String text, String written) {
    assertThat(Moment.parse(text)).hasToString(written);
    OffsetDateTime judge = OffsetDateTime.parse(text.replace(' ', 'T'));
    assertThat(Moment.parse(text).epochMillis()).isEqualTo(judge.toInstant().toEpochMilli());
  }

  @ParameterizedTest
  @ValueSource(strings = {
    "", "2026-05-06", "2026-05-06T14:05", "2026-05-06T24:00:00Z", "2026-05-06T14:60:00Z", "2026-05-06T14:05:60Z",
    "2026-02-29T14:05Z",
    "2026-05-06T14:05:00-5:00", "2026-05-06T14:05:00-05", "2026-05-06T14:05:00-19:00", "2026-05-06T14:05:00-05:99",
    "2026-05-06T14:05:00.25Z",
    "2026-05-06T14:05x00.250Z", "2026-05-06T14:05:00x250Z", "2026-05-06X14:05:00Z", "2026-05-06T14:05:00Zulu",
    "06/05/2026 14:05 Z", "now"
  })
  void refusesAnythingElse(String text) {
    assertThatThrownBy(() -> Moment.parse(text)).isInstanceOf(IllegalArgumentException.class);
  }

  /** Against java.time, for moments over four centuries and all offsets. */
  @Test
  void readsWhatItWrites() {
    SplittableRandom random = new SplittableRandom(20260506);
    for (int i = 0; i < 5_000; i++) {
      long millis = random.nextLong(-6_000_000_000_000L, 6_000_000_000_000L);
      Moment moment = new Moment(millis, random.nextInt(-18 * 60, 18 * 60 + 1));
      assertThat(Moment.parse(moment.toString())).isEqualTo(moment);
      OffsetDateTime judge = OffsetDateTime.parse(moment.toString());
      assertThat(judge.toInstant().toEpochMilli()).isEqualTo(moment.epochMillis());
      assertThat(judge.getOffset()).isEqualTo(ZoneOffset.ofTotalSeconds(moment.offsetMinutes() * 60));
      assertThat(moment.date()).isEqualTo(judge.toLocalDate());
      assertThat(moment.clock()).isEqualTo(judge.toLocalTime().toString().substring(0, 5));
    }
  }

  @Test
  void comparesInstantsNotClocks() {
    Moment here = Moment.parse("2026-05-06T14:05:00-05:00");
    Moment there = Moment.parse("2026-05-06T19:05:00Z");
    assertThat(here).isNotEqualTo(there);
    assertThat(here.isAfter(there)).isFalse();
    assertThat(there.isAfter(here)).isFalse();
    assertThat(here.plusMinutes(90).minutesSince(there)).isEqualTo(90);
  }
}
