package steening.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Letters name entries; an entry with a later letter was written later. */
class JournalTest {
  @Test
  void aCorrectionTakesThePlaceOfWhatItNames() {
    Journal journal = Journal.of(List.of(fact('a'), correction('b', 'a'), correction('c', 'b'), fact('d')));
    assertThat(letters(journal.facts())).isEqualTo("cd");
    assertThat(journal.replacementsOf(fact('a'))).containsExactly(correction('b', 'a'));
    assertThat(journal.size()).isEqualTo(4);
  }

  @Test
  void aWithdrawalLeavesNothingInPlace() {
    assertThat(letters(Journal.of(List.of(fact('a'), withdrawal('b', 'a'))).facts())).isEmpty();
  }

  @Test
  void aCorrectionBeatsAWithdrawalThatDoesNotKnowOfIt() {
    Journal journal = Journal.of(List.of(fact('a'), correction('b', 'a'), withdrawal('c', 'a')));
    assertThat(letters(journal.facts())).isEqualTo("b");
  }

  @Test
  void ofRivalsTheLastWrittenHoldsAndBothAreShown() {
    Journal journal = Journal.of(List.of(fact('a'), correction('b', 'a'), correction('c', 'a')));
    assertThat(letters(journal.facts())).isEqualTo("c");
    assertThat(journal.rivals()).extracting(JournalTest::letters).containsExactly("bc");
  }

  @Test
  void aCorrectionOfSomethingNotYetHereWaitsAndHolds() {
    Journal journal = Journal.of(List.of(correction('b', 'a')));
    assertThat(letters(journal.waiting())).isEqualTo("b");
    assertThat(letters(journal.facts())).isEqualTo("b");
    assertThat(journal.with(List.of(fact('a'))).waiting()).isEmpty();
  }

  @Test
  void aForgedCircleTakesNothingAway() {
    assertThat(letters(Journal.of(List.of(correction('a', 'b'), correction('b', 'a'))).entries())).isEqualTo("ab");
    assertThat(letters(Journal.of(List.of(correction('a', 'a'))).facts())).isEqualTo("a");
    Journal threeInACircle = Journal.of(List.of(correction('a', 'c'), correction('b', 'a'), correction('c', 'b')));
    assertThat(threeInACircle.facts()).isNotEmpty();
    assertThat(letters(threeInACircle.with(List.of(correction('d', 'b'))).facts())).contains("d").doesNotContain("b");
  }

  @Test
  void twoContentsUnderOneIdAreBothKeptAndTheChoiceIsTheSameEitherWay() {
    Entry one = entry('a', "note", "1");
    Entry other = entry('a', "note", "2");
    Journal journal = Journal.of(List.of(one, other));
    assertThat(journal.entries()).containsExactly(one);
    assertThat(journal.clashes()).containsExactly(other);
    assertThat(Journal.of(List.of(other, one, other)).clashes()).containsExactly(other);
    assertThat(Journal.of(List.of(other, one)).entry(one.id())).isEqualTo(one);
  }

  @Test
  void theSameEntryTwiceIsNoClash() {
    assertThat(Journal.of(List.of(fact('a'), fact('a'))).clashes()).isEmpty();
  }

  @Test
  void looksBackToWhatHappenedAndToWhatWasKnown() {
    Entry late = new Entry(
        id('z'), "w", "d", 26, "", moment(1), moment(20), "note", 1, Body.EMPTY, List.of());
    Journal journal = Journal.of(List.of(fact('a'), fact('j'), late));
    assertThat(letters(journal.asOf(moment(5)).entries())).isEqualTo("az");
    assertThat(letters(journal.asKnownAt(moment(12)).entries())).isEqualTo("aj");
  }

  static Entry fact(char letter) {
    return entry(letter, "note", "");
  }

  static Entry correction(char letter, char target) {
    return entry(letter, "note", "", target);
  }

  static Entry withdrawal(char letter, char target) {
    return entry(letter, Entry.WITHDRAWAL, "", target);
  }

  private static Entry entry(char letter, String kind, String text, char... targets) {
    int number = letter - 'a' + 1;
    List<String> replaces = new String(targets).chars().mapToObj(t -> id((char) t)).toList();
    return new Entry(
        id(letter), "w", "d", number, "", moment(number), moment(number), kind, 1, Body.of("text", text), replaces);
  }

  private static Moment moment(int number) {
    return new Moment(number * 60_000L, 0);
  }

  private static String id(char letter) {
    return "00000000-0000-7000-8000-0000000000" + Integer.toHexString(letter);
  }

  static String letters(List<Entry> entries) {
    StringBuilder letters = new StringBuilder();
    for (Entry entry : entries) letters.append((char) Integer.parseInt(entry.id().substring(34), 16));
    return letters.toString();
  }
}
