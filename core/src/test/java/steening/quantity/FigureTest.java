package steening.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;

class FigureTest {
  private static final Reader METRIC = new Reader(Language.ENGLISH, UnitSystem.METRIC);

  @ParameterizedTest
  @CsvSource({
    "7.875 in, DIAMETER, 7 7/8 in, 200.0 mm", "4.5 in, DIAMETER, 4 1/2 in, 114.3 mm",
    "0.25 in, DIAMETER, 1/4 in, 6.4 mm",
    "8 in, DIAMETER, 8 in, 203.2 mm", "11.2 in, DIAMETER, 11.2 in, 284.5 mm", "4.026 in, DIAMETER, 4.026 in, 102.3 mm",
    "0.0625 in, DIAMETER, 1/16 in, 1.6 mm", "0 in, DIAMETER, 0 in, 0.0 mm", "-0.5 in, DIAMETER, -0.5 in, -12.7 mm",
    "57.255 ft, DEPTH, 57.26 ft, 17.45 m", "-1.5 ft, DEPTH, -1.50 ft, -0.46 m",
    "20 slot, SLOT, 0.020 in (20 slot), 0.51 mm", "12 slot, SLOT, 0.012 in (12 slot), 0.30 mm",
    "22.7796 ft3, VOLUME, 22.78 ft³, 0.645 m³", "24 gal, LIQUID, 24.0 gal, 90.8 L", "28 gpm, FLOW, 28.0 gpm, 1.77 L/s",
    "9.51 lb/gal, DENSITY, 9.51 lb/gal, 1140 kg/m³", "50 lb, WEIGHT, 50.0 lb, 22.7 kg",
    "60 psi, PRESSURE, 60.0 psi, 414 kPa",
    "50 °F, TEMPERATURE, 50 °F, 10.0 °C", "25 %, SHARE, 25.0 %, 25.0 %", "3.14159265, NUMBER, 3.142, 3.142"
  })
  void showsAQuantityInTheReadersUnits(String typed, Scale scale, String us, String metric) {
    Quantity quantity = Notation.read(typed, scale.us()).orElseThrow().quantity();
    assertThat(new Figure(quantity, scale).shownTo(Reader.US_ENGLISH)).isEqualTo(us);
    assertThat(new Figure(quantity, scale).shownTo(METRIC)).isEqualTo(metric);
  }

  /** Every sixteenth up to five feet, exactly and as the trade writes it. */
  @Test
  void writesSixteenthsAsFractions() {
    for (int sixteenths = 1; sixteenths <= 960; sixteenths++) {
      Length length = new Length(sixteenths * 1_587_500L);
      String shown = new Figure(length, Scale.DIAMETER).shownTo(Reader.US_ENGLISH);
      assertThat(shown).doesNotContain(".");
      assertThat(Notation.read(shown, Unit.INCH).orElseThrow().quantity()).isEqualTo(length);
    }
    assertThat(new Figure(new Length(1_587_501), Scale.DIAMETER).shownTo(Reader.US_ENGLISH)).isEqualTo("0.063 in");
  }

  @Test
  void refusesAScaleOfSomethingElse() {
    assertThatThrownBy(() -> new Figure(Length.feet(3), Scale.VOLUME)).isInstanceOf(IllegalArgumentException.class);
  }
}
