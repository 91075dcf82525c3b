package steening.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import steening.journal.Entry;

/**
 * An office that is killed while it writes loses nothing it has acknowledged, and no portion is torn.
 *
 * <p>A killed process leaves what it wrote in the memory of the system, so this shows the order of storing and
 * acknowledging. What a power cut does to a disk it cannot show.
 */
class KillTest {
  private static final int KILLS = 20;
  private static final int LONGEST_LIFE_MILLIS = 200;

  @TempDir Path folder;

  @Test
  @Timeout(300)
  void nothingAcknowledgedIsLost() throws Exception {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    List<String> acknowledged = new ArrayList<>();
    for (int kill = 0; kill < KILLS; kill++) {
      List<String> now = acknowledgedUntilKilled(1 + random.nextInt(LONGEST_LIFE_MILLIS));
      assertThat(now).as("acknowledged before kill " + kill + ", seed " + seed).isNotEmpty();
      acknowledged.addAll(now);
    }
    assertThat(integrity()).isEqualTo("ok");
    try (Store store = Store.open(file(), new FreshIds())) {
      List<Entry> stored = store.all();
      Set<String> ids = stored.stream().map(Entry::id).collect(Collectors.toSet());
      assertThat(acknowledged).as("seed " + seed).hasSizeGreaterThan(KILLS).allMatch(ids::contains);
      assertThat(ids).hasSameSizeAs(stored);
      // of portions that were under way when the process died, each is there whole or not at all
      assertThat(stored.stream().collect(Collectors.groupingBy(Entry::body, Collectors.counting())).values())
          .isSubsetOf(1L, (long) RestlessOffice.PORTION);
    }
  }

  /** Lets an office live for a while after its first acknowledgement; answers all that it said before it was dead. */
  private List<String> acknowledgedUntilKilled(int millis) throws IOException, InterruptedException {
    Process office = new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx128m",
            "-cp", System.getProperty("java.class.path"),
            RestlessOffice.class.getName(), file().toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
    try (BufferedReader said = office.inputReader(StandardCharsets.US_ASCII)) {
      List<String> ids = new ArrayList<>();
      String line = said.readLine();
      assertThat(line).as("what the office said first").startsWith(RestlessOffice.ACKNOWLEDGED);
      Thread killer = new Thread(() -> kill(office, millis));
      killer.start();
      for (; line != null; line = said.readLine()) {
        boolean whole = line.length() == RestlessOffice.ACKNOWLEDGED.length() + 36;
        if (whole) ids.add(line.substring(RestlessOffice.ACKNOWLEDGED.length()));
      }
      killer.join();
      // killed by us, not ended by itself: 128 + SIGKILL
      assertThat(office.waitFor()).isEqualTo(137);
      return ids;
    } finally {
      office.destroyForcibly();
    }
  }

  private static void kill(Process office, int millis) {
    try {
      TimeUnit.MILLISECONDS.sleep(millis);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    // by its handle: destroying the Process itself would close the stream we still read from
    office.toHandle().destroyForcibly();
  }

  private String integrity() throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file())) {
      return Opening.text(connection, "pragma integrity_check");
    }
  }

  private Path file() {
    return folder.resolve("steening.db");
  }
}
