package steening.language;

/** The languages every phrase exists in. */
public enum Language {
  ENGLISH("en"),
  SPANISH("es");

  private final String code;

  Language(String code) {
    this.code = code;
  }

  /** The code of ISO 639-1, as a page's {@code lang} attribute. */
  public String code() {
    return code;
  }

  public static Language of(String code) {
    return "es".equals(code) ? SPANISH : ENGLISH;
  }
}
