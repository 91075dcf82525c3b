package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;

class GroutVolumeTest {
  static Stream<JsonObject> jobs() {
    return GroutExamples.worked().stream().filter(r -> !r.getString("id", "").equals("W-GROU-10"));
  }

  /** Worked examples W-GROU-01 to -09: published mixes (seen), absolute volumes, geometry. */
  @ParameterizedTest
  @MethodSource("jobs")
  void agreesWithTheWorkedExamples(JsonObject row) {
    JsonObject solids = row.get("inputs").asObject().get("solids_lb_per_bag").asObject();
    String material = solids.names().get(0);
    Outcome outcome = reckon(GroutVolume.RECKONING,
        "hole", GroutExamples.input(row, "hole_in") + " in", "casing", GroutExamples.input(row, "casing_od_in") + " in",
        "from", "0 ft", "to", GroutExamples.input(row, "length_ft") + " ft",
        "overage", 100 * GroutExamples.input(row, "overage_fraction") + " %", "material", material,
        "solids", solids.get(material).asDouble() + " lb", "water",
        GroutExamples.input(row, "water_gal_per_bag") + " gal");
    assertThat(outcome.quantity("order-volume").in(Unit.CUBIC_FOOT))
        .isCloseTo(GroutExamples.expected(row, "volume_ft3"), withinPercentage(0.01));
    assertThat(outcome.quantity("order-liquid").in(Unit.GALLON))
        .isCloseTo(GroutExamples.expected(row, "volume_gal"), withinPercentage(0.01));
    assertThat(outcome.quantity("order-bags").coherent()).isEqualTo(GroutExamples.expected(row, "bags"));
    assertThat(outcome.quantity("order-water").in(Unit.GALLON))
        .isCloseTo(GroutExamples.expected(row, "water_gal"), within(1e-6));
    assertThat(outcome.quantity("length-per-bag").in(Unit.FOOT))
        .isCloseTo(GroutExamples.expected(row, "ft_per_bag_gauge"), withinPercentage(0.01));
  }

  /** Own scenario, arithmetic checked by hand: 110 ft of 7 7/8 in around 4.5 in. */
  @Test
  void groutsTheEverydayWell() {
    Outcome outcome = reckon(GroutVolume.RECKONING,
        "hole", "7.875 in", "casing", "4.5 in", "from", "0 ft", "to", "110 ft", "overage", "25 %");
    assertThat(outcome.quantity("volume").in(Unit.CUBIC_FOOT)).isCloseTo(25.06, within(0.005));
    assertThat(outcome.quantity("liquid").in(Unit.GALLON)).isCloseTo(187.4, within(0.05));
    assertThat(outcome.quantity("bags").coherent()).isEqualTo(8);
    assertThat(outcome.quantity("water").in(Unit.GALLON)).isCloseTo(192, within(1e-6));
    assertThat(outcome.quantity("order-bags").coherent()).isEqualTo(9);
    assertThat(outcome.quantity("order-water").in(Unit.GALLON)).isCloseTo(216, within(1e-6));
  }

  /** Own scenario: 1.139 ft³ over 0.69 ft³ is 1.65, two bags. */
  @Test
  void putsTwoBagsOfChipsUnderIt() {
    Outcome outcome =
        reckon(ChipsVolume.RECKONING, "hole", "7.875 in", "casing", "4.5 in", "from", "110 ft", "to", "115 ft");
    assertThat(outcome.quantity("volume").in(Unit.CUBIC_FOOT)).isCloseTo(1.139, within(0.0005));
    assertThat(outcome.quantity("bags-filled").coherent()).isCloseTo(1.65, within(0.005));
    assertThat(outcome.quantity("bags").coherent()).isEqualTo(2);
  }

  /** A law: what is below the expected top is what was pumped. */
  @Test
  void theTopOfTheGroutKeepsTheVolume() {
    String hole = "7 7/8 in to 57 ft; 11 in to 63 ft; 7 7/8 in to 140 ft";
    for (int bags = 1; bags < 9; bags++) {
      double top = reckon(GroutTop.RECKONING, "hole", hole, "casing", "4.5 in", "bottom", "136 ft", "bags", "" + bags)
          .quantity("top").in(Unit.FOOT);
      Outcome between =
          reckon(GroutVolume.RECKONING, "hole", hole, "casing", "4.5 in", "from", top + " ft", "to", "136 ft");
      assertThat(between.quantity("bags-filled").coherent()).isCloseTo(bags, within(1e-6));
    }
  }

  @Test
  void saysWhenItComesBackAtTheSurface() {
    Outcome outcome =
        reckon(GroutTop.RECKONING, "hole", "7.875 in", "casing", "4.5 in", "bottom", "110 ft", "bags", "8");
    Phrase remark = outcome.remarks().get(0);
    // by hand: 8 × 3.5165 / 0.2278 = 123.5 ft
    assertThat(remark.shownTo(Reader.US_ENGLISH))
        .isEqualTo("It comes back at the surface, with enough over for 13.50 ft more.");
    assertThat(remark.shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .isEqualTo("Regresa a la superficie y sobra para 4.11 m más.");
  }

  @Test
  void saysWhatCannotBe() {
    assertThatThrownBy(() ->
        reckon(GroutVolume.RECKONING, "hole", "4 in", "casing", "4.5 in", "from", "0 ft", "to", "10 ft"))
        .isInstanceOf(NotReckonable.class);
  }

  private static Outcome reckon(Reckoning reckoning, String... namesAndTexts) {
    return reckoning.of(Inputs.of(Body.of(namesAndTexts)));
  }
}
