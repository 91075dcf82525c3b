package steening.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Equal sets of entries give equal journals, in whatever order, portions and repetitions they arrive. */
class JournalOrderTest {
  private static final int SEEDS = 500;
  private static final int ARRIVALS = 4;
  private static final String[] KINDS = {"joint-run", "note", "unheard-of", Entry.WITHDRAWAL};

  private int rivals;
  private int waiting;
  private int clashes;
  private int correctedCorrections;
  private int equalTimes;

  @Test
  void theOrderOfArrivalDoesNotMatter() {
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      List<Entry> set = randomSet(random);
      Journal expected = Journal.of(set);
      for (int arrival = 0; arrival < ARRIVALS; arrival++) {
        Journal journal = arrive(set, random);
        String named = "seed " + seed + ", arrival " + arrival;
        assertThat(journal.entries()).as(named).isEqualTo(expected.entries());
        assertThat(journal.facts()).as(named).isEqualTo(expected.facts());
        assertThat(journal.waiting()).as(named).isEqualTo(expected.waiting());
        assertThat(journal.rivals()).as(named).isEqualTo(expected.rivals());
        assertThat(journal.clashes()).as(named).isEqualTo(expected.clashes());
      }
      nothingIsLost(expected, set, "seed " + seed);
      count(expected);
    }
    assertThat(List.of(rivals, waiting, clashes, correctedCorrections, equalTimes))
        .as("rivals, waiting, clashes, corrected corrections, equal times met").allMatch(met -> met > 100);
  }

  /** Whatever is no fact was taken back, replaced, or is shown among rivals or clashes. */
  private static void nothingIsLost(Journal journal, List<Entry> set, String named) {
    for (Entry entry : set) {
      boolean seen =
          journal.facts().contains(entry)
              || entry.isWithdrawal()
              || !journal.replacementsOf(entry).isEmpty()
              || journal.rivals().stream().anyMatch(line -> line.contains(entry))
              || journal.clashes().contains(entry);
      assertThat(seen).as(named + ", " + Codec.write(entry)).isTrue();
    }
  }

  private static Journal arrive(List<Entry> set, Random random) {
    List<Entry> stream = new ArrayList<>(set);
    for (Entry entry : set) if (random.nextInt(3) == 0) stream.add(entry);
    Collections.shuffle(stream, random);
    Journal journal = Journal.EMPTY;
    int from = 0;
    while (from < stream.size()) {
      int to = Math.min(stream.size(), from + 1 + random.nextInt(6));
      // by way of the text, as between phone and office
      journal = journal.with(stream.subList(from, to).stream().map(Codec::write).map(Codec::read).toList());
      from = to;
    }
    return journal;
  }

  private static List<Entry> randomSet(Random random) {
    List<Entry> set = new ArrayList<>();
    int size = 1 + random.nextInt(25);
    for (int i = 0; i < size; i++) {
      boolean sameId = !set.isEmpty() && random.nextInt(12) == 0;
      String id = sameId ? any(set, random).id() : id(random);
      List<String> replaces = new ArrayList<>();
      while (random.nextInt(5) < 2) {
        replaces.add(set.isEmpty() || random.nextInt(6) == 0 ? id(random) : any(set, random).id());
      }
      set.add(
          new Entry(
              id,
              "w",
              "device-" + random.nextInt(3),
              1 + random.nextInt(9),
              random.nextBoolean() ? "Ana" : "",
              moment(random),
              moment(random),
              KINDS[random.nextInt(KINDS.length)],
              1 + random.nextInt(2),
              Body.of("value", Integer.toString(random.nextInt(5))),
              replaces));
    }
    return set;
  }

  private void count(Journal journal) {
    rivals += journal.rivals().size();
    waiting += journal.waiting().size();
    clashes += journal.clashes().size();
    for (Entry entry : journal.entries()) {
      for (String target : entry.replaces()) {
        if (journal.entry(target) != null && !journal.entry(target).replaces().isEmpty()) correctedCorrections++;
      }
    }
    for (int i = 1; i < journal.size(); i++) {
      if (journal.entries().get(i).happenedAt().equals(journal.entries().get(i - 1).happenedAt())) equalTimes++;
    }
  }

  private static Entry any(List<Entry> set, Random random) {
    return set.get(random.nextInt(set.size()));
  }

  /** Few different minutes, so that many are equal. */
  private static Moment moment(Random random) {
    return new Moment(random.nextInt(6) * 60_000L, random.nextBoolean() ? 0 : -300);
  }

  private static String id(Random random) {
    String digits = Long.toHexString(random.nextLong() | Long.MIN_VALUE);
    return "0197a3c0-0000-7000-" + digits.substring(0, 4) + "-" + digits.substring(4);
  }
}
