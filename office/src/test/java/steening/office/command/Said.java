package steening.office.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import steening.language.Language;

/** What a command left with and said. */
record Said(int status, String out, String err) {
  static Said by(String... arguments) {
    return by(Language.ENGLISH, arguments);
  }

  static Said by(Language language, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal = new Terminal(language, stream(out), stream(err));
    int status = CommandLineProgram.line(terminal).execute(arguments);
    return new Said(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }
}
