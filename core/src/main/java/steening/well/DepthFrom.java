package steening.well;

import steening.field.ChoiceField;
import steening.language.Phrase;

/** The point a tape or a level was read from. */
public enum DepthFrom {
  GROUND("ground"),
  TOP_OF_CASING("top-of-casing");

  /** The field that every entry with a reading carries. */
  public static final ChoiceField FIELD = ChoiceField.of(
      "from",
      Phrase.of("read from", "leído desde"),
      ChoiceField.option("top-of-casing", "top of casing", "boca del ademe"),
      ChoiceField.option("ground", "ground", "terreno"));

  private final String code;

  DepthFrom(String code) {
    this.code = code;
  }

  public static DepthFrom of(String code) {
    return code.equals(GROUND.code) ? GROUND : TOP_OF_CASING;
  }
}
