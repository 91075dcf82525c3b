package steening.cases;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonValue;
import com.eclipsesource.json.ParseException;
import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;

/** Reads published values, in our own format or in those it was told of, and holds the reckonings against them. */
public final class CaseBook {
  /** The resources beside this class that tell of other people's files. */
  public static final List<String> RESOURCES = List.of("construction.json", "hydraulics.json");

  private static final Phrase UNKNOWN =
      Phrase.of("nothing here says what is in this file", "nada dice aquí qué hay en este archivo");

  private final List<Translator> translators;

  private CaseBook(List<Translator> translators) {
    this.translators = translators;
  }

  /** Knows our own format, and what the texts of the resources tell. */
  public static CaseBook of(List<String> resources) {
    List<Translator> translators = new ArrayList<>();
    for (String text : resources) translators.addAll(TranslatorFormat.read(text));
    return new CaseBook(translators);
  }

  /**
   * A verdict for each published value in a text.
   *
   * @param file its name, with or without folders
   * @throws UnreadableCases where the text is not what its name or its beginning promises
   */
  public List<Verdict> judge(String file, String text) {
    String name = name(file);
    List<Translator> known = translators.stream().filter(t -> t.isFor(name)).toList();
    List<Verdict> verdicts = new ArrayList<>();
    for (Translator translator : known) verdicts.addAll(translator.judge(file, text));
    if (!known.isEmpty()) return verdicts;
    JsonValue json = name.endsWith(".json") ? parsed(text) : Json.NULL;
    if (!OwnFormat.isIn(json)) return List.of(Verdict.notCovered(name, file, "", UNKNOWN));
    for (Case one : OwnFormat.read(json)) verdicts.addAll(Trial.of(one, file));
    return verdicts;
  }

  /** Without the folders. */
  static String name(String file) {
    return file.substring(file.lastIndexOf('/') + 1);
  }

  static JsonValue parsed(String text) {
    try {
      return Json.parse(text);
    } catch (ParseException e) {
      throw new UnreadableCases(
          "It is not JSON from line {0} on.", "No es JSON a partir de la línea {0}.", e.getLocation().line);
    }
  }
}
