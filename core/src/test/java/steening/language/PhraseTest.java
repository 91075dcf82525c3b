package steening.language;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;

class PhraseTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void saysTheSameInBothLanguagesEachInItsUnits() {
    Phrase phrase = Phrase.of("Tape at {0}, {1} expected.", "Cinta a {0}; se esperaba {1}.",
        new Figure(Length.feet(115), Scale.DEPTH), new Figure(Length.feet(117), Scale.DEPTH));
    assertThat(phrase.shownTo(Reader.US_ENGLISH)).isEqualTo("Tape at 115.00 ft, 117.00 ft expected.");
    assertThat(phrase.shownTo(SPANISH)).isEqualTo("Cinta a 35.05 m; se esperaba 35.66 m.");
  }

  @Test
  void putsArgumentsInAnyOrderAndOften() {
    assertThat(Phrase.of("{1} {0} {1}", "x", "a", "b").shownTo(Reader.US_ENGLISH)).isEqualTo("b a b");
  }

  @Test
  void leavesOtherBracesAlone() {
    Phrase phrase = Phrase.of("{ {a} {9} {0", "x", "{0}");
    assertThat(phrase.shownTo(Reader.US_ENGLISH)).isEqualTo("{ {a} {9} {0");
  }

  @Test
  void writesNoPlaceholderFromAnArgument() {
    assertThat(Phrase.of("\"{0}\" {1}", "x", "{1}", "b").shownTo(Reader.US_ENGLISH)).isEqualTo("\"{1}\" b");
    assertThat(Phrase.same("{0}").shownTo(SPANISH)).isEqualTo("{0}");
  }

  @Test
  void aPhraseWithinAPhraseIsSaidInTheSameLanguage() {
    Phrase inner = Phrase.of("bag", "saco");
    assertThat(Phrase.of("one {0}", "un {0}", inner).shownTo(SPANISH)).isEqualTo("un saco");
  }
}
