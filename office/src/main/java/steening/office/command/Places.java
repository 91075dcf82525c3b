package steening.office.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Where databases are when nobody says otherwise: in the folder {@code data} beside the launcher. */
final class Places {
  static final String FIRM = "steening.db";
  static final String DEMO = "demo.db";

  private Places() {}

  /**
   * The named file, the firm's, or, where no firm has begun yet, the demo's.
   *
   * @throws WrongUsage where there is none of them
   */
  static Path existing(Optional<Path> named) {
    Path firm = database(named, FIRM);
    Path demo = named.isPresent() ? firm : database(named, DEMO);
    for (Path place : List.of(firm, demo)) if (Files.exists(place)) return place;
    throw new WrongUsage(
        "There is no database {0}; name one with --database.",
        "No existe la base de datos {0}; indique una con --database.",
        firm);
  }

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
