package steening.journal;

import steening.language.Phrase;
import steening.language.Reader;

/** A line that is no entry. Says in one sentence what is wrong with it, and shows the right form. */
public final class UnreadableEntry extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient Phrase phrase;

  UnreadableEntry(Phrase phrase) {
    super(phrase.shownTo(Reader.US_ENGLISH));
    this.phrase = phrase;
  }

  public Phrase phrase() {
    return phrase;
  }

  static UnreadableEntry notJson(int column) {
    return new UnreadableEntry(
        Phrase.of(
            "The line is not JSON from its character {0} on; an entry is one JSON object on one line.",
            "La línea no es JSON a partir del carácter {0}; un registro es un objeto JSON en una sola línea.",
            column));
  }

  static UnreadableEntry notAnObject() {
    return new UnreadableEntry(
        Phrase.of(
            "The line is JSON but not an object; an entry begins with { and ends with }.",
            "La línea es JSON pero no un objeto; un registro empieza con { y termina con }."));
  }

  static UnreadableEntry missing(Part part) {
    return new UnreadableEntry(
        Phrase.of(
            "The field \"{0}\" is missing; example: \"{0}\": {1}.",
            "Falta el campo «{0}»; ejemplo: \"{0}\": {1}.",
            part.key,
            part.example));
  }

  static UnreadableEntry unknown(String name) {
    return new UnreadableEntry(
        Phrase.of(
            "There is no field \"{0}\" in an entry; values of the crew's own go into \"body\", example: \"body\": {1}.",
            "Un registro no tiene campo «{0}»; los valores propios van en \"body\", ejemplo: \"body\": {1}.",
            name,
            Part.BODY.example));
  }

  static UnreadableEntry twice(String name) {
    return new UnreadableEntry(
        Phrase.of(
            "\"{0}\" is given twice; give it once, and correct with an entry of its own.",
            "«{0}» aparece dos veces; escríbalo una vez y corrija con otro registro.",
            name));
  }

  static UnreadableEntry wrong(Part part, Phrase expected) {
    return new UnreadableEntry(
        Phrase.of(
            "The field \"{0}\" must be {1}; example: \"{0}\": {2}.",
            "El campo «{0}» debe ser {1}; ejemplo: \"{0}\": {2}.",
            part.key,
            expected,
            part.example));
  }

  static UnreadableEntry wrongBody(String name) {
    return new UnreadableEntry(
        Phrase.of(
            "The value \"{0}\" in \"body\" must be a text or a number; example: \"body\": {1}.",
            "El valor «{0}» de \"body\" debe ser un texto o un número; ejemplo: \"body\": {1}.",
            name,
            Part.BODY.example));
  }

  static UnreadableEntry halfCharacter() {
    return new UnreadableEntry(
        Phrase.of(
            "The line holds half a character (\\ud800 to \\udfff without its partner); write the character itself.",
            "La línea contiene medio carácter (\\ud800 a \\udfff sin su pareja); escriba el carácter mismo."));
  }
}
