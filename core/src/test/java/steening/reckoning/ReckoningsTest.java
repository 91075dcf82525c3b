package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.SPANISH;
import static steening.field.Hands.US;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import steening.field.Field;
import steening.field.Hands;
import steening.job.Stages;
import steening.language.BothLanguages;
import steening.language.Phrase;
import steening.language.Reader;

/** What every reckoning on the register owes the one who asks it. */
class ReckoningsTest {
  static Stream<Named<Reckoning>> reckonings() {
    return Stages.reckonings().stream().map(r -> Named.of(r.name(), r));
  }

  @Test
  void namesAreNamesOfOneThing() {
    assertThat(Stages.reckonings()).isNotEmpty();
    List<String> names = Stages.reckonings().stream().map(Reckoning::name).toList();
    assertThat(names).doesNotHaveDuplicates().allMatch(n -> n.matches("[a-z]+(-[a-z]+)*"));
    assertThat(Stages.reckonings()).allMatch(r -> Stages.named(r.stage()).isPresent());
  }

  /** The examples are what a person is shown when something was not understood; they must be right. */
  @ParameterizedTest
  @MethodSource("reckonings")
  void examplesAreTakenAsTheyStand(Reckoning reckoning) {
    for (Reader reader : List.of(US, METRIC, SPANISH)) {
      for (Field field : reckoning.inputs()) Hands.taken(field, field.example(reader), reader);
    }
  }

  @ParameterizedTest
  @MethodSource("reckonings")
  void answersWhatItDeclaresAndNothingElse(Reckoning reckoning) {
    Set<String> met = new TreeSet<>();
    for (Outcome outcome : Samples.outcomes(reckoning)) {
      outcome.answers().forEach((name, term) -> {
        met.add(name);
        List<Answer> declared = reckoning.answers().stream().filter(a -> a.name().equals(name)).toList();
        assertThat(declared).as(name).extracting(Answer::scale).containsExactly(term.scale());
      });
      outcome.words().forEach((name, word) -> {
        met.add(name);
        List<Answer> declared = reckoning.answers().stream().filter(a -> a.name().equals(name)).toList();
        assertThat(declared).as(name).extracting(a -> a.measured().isPresent()).containsExactly(false);
      });
    }
    assertThat(met).containsAll(reckoning.answers().stream().map(Answer::name).toList());
  }

  @ParameterizedTest
  @MethodSource("reckonings")
  void saysWhereItComesFromAndWhatItHoldsForInBothLanguages(Reckoning reckoning) {
    List<Phrase> phrases = new ArrayList<>(reckoning.validity());
    assertThat(phrases).as("validity").isNotEmpty();
    phrases.add(reckoning.title());
    phrases.add(reckoning.source().publication());
    for (Field field : reckoning.inputs()) phrases.add(field.label());
    for (Answer answer : reckoning.answers()) phrases.add(answer.label());
    for (Outcome outcome : Samples.outcomes(reckoning)) {
      phrases.addAll(outcome.remarks());
      phrases.addAll(outcome.words().values());
      for (Working.Line line : outcome.working(US).lines()) phrases.add(line.label());
    }
    phrases.forEach(BothLanguages::assertSpokenIn);
  }
}
