package steening.office.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where databases are when nobody says otherwise: in the folder {@code data} beside the launcher. */
final class Places {
  private Places() {}

  /** The named file as it is; else the usual one, whose folder is made. */
  static Path database(Optional<Path> named, String usual) {
    if (named.isPresent()) return named.get();
    // the launcher says where it is; without a launcher it is here
    Path folder = Path.of(System.getProperty("steening.home", "")).toAbsolutePath().resolve("data");
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new WrongUsage(
          "The folder {0} cannot be made; name a file with --database.",
          "No se puede crear la carpeta {0}; indique un archivo con --database.",
          folder);
    }
    return folder.resolve(usual);
  }
}
