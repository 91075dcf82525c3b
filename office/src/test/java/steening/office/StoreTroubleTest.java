package steening.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static steening.office.Facts.fact;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Entry;

/** Whatever is wrong with the database is said in one sentence, and nothing is acknowledged that is not on disk. */
class StoreTroubleTest {
  @TempDir Path folder;
  private final FreshIds ids = new FreshIds();

  @Test
  void aMissingFolder() {
    assertThat(trouble(folder.resolve("nowhere").resolve("steening.db"))).contains("no folder", "--database");
  }

  @Test
  void aFolderInPlaceOfAFile() {
    assertThat(trouble(folder)).contains("is a folder");
  }

  @Test
  void aFolderThatCannotBeWrittenTo() {
    Path nobodys = Path.of("/proc/self");
    assumeTrue(Files.isDirectory(nobodys), "needs a folder that not even the administrator can write to");
    assertThat(trouble(nobodys.resolve("steening.db"))).contains("/proc", "cannot be written");
  }

  @Test
  void aFileThatCannotBeWrittenTo() throws IOException {
    filled(3);
    assertThat(file().toFile().setReadOnly()).isTrue();
    assumeFalse(Files.isWritable(file()), "the administrator may write everywhere");
    assertThat(trouble(file())).contains("steening.db", "cannot be written");
  }

  @Test
  void aDatabaseThatSuddenlyCannotBeWrittenTo() {
    try (Store store = Store.open(file(), ids)) {
      store.append(List.of(fact(ids, "phone", 1, "before")));
      store.pragma("query_only = on");
      assertThat(refused(store)).contains("cannot be written");
      store.pragma("query_only = off");
      assertThat(store.all()).hasSize(1);
    }
  }

  @Test
  void aSecondOffice() {
    try (Store first = Store.open(file(), ids)) {
      assertThat(trouble(file())).contains("is open in another program");
      assertThat(first.append(List.of(fact(ids, "phone", 1, ""))).stored()).hasSize(1);
    }
    Store.open(file(), ids).close();
  }

  @Test
  void aFileThatIsNoDatabase() throws IOException {
    Files.writeString(file(), "Dear customer, thank you for your letter of the third.".repeat(100));
    assertThat(trouble(file())).contains("damaged or no database", "keep the file aside");
    assertThat(Files.readString(file())).startsWith("Dear customer");
  }

  @Test
  void aDamagedPage() throws IOException {
    filled(500);
    try (RandomAccessFile bytes = new RandomAccessFile(file().toFile(), "rw")) {
      for (long at = 4096 * 4L; at < bytes.length(); at += 4096) {
        bytes.seek(at);
        bytes.write(new byte[512]);
      }
    }
    assertThat(trouble(file())).contains("damaged");
  }

  @Test
  void aFileCutShort() throws IOException {
    filled(500);
    try (RandomAccessFile bytes = new RandomAccessFile(file().toFile(), "rw")) {
      bytes.setLength(bytes.length() / 2);
    }
    assertThat(trouble(file())).contains("damaged");
  }

  @Test
  void anEntryThatCannotBeRead() throws SQLException {
    filled(3);
    foreign("insert into entry (id, device, sequence, well, text) values ('x', 'd', 1, 'w', '{\"id\": 7}')");
    try (Store store = Store.open(file(), ids)) {
      assertThat(catchThrowableOfType(StoreTrouble.class, store::all).getMessage())
          .contains("Entry number 4", "\"well\" is missing");
    }
  }

  @Test
  void anotherProgramsDatabase() throws SQLException {
    foreign("create table recipe (name text)");
    assertThat(trouble(file())).contains("another program");
  }

  @Test
  void aNewerForm() throws SQLException {
    filled(1);
    foreign("pragma user_version = 999");
    assertThat(trouble(file())).contains("newer Steening", "999");
  }

  @Test
  void aFullDisk() {
    List<Entry> acknowledged = new ArrayList<>();
    try (Store store = Store.open(file(), ids)) {
      store.pragma("max_page_count = 40");
      String sentence = null;
      for (int i = 1; sentence == null && i < 10_000; i++) {
        Entry entry = fact(ids, "phone", i, "x".repeat(300));
        StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> store.append(List.of(entry)));
        if (trouble == null) acknowledged.add(entry);
        else sentence = trouble.getMessage();
      }
      assertThat(sentence).contains("disk is full", "was not stored");
      assertThat(acknowledged).isNotEmpty();
      assertThat(store.all()).isEqualTo(acknowledged);
      // room was made
      store.pragma("max_page_count = 400");
      Entry later = fact(ids, "phone", 20_000, "");
      store.append(List.of(later));
      acknowledged.add(later);
    }
    try (Store store = Store.open(file(), ids)) {
      assertThat(store.all()).isEqualTo(acknowledged);
    }
  }

  private String trouble(Path place) {
    StoreTrouble trouble = catchThrowableOfType(StoreTrouble.class, () -> Store.open(place, ids).close());
    assertThat(trouble).isNotNull();
    assertThat(trouble.getMessage()).endsWith(".").doesNotContain("Exception").doesNotContain("\n");
    return trouble.getMessage();
  }

  private String refused(Store store) {
    Entry entry = fact(ids, "phone", 2, "refused");
    return catchThrowableOfType(StoreTrouble.class, () -> store.append(List.of(entry))).getMessage();
  }

  private void filled(int entries) {
    try (Store store = Store.open(file(), ids)) {
      List<Entry> some = new ArrayList<>();
      for (int i = 1; i <= entries; i++) some.add(fact(ids, "phone", i, "x".repeat(100)));
      store.append(some);
    }
  }

  private void foreign(String sql) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
        Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  private Path file() {
    return folder.resolve("steening.db");
  }
}
