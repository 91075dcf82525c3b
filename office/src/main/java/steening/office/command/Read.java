package steening.office.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import steening.finding.Weight;
import steening.job.Job;
import steening.job.Stages;
import steening.journal.Entry;
import steening.journal.Fault;
import steening.journal.Journal;
import steening.journal.JournalFile;
import steening.journal.Moment;
import steening.json.JobJson;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;

/** {@code read}: what a journal file makes of its wells, and what is found about them. Stores nothing. */
@Command(name = "read")
public final class Read implements Callable<Integer> {
  @Option(names = "--json")
  private boolean json;

  @Option(names = "--metric")
  private boolean metric;

  @Option(names = "--as-of", paramLabel = "TIME")
  private Optional<String> asOf;

  @Parameters(paramLabel = "FILE.jsonl", descriptionKey = "file")
  private Path file;

  private final Terminal terminal;

  Read(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    JournalFile read = JournalFile.read(text(file), Stages::faults);
    complain(file, read, terminal);
    if (!read.isSound()) return ExitStatus.UNREADABLE;
    Reader reader = terminal.reader(metric ? UnitSystem.METRIC : UnitSystem.US);
    boolean stop = false;
    for (Map.Entry<String, List<Entry>> well : byWell(read.entries()).entrySet()) {
      Journal whole = Journal.of(well.getValue());
      Job job = Job.of(well.getKey(), asOf.map(Read::moment).map(whole::asOf).orElse(whole));
      if (json) terminal.out().println(JobJson.of(job, reader));
      else WellText.tell(job, reader, terminal.out());
      stop |= job.findings().stream().anyMatch(finding -> finding.weight() == Weight.STOP);
    }
    return stop ? ExitStatus.STOPPED : ExitStatus.FINE;
  }

  private static Moment moment(String text) {
    try {
      return Moment.parse(text);
    } catch (IllegalArgumentException e) {
      throw new WrongUsage(
          "\"{0}\" is no time. Example: 2026-05-18T14:05-04:00.",
          "«{0}» no es una hora. Ejemplo: 2026-05-18T14:05-04:00.",
          text);
    }
  }

  private static Map<String, List<Entry>> byWell(List<Entry> entries) {
    Map<String, List<Entry>> byWell = new TreeMap<>();
    for (Entry entry : entries) byWell.computeIfAbsent(entry.well(), well -> new ArrayList<>()).add(entry);
    return byWell;
  }

  /** A sentence for each line that is wrong. */
  static void complain(Path file, JournalFile read, Terminal terminal) {
    for (Fault fault : read.faults()) {
      terminal.complain(
          Phrase.of("{0}, line {1}: {2}", "{0}, línea {1}: {2}", file, fault.lineNumber(), fault.phrase()));
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (CharacterCodingException e) {
      throw new Unreadable(
          "{0} is not text in UTF-8; save it as such.", "{0} no es texto en UTF-8; guárdelo así.", file);
    } catch (IOException e) {
      throw new Unreadable("{0} cannot be read; is it there?", "No se puede leer {0}; ¿existe?", file);
    }
  }
}
