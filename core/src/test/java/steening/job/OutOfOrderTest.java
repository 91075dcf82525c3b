package steening.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import steening.field.Field;
import steening.field.Kind;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.Stage;
import steening.well.Well;

/** Entries come in any order, with any of their optional fields: the well is folded and answers all the same. */
class OutOfOrderTest {
  private static final List<String> STAGES = List.of("site", "permit", "plan", "pump", "sample", "handover", "decommissioning");
  private static final Reader SPANISH_METRIC = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void aWellOfWhichNothingIsKnownAnswers() {
    answers(Well.named("w1"));
  }

  /** What a form holds may be as little as nothing, when it came from elsewhere. */
  @Test
  void emptyBodiesAreFolded() {
    Well well = Well.named("w1");
    for (Stage stage : stages()) {
      for (Kind kind : stage.kinds()) well = stage.fold(well, entry(kind, Body.EMPTY, 1));
    }
    answers(well);
  }

  @RepeatedTest(40)
  void anyOrderIsFolded(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    Well well = Well.named("w1");
    for (int i = 0; i < 30; i++) {
      Stage stage = stages().get(random.nextInt(STAGES.size()));
      Kind kind = stage.kinds().get(random.nextInt(stage.kinds().size()));
      well = stage.fold(well, entry(kind, exampleOf(kind, random), 1 + random.nextInt(50000)));
      answers(well);
    }
  }

  /** Each field's own example; an optional one only now and then. */
  private static Body exampleOf(Kind kind, Random random) {
    Body body = Body.EMPTY;
    for (Field field : kind.fields()) {
      if (field.isRequired() || random.nextBoolean()) body = body.with(field.name(), field.example(Reader.US_ENGLISH));
    }
    assertThat(kind.faults(body)).as(kind.name()).isEmpty();
    return body;
  }

  private static Entry entry(Kind kind, Body body, int minute) {
    Moment at = Moment.parse("2026-05-12T08:00:00-05:00").plusMinutes(minute);
    return new Entry("e" + minute, "w1", "d1", 1, "crew", at, at, kind.name(), 1, body, List.of());
  }

  private static void answers(Well well) {
    for (Stage stage : stages()) {
      for (Reader reader : List.of(Reader.US_ENGLISH, SPANISH_METRIC)) {
        List<String> shown = new ArrayList<>();
        stage.findings(well).forEach(f -> shown.add(f.text().shownTo(reader)));
        stage.expectations(well).forEach(e -> shown.add(e.figure().shownTo(reader)));
        stage.sheet(well).lines().forEach(l -> shown.add(l.value().shownTo(reader)));
        stage.loads(well).forEach(l -> shown.add(l.howMany().shownTo(reader)));
        assertThat(shown).as(stage.name()).noneMatch(s -> s.contains("{"));
      }
      assertThat(stage.kinds()).extracting(Kind::name).contains(stage.nextKind(well));
      assertThat(stage.progress(well)).isNotNull();
    }
  }

  private static List<Stage> stages() {
    return STAGES.stream().map(name -> Stages.named(name).orElseThrow()).toList();
  }
}
