package steening.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DatesTest {
  @Test
  void readsWhatItWritesDayByDay() {
    for (LocalDate day = LocalDate.of(1899, 12, 25); day.getYear() < 2101; day = day.plusDays(13)) {
      assertThat(Dates.format(day)).isEqualTo(day.toString());
      assertThat(Dates.parse(Dates.format(day))).isEqualTo(day);
    }
    assertThat(Dates.format(LocalDate.of(7, 1, 2))).isEqualTo("0007-01-02");
  }

  @ParameterizedTest
  @ValueSource(strings = {
    "", "2026-5-6", "2026/05/06", "06-05-2026", "2026-13-01", "2026-02-29",
    "2026-00-10", "2026-04-31", "2026-05-0x", "2026-05-06 "
  })
  void refusesAnythingElse(String text) {
    assertThatThrownBy(() -> Dates.parse(text)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(text);
  }
}
