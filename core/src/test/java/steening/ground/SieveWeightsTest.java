package steening.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.journal.Body;
import steening.quantity.Unit;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;

/** Besides the published cases, which PublishedCasesTest holds (G01: weights of a textbook exercise). */
class SieveWeightsTest {
  private static final String OPENINGS = "0.075 0.15 0.25 0.425 0.85 mm";
  private static final String RETAINED = "50 155 175 90 10 g";

  private static Outcome curve(String... rest) {
    Body body = Body.of(rest).with("openings", OPENINGS).with("retained", RETAINED);
    return SieveCurve.of(body);
  }

  /** Own figures, checked by hand: 20 + 50 + 155 + 175 + 90 + 10 = 500; 20 / 500 = 4 %, 70 / 500 = 14 % and so on. */
  @Test
  void weightsGiveTheSameCurveAsTheirPercents() {
    Outcome weighed = curve("pan", "20 g");
    Outcome typed = SieveCurve.of(Body.of("openings", OPENINGS, "finer", "4 14 45 80 98 %"));
    assertThat(weighed.quantity("total").in(Unit.GRAM)).isCloseTo(500, within(1e-9));
    assertThat(weighed.answers()).doesNotContainKey("loss");
    for (String size : new String[] {"d10", "d30", "d60", "d90", "cu", "cc", "natural-slot-fifty"}) {
      assertThat(weighed.quantity(size).coherent()).as(size)
          .isCloseTo(typed.quantity(size).coherent(), within(1e-12));
    }
    assertThat(typed.answers()).doesNotContainKey("total");
  }

  /** 505 g before, 500 g after: 5 / 505 = 0.99 %. */
  @Test
  void whatWasLostIsSaid() {
    Outcome outcome = curve("pan", "20 g", "sample-weight", "505 g");
    assertThat(outcome.quantity("loss").in(Unit.PERCENT)).isCloseTo(0.990, within(0.001));
    assertThat(outcome.remarks()).extracting(r -> r.shownTo(SPANISH)).anyMatch(r -> r.contains("difieren más de 0.3 %"));
    assertThat(curve("pan", "20 g", "sample-weight", "501 g").remarks()).isEmpty();
  }

  @Test
  void theOrderOfTheSievesDoesNotMatter() {
    Outcome falling = SieveCurve.of(Body.of(
        "openings", "0.85 0.425 0.25 0.15 0.075 mm", "retained", "10 90 175 155 50 g", "pan", "20 g"));
    assertThat(falling.quantity("d30")).isEqualTo(curve("pan", "20 g").quantity("d30"));
  }

  @Test
  void whatDoesNotBelongTogetherIsSaid() {
    assertThatThrownBy(() -> curve()).isInstanceOf(NotReckonable.class).hasMessageContaining("Weigh the pan too");
    assertThatThrownBy(() -> curve("pan", "20 g", "finer", "4 24 45 80 98 %"))
        .hasMessageContaining("14.0 % passes the sieve of 0.15 mm, but 24.0 % was typed");
    assertThatThrownBy(() -> SieveCurve.of(Body.of("openings", OPENINGS, "retained", "50 155 g", "pan", "0 g")))
        .hasMessageContaining("5 sieve openings, but 2 weights");
    assertThatThrownBy(() -> SieveCurve.of(Body.of("openings", "0.1 0.2 mm", "retained", "0 0 g", "pan", "0 g")))
        .hasMessageContaining("hold nothing");
    assertThatThrownBy(() -> SieveCurve.of(Body.of("openings", "0.1 0.1 mm", "retained", "3 4 g", "pan", "0 g")))
        .hasMessageContaining("stands there twice");
    assertThatThrownBy(() -> SieveCurve.of(Body.of("openings", OPENINGS))).hasMessageContaining("Give what passes");
  }

  @Test
  void oddWeightsAreRefused() {
    assertThat(Hands.refused(SieveWeights.RETAINED, "50 -3 g")).isNotBlank();
    assertThat(Hands.refused(SieveWeights.RETAINED, "50 mm 60 mm")).isNotBlank();
    assertThat(Hands.refused(SieveWeights.PAN, "twenty")).contains("20 g");
    assertThat(Hands.asked(SieveWeights.SAMPLE, "5000 kg")).containsExactly("5000 g");
    assertThat(Hands.taken(SieveWeights.SAMPLE, "1.1 lb")).isEqualTo("1.1 lb");
  }

  @Test
  void theLineOfTheTotalIsWritten() {
    String working = curve("pan", "20 g").working(US).toString();
    assertThat(working).contains("w₀", "w₅");
  }
}
