package steening.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import steening.field.ChoiceField;
import steening.field.Field;
import steening.field.Hands;
import steening.field.Kind;
import steening.language.BothLanguages;
import steening.language.Phrase;
import steening.language.Reader;
import steening.stage.Stage;

/** What every kind of entry on the register owes the hand that types it. */
class StagesTest {
  private static final String NAME = "[a-z]+(-[a-z]+)*";

  static Stream<Named<Kind>> kinds() {
    return Stages.all().stream().flatMap(s -> s.kinds().stream()).map(k -> Named.of(k.name(), k));
  }

  @Test
  void namesAreNamesOfOneThing() {
    assertThat(Stages.all()).extracting(Stage::name).doesNotHaveDuplicates();
    List<String> kinds = kinds().map(Named::getName).toList();
    assertThat(kinds).doesNotHaveDuplicates().allMatch(n -> n.matches(NAME));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void fieldsHaveNamesOfTheirOwn(Kind kind) {
    assertThat(kind.fields()).extracting(Field::name).doesNotHaveDuplicates().allMatch(n -> n.matches(NAME));
  }

  /** The examples are what a person is shown when something was not understood; they must be right. */
  @ParameterizedTest
  @MethodSource("kinds")
  void examplesAreTakenAsTheyStand(Kind kind) {
    for (Reader reader : List.of(Hands.US, Hands.METRIC, Hands.SPANISH)) {
      for (Field field : kind.fields()) Hands.taken(field, field.example(reader), reader);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void everythingIsSaidInBothLanguages(Kind kind) {
    List<Phrase> phrases = new ArrayList<>(List.of(kind.title()));
    for (Field field : kind.fields()) {
      phrases.add(field.label());
      if (field instanceof ChoiceField choice) choice.options().forEach(option -> phrases.add(option.label()));
    }
    phrases.forEach(BothLanguages::assertSpokenIn);
  }
}
