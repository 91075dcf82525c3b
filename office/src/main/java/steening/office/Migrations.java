package steening.office;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * The forms a database has had, as steps: the first makes an empty file a database of form 1, the second makes form 1
 * form 2, and so on. A step that was ever released is never edited. The form of a file is its {@code user_version}.
 */
record Migrations(List<String> steps) {
  Migrations {
    steps = List.copyOf(steps);
  }

  /** The steps of this program, {@code schema/1.sql} and on. */
  static Migrations ofThisProgram() {
    List<String> steps = new ArrayList<>();
    String step = resource(1);
    while (step != null) {
      steps.add(step);
      step = resource(steps.size() + 1);
    }
    return new Migrations(steps);
  }

  int newest() {
    return steps.size();
  }

  static int form(Connection connection) throws SQLException {
    return Integer.parseInt(Opening.text(connection, "pragma user_version"));
  }

  /** Takes the remaining steps, each whole or not at all. */
  void bringUpToDate(Connection connection) throws SQLException {
    for (int form = form(connection); form < newest(); form++) {
      String step = "begin immediate;\n" + steps.get(form) + "\npragma user_version = " + (form + 1) + ";\ncommit;";
      try {
        Opening.run(connection, step);
      } catch (SQLException e) {
        rollBack(connection);
        throw e;
      }
    }
  }

  private static void rollBack(Connection connection) {
    try {
      Opening.run(connection, "rollback");
    } catch (SQLException nothingWasBegun) {
      // the first trouble is the one to tell of
    }
  }

  private static String resource(int step) {
    try (InputStream in = Migrations.class.getResourceAsStream("schema/" + step + ".sql")) {
      return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("schema/" + step + ".sql in the program itself cannot be read", e);
    }
  }
}
