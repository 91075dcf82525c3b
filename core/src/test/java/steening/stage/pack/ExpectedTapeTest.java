package steening.stage.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Working;

class ExpectedTapeTest {
  /** Own scenario, arithmetic checked by hand: 97 ft of 7 7/8 in, string to 96 ft, bags of half a cubic foot. */
  @ParameterizedTest
  @CsvSource({"3, 90.9", "6, 84.3", "9, 77.7"})
  void climbsBagByBag(int bags, double feet) {
    assertThat(tape("7.875 in", Integer.toString(bags))).isCloseTo(feet, within(0.05));
  }

  /** Own scenario: √((0.04 × 4.5 / 0.2278)² + 0.2²) = 0.81 ft, shown twice as wide. */
  @Test
  void saysHowSureItIs() {
    Outcome outcome = reckon("7.875 in", "9");
    assertThat(outcome.quantity("deviation").in(Unit.FOOT)).isCloseTo(0.81, within(0.01));
    assertThat(outcome.quantity("give-or-take").in(Unit.FOOT)).isCloseTo(1.63, within(0.01));
  }

  @Test
  void staysInTheFullBoreWhileTheStringIsNotReached() {
    // half a bag of 0.5 ft³ in 0.3382 ft³/ft: by hand 97 − 0.25 / 0.3382
    Outcome outcome = reckon("7.875 in", "1", "bag-volume", "0.25 ft3");
    assertThat(outcome.quantity("tape").in(Unit.FOOT)).isCloseTo(96.261, within(0.001));
  }

  /** A law: the volume below the expected tape is what was poured, washouts and all. */
  @ParameterizedTest
  @ValueSource(strings = {
    "7.875 in", "7.875 in to 80 ft; 11 in to 85 ft; 7.875 in to 97 ft", "7.875 in to 90 ft; 9 in to 97 ft"
  })
  void whatIsBelowTheTapeIsWhatWasPoured(String hole) {
    for (int bags = 1; bags < 25; bags++) {
      double tape = tape(hole, Integer.toString(bags));
      Body between = Body.of(
          "hole", hole, "casing", "4.5 in", "string-bottom", "96 ft", "from", tape + " ft", "to", "97 ft");
      double volume = PackVolume.RECKONING.of(Inputs.of(between)).quantity("volume").in(Unit.CUBIC_FOOT);
      assertThat(volume).isCloseTo(bags * 0.5, within(1e-6));
    }
  }

  @Test
  void goesOnAboveTheGroundRatherThanStopping() {
    assertThat(tape("7.875 in", "113")).isLessThan(-100);
  }

  @Test
  void addsTheStickUpForATapeReadFromTheCasing() {
    Outcome outcome = reckon("7.875 in", "9", "stick-up", "1.5 ft");
    assertThat(outcome.quantity("reading").in(Unit.FOOT))
        .isCloseTo(outcome.quantity("tape").in(Unit.FOOT) + 1.5, within(1e-8));
  }

  @Test
  void saysWhyItCannot() {
    assertThatThrownBy(() -> tape("4.5 in", "3")).isInstanceOf(NotReckonable.class)
        .hasMessage("There is no room between hole and pipe.");
    assertThatThrownBy(() -> tape("7.875 in to 50 ft", "3")).isInstanceOf(NotReckonable.class)
        .hasMessage("The hole's diameter at 50.00 ft is not known.");
  }

  @Test
  void theWorkingCanBeFollowedInBothSystems() {
    Outcome outcome = reckon("7.875 in", "9");
    List<Working.Line> us = outcome.working(Reader.US_ENGLISH).lines();
    assertThat(us).anySatisfy(line -> {
      assertThat(line.symbol()).isEqualTo("z");
      assertThat(line.formula()).isEqualTo("z₀₂ − (V − V₁) / A₂");
      assertThat(line.figures()).isEqualTo("96 − (4.5 − 0.3382428) / 0.2277961");
    });
    Reader metric = new Reader(Language.SPANISH, UnitSystem.METRIC);
    assertThat(outcome.figure("tape").shownTo(metric)).isEqualTo("23.69 m");
    assertThat(outcome.working(metric).lines()).anySatisfy(line -> assertThat(line.label().shownTo(metric))
        .isEqualTo("lectura esperada, bajo el terreno"));
  }

  private static double tape(String hole, String bags) {
    return reckon(hole, bags).quantity("tape").in(Unit.FOOT);
  }

  private static Outcome reckon(String hole, String bags, String... more) {
    Body body = Body.of("hole", hole, "casing", "4.5 in", "string-bottom", "96 ft", "bottom", "97 ft", "bags", bags);
    for (int i = 0; i < more.length; i += 2) body = body.with(more[i], more[i + 1]);
    return ExpectedTape.RECKONING.of(Inputs.of(body));
  }
}
