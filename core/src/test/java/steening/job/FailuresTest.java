package steening.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import steening.reckoning.Reckoning;

/** What docs/failures.md promises is in the program. */
class FailuresTest {
  private static final Pattern QUOTED = Pattern.compile("`([a-z-]+(?:\\.[a-z-]+)?)`");
  private static final Pattern CODE = Pattern.compile("\"([a-z]+\\.[a-z-]+)\"");

  @Test
  void everyFindingAndReckoningNamedThereExists() throws IOException {
    Set<String> known = new TreeSet<>(Stages.reckonings().stream().map(Reckoning::name).toList());
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/steening/stage"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        known.addAll(found(CODE, Files.readString(file)));
      }
    }
    String rows = Files.readAllLines(Path.of("../docs/failures.md")).stream()
        .filter(line -> line.startsWith("|")).collect(Collectors.joining("\n"));
    Set<String> promised = found(QUOTED, rows);
    assertThat(promised).hasSizeGreaterThan(60);
    assertThat(known).containsAll(promised);
  }

  private static Set<String> found(Pattern pattern, String text) {
    List<String> all = pattern.matcher(text).results().map(match -> match.group(1)).toList();
    return new TreeSet<>(all);
  }
}
