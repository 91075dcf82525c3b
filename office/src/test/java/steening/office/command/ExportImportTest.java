package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Codec;
import steening.office.demo.DemoFirm;

class ExportImportTest {
  @TempDir private Path folder;

  @Test
  void whatWentInComesOutWordForWord() throws IOException {
    String journal = journal("bridged-pack") + journal("everyday-well");
    Path file = Files.writeString(folder.resolve("two.jsonl"), journal);
    Said in = Said.by("import", file.toString(), "--database", database());
    assertThat(in.status()).isZero();
    assertThat(in.out()).startsWith("135 entries stored, 0 were there already");
    Said out = Said.by("export", "--database", database());
    assertThat(out.out().lines()).containsExactlyInAnyOrderElementsOf(journal.lines().toList());
    assertThat(Said.by("export", "Ferry", "--database", database()).out()).isEqualTo(journal("bridged-pack"));
    assertThat(Said.by("import", file.toString(), "--database", database()).out())
        .as("twice is once").startsWith("0 entries stored, 135 were there already");
  }

  @Test
  void ofABrokenFileNothingIsStored() throws IOException {
    Path file = Files.writeString(folder.resolve("broken.jsonl"), journal("bridged-pack") + "{\"id\":\n");
    Said in = Said.by("import", file.toString(), "--database", database());
    assertThat(in.status()).isEqualTo(3);
    assertThat(in.err()).contains("broken.jsonl, line 28: ");
    assertThat(Files.exists(Path.of(database()))).isFalse();
  }

  @Test
  void aStrangeWellIsNotThere() throws IOException {
    Path file = Files.writeString(folder.resolve("one.jsonl"), journal("first-call"));
    Said.by("import", file.toString(), "--database", database());
    assertThat(Said.by("export", "Nobody", "--database", database()).status()).isEqualTo(2);
  }

  private String database() {
    return folder.resolve("firm.db").toString();
  }

  private static String journal(String well) {
    StringBuilder lines = new StringBuilder();
    DemoFirm.well(well).forEach(entry -> lines.append(Codec.write(entry)).append('\n'));
    return lines.toString();
  }
}
