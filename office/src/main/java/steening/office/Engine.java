package steening.office;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What SQLite complains of, in words a person can act on. */
final class Engine {
  private Engine() {}

  static StoreTrouble trouble(Path file, SQLException e) {
    return switch (code(e)) {
      case SQLITE_BUSY, SQLITE_LOCKED, SQLITE_PROTOCOL -> StoreTrouble.inUse(file, e);
      case SQLITE_READONLY, SQLITE_CANTOPEN, SQLITE_PERM, SQLITE_AUTH -> StoreTrouble.notWritable(file, e);
      case SQLITE_NOTADB, SQLITE_CORRUPT, SQLITE_FORMAT -> StoreTrouble.damaged(file, code(e).message, e);
      case SQLITE_FULL -> StoreTrouble.full(file, e);
      default -> StoreTrouble.diskError(file, e.getMessage(), e);
    };
  }

  /** Whether after this the database can still be written to; a failed disk is not asked twice. */
  static boolean canGoOn(SQLException e) {
    return switch (code(e)) {
      case SQLITE_FULL, SQLITE_READONLY, SQLITE_BUSY -> true;
      default -> false;
    };
  }

  /** Without what SQLite says beyond the kind of trouble: SQLITE_IOERR_FSYNC is SQLITE_IOERR. */
  private static SQLiteErrorCode code(SQLException e) {
    if (!(e instanceof SQLiteException known)) return SQLiteErrorCode.UNKNOWN_ERROR;
    return SQLiteErrorCode.getErrorCode(known.getResultCode().code & 0xFF);
  }
}
