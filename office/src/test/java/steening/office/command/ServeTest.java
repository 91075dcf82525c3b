package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import steening.office.Steening;

class ServeTest {
  @TempDir Path folder;

  @Test
  @Timeout(180)
  void opensQuietlyKeepsOthersOutAndClosesInOrder() throws Exception {
    Process office = start("serve", "--port", "0", "--database", database());
    try (BufferedReader said = office.inputReader(StandardCharsets.UTF_8)) {
      String line = said.readLine();
      assertThat(line).matches("Steening is open at http://localhost:[0-9]+");
      try (InputStream page = URI.create(line.substring(line.indexOf("http"))).toURL().openStream()) {
        assertThat(new String(page.readAllBytes(), StandardCharsets.UTF_8)).contains("<!DOCTYPE html>");
      }
      Said second = Said.by("serve", "--port", "0", "--database", database());
      assertThat(second.status()).isEqualTo(1);
      assertThat(second.err()).contains("is open in another program").hasLineCount(1);
      office.toHandle().destroy();
      assertThat(said.readLine()).as("nothing more is said").isNull();
      // 128 + SIGTERM
      assertThat(office.waitFor()).isEqualTo(143);
      assertThat(office.errorReader(StandardCharsets.UTF_8).lines().toList()).isEmpty();
      assertThat(folder.resolve("steening.db-wal")).as("closed in order, the log is gone").doesNotExist();
    } finally {
      office.destroyForcibly();
    }
  }

  @Test
  @Timeout(180)
  void theWarmUpEndsByItselfAndLeavesNothing() throws Exception {
    Process office = start("warm-up");
    assertThat(office.waitFor()).isZero();
    assertThat(office.inputReader(StandardCharsets.UTF_8).lines().toList()).isEmpty();
    assertThat(office.errorReader(StandardCharsets.UTF_8).lines().toList()).isEmpty();
    try (var left = Files.list(folder)) {
      assertThat(left.toList()).isEmpty();
    }
  }

  @Test
  void aPortThatIsTakenIsSaid() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Said said = Said.by("serve", "--port", String.valueOf(taken.getLocalPort()), "--database", database());
      assertThat(said.status()).isEqualTo(1);
      assertThat(said.err()).contains("Port " + taken.getLocalPort(), "--port").hasLineCount(1);
      assertThat(said.out()).isEmpty();
    }
  }

  private Process start(String... arguments) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String[] command = {
      java, "-XX:TieredStopAtLevel=1", "-Duser.language=en", "-Djava.io.tmpdir=" + folder,
      "-cp", System.getProperty("java.class.path"), Steening.class.getName()
    };
    String[] whole = new String[command.length + arguments.length];
    System.arraycopy(command, 0, whole, 0, command.length);
    System.arraycopy(arguments, 0, whole, command.length, arguments.length);
    return new ProcessBuilder(whole).start();
  }

  private String database() {
    return folder.resolve("steening.db").toString();
  }
}
