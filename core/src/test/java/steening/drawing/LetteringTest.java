package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LetteringTest {
  @Test
  void breaksBetweenWords() {
    List<String> lines = Lettering.wrap("  sand and   gravel, clean ", 60);
    assertThat(String.join(" ", lines)).isEqualTo("sand and gravel, clean");
    assertThat(lines).hasSizeGreaterThan(1)
        .allSatisfy(line -> assertThat(Lettering.width(line)).isLessThanOrEqualTo(60));
  }

  @Test
  void cutsAWordThatIsTooLongAndShowsIt() {
    assertThat(Lettering.wrap("Donaudampfschifffahrtsgesellschaft", 60)).singleElement().satisfies(line -> {
      assertThat(line).startsWith("Donau").endsWith("…");
      assertThat(Lettering.width(line)).isLessThanOrEqualTo(60);
    });
    String drops = "\uD83D\uDCA7".repeat(20);
    assertThat(Lettering.cut(drops, 50)).doesNotContain("\uD83D…").endsWith("…");
  }

  @Test
  void hasALineForNothing() {
    assertThat(Lettering.wrap("", 60)).containsExactly("");
  }

  /** Widths of "0" and "m" in DejaVu Sans: 1303 and 1995 of 2048 units (read from the font). */
  @Test
  void knowsTheWidthOfLetters() {
    assertThat(Lettering.width("0")).isEqualTo(0.636 * 11);
    assertThat(Lettering.width("m")).isEqualTo(0.974 * 11);
    assertThat(Lettering.width("~")).isEqualTo(0.838 * 11);
  }
}
