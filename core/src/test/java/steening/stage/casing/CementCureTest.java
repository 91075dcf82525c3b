package steening.stage.casing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/**
 * Three makers' tables, all seen (cases/construction/C04_solvent_cement_times.csv); each of their cells is held in the
 * published cases. Here: what is made of them, by hand.
 */
class CementCureTest {
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** 4 in at 50 °F: set 4 h and 2 h; cure 12 h, 4 h and 12 h. */
  @Test
  void takesTheSlowestAndNamesEach() {
    Outcome outcome = of("4 in", "50 °F", "40 %");
    assertThat(minutes(outcome, "initial-set")).isEqualTo(240);
    assertThat(minutes(outcome, "set-guide")).isEqualTo(120);
    assertThat(minutes(outcome, "cure")).isEqualTo(12 * 60);
    assertThat(minutes(outcome, "cure-guide")).isEqualTo(4 * 60);
    assertThat(minutes(outcome, "cure-chart")).isEqualTo(12 * 60);
    assertThat(said(outcome, Reader.US_ENGLISH)).containsExactly(
        "The tables disagree: 120.0 min to 240.0 min. The slowest is taken.",
        "The tables disagree: 4.0 h to 12.0 h. The slowest is taken.");
  }

  /** The guide is the slowest in the cold: 72 h against 48 h and 36 h. */
  @Test
  void whichTableIsSlowestDependsOnTheCold() {
    assertThat(minutes(of("4 in", "30 °F", "40 %"), "cure")).isEqualTo(72 * 60);
  }

  @Test
  void dampAirAddsHalf() {
    assertThat(minutes(of("4 in", "50 °F", "61 %"), "cure")).isCloseTo(18 * 60, within(1e-6));
    assertThat(minutes(of("4 in", "50 °F", "61 %"), "initial-set")).isCloseTo(360, within(1e-6));
    assertThat(minutes(of("4 in", "50 °F", "60 %"), "cure")).isEqualTo(12 * 60);
    Outcome silent = CementCure.RECKONING.of(
        Inputs.none().with(CementCure.SIZE, "4 in").with(CementCure.TEMPERATURE, "50 °F"));
    assertThat(minutes(silent, "cure")).isEqualTo(12 * 60);
    assertThat(said(silent, METRIC_SPANISH))
        .contains("Sin humedad: con más de 60 %, o tiempo húmedo, agregue la mitad.");
  }

  /** Two rows meet at 60 °F; the colder one is the slower. */
  @Test
  void onTheBorderTheColderRowHolds() {
    assertThat(minutes(of("4 in", "60 °F", "40 %"), "cure")).isEqualTo(12 * 60);
    assertThat(minutes(of("4 in", "60.1 °F", "40 %"), "cure")).isEqualTo(6 * 60);
    assertThat(minutes(of("4 in", "100 °F", "40 %"), "cure")).isEqualTo(6 * 60);
    assertThat(minutes(of("100 mm", "10 °C", "40 %"), "cure")).as("4 in and 50 °F").isEqualTo(12 * 60);
  }

  @Test
  void largePipeIsOnlyInTheTablesThatReachIt() {
    Outcome outcome = of("18 in", "80 °F", "40 %");
    assertThat(outcome.answers()).doesNotContainKeys("set-manual", "cure-manual");
    assertThat(minutes(outcome, "cure")).isEqualTo(72 * 60);
  }

  @Test
  void saysWhereNoTableReaches() {
    for (String beyond : List.of("-5 °F", "110 °F")) {
      assertThatThrownBy(() -> of("4 in", beyond, "40 %")).isInstanceOf(NotReckonable.class)
          .hasMessage("No table tells of " + beyond + ": they go from 0 °F to 100 °F.");
    }
  }

  /** Outside diameters by size as printed (cases/construction/C01_pvc_casing_dimensions.csv, seen). */
  @Test
  void knowsTheNominalSizeOfAPipe() {
    Map.of(2.375, 2.0, 3.5, 3.0, 4.5, 4.0, 4.95, 4.0, 5.563, 5.0, 6.625, 6.0, 8.625, 8.0, 12.75, 12.0, 16.0, 16.0)
        .forEach((outside, nominal) -> assertThat(NominalSize.of(Length.of(outside, Unit.INCH)).inInches())
            .as("%s in", outside).isEqualTo(nominal));
  }

  private static Outcome of(String size, String temperature, String humidity) {
    return CementCure.RECKONING.of(Inputs.none().with(CementCure.SIZE, size)
        .with(CementCure.TEMPERATURE, temperature).with(CementCure.HUMIDITY, humidity));
  }

  private static double minutes(Outcome outcome, String answer) {
    return outcome.quantity(answer).in(Unit.MINUTE);
  }

  private static List<String> said(Outcome outcome, Reader reader) {
    return outcome.remarks().stream().map((Phrase p) -> p.shownTo(reader)).toList();
  }
}
