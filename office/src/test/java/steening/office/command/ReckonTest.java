package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import org.junit.jupiter.api.Test;
import steening.job.Stages;
import steening.language.Language;

/** A 7 7/8-inch hole round a 4.5-inch pipe holds (7.875² − 4.5²) / 183.35 ft³ a foot, by the handbooks' factor. */
class ReckonTest {
  private static final String[] ANNULUS = annulus("hole=7 7/8 in");

  @Test
  void answersAsJson() {
    Said said = Said.by(with(ANNULUS, "--json"));
    assertThat(said.status()).isZero();
    JsonObject answer = Json.parse(said.out()).asObject();
    assertThat(answer.get("reckoning").asString()).isEqualTo("annulus-volume");
    JsonObject volume = answer.get("answers").asObject().get("volume").asObject();
    assertThat(volume.get("unit").asString()).isEqualTo("ft3");
    assertThat(volume.get("value").asDouble()).isEqualTo((7.875 * 7.875 - 4.5 * 4.5) / 183.35 * 100, within(0.005));
    assertThat(answer.get("working").asArray()).isNotEmpty();
    assertThat(answer.get("source").asString()).isNotEmpty();
    assertThat(answer.get("validity").asArray()).isNotEmpty();
  }

  @Test
  void answersAsTextInBothLanguages() {
    assertThat(Said.by(ANNULUS).out()).contains("22.78 ft³", "Working", "(7.875² − 4.5²)", "Source: ");
    assertThat(Said.by(Language.SPANISH, ANNULUS).out()).contains("22.78 ft³", "Desarrollo", "Fuente: ");
    assertThat(Said.by(with(ANNULUS, "--metric")).out()).contains(" m³").doesNotContain("22.78 ft³");
  }

  @Test
  void declaresEveryReckoning() {
    Said said = Said.by("reckon", "--list", "--json");
    assertThat(said.status()).isZero();
    assertThat(Json.parse(said.out()).asArray()).hasSameSizeAs(Stages.reckonings());
    for (JsonValue value : Json.parse(said.out()).asArray()) {
      JsonObject reckoning = value.asObject();
      assertThat(reckoning.names()).contains("name", "inputs", "answers", "source");
      for (JsonValue input : reckoning.get("inputs").asArray()) {
        assertThat(input.asObject().names()).contains("name", "quantity");
      }
    }
    assertThat(Said.by("reckon", "--list").out()).contains("annulus-volume", "hole=\"7 7/8 in\"");
  }

  @Test
  void saysWhatItCannotReckon() {
    Said slip = Said.by("reckon", "annulus-volume", "hole=7 7/8 ft", "casing=4.5 in", "from=0 ft", "bib=3");
    assertThat(slip.status()).isEqualTo(2);
    assertThat(slip.err()).contains("Did you mean 7 7/8 in?", "to: ", "no \"bib\"").doesNotContain("sure=hole");
    assertThat(slip.out()).isEmpty();
    Said json = Said.by(with(annulus("hole=7 7/8 ft"), "--json"));
    assertThat(json.status()).isEqualTo(2);
    assertThat(Json.parse(json.out()).asObject().get("troubles").asArray()).hasSize(1);
    Said contradiction = Said.by(with(annulus("hole=4 1/4 in"), "sure=hole"));
    assertThat(contradiction.status()).isEqualTo(2);
    assertThat(contradiction.err()).isNotBlank();
    assertThat(Said.by("reckon", "moon-volume").err()).contains("moon-volume", "--list");
  }

  private static String[] annulus(String hole) {
    return new String[] {"reckon", "annulus-volume", hole, "casing=4.5 in", "from=0 ft", "to=100 ft"};
  }

  private static String[] with(String[] arguments, String more) {
    String[] all = new String[arguments.length + 1];
    System.arraycopy(arguments, 0, all, 0, arguments.length);
    all[arguments.length] = more;
    return all;
  }
}
