package steening.office;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import steening.journal.Codec;
import steening.journal.Entry;
import steening.journal.UnreadableEntry;

/**
 * The entries of the firm on disk, in one SQLite file. Entries are only ever added. One process at a time has the file;
 * within it, threads take turns.
 *
 * <p>What {@link #append} has returned from is on disk, as far as the disk tells the truth. What it throws for is not.
 */
public final class Store implements AutoCloseable {
  private final Path file;
  private final Connection connection;
  private final String device;
  private volatile long nextSequence;
  private StoreTrouble broken;

  private Store(Path file, Connection connection, String device) {
    this.file = file;
    this.connection = connection;
    this.device = device;
    String next = "select coalesce(max(sequence), 0) + 1 from entry where device = ?";
    this.nextSequence = query(next, device, row -> row.getLong(1)).get(0);
  }

  /**
   * Opens a database, and makes it where there is none.
   *
   * @param ids for the device id, which is made once and kept with the entries
   * @throws StoreTrouble when it cannot be relied on
   */
  public static Store open(Path file, FreshIds ids) {
    Path place = file.toAbsolutePath().normalize();
    Connection connection = new Opening(place, Migrations.ofThisProgram()).open();
    try {
      return new Store(place, connection, device(connection, ids.next()));
    } catch (SQLException e) {
      throw Engine.trouble(place, e);
    }
  }

  /** The id of this office among the devices of the firm. */
  public String device() {
    return device;
  }

  /** The number that the office's own next entry has. */
  public long nextSequence() {
    return nextSequence;
  }

  /**
   * Stores entries, all of them or none, and returns only when they are on disk.
   *
   * @throws StoreTrouble when nothing was stored
   */
  public synchronized Receipt append(List<Entry> entries) {
    if (broken != null) throw broken;
    List<Entry> stored = new ArrayList<>();
    List<Entry> known = new ArrayList<>();
    List<Entry> clashing = new ArrayList<>();
    try {
      Opening.run(connection, "begin immediate");
      for (Entry entry : entries) {
        String text = readableText(entry);
        if (insert(entry, text)) stored.add(entry);
        else if (text.equals(stored(entry.id()))) known.add(entry);
        else {
          quarantine(entry.id(), text);
          clashing.add(entry);
        }
      }
      Opening.run(connection, "commit");
    } catch (SQLException e) {
      rollBack();
      StoreTrouble trouble = Engine.trouble(file, e);
      if (!Engine.canGoOn(e)) broken = trouble;
      throw trouble;
    } catch (RuntimeException | Error e) {
      rollBack();
      throw e;
    }
    for (Entry entry : stored) {
      if (entry.device().equals(device)) nextSequence = Math.max(nextSequence, entry.sequence() + 1);
    }
    return new Receipt(stored, known, clashing);
  }

  /** All entries in the order in which they arrived. */
  public synchronized List<Entry> all() {
    return entries("select arrival, text from entry order by arrival");
  }

  /** Other contents that came under an id already taken, in the order in which they arrived. */
  public synchronized List<Entry> quarantined() {
    return entries("select arrival, text from quarantine order by arrival");
  }

  /** For tests: limits and faults that a real disk would have. */
  synchronized void pragma(String pragma) {
    try (Statement statement = connection.createStatement()) {
      statement.execute("pragma " + pragma);
    } catch (SQLException e) {
      throw Engine.trouble(file, e);
    }
  }

  @Override
  public synchronized void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw Engine.trouble(file, e);
    }
  }

  private List<Entry> entries(String query) {
    return query(query, null, row -> {
      try {
        return Codec.read(row.getString(2));
      } catch (UnreadableEntry e) {
        throw StoreTrouble.unreadable(file, row.getLong(1), e.phrase());
      }
    });
  }

  /** An entry that would not come back as it went in must not go in. */
  private static String readableText(Entry entry) {
    String text = Codec.write(entry);
    if (!Codec.read(text).equals(entry)) throw new IllegalArgumentException("the entry changes when written: " + text);
    return text;
  }

  private boolean insert(Entry entry, String text) throws SQLException {
    String sql =
        "insert into entry (id, device, sequence, well, text) values (?, ?, ?, ?, ?) on conflict (id) do nothing";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, entry.id());
      statement.setString(2, entry.device());
      statement.setLong(3, entry.sequence());
      statement.setString(4, entry.well());
      statement.setString(5, text);
      return statement.executeUpdate() == 1;
    }
  }

  private String stored(String id) {
    return query("select text from entry where id = ?", id, row -> row.getString(1)).get(0);
  }

  private void quarantine(String id, String text) throws SQLException {
    String sql = "insert into quarantine (id, text) values (?, ?) on conflict (id, text) do nothing";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, id);
      statement.setString(2, text);
      statement.executeUpdate();
    }
  }

  private void rollBack() {
    try {
      Opening.run(connection, "rollback");
    } catch (SQLException e) {
      // SQLite has rolled back by itself after some troubles; had it not, the next "begin" would say so
    }
  }

  private static String device(Connection connection, String fresh) throws SQLException {
    String sql = "insert into office (name, value) values ('device', ?) on conflict (name) do nothing";
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, fresh);
      statement.executeUpdate();
    }
    return Opening.text(connection, "select value from office where name = 'device'");
  }

  private interface Row<T> {
    T read(ResultSet row) throws SQLException;
  }

  private <T> List<T> query(String sql, String argument, Row<T> each) {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      if (argument != null) statement.setString(1, argument);
      List<T> found = new ArrayList<>();
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) found.add(each.read(row));
      }
      return found;
    } catch (SQLException e) {
      throw Engine.trouble(file, e);
    }
  }
}
