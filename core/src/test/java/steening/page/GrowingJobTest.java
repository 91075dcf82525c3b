package steening.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import steening.field.Field;
import steening.field.Kind;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.language.Reader;
import steening.json.JobJson;
import steening.stage.Stage;

/**
 * However a journal came together, batch by batch, late, twice, corrected, withdrawn, copied: the well is the one that
 * a single fold of everything gives.
 */
class GrowingJobTest {
  private static final Moment MORNING = Moment.parse("2026-05-12T08:00:00-05:00");
  private static final Moment NOW = Moment.parse("2027-05-12T08:00:00-05:00");

  @RepeatedTest(24)
  void growsIntoWhatASingleFoldGives(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    List<Entry> entries = entries(random, 20 + random.nextInt(60));
    if (random.nextBoolean()) entries.sort(Entry.ORDER);
    Job grown = Job.of("w1", Journal.EMPTY);
    for (int from = 0; from < entries.size(); ) {
      int to = Math.min(entries.size(), from + 1 + random.nextInt(6));
      grown = grown.with(entries.subList(from, to));
      from = to;
      same(grown, Job.of("w1", Journal.of(entries.subList(0, to))));
    }
    Collections.shuffle(entries, random);
    Job folded = Job.of("w1", Journal.of(entries));
    same(grown, folded);
    for (String page : List.of("", "/journal", "/test", "/seal", "/load-list", "/tailgate")) {
      assertThat(page(grown, "/well/w1" + page)).isEqualTo(page(folded, "/well/w1" + page));
    }
  }

  /** Long enough for the fold to be taken up again from a mark in the middle. */
  @RepeatedTest(6)
  void aLateArrivalInALongJournalIsFoldedIn(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < 900; i++) entries.add(entry(Stages.kind("pumping-level").orElseThrow(), i, i, random));
    Job whole = Job.of("w1", Journal.of(entries));
    Entry late = entries.get(random.nextInt(entries.size()));
    entries.remove(late);
    Job grown = Job.of("w1", Journal.of(entries));
    List<Entry> moreToCome = entries.subList(850, entries.size());
    grown = grown.with(List.of(late)).with(moreToCome).with(List.of());
    same(grown, whole);
    Entry correction = correcting(entries.get(random.nextInt(entries.size())), 2000, random);
    entries.addAll(List.of(late, correction));
    same(grown.with(List.of(correction)), Job.of("w1", Journal.of(entries)));
  }

  @Test
  void entriesThatAreThereAlreadyChangeNothing() {
    List<Entry> entries = entries(new Random(7), 40);
    Journal journal = Journal.of(entries);
    assertThat(journal.grown(journal.entries()).kept()).isEqualTo(journal.facts().size());
    same(Job.of("w1", journal).with(entries), Job.of("w1", journal));
  }

  private static void same(Job grown, Job folded) {
    assertThat(grown.journal().entries()).isEqualTo(folded.journal().entries());
    assertThat(grown.journal().facts()).isEqualTo(folded.journal().facts());
    assertThat(grown.journal().clashes()).isEqualTo(folded.journal().clashes());
    assertThat(grown.journal().rivals()).isEqualTo(folded.journal().rivals());
    assertThat(grown.journal().waiting()).isEqualTo(folded.journal().waiting());
    assertThat(grown.unread()).isEqualTo(folded.unread());
    assertThat(grown.well()).isEqualTo(folded.well());
    for (Stage stage : Stages.all()) {
      for (Kind kind : stage.kinds()) assertThat(grown.last(kind)).isEqualTo(folded.last(kind));
    }
    String told = JobJson.of(grown, Reader.US_ENGLISH).toString();
    assertThat(told).isEqualTo(JobJson.of(folded, Reader.US_ENGLISH).toString());
  }

  /** A journal as a bad week leaves it: one in six entries has to do with another one. */
  private static List<Entry> entries(Random random, int size) {
    List<Kind> kinds = Stages.all().stream().flatMap(s -> s.kinds().stream()).toList();
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Entry fresh = entry(kinds.get(random.nextInt(kinds.size())), i, random.nextInt(2000), random);
      Entry other = entries.isEmpty() ? fresh : entries.get(random.nextInt(entries.size()));
      entries.add(switch (random.nextInt(30)) {
        case 0, 1 -> correcting(other, 1000 + i, random);
        case 2 -> withdrawing(other, 1000 + i);
        case 3 -> as(fresh, fresh.kind(), fresh.body(), List.of("e" + random.nextInt(size)));
        case 4 -> new Entry(
            other.id(), "w1", "d2", other.sequence(), "crew", other.happenedAt(), fresh.recordedAt(), fresh.kind(), 1,
            fresh.body(), List.of());
        case 5 -> as(fresh, "of-tomorrow", fresh.body(), List.of());
        case 6 -> as(fresh, fresh.kind(), fresh.body().with("unheard-of", "1"), List.of());
        case 7 -> other;
        default -> fresh;
      });
    }
    return entries;
  }

  private static Entry entry(Kind kind, int place, int minute, Random random) {
    Body body = Body.EMPTY;
    for (Field field : kind.fields()) {
      if (field.isRequired() || random.nextBoolean()) body = body.with(field.name(), field.example(Reader.US_ENGLISH));
    }
    Moment at = MORNING.plusMinutes(minute);
    return new Entry("e" + place, "w1", "d1", place + 1, "crew", at, at, kind.name(), 1, body, List.of());
  }

  private static Entry correcting(Entry target, int place, Random random) {
    Kind kind = Stages.kind(target.kind()).orElse(Stages.kind("mud").orElseThrow());
    Entry fresh = entry(kind, place, random.nextInt(3000), random);
    return as(fresh, fresh.kind(), fresh.body(), List.of(target.id()));
  }

  private static Entry withdrawing(Entry target, int place) {
    Moment at = target.happenedAt();
    return new Entry(
        "e" + place, "w1", "d1", place + 1, "crew", at, at, Entry.WITHDRAWAL, 1, Body.EMPTY, List.of(target.id()));
  }

  private static Entry as(Entry entry, String kind, Body body, List<String> replaces) {
    return new Entry(
        entry.id(), entry.well(), entry.device(), entry.sequence(), entry.who(), entry.happenedAt(),
        entry.recordedAt(), kind, entry.schema(), body, replaces);
  }

  private static String page(Job job, String path) {
    Shelf shelf = new Shelf() {
      @Override
      public List<String> wells() {
        return List.of("w1");
      }

      @Override
      public Journal journal(String well) {
        return job.journal();
      }

      @Override
      public Job job(String well) {
        return job;
      }
    };
    Request request = new Request("GET", path, Map.of(), Map.of());
    return Desk.answer(request, shelf, NOW, new Pen("d1", 1, List.of("fresh"))).body();
  }
}
