package steening.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import steening.language.Phrase;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Question;

/** Besides the cases of G02, which PublishedCasesTest holds. */
class GrainSizeConductivityTest {
  private static Outcome of(String... namesAndTexts) {
    Map<String, String> typed = new TreeMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) typed.put(namesAndTexts[i], namesAndTexts[i + 1]);
    return Question.of(GrainSizeConductivity.RECKONING, typed, US).answer();
  }

  /** G02, fourth case: Cu 9.4, where Hazen and the Bureau of Reclamation must be refused. */
  @Test
  void aFormulaOutsideItsDomainIsLeftOutAndSaysWhy() {
    Outcome outcome = of("d10", "0.08 mm", "d20", "0.15 mm", "d60", "0.75 mm");
    assertThat(outcome.answers()).doesNotContainKeys("hazen", "reclamation").containsKeys("beyer", "kozeny-carman");
    List<Phrase> remarks = outcome.remarks();
    assertThat(remarks).extracting(r -> r.shownTo(US)).containsExactly(
        "K by Hazen is left out; it holds for D10 0.1 to 3 mm, Cu under 5.",
        "K by US Bureau of Reclamation is left out; it holds for medium sand (read here as D60 0.25 to 2 mm), Cu under "
            + "5.");
    assertThat(remarks.get(0).shownTo(SPANISH))
        .isEqualTo("K según Hazen queda fuera; vale para D10 0.1 a 3 mm, Cu menor que 5.");
  }

  /** Domains as G02 lists them. */
  @Test
  void coarseAndFineSandLoseOtherFormulas() {
    assertThat(of("d10", "1 mm", "d20", "1.2 mm", "d60", "1.9 mm").answers()).doesNotContainKey("beyer")
        .containsKeys("hazen", "slichter", "reclamation");
    assertThat(of("d10", "3.5 mm", "d20", "4 mm", "d60", "6 mm").answers())
        .doesNotContainKeys("hazen", "kozeny-carman", "kozeny-carman-180", "beyer", "reclamation")
        .containsKeys("slichter", "terzaghi");
    assertThat(of("d10", "0.18 mm", "d60", "0.42 mm").answers()).doesNotContainKey("reclamation");
  }

  /** Driller's rule: 1 cm/s is 21,200 gpd/ft², and T / 2000 is the specific capacity of a confined sand (memory). */
  @Test
  void aSandOfSomeThicknessGivesARange() {
    Outcome outcome = of("d10", "0.2 mm", "hazen-factor", "100", "thickness", "10 ft");
    double transmissivity = outcome.quantity("transmissivity").in(Unit.GALLON_PER_DAY_PER_FOOT);
    assertThat(transmissivity).isCloseTo(0.04 * 21_200 * 10, within(20.0));
    double capacity = outcome.quantity("specific-capacity").in(Unit.GALLON_PER_MINUTE_PER_FOOT);
    assertThat(capacity).isCloseTo(transmissivity / 2000, within(1e-6));
    assertThat(outcome.quantity("specific-capacity-least").coherent() * 9)
        .isCloseTo(outcome.quantity("specific-capacity-most").coherent(), within(1e-12));
    assertThat(outcome.remarks()).extracting(r -> r.shownTo(US)).anyMatch(r -> r.startsWith("Taken as confined"));
    Outcome open = of("d10", "0.2 mm", "thickness", "10 ft", "aquifer", "unconfined");
    assertThat(open.quantity("specific-capacity").in(Unit.GALLON_PER_MINUTE_PER_FOOT))
        .isCloseTo(transmissivity / 1500, within(1e-6));
    assertThat(open.remarks()).isEmpty();
  }

  @Test
  void theMiddleLiesBetweenTheEnds() {
    Outcome outcome = of("d10", "0.18 mm", "d20", "0.24 mm", "d60", "0.42 mm");
    assertThat(outcome.quantity("least")).isEqualTo(outcome.quantity("reclamation"));
    assertThat(outcome.quantity("most")).isEqualTo(outcome.quantity("kozeny-carman"));
    assertThat(outcome.quantity("conductivity").coherent())
        .isBetween(outcome.quantity("least").coherent(), outcome.quantity("most").coherent());
  }

  @Test
  void sizesTheWrongWayRoundAreRefused() {
    assertThatThrownBy(() -> of("d10", "0.42 mm", "d60", "0.18 mm")).hasMessageContaining("percent finer");
    assertThatThrownBy(() -> of("d10", "0.05 mm")).hasMessageContaining("simple form of Hazen");
  }
}
