package steening.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.office.FreshIds;
import steening.office.Store;
import steening.office.demo.DemoFirm;

/** Storing one entry after another, each on disk before the next, against bare JDBC with the same settings. */
final class InsertBench {
  private static final int ENTRIES = 3000;
  private static final double NANOS_A_SECOND = 1e9;

  private InsertBench() {}

  /** Both sides run twice in turn, and the second round counts. */
  static Row measure(Path folder) throws Exception {
    List<Entry> entries = entries();
    double ours = 0;
    double bare = 0;
    for (int round = 0; round < 2; round++) {
      ours = store(folder.resolve("store-" + round + ".db"), entries);
      bare = bare(folder.resolve("bare-" + round + ".db"), entries);
    }
    return Row.rate("durable entries, one by one", ours, "bare JDBC, WAL, FULL", bare);
  }

  private static List<Entry> entries() {
    Entry pattern = DemoFirm.well("everyday-well").get(0);
    FreshIds ids = new FreshIds();
    List<Entry> entries = new ArrayList<>();
    for (int i = 1; i <= ENTRIES; i++) {
      entries.add(new Entry(
          ids.next(), pattern.well(), "bench", i, pattern.who(), pattern.happenedAt(), pattern.recordedAt(),
          pattern.kind(), pattern.schema(), pattern.body(), List.of()));
    }
    return entries;
  }

  private static double store(Path file, List<Entry> entries) {
    try (Store store = Store.open(file, new FreshIds())) {
      long start = System.nanoTime();
      for (Entry entry : entries) store.append(List.of(entry));
      return ENTRIES / ((System.nanoTime() - start) / NANOS_A_SECOND);
    }
  }

  private static double bare(Path file, List<Entry> entries) throws Exception {
    Files.deleteIfExists(file);
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("pragma journal_mode=wal");
      statement.execute("pragma synchronous=full");
      statement.execute("create table entry (n integer primary key, id text unique not null, text text not null)");
      try (PreparedStatement insert = connection.prepareStatement("insert into entry (id, text) values (?, ?)")) {
        long start = System.nanoTime();
        for (Entry entry : entries) {
          insert.setString(1, entry.id());
          insert.setString(2, Codec.write(entry));
          insert.executeUpdate();
        }
        return ENTRIES / ((System.nanoTime() - start) / NANOS_A_SECOND);
      }
    }
  }
}
