package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.US;

import java.util.Map;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Scale;

class KindTest {
  private static final QuantityField SIZE =
      QuantityField.of("diameter", Scale.DIAMETER, Phrase.of("diameter", "diámetro"), "7 7/8 in", "200 mm")
          .between("1 in", "60 in").usually("4 in", "16 in");
  private static final CountField BAGS = CountField.of("bags", Phrase.of("bags", "sacos"), 1, 1000).optional();
  private static final Kind KIND = Kind.of("pack-bags", Phrase.of("Pack", "Filtro"), SIZE, BAGS);

  @Test
  void everyKindHasARemark() {
    assertThat(KIND.field("remark")).isPresent();
    assertThat(KIND.schema()).isEqualTo(1);
  }

  @Test
  void aFormThatWasTakenBecomesABody() {
    Map<Field, Reading> readings = KIND.read(Map.of("diameter", " 200 ", "remark", "soft"), METRIC);
    assertThat(KIND.body(readings, "")).contains(Body.of("diameter", "200 mm", "remark", "soft"));
  }

  @Test
  void aFormThatMustBeAskedAboutBecomesNone() {
    Map<String, String> typed = Map.of("diameter", "18 in", "bags", "3");
    assertThat(KIND.body(KIND.read(typed, US), "")).isEmpty();
    Map<String, String> confirmed = Map.of("diameter", "18 in", "bags", "3", "sure", "bags diameter");
    assertThat(KIND.body(KIND.read(confirmed, US), "diameter"))
        .contains(Body.of("bags", "3", "diameter", "18 in", "sure", "diameter"));
  }

  @Test
  void namesEveryFaultOfABodyFromElsewhere() {
    assertThat(KIND.faults(Body.of("diameter", "18 in", "sure", "diameter"))).isEmpty();
    assertThat(KIND.faults(Body.of("bags", "many", "depth", "5 ft")).stream().map(f -> f.shownTo(US))).containsExactly(
        "diameter: diameter is missing. Example: 7 7/8 in.",
        "bags: bags: \"many\" is not understood. Example: 3.",
        "depth: pack-bags has no such field; its fields are diameter, bags, remark.");
    assertThat(KIND.faults(Body.of("diameter", "7,875 in"))).hasSize(1);
  }
}
