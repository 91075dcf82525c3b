package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonObject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.office.demo.DemoFirm;

class ReadTest {
  @TempDir Path folder;

  @Test
  void tellsOfAWellAndItsFindings() throws IOException {
    Said said = Said.by("read", demo("bridged-pack"), "--json");
    assertThat(said.status()).as("a bridged pack stops the work").isEqualTo(1);
    JsonObject told = Json.parse(said.out()).asObject();
    assertThat(told.get("well").asObject().get("id").asString()).isEqualTo(DemoFirm.well("bridged-pack").get(0).well());
    JsonObject heaviest = told.get("findings").asArray().get(0).asObject();
    assertThat(heaviest.names()).contains("code", "weight", "stage", "measured", "expected", "text");
    assertThat(heaviest.get("weight").asString()).isEqualTo("stop");
    String code = heaviest.get("code").asString();
    assertThat(Said.by("read", demo("bridged-pack")).out()).contains("Stop: ", "[" + code + "]");
  }

  @Test
  void leavesWithZeroWhenNothingStops() throws IOException {
    Said said = Said.by("read", demo("first-call"), "--json");
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
  }

  @Test
  void tellsOfEachWellInALineOfItsOwn() throws IOException {
    Path file = folder.resolve("all.jsonl");
    Files.writeString(file, String.join("\n", DemoFirm.entries().stream().map(Codec::write).toList()));
    long wells = DemoFirm.entries().stream().map(Entry::well).distinct().count();
    assertThat(Said.by("read", file.toString(), "--json").out().lines().count()).isEqualTo(wells);
  }

  @Test
  void saysWhichLineCannotBeRead() throws IOException {
    Path file = folder.resolve("broken.jsonl");
    Files.writeString(file, Files.readString(Path.of(demo("first-call"))) + "\n{\"id\": 7}\n");
    Said said = Said.by("read", file.toString(), "--json");
    assertThat(said.status()).isEqualTo(3);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("broken.jsonl, line ", "\"well\" is missing");
  }

  @Test
  void refusesABodyByTheNameOfTheField() throws IOException {
    String sound = Files.readString(Path.of(demo("first-call")));
    Path file = folder.resolve("bodies.jsonl");
    Files.writeString(file, sound.replace("\"need\":\"irrigation\"", "\"people\":\"many\",\"cat\":\"grey\""));
    Said said = Said.by("read", file.toString(), "--json");
    assertThat(said.status()).isEqualTo(3);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("line 1: need: ", "line 1: people: ", "line 1: cat: ");
  }

  @Test
  void keepsAKindThatNobodyHereKnows() throws IOException {
    String sound = Files.readString(Path.of(demo("first-call")));
    Path file = folder.resolve("newer.jsonl");
    Files.writeString(file, sound.replace("\"kind\":\"enquiry\"", "\"kind\":\"drone-flight\""));
    Said said = Said.by("read", file.toString(), "--json");
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("journal.unread", "drone-flight");
  }

  @Test
  void tellsOfAnyPastMoment() throws IOException {
    String then = Said.by("read", demo("bridged-pack"), "--as-of", "2026-06-01T12:00-04:00", "--json").out();
    assertThat(Json.parse(then).asObject().get("well").asObject().get("stage").asString()).isEqualTo("casing");
    Said before = Said.by("read", demo("bridged-pack"), "--as-of", "2026-05-12T00:00Z");
    assertThat(before.status()).isZero();
    assertThat(before.out()).startsWith("Jonas Teal: Site; 1 entries");
    assertThat(Said.by("read", demo("bridged-pack"), "--as-of", "yesterday").status()).isEqualTo(2);
  }

  @Test
  void tellsAsText() throws IOException {
    String told = Said.by("read", demo("everyday-well")).out();
    assertThat(told)
        .contains("length of the string: 138.50 ft", "14 | 114.60 ft | 113.70 ft | 0.90 ft", "Pumping test");
  }

  @Test
  void saysThatAFileCannotBeRead() throws IOException {
    Said missing = Said.by("read", folder.resolve("nowhere.jsonl").toString());
    assertThat(missing.status()).isEqualTo(3);
    assertThat(missing.err()).contains("nowhere.jsonl", "cannot be read").hasLineCount(1);
    Path latin = Files.write(folder.resolve("latin.jsonl"), "# señal".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(Said.by("read", latin.toString()).err()).contains("UTF-8");
    assertThat(Said.by("read", folder.toString()).status()).isEqualTo(3);
  }

  private String demo(String name) throws IOException {
    Path file = folder.resolve(name + ".jsonl");
    Files.writeString(file, String.join("\n", DemoFirm.well(name).stream().map(Codec::write).toList()) + "\n");
    return file.toString();
  }
}
