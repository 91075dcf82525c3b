package steening.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static steening.office.Facts.fact;

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
import steening.journal.Ids;
import steening.journal.Journal;

class StoreTest {
  @TempDir Path folder;
  private final FreshIds ids = new FreshIds();

  @Test
  void keepsEntriesInTheOrderOfTheirArrival() {
    Entry first = fact(ids, "phone", 2, "½\" × ñ \uD83D\uDCA7");
    Entry second = fact(ids, "phone", 1, "");
    try (Store store = open()) {
      assertThat(store.append(List.of(first)).stored()).containsExactly(first);
      assertThat(store.append(List.of(second)).stored()).containsExactly(second);
      assertThat(store.all()).containsExactly(first, second);
    }
    try (Store store = open()) {
      assertThat(store.all()).containsExactly(first, second);
    }
  }

  @Test
  void storesWhatItKnowsOnlyOnce() {
    Entry entry = fact(ids, "phone", 1, "x");
    try (Store store = open()) {
      store.append(List.of(entry));
      assertThat(store.append(List.of(entry, entry)))
          .isEqualTo(new Receipt(List.of(), List.of(entry, entry), List.of()));
      assertThat(store.all()).containsExactly(entry);
    }
  }

  @Test
  void setsAsideAnotherContentUnderAKnownId() {
    Entry entry = fact(ids, "phone", 1, "x");
    Entry forged = fact(entry.id(), "phone", 1, "y");
    try (Store store = open()) {
      store.append(List.of(entry));
      assertThat(store.append(List.of(forged)).clashing()).containsExactly(forged);
      store.append(List.of(forged));
    }
    try (Store store = open()) {
      assertThat(store.all()).containsExactly(entry);
      assertThat(store.quarantined()).containsExactly(forged);
      Journal journal = new OfficeShelf(store).journal("well-1");
      assertThat(journal).extracting(Journal::entries, Journal::clashes)
          .isEqualTo(List.of(Journal.of(List.of(forged, entry)).entries(), List.of(forged)));
    }
  }

  @Test
  void aPortionIsStoredWholeOrNotAtAll() {
    List<Entry> portion = new ArrayList<>();
    for (int i = 1; i <= 20; i++) portion.add(fact(ids, "phone", i, "x"));
    portion.add(fact("not-a-uuid", "phone", 21, "x"));
    try (Store store = open()) {
      assertThatThrownBy(() -> store.append(portion)).isInstanceOf(RuntimeException.class);
      assertThat(store.all()).isEmpty();
      assertThat(store.append(portion.subList(0, 20)).stored()).hasSize(20);
    }
  }

  @Test
  void keepsTwoEntriesThatOneDeviceNumberedAlike() {
    try (Store store = open()) {
      store.append(List.of(fact(ids, "phone", 7, "x"), fact(ids, "phone", 7, "y")));
      assertThat(store.all()).hasSize(2);
    }
  }

  @Test
  void countsTheOfficesOwnEntriesAndKeepsItsDevice() {
    String device;
    try (Store store = open()) {
      device = store.device();
      assertThat(Ids.isUuid(device)).isTrue();
      assertThat(store.nextSequence()).isEqualTo(1);
      store.append(List.of(fact(ids, "phone", 40, ""), fact(ids, device, 1, ""), fact(ids, device, 2, "")));
      assertThat(store.nextSequence()).isEqualTo(3);
    }
    try (Store store = open()) {
      assertThat(store.device()).isEqualTo(device);
      assertThat(store.nextSequence()).isEqualTo(3);
    }
  }

  @Test
  void theDatabaseItselfRefusesToChangeOrDeleteAnEntry() throws SQLException {
    try (Store store = open()) {
      store.append(List.of(fact(ids, "phone", 1, "x")));
    }
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
        Statement statement = connection.createStatement()) {
      assertThatThrownBy(() -> statement.executeUpdate("update entry set text = ''"))
          .hasMessageContaining("never changed");
      assertThatThrownBy(() -> statement.executeUpdate("delete from entry")).hasMessageContaining("never deleted");
    }
  }

  @Test
  void theShelfShowsWhatIsOnDiskAndNothingElse() {
    try (Store store = open()) {
      store.append(List.of(fact(ids, "phone", 1, "before")));
      OfficeShelf shelf = new OfficeShelf(store);
      assertThat(shelf.wells()).containsExactly("well-1");
      assertThat(shelf.journal("well-1").size()).isEqualTo(1);
      assertThat(shelf.journal("nowhere").size()).isZero();
      shelf.append(List.of(fact(ids, "phone", 2, "after")));
      assertThat(shelf.journal("well-1").size()).isEqualTo(2);
      assertThatThrownBy(() -> shelf.append(List.of(fact("not-a-uuid", "phone", 3, "")))).isNotNull();
      assertThat(shelf.journal("well-1").size()).isEqualTo(2);
    }
  }

  private Store open() {
    return Store.open(file(), ids);
  }

  private Path file() {
    return folder.resolve("steening.db");
  }
}
