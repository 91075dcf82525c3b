package steening.report;

/** The sheet a report is printed on. */
public enum Paper {
  LETTER("letter", "8.5in 11in"),
  A4("a4", "210mm 297mm");

  private final String code;
  private final String size;

  Paper(String code, String size) {
    this.code = code;
    this.size = size;
  }

  public String code() {
    return code;
  }

  /** Width and height as style sheets write them. */
  String size() {
    return size;
  }

  public static Paper of(String code) {
    return "a4".equalsIgnoreCase(code) ? A4 : LETTER;
  }
}
