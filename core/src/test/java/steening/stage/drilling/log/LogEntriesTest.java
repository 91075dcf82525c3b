package steening.stage.drilling.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import steening.field.Reading;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.well.GroundWord;
import steening.well.Material;

/** What drillers call the ground, against the table of drillers' terms (from memory, as its head says). */
class LogEntriesTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @ParameterizedTest
  @CsvSource({
    "blue clay, clay", "Gumbo, clay", "quicksand, fine sand", "dirty sand, silty sand", "pea gravel, gravel",
    "hardpan, till", "muck, peat", "soapstone, shale", "coquina, shells", "sand rock, sandstone", "lime rock, limestone",
    "loam, topsoil", "cemented gravel, conglomerate", "flint, chert", "lignite, coal", "made ground, fill"
  })
  void aDrillersWordIsAskedAboutAndNeverTakenAsItIs(String word, String likeliest) {
    Reading reading = LogEntries.MATERIAL.read(word, Reader.US_ENGLISH, true);
    assertThat(reading).isInstanceOf(Reading.Asked.class);
    assertThat(((Reading.Asked) reading).meanings()).first().isEqualTo(likeliest);
    assertThat(((Reading.Asked) reading).question().shownTo(Reader.US_ENGLISH)).contains(word);
  }

  @Test
  void inSpanishToo() {
    Reading.Asked asked = (Reading.Asked) LogEntries.MATERIAL.read("arena movediza", SPANISH, false);
    assertThat(asked.meanings()).containsExactly("arena fina", "arena limosa");
    assertThat(asked.question().shownTo(SPANISH)).contains("arena movediza").contains("agua que sube");
    for (String meaning : asked.meanings()) {
      assertThat(LogEntries.MATERIAL.read(meaning, SPANISH, false)).isInstanceOf(Reading.Taken.class);
    }
  }

  @Test
  void aStandardTermIsTakenAndNonsenseRefused() {
    assertThat(LogEntries.MATERIAL.read("fine sand", Reader.US_ENGLISH, false))
        .isEqualTo(new Reading.Taken("fine-sand"));
    assertThat(LogEntries.MATERIAL.read("moon dust", Reader.US_ENGLISH, false)).isInstanceOf(Reading.Refused.class);
  }

  /** A word that stood for two would be asked about by chance of order. */
  @Test
  void noWordStandsTwiceNorForAStandardTerm() {
    Set<String> seen = new HashSet<>();
    for (Material material : Material.values()) {
      seen.add(material.label().shownTo(Reader.US_ENGLISH));
      seen.add(material.label().shownTo(SPANISH));
    }
    for (GroundWord word : GroundWord.all()) {
      for (String one : word.words()) assertThat(seen.add(one)).as(one).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"10YR 5/4", "10YR 4/3", "7.5YR 5/6", "2.5Y 5/2", "5Y 5/1", "5YR 4/6", "10YR 2/1", "N 4/"})
  void coloursInNotation(String notation) {
    assertThat(LogEntries.COLOUR.read(notation, Reader.US_ENGLISH, false)).isEqualTo(new Reading.Taken(notation));
  }

  @ParameterizedTest
  @ValueSource(strings = {"10YR 5", "10YR/5", "11YR 5/4", "10YR 9/4", "10YR 5/", "N 4/2", "10YR 5/4 x"})
  void coloursThatOnlyLookLikeIt(String text) {
    boolean meant = text.indexOf('/') > 0;
    Reading reading = LogEntries.COLOUR.read(text, Reader.US_ENGLISH, false);
    assertThat(reading).isInstanceOf(meant ? Reading.Refused.class : Reading.Taken.class);
    if (reading instanceof Reading.Refused refused) {
      assertThat(refused.sentence().shownTo(Reader.US_ENGLISH)).contains(text).contains("10YR 5/4");
    }
  }

  @Test
  void looksAreReadInTheReadersLanguage() {
    Body body = Body.of("colour", "light grey", "moisture", "wet", "grain", "coarse", "description", "clean");
    assertThat(LogEntries.looks(body).shownTo(Reader.US_ENGLISH)).isEqualTo("light gray, wet, coarse, clean");
    assertThat(LogEntries.looks(body).shownTo(SPANISH)).isEqualTo("gris claro, mojado, grueso, clean");
    assertThat(LogEntries.looks(Body.of("colour", "10YR 5/4")).shownTo(SPANISH)).isEqualTo("10YR 5/4");
  }

  /** Numbers as in the list of FGDC-STD-013-2006 section 37; zero is for ground that it has no pattern for. */
  @Test
  void patternsAreThoseOfTheStandard() {
    List<Integer> standard = List.of(
        0, 601, 602, 607, 612, 616, 617, 619, 620, 623, 627, 649, 652, 657, 658, 681, 684, 718);
    for (Material material : Material.values()) assertThat(standard).as(material.code()).contains(material.pattern());
  }
}
