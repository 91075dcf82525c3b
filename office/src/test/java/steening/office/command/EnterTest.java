package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Entry;
import steening.journal.Ids;
import steening.office.FreshIds;
import steening.office.OfficeShelf;
import steening.office.Store;

class EnterTest {
  @TempDir Path folder;

  @Test
  void storesOneEntryAndPrintsItsId() {
    Said said = enter("--kind", "enquiry", "--who", "Ana", "--happened", "2026-05-06T14:05:00-05:00",
        "caller=A. Ejemplo = B", "need=domestic", "people=4");
    assertThat(said.err()).contains("first entry of a well named w1");
    assertThat(said.status()).isZero();
    assertThat(stored()).hasSize(1);
    Entry entry = stored().get(0);
    assertThat(said.out().strip()).isEqualTo(entry.id()).matches(Ids::isUuid);
    assertThat(entry.who()).isEqualTo("Ana");
    assertThat(entry.happenedAt().toString()).isEqualTo("2026-05-06T14:05:00-05:00");
    assertThat(entry.body().values())
        .isEqualTo(Map.of("caller", "A. Ejemplo = B", "need", "domestic", "people", "4"));
    assertThat(entry.sequence()).isEqualTo(1);
  }

  @Test
  void correctsAndTakesBack() {
    String first = enquiry("A. Ejemplo");
    Said corrected = enter("--kind", "enquiry", "--replaces", first, "caller=B. Ejemplo", "need=domestic");
    assertThat(corrected.err()).isEmpty();
    assertThat(facts()).extracting(Entry::id).containsExactly(corrected.out().strip());
    String second = corrected.out().strip();
    assertThat(enter("--kind", "withdrawal", "--replaces", second, "remark=wrong well").status()).isZero();
    assertThat(facts()).isEmpty();
    assertThat(stored()).hasSize(3).extracting(Entry::sequence).containsExactly(1L, 2L, 3L);
  }

  @Test
  void takesTheClockOnTheWallWhenNoOffsetIsSaid() {
    enter("--kind", "enquiry", "--happened", "2026-05-06T14:05", "caller=A", "need=other");
    assertThat(stored().get(0).happenedAt().clock()).isEqualTo("14:05");
  }

  @Test
  void refusesWhatAPageWouldRefuseAndStoresNothing() {
    assertThat(refused("--kind", "enquiry", "caller=A", "need=castle")).contains("need", "castle", "domestic");
    assertThat(refused("--kind", "enquiry", "need=domestic")).contains("caller is missing");
    assertThat(refused("--kind", "enquiry", "caller=A", "need=domestic", "shoe=42")).contains("no \"shoe\"");
    assertThat(refused("--kind", "enquiry", "caller=A", "need=domestic", "people=300")).contains("sure=people");
    assertThat(refused("--kind", "moon", "x=1")).contains("moon", "enquiry");
    assertThat(refused("--kind", "withdrawal")).contains("--replaces");
    assertThat(refused("--kind", "enquiry", "caller=A", "need=other", "--replaces", "7")).contains("--replaces");
    assertThat(refused("--kind", "enquiry", "caller=A", "need=other", "--happened", "noon")).contains("not a time");
    assertThat(refused("--kind", "enquiry", "caller=A", "need=other", "--happened", "2999-01-01T00:00"))
        .contains("not come");
    assertThat(folder.resolve("steening.db")).doesNotExist();
    assertThat(enter("--kind", "enquiry", "caller=A", "need=domestic", "people=300", "sure=people").status()).isZero();
  }

  @Test
  void saysWhenTheOfficeIsOpenOrThePlaceIsWrong() {
    enquiry("A. Ejemplo");
    try (Store office = Store.open(database(), new FreshIds())) {
      Said said = enter("--kind", "enquiry", "caller=A", "need=other");
      assertThat(said.status()).isEqualTo(1);
      assertThat(said.err()).contains("is open in another program").hasLineCount(1);
      assertThat(office.all()).hasSize(1);
    }
    Said nowhere = Said.by("enter", "--database", folder.resolve("no/where.db").toString(), "--well", "w", "--kind",
        "enquiry", "caller=A", "need=other");
    assertThat(nowhere.status()).isEqualTo(1);
    assertThat(nowhere.err()).contains("no folder").hasLineCount(1);
  }

  private String enquiry(String caller) {
    return enter("--kind", "enquiry", "caller=" + caller, "need=domestic").out().strip();
  }

  private String refused(String... arguments) {
    Said said = enter(arguments);
    assertThat(said.status()).as(said.err()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    return said.err();
  }

  private Said enter(String... arguments) {
    String[] all = new String[arguments.length + 5];
    String[] first = {"enter", "--database", database().toString(), "--well", "w1"};
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(arguments, 0, all, first.length, arguments.length);
    return Said.by(all);
  }

  private List<Entry> stored() {
    try (Store store = Store.open(database(), new FreshIds())) {
      return store.all();
    }
  }

  private List<Entry> facts() {
    try (Store store = Store.open(database(), new FreshIds())) {
      return new OfficeShelf(store).journal("w1").facts();
    }
  }

  private Path database() {
    return folder.resolve("steening.db");
  }
}
