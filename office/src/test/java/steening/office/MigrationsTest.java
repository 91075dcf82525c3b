package steening.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;

class MigrationsTest {
  private static final String FIRST = "create table bag (n integer); insert into bag values (1);";
  private static final String SECOND = "alter table bag add column weight text; update bag set weight = '50 lb';";

  @Test
  void takesOnlyTheStepsThatAreLeft() throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      new Migrations(List.of(FIRST)).bringUpToDate(connection);
      assertThat(Migrations.form(connection)).isEqualTo(1);
      new Migrations(List.of(FIRST, SECOND)).bringUpToDate(connection);
      new Migrations(List.of(FIRST, SECOND)).bringUpToDate(connection);
      assertThat(Migrations.form(connection)).isEqualTo(2);
      assertThat(Opening.text(connection, "select count(*) || weight from bag")).isEqualTo("150 lb");
    }
  }

  @Test
  void aStepThatFailsLeavesNothingBehind() throws SQLException {
    String broken = "alter table bag add column weight text; insert into nowhere values (1);";
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      new Migrations(List.of(FIRST)).bringUpToDate(connection);
      assertThatThrownBy(() -> new Migrations(List.of(FIRST, broken)).bringUpToDate(connection))
          .isInstanceOf(SQLException.class);
      assertThat(Migrations.form(connection)).isEqualTo(1);
      new Migrations(List.of(FIRST, SECOND)).bringUpToDate(connection);
      assertThat(Migrations.form(connection)).isEqualTo(2);
    }
  }

  @Test
  void theProgramCarriesItsOwnSteps() throws SQLException {
    Migrations own = Migrations.ofThisProgram();
    assertThat(own.newest()).isGreaterThanOrEqualTo(1);
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      own.bringUpToDate(connection);
      assertThat(Opening.text(connection, "select count(*) from entry")).isEqualTo("0");
    }
  }
}
