package steening.office;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;

/** Opens a database so that it can be relied on, or says why not. */
final class Opening {
  /** Below it, a rare race between writing and checkpointing could damage a file in WAL mode. */
  private static final int[] OLDEST_SAFE_ENGINE = {3, 51, 3};
  /** "STNG": marks the file as ours. */
  private static final int APPLICATION_ID = 0x53544e47;
  /** The lock of a process that was just killed is gone within this time. */
  private static final int WAIT_FOR_LOCK_MILLIS = 500;

  private final Path file;
  private final Migrations migrations;

  Opening(Path file, Migrations migrations) {
    this.file = file;
    this.migrations = migrations;
  }

  Connection open() {
    lookAtThePlace();
    Connection connection = null;
    try {
      connection = connect();
      checkEngine(text(connection, "select sqlite_version()"));
      checkOwner(connection);
      setUp(connection);
      checkHealth(connection);
      migrations.bringUpToDate(connection);
      return connection;
    } catch (SQLException e) {
      close(connection);
      throw Engine.trouble(file, e);
    } catch (RuntimeException e) {
      close(connection);
      throw e;
    }
  }

  private void lookAtThePlace() {
    Path folder = file.getParent();
    if (!Files.isDirectory(folder)) throw StoreTrouble.folderMissing(folder);
    if (Files.isDirectory(file)) throw StoreTrouble.notAFile(file);
    if (Files.exists(file) && !Files.isWritable(file)) throw StoreTrouble.notWritable(file, null);
    // SQLite writes its log beside the database
    if (!Files.isWritable(folder)) throw StoreTrouble.notWritable(folder, null);
  }

  private Connection connect() throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(WAIT_FOR_LOCK_MILLIS);
    return config.createConnection("jdbc:sqlite:" + file);
  }

  private static void checkEngine(String version) {
    String[] parts = version.split("\\.");
    for (int i = 0; i < OLDEST_SAFE_ENGINE.length; i++) {
      int part = i < parts.length ? Integer.parseInt(parts[i]) : 0;
      if (part > OLDEST_SAFE_ENGINE[i]) return;
      if (part < OLDEST_SAFE_ENGINE[i]) throw StoreTrouble.engineTooOld(version);
    }
  }

  /** An empty file becomes ours; any other has to be ours already. Reads only, so that nothing foreign is touched. */
  private void checkOwner(Connection connection) throws SQLException {
    // before the first reading, so that the lock is taken with it, for as long as we run
    run(connection, "pragma locking_mode = exclusive");
    boolean empty = text(connection, "select count(*) from sqlite_schema").equals("0");
    if (!empty && !isOurs(connection)) throw StoreTrouble.someoneElses(file);
    int form = Migrations.form(connection);
    if (form > migrations.newest()) throw StoreTrouble.newer(file, form);
  }

  private void setUp(Connection connection) throws SQLException {
    String journal = text(connection, "pragma journal_mode = wal");
    run(connection, "pragma synchronous = full");
    run(connection, "pragma foreign_keys = on");
    String claim = isOurs(connection) ? "" : "pragma application_id = " + APPLICATION_ID + ";";
    // takes the lock even where nothing will be written, so that a second office is refused at once
    run(connection, "begin exclusive;" + claim + "commit;");
    String synchronous = text(connection, "pragma synchronous");
    if (!journal.equals("wal") || !synchronous.equals("2")) {
      throw new IllegalStateException("the database is not safe: journal " + journal + ", synchronous " + synchronous);
    }
  }

  private static boolean isOurs(Connection connection) throws SQLException {
    return text(connection, "pragma application_id").equals(String.valueOf(APPLICATION_ID));
  }

  private void checkHealth(Connection connection) throws SQLException {
    String health = text(connection, "pragma quick_check(1)");
    if (health.equals("ok")) return;
    String lastLine = health.substring(health.lastIndexOf('\n') + 1);
    throw StoreTrouble.damaged(file, lastLine, null);
  }

  static String text(Connection connection, String query) throws SQLException {
    try (Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(query)) {
      return row.next() ? row.getString(1) : "";
    }
  }

  static void run(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  private static void close(Connection connection) {
    try {
      if (connection != null) connection.close();
    } catch (SQLException alreadyInTrouble) {
      // the first trouble is the one to tell of
    }
  }
}
