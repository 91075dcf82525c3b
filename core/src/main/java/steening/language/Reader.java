package steening.language;

/** The person a page is written for. */
public record Reader(Language language, UnitSystem units) {
  public static final Reader US_ENGLISH = new Reader(Language.ENGLISH, UnitSystem.US);

  public boolean metric() {
    return units == UnitSystem.METRIC;
  }
}
