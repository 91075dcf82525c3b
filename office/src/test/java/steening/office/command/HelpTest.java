package steening.office.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import steening.language.Language;

class HelpTest {
  private static final String BUNDLE = "steening.office.command.Help";

  @Test
  void bothLanguagesSayTheSameThings() {
    ResourceBundle english = ResourceBundle.getBundle(BUNDLE, Locale.ROOT);
    ResourceBundle spanish = ResourceBundle.getBundle(BUNDLE, Locale.forLanguageTag("es"));
    assertThat(spanish.getLocale().getLanguage()).isEqualTo("es");
    assertThat(spanish.keySet()).isEqualTo(english.keySet());
    List<String> same = new ArrayList<>();
    for (String key : english.keySet()) {
      boolean hasWords = english.getString(key).matches(".*[a-z]{3}.*");
      if (hasWords && english.getString(key).equals(spanish.getString(key))) same.add(key);
    }
    assertThat(same).isEmpty();
  }

  @Test
  void everyCommandAndEveryOptionIsExplained() {
    CommandLine line = CommandLineProgram.line(new Terminal(Language.ENGLISH, System.out, System.err));
    List<String> silent = new ArrayList<>();
    int options = 0;
    for (CommandLine command : line.getSubcommands().values()) {
      if (command.getCommandSpec().usageMessage().hidden()) continue;
      if (command.getCommandSpec().usageMessage().header().length == 0) silent.add(command.getCommandName());
      for (ArgSpec argument : command.getCommandSpec().args()) {
        options++;
        if (String.join("", argument.description()).isBlank()) silent.add(command.getCommandName() + " " + argument);
      }
    }
    assertThat(silent).isEmpty();
    assertThat(options).isGreaterThan(20);
  }

  @Test
  void withoutACommandItSaysWhatThereIsToDo() {
    assertThat(Said.by().out()).contains("serve", "demo", "enter", "read", "reckon").doesNotContain("warm-up");
    assertThat(Said.by("help", "serve").out()).contains("--port");
    assertThat(Said.by("serve", "--help").status()).isZero();
    assertThat(Said.by("--version").out()).startsWith("Steening");
  }

  @Test
  void aSlipOfTheFingersIsAnsweredWithTheRightWord() {
    Said said = Said.by("serv");
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("serv", "serve", "./steening help").doesNotContain("Exception");
    assertThat(Said.by("serve", "--port", "high").err()).contains("--port cannot be \"high\"");
    assertThat(Said.by("enter", "--well", "w").err()).contains("Missing: --kind");
    assertThat(Said.by(Language.SPANISH, "enter", "--well", "w").err()).contains("Falta: --kind");
  }
}
