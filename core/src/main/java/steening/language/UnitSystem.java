package steening.language;

/** The family of units a reader works in. */
public enum UnitSystem {
  US("us"),
  METRIC("metric");

  private final String code;

  UnitSystem(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }

  public static UnitSystem of(String code) {
    return "metric".equals(code) ? METRIC : US;
  }
}
