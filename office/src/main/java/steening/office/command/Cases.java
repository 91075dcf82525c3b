package steening.office.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.cases.CaseBook;
import steening.cases.UnreadableCases;
import steening.cases.Verdict;
import steening.cases.VerdictsJson;
import steening.language.Phrase;
import steening.language.UnitSystem;

/** {@code cases}: holds the reckonings against published values in the files of a folder. */
@Command(name = "cases")
public final class Cases implements Callable<Integer> {
  @Option(names = "--json")
  private boolean json;

  @Parameters(paramLabel = "DIR", descriptionKey = "folder")
  private Path folder;

  private final Terminal terminal;

  Cases(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    CaseBook book = CaseBook.of(CaseBook.RESOURCES.stream().map(Cases::resource).toList());
    List<Path> files = files();
    if (files.isEmpty()) {
      throw new WrongUsage("There is no .json or .csv file in {0}.", "No hay archivos .json ni .csv en {0}.", folder);
    }
    List<Verdict> verdicts = new ArrayList<>();
    boolean unreadable = false;
    for (Path file : files) {
      try {
        verdicts.addAll(book.judge(name(file), Read.text(file)));
      } catch (UnreadableCases e) {
        unreadable = true;
        terminal.complain(Phrase.of("{0}: {1}", "{0}: {1}", name(file), e.phrase()));
      } catch (Unreadable e) {
        unreadable = true;
        terminal.complain(e.phrase());
      }
    }
    if (json) terminal.out().println(VerdictsJson.of(verdicts, terminal.reader(UnitSystem.US)));
    else CasesText.tell(verdicts, terminal.reader(UnitSystem.US), terminal.out());
    if (unreadable) return ExitStatus.UNREADABLE;
    boolean failed = verdicts.stream().anyMatch(v -> v.status() == Verdict.Status.FAILED);
    return failed ? ExitStatus.STOPPED : ExitStatus.FINE;
  }

  /** In a fixed order, so that two runs can be compared. */
  private List<Path> files() {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).filter(Cases::mayHoldCases).sorted().toList();
    } catch (IOException | UncheckedIOException e) {
      throw new Unreadable("{0} cannot be read; is it there?", "No se puede leer {0}; ¿existe?", folder);
    }
  }

  private static boolean mayHoldCases(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(".json") || name.endsWith(".csv");
  }

  private String name(Path file) {
    return folder.equals(file) ? file.getFileName().toString() : folder.relativize(file).toString().replace('\\', '/');
  }

  private static String resource(String name) {
    try (InputStream in = CaseBook.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
