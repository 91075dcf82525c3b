package steening.office.command;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import steening.language.Phrase;
import steening.office.StoreTrouble;
import steening.office.web.PortTaken;

/** All commands, and what becomes of the ways in which they can end. */
@Command(
    name = "steening",
    subcommands = HelpCommand.class,
    mixinStandardHelpOptions = true,
    scope = ScopeType.INHERIT,
    versionProvider = Version.class,
    resourceBundle = "steening.office.command.Help")
public final class CommandLineProgram implements Runnable {
  @Spec private CommandSpec spec;

  private CommandLineProgram() {}

  /** Runs one command to its end and answers its {@link ExitStatus}. Never throws. */
  public static int run(String[] arguments, PrintStream out, PrintStream err) {
    return line(new Terminal(out, err)).execute(arguments);
  }

  static CommandLine line(Terminal terminal) {
    CommandLine line = new CommandLine(new CommandLineProgram());
    for (Object command : List.of(
        new Demo(terminal), new Serve(terminal), new Enter(terminal), new Kinds(terminal), new Read(terminal),
        new Export(terminal), new Import(terminal), new Reckon(terminal), new Report(terminal),
        new Cases(terminal), new WarmUp(terminal))) {
      line.addSubcommand(command);
    }
    line.getSubcommands().values().forEach(sub -> sub.setResourceBundle(line.getResourceBundle()));
    return line.setOut(new PrintWriter(terminal.out(), true))
        .setErr(new PrintWriter(terminal.err(), true))
        .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
        .setUsageHelpAutoWidth(true)
        .setParameterExceptionHandler((e, typed) -> wrongUsage(e, terminal))
        .setExecutionExceptionHandler((e, sub, parsed) -> ended(e, terminal));
  }

  /** Without a command: what there is to do. */
  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static int wrongUsage(ParameterException e, Terminal terminal) {
    terminal.complain(Misuse.of(e));
    terminal.complain(Phrase.of(
        "How it is used: ./steening help{0}", "Cómo se usa: ./steening help{0}", name(e.getCommandLine())));
    return ExitStatus.WRONG_USAGE;
  }

  private static int ended(Exception e, Terminal terminal) {
    if (e instanceof WrongUsage wrong) {
      wrong.phrases().forEach(terminal::complain);
      return ExitStatus.WRONG_USAGE;
    }
    if (e instanceof Unreadable unreadable) {
      terminal.complain(unreadable.phrase());
      return ExitStatus.UNREADABLE;
    }
    if (e instanceof StoreTrouble trouble) terminal.complain(trouble.phrase());
    else if (e instanceof PortTaken taken) terminal.complain(taken.phrase());
    else {
      StackTraceElement[] places = e.getStackTrace();
      terminal.complain(Phrase.of(
          "Something in Steening itself went wrong: {0} at {1}.", "Algo falló en el propio Steening: {0} en {1}.",
          e, places.length == 0 ? "?" : places[0]));
    }
    return ExitStatus.STOPPED;
  }

  private static String name(CommandLine line) {
    return line.getParent() == null ? "" : " " + line.getCommandName();
  }
}
