package steening.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;

/** Whether a phrase says something in English and something of its own in Spanish. */
public final class BothLanguages {
  /** Words that are the same in both; {@code {0}} is {@link Phrase#same}. */
  private static final Set<String> SHARED = Set.of("{0}", "Plan", "material", "motor", "no", "till");

  private BothLanguages() {}

  public static void assertSpokenIn(Phrase phrase) {
    assertThat(phrase.english()).isNotBlank();
    assertThat(phrase.spanish()).isNotBlank();
    boolean shared = SHARED.contains(phrase.english());
    if (!shared) assertThat(phrase.spanish()).isNotEqualTo(phrase.english());
  }
}
