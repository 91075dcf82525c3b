package steening.office.command;

import java.util.List;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import steening.language.Phrase;

/** How a command was typed wrongly, in one sentence. */
final class Misuse {
  private Misuse() {}

  static Phrase of(ParameterException e) {
    if (e instanceof MissingParameterException missing) {
      return Phrase.of("Missing: {0}.", "Falta: {0}.", names(missing.getMissing()));
    }
    if (e instanceof UnmatchedArgumentException unmatched) {
      List<String> meant = unmatched.getSuggestions();
      String words = String.join(" ", unmatched.getUnmatched());
      if (meant.isEmpty()) return Phrase.of("Not understood: {0}.", "No se entiende: {0}.", words);
      return Phrase.of(
          "Not understood: {0}. Did you mean {1}?", "No se entiende: {0}. ¿Quiso decir {1}?", words, meant.get(0));
    }
    if (e.getArgSpec() == null) return Phrase.of("Not understood: {0}", "No se entiende: {0}", e.getMessage());
    String value = e.getValue() == null ? "" : e.getValue();
    return Phrase.of("{0} cannot be \"{1}\".", "{0} no puede ser «{1}».", name(e.getArgSpec()), value);
  }

  private static String names(List<ArgSpec> missing) {
    return String.join(", ", missing.stream().map(Misuse::name).toList());
  }

  private static String name(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }
}
