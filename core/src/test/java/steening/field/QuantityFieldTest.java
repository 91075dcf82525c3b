package steening.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;
import static steening.field.Hands.asked;
import static steening.field.Hands.refused;
import static steening.field.Hands.taken;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;

class QuantityFieldTest {
  private static final QuantityField HOLE =
      field("hole-diameter", Scale.DIAMETER, "hole diameter", "7 7/8 in", "200 mm")
      .between("1 in", "60 in").usually("4 in", "16 in");
  private static final QuantityField DEPTH = field("hole-depth", Scale.DEPTH, "hole depth", "142 ft", "43 m")
      .between("1 ft", "6000 ft").usually("15 ft", "600 ft");
  private static final QuantityField SLOT = field("slot", Scale.SLOT, "slot size", "20 slot", "0.5 mm")
      .between("0.001 in", "1 in").usually("0.004 in", "0.125 in");
  private static final QuantityField SCREEN = field("length", Scale.DEPTH, "screen length", "10 ft", "3 m")
      .between("0.1 ft", "500 ft").usually("2 ft", "60 ft");
  private static final QuantityField CUT_OUT = field("cut-out", Scale.PRESSURE, "cut-out", "60 psi", "400 kPa")
      .between("1 psi", "200 psi").usually("30 psi", "80 psi");
  private static final QuantityField BAG = field("weight", Scale.WEIGHT, "bag", "50 lb", "25 kg")
      .between("1 lb", "4000 lb").usually("40 lb", "100 lb");
  private static final QuantityField LONGITUDE = field("longitude", Scale.COORDINATE, "longitude", "-83.1", "-83.1")
      .between("-180 °", "180 °").usually("-130 °", "-60 °");
  private static final QuantityField LEVEL = field("level", Scale.DEPTH, "level", "31 ft", "9.4 m");

  @ParameterizedTest
  @CsvSource(quoteCharacter = '~', value = {
    "142, 142 ft", "142 ft, 142 ft", "43.3 m, 43.3 m", "142' 6\", 142' 6\"", "142 6, 142 6 ft", "142′ 6″, 142′ 6″",
    "0142.50, 0142.50 ft"
  })
  void keepsWhatWasTypedAndAddsAMissingUnit(String typed, String kept) {
    assertThat(taken(DEPTH, typed)).isEqualTo(kept);
  }

  @Test
  void takesABareNumberInTheUnitOfTheHand() {
    assertThat(taken(DEPTH, "43", METRIC)).isEqualTo("43 m");
    assertThat(taken(SLOT, "20")).isEqualTo("20 slot");
    assertThat(taken(SLOT, "0.5", METRIC)).isEqualTo("0.5 mm");
    assertThat(DEPTH.length(Body.of("hole-depth", "142' 6\""))).contains(new Length(43_434_000_000L));
  }

  @ParameterizedTest
  @ValueSource(strings = {"deep", "142 gal", "1e2 ft", "142 ft and a bit", "ft", "NaN", "0x8E"})
  void refusesNonsenseWithAnExample(String typed) {
    assertThat(refused(DEPTH, typed)).isEqualTo("hole depth: \"" + typed + "\" is not understood. Example: 142 ft.");
    assertThat(refused(DEPTH, typed, SPANISH)).endsWith("Ejemplo: 43 m.");
  }

  @Test
  void refusesWhatIsNotPossibleWithTheRange() {
    assertThat(refused(DEPTH, "-5 ft"))
        .isEqualTo("hole depth: -5.00 ft is outside 1.00 ft to 6000.00 ft. Example: 142 ft.");
    assertThat(refused(DEPTH, "-9 m", METRIC))
        .isEqualTo("hole depth: -9.00 m is outside 0.30 m to 1828.80 m. Example: 43 m.");
    assertThat(refused(DEPTH, "")).isEqualTo("hole depth is missing. Example: 142 ft.");
    assertThat(DEPTH.optional().read(" ", US, false)).isEqualTo(new Reading.Absent());
  }

  /** Slips of a unit or a sign that crews make: own scenario. The first text offered is the one that was meant. */
  @ParameterizedTest
  @CsvSource({
    "hole-diameter, 7.875 ft, 7.875 in", "length, 10 in, 10 ft", "slot, 20 in, 20 slot", "slot, 0.020 ft, 0.020 in",
    "cut-out, 60 kPa, 60 psi", "weight, 50 kg, 50 lb", "longitude, 83.1, -83.1 °", "hole-depth, 142 in, 142 ft"
  })
  void asksAboutASlipAndOffersWhatWasMeant(String name, String typed, String meant) {
    QuantityField field = Stream.of(HOLE, SCREEN, SLOT, CUT_OUT, BAG, LONGITUDE, DEPTH)
        .filter(f -> f.name().equals(name)).findFirst().orElseThrow();
    Reading.Asked asked = asked(field, typed, US);
    assertThat(asked.question().shownTo(US)).endsWith("Did you mean " + meant + "?");
    assertThat(asked.question().shownTo(SPANISH)).endsWith("¿Quiso decir " + meant + "?");
    Stream<String> usual = asked.meanings().stream().filter(m -> field.read(m, US, false) instanceof Reading.Taken);
    assertThat(usual).first().isEqualTo(meant);
  }

  @Test
  void offersTheUnitsOfTheHandFirst() {
    assertThat(asked(SCREEN, "10 in")).containsExactly("10 in", "10 ft", "10 m");
    assertThat(asked(SCREEN, "10 mm", METRIC).meanings()).containsExactly("10 m", "10 ft");
  }

  @Test
  void asksAboutTheUnusualAndTakesItOnceConfirmed() {
    assertThat(asked(DEPTH, "9 ft")).first().isEqualTo("9 ft");
    assertThat(DEPTH.read("9 ft", US, true)).isEqualTo(new Reading.Taken("9 ft"));
    assertThat(DEPTH.read("9", US, true)).isEqualTo(new Reading.Taken("9 ft"));
    Reading.Asked alone = asked(DEPTH, "3' 6\"", US);
    assertThat(alone.question().shownTo(US)).isEqualTo("hole depth: 3' 6\" is unusual. Is it right?");
    assertThat(alone.meanings()).containsExactly("3' 6\"");
  }

  @Test
  void confirmingMakesNothingPossible() {
    assertThat(DEPTH.read("7000 ft", US, true)).isNotInstanceOf(Reading.Taken.class);
    assertThat(HOLE.read("7.875 ft", US, true)).isNotInstanceOf(Reading.Taken.class);
  }

  @Test
  void asksWhatACommaMeansEvenOfASureHand() {
    assertThat(asked(DEPTH, "57,25")).containsExactly("57.25 ft", "5725 ft");
    assertThat(DEPTH.read("57,25", US, true)).isInstanceOf(Reading.Asked.class);
    assertThat(asked(DEPTH, "57,25", SPANISH).question().shownTo(SPANISH))
        .isEqualTo("hole depth: ¿la coma en 57,25 es punto decimal?");
    assertThat(asked(LEVEL, "1,200.5 ft")).containsExactly("1200.5 ft");
    assertThat(refused(DEPTH, "a,b")).contains("Example: 142 ft");
  }

  @Test
  void aFieldWithoutBoundsTakesAnyAmount() {
    assertThat(taken(LEVEL, "-12 ft")).isEqualTo("-12 ft");
    assertThat(LEVEL.least()).isEmpty();
  }

  @Test
  void copiesDifferInOneThing() {
    QuantityField copy = HOLE.named("hole").labelled("hole", "barreno").optional();
    assertThat(copy.name()).isEqualTo("hole");
    assertThat(copy.label().shownTo(SPANISH)).isEqualTo("barreno");
    assertThat(copy.isRequired()).isFalse();
    assertThat(asked(copy, "7.875 ft")).containsExactly("7.875 in");
    assertThat(HOLE.holds()).isEqualTo("length");
    assertThatThrownBy(() -> HOLE.between("wide", "60 in")).hasMessage("hole-diameter: not an amount: wide");
  }

  private static QuantityField field(String name, Scale scale, String label, String us, String metric) {
    return QuantityField.of(name, scale, Phrase.same(label), us, metric);
  }
}
