package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.office.FreshIds;
import steening.office.Store;
import steening.office.demo.DemoFirm;

class ReportTest {
  @TempDir Path folder;

  @BeforeEach
  void fill() {
    try (Store store = Store.open(Path.of(database()), new FreshIds())) {
      store.append(DemoFirm.entries());
    }
  }

  @Test
  void printsAWellByItsIdOrName() throws IOException {
    Path out = folder.resolve("report.pdf");
    String id = DemoFirm.well("everyday-well").get(0).well();
    assertThat(Said.by("report", id, "--database", database(), "--out", out.toString())).isEqualTo(new Said(0, "", ""));
    assertThat(Files.readAllBytes(out)).startsWith('%', 'P', 'D', 'F').hasSizeGreaterThan(5_000);
    Said byName = Said.by("report", "orla finch", "--database", database(), "--out", out.toString(), "--paper", "a4");
    assertThat(byName.status()).isZero();
  }

  @Test
  void saysWhatIsNotThere() {
    String out = folder.resolve("report.pdf").toString();
    Said nobody = Said.by("report", "nobody", "--database", database(), "--out", out);
    assertThat(nobody.err()).contains("no well \"nobody\"");
    String nowhere = folder.resolve("nowhere.db").toString();
    Said said = Said.by("report", "nobody", "--database", nowhere, "--out", out);
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("no database");
    assertThat(Path.of(nowhere)).doesNotExist();
    String id = DemoFirm.entries().get(0).well();
    String unwritable = folder.resolve("no/where.pdf").toString();
    Said unwritten = Said.by("report", id, "--database", database(), "--out", unwritable);
    assertThat(unwritten.err()).contains("cannot be written");
  }

  private String database() {
    return folder.resolve("steening.db").toString();
  }
}
