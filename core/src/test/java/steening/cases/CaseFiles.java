package steening.cases;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The published cases that the tests bring along, and the book that reads them. */
public final class CaseFiles {
  private static final Path FOLDER = folder();

  private CaseFiles() {}

  /** Names below the folder of cases: {@code hydraulics/P15_unit_constants.json}. */
  public static List<String> names() {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files.filter(Files::isRegularFile)
          .map(f -> FOLDER.relativize(f).toString().replace('\\', '/'))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static String text(String name) {
    try {
      return Files.readString(FOLDER.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static CaseBook book() {
    return CaseBook.of(CaseBook.RESOURCES.stream().map(CaseFiles::resource).toList());
  }

  private static String resource(String name) {
    try (InputStream in = CaseBook.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder() {
    try {
      return Path.of(CaseFiles.class.getResource("/cases").toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
