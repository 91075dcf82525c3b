package steening.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class UnitTest {
  /** Small letters and capitals are read alike, which is safe only where nothing else tells two units apart. */
  @Test
  void noTwoUnitsOfADimensionAreWrittenAlike() {
    Set<String> written = new TreeSet<>();
    for (Unit unit : Unit.values()) {
      boolean isNew = written.add(unit.dimension() + " " + unit.symbol().toLowerCase(Locale.ROOT));
      assertThat(isNew).as(unit.symbol()).isTrue();
      assertThat(Notation.unit(unit.symbol(), unit.dimension())).contains(unit);
      assertThat(Notation.unit(unit.symbol().toUpperCase(Locale.ROOT), unit.dimension())).contains(unit);
    }
  }

  /** What a page shows can be typed back. */
  @Test
  void theSignsOfAPageAreReadToo() {
    for (Unit unit : Unit.values()) {
      assertThat(Notation.unit(unit.printed(), unit.dimension())).as(unit.printed()).contains(unit);
    }
  }

  @Test
  void bothUnitsOfAScaleMeasureTheSame() {
    for (Scale scale : Scale.values()) {
      assertThat(scale.metric().dimension()).as(scale.name()).isEqualTo(scale.us().dimension());
    }
    for (Dimension dimension : Dimension.values()) {
      assertThat(dimension.words()).isEqualTo(dimension.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
  }
}
