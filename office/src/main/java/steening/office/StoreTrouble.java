package steening.office;

import java.nio.file.Path;
import steening.language.Phrase;
import steening.language.Reader;

/** Something about the database that a person has to see to: one sentence that says what, and what to do. */
public final class StoreTrouble extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Phrase phrase;

  private StoreTrouble(Throwable cause, String english, String spanish, Object... arguments) {
    this(cause, Phrase.of(english, spanish, arguments));
  }

  private StoreTrouble(Throwable cause, Phrase phrase) {
    super(phrase.shownTo(Reader.US_ENGLISH), cause);
    this.phrase = phrase;
  }

  public Phrase phrase() {
    return phrase;
  }

  static StoreTrouble folderMissing(Path folder) {
    return new StoreTrouble(
        null,
        "There is no folder {0}; make it, or name another place with --database.",
        "No existe la carpeta {0}; créela o indique otro lugar con --database.",
        folder);
  }

  static StoreTrouble notWritable(Path place, Throwable cause) {
    return new StoreTrouble(
        cause,
        "{0} cannot be written to; allow it, or name another place with --database.",
        "No se puede escribir en {0}; permítalo o indique otro lugar con --database.",
        place);
  }

  static StoreTrouble notAFile(Path place) {
    return new StoreTrouble(
        null,
        "{0} is a folder; name a file in it with --database, for example {0}/steening.db.",
        "{0} es una carpeta; indique un archivo con --database, por ejemplo {0}/steening.db.",
        place);
  }

  static StoreTrouble inUse(Path file, Throwable cause) {
    return new StoreTrouble(
        cause,
        "{0} is open in another program, probably a Steening that is running; use that one, or close it first.",
        "{0} está abierto en otro programa, quizá un Steening en marcha; use ese o ciérrelo primero.",
        file);
  }

  static StoreTrouble damaged(Path file, String what, Throwable cause) {
    return new StoreTrouble(
        cause,
        "{0} is damaged or no database ({1}); keep the file aside as it is, and put your last copy in its place.",
        "{0} está dañado o no es una base de datos ({1}); aparte el archivo tal como está y ponga su última copia.",
        file,
        what);
  }

  static StoreTrouble someoneElses(Path file) {
    return new StoreTrouble(
        null,
        "{0} is the database of another program; name another file with --database.",
        "{0} es la base de datos de otro programa; indique otro archivo con --database.",
        file);
  }

  static StoreTrouble newer(Path file, int version) {
    return new StoreTrouble(
        null,
        "{0} was written by a newer Steening (form {1}); start that one, nothing was changed.",
        "{0} fue escrito por un Steening más nuevo (forma {1}); use ese, no se cambió nada.",
        file,
        version);
  }

  static StoreTrouble engineTooOld(String version) {
    return new StoreTrouble(
        null,
        "This SQLite is version {0}, which can damage a database; Steening needs 3.51.3 or later, so build it again.",
        "Este SQLite es la versión {0}, que puede dañar una base de datos; se necesita 3.51.3 o posterior.",
        version);
  }

  static StoreTrouble full(Path file, Throwable cause) {
    return new StoreTrouble(
        cause,
        "The disk is full and this was not stored; make room where {0} is, then do it again.",
        "El disco está lleno y esto no se guardó; haga lugar donde está {0} y repita.",
        file);
  }

  static StoreTrouble diskError(Path file, String what, Throwable cause) {
    return new StoreTrouble(
        cause,
        "The disk under {0} failed ({1}) and this was not stored; stop Steening, look at the disk, start again.",
        "El disco de {0} falló ({1}) y esto no se guardó; cierre Steening, revise el disco e inicie de nuevo.",
        file,
        what);
  }

  static StoreTrouble unreadable(Path file, long arrival, Phrase why) {
    return new StoreTrouble(
        null,
        "Entry number {1} in {0} cannot be read: {2} Keep the file as it is, and put your last copy in its place.",
        "No se puede leer el registro número {1} de {0}: {2} Aparte el archivo tal como está y ponga su última copia.",
        file,
        arrival,
        why);
  }
}
