package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.JournalFile;

/** What docs/journal-format.md says is so. */
class JournalFormatTest {
  private static final Path DOCUMENT = Path.of("..", "docs", "journal-format.md");

  @TempDir Path folder;

  @Test
  void theExampleIsReadAndUnderstoodWhole() throws IOException {
    JournalFile file = JournalFile.read(example());
    assertThat(file.faults()).isEmpty();
    assertThat(file.entries()).hasSize(6);
    Job job = Job.of("lot-7", Journal.of(file.entries()));
    assertThat(job.unread()).isEmpty();
    assertThat(job.journal().facts()).extracting(Entry::kind).containsExactly("enquiry", "log", "log");
    assertThat(job.journal().facts().get(2).body().text("to")).contains("38 ft");
    assertThat(Said.by("read", written(example())).out()).contains("A. Ejemplo", "6 entries");
  }

  @Test
  void theFaultIsToldAsTheDocumentTellsIt() throws IOException {
    String broken = example().replace("\"sequence\": 2,", "\"sequence\": \"2\",");
    Said said = Said.by("read", written(broken));
    assertThat(said.status()).isEqualTo(3);
    String told = said.err().strip();
    assertThat(document()).contains("    " + told.substring(told.lastIndexOf("lot-7.jsonl")) + "\n");
  }

  @Test
  void theTableNamesTheFieldsInTheirOrder() throws IOException {
    List<String> told = Pattern.compile("^\\| `(\\w+)` \\|.*\\| `(.*)` \\|$", Pattern.MULTILINE).matcher(document())
        .results().map(row -> "\"" + row.group(1) + "\":" + row.group(2)).toList();
    // the examples of the table, put together, are an entry too
    Entry entry = Codec.read("{" + String.join(",", told) + "}");
    assertThat(Json.parse(Codec.write(entry)).asObject().names())
        .isEqualTo(told.stream().map(cell -> cell.substring(1, cell.indexOf('"', 1))).toList());
  }

  @Test
  void kindsListsEveryKindForPeopleAndPrograms() {
    String text = Said.by("kinds").out();
    assertThat(text).contains("enquiry  ", "caller=\"", "[phone=\"", "domestic | livestock");
    List<String> names = Stages.all().stream().flatMap(s -> s.kinds().stream()).map(k -> k.name()).toList();
    assertThat(Json.parse(Said.by("kinds", "--json").out()).asArray())
        .extracting(kind -> kind.asObject().get("kind").asString()).containsExactlyElementsOf(names);
  }

  private String written(String text) throws IOException {
    Path file = folder.resolve("lot-7.jsonl");
    Files.writeString(file, text);
    return file.toString();
  }

  private static String example() throws IOException {
    MatchResult block = Pattern.compile("```jsonl\n(.*?)```", Pattern.DOTALL).matcher(document()).results()
        .findFirst().orElseThrow();
    return block.group(1);
  }

  private static String document() throws IOException {
    return Files.readString(DOCUMENT);
  }
}
