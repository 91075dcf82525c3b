package steening.office;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import steening.office.command.CommandLineProgram;

/** Where the program starts. */
public final class Steening {
  private Steening() {}

  public static void main(String[] arguments) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int status = CommandLineProgram.run(arguments, out, err);
    out.flush();
    err.flush();
    System.exit(status);
  }

  /** Whatever the machine's own encoding: without it a machine with no language set writes ft? for ft³. */
  private static PrintStream utf8(FileDescriptor where) {
    return new PrintStream(new FileOutputStream(where), true, StandardCharsets.UTF_8);
  }
}
