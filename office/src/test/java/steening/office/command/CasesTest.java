package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.cases.CaseBook;
import steening.cases.Verdict;
import steening.language.Language;

/** The command, and what docs/case-format.md says of it. */
class CasesTest {
  private static final Path DOCUMENT = Path.of("..", "docs", "case-format.md");
  private static final Path PUBLISHED = Path.of("..", "core", "src", "test", "resources", "cases");

  @TempDir Path folder;

  @Test
  void theExampleOfTheDocumentPasses() throws IOException {
    write("example.json", block("json"));
    Said said = Said.by("cases", folder.toString(), "--json");
    assertThat(said.status()).isZero();
    JsonObject told = Json.parse(said.out()).asObject();
    assertThat(told.getInt("passed", 0)).isEqualTo(5);
    assertThat(told.getInt("failed", -1) + told.getInt("notCovered", -1)).isZero();
    Matcher documented = Pattern.compile("\\{\"passed\"[^`]*?]}").matcher(document());
    assertThat(documented.find()).isTrue();
    JsonObject first = told.get("cases").asArray().get(0).asObject();
    JsonObject shape = Json.parse(documented.group().replace(", …", "")).asObject();
    assertThat(told.names()).isEqualTo(shape.names());
    assertThat(first.names()).isEqualTo(shape.get("cases").asArray().get(0).asObject().names());
    assertThat(first.get("got")).hasToString("22.7796");
  }

  @Test
  void theTranslationOfTheDocumentWorks() throws IOException {
    String table = "hole_in,od_in,ft3_per_ft,remark\n8,4.5,0.2386,\n8,4.5,0.3,suspect\n";
    List<Verdict> verdicts = CaseBook.of(List.of(block("translation"))).judge("volumes.csv", table);
    assertThat(verdicts).extracting(Verdict::status)
        .containsExactly(Verdict.Status.PASSED, Verdict.Status.NOT_COVERED);
  }

  @Test
  void tellsTheTableToPeople() throws IOException {
    write("one.json", block("json"));
    Said english = Said.by("cases", folder.toString());
    assertThat(english.out()).contains("one.json", "annulus 4 in volume", "published 22.78, reckoned 22.7796 ft3")
        .endsWith("5 passed, 0 failed, 0 not covered\n");
    assertThat(Said.by(Language.SPANISH, "cases", folder.toString()).out())
        .endsWith("5 pasan, 0 fallan, 0 sin cubrir\n");
  }

  @Test
  void leavesWithOneWhenSomethingFails() throws IOException {
    write("wrong.json", block("json").replace("22.78", "23.78"));
    Said said = Said.by("cases", folder.toString());
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.out()).contains("published 23.78, reckoned 22.7796 ft3: it is outside the tolerance of 0.1 %");
  }

  @Test
  void leavesWithThreeWhenAFileCannotBeReadAndReadsTheOthers() throws IOException {
    write("broken.json", "{\"id\": ");
    write("sub/good.json", block("json"));
    Said said = Said.by("cases", folder.toString(), "--json");
    assertThat(said.status()).isEqualTo(3);
    assertThat(said.err()).isEqualTo("broken.json: It is not JSON from line 1 on.\n");
    assertThat(Json.parse(said.out()).asObject().getInt("passed", 0)).isEqualTo(5);
    assertThat(said.out()).contains("\"file\":\"sub/good.json\"");
  }

  @Test
  void leavesWithTwoWhenItIsUsedWrongly() throws IOException {
    assertThat(Said.by("cases").status()).isEqualTo(2);
    assertThat(Said.by("cases").err()).contains("Missing: DIR");
    write("notes.txt", "none");
    assertThat(Said.by("cases", folder.toString()).status()).isEqualTo(2);
    Said nowhere = Said.by("cases", folder.resolve("nowhere").toString());
    assertThat(nowhere.status()).isEqualTo(3);
    assertThat(nowhere.err()).contains("nowhere cannot be read");
  }

  @Test
  void thePublishedCasesPass() {
    Said said = Said.by("cases", PUBLISHED.toString(), "--json");
    assertThat(said.err()).isEmpty();
    assertThat(said.status()).isZero();
    assertThat(Json.parse(said.out()).asObject().getInt("passed", 0)).isGreaterThan(900);
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private static String block(String language) throws IOException {
    String fence = "```" + language + "\n";
    String rest = document().substring(document().indexOf(fence) + fence.length());
    return rest.substring(0, rest.indexOf("```"));
  }

  private static String document() throws IOException {
    return Files.readString(DOCUMENT);
  }
}
