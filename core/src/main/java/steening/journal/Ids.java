package steening.journal;

/** The shape of ids: a UUID as RFC 9562 writes it, of any version. Nothing here makes one. */
public final class Ids {
  private static final int LENGTH = 36;
  private static final int LONGEST_NAME = 64;

  private Ids() {}

  /** Whether a text is a UUID: hexadecimal digits in groups of 8, 4, 4, 4 and 12, small letters or capitals. */
  public static boolean isUuid(String text) {
    if (text.length() != LENGTH) return false;
    for (int i = 0; i < LENGTH; i++) {
      char c = text.charAt(i);
      boolean hyphenPlace = i == 8 || i == 13 || i == 18 || i == 23;
      if (hyphenPlace ? c != '-' : !isHexadecimal(c)) return false;
    }
    return true;
  }

  /**
   * Whether a text can name a well, a device or a kind: 1 to 64 letters A to Z, digits, hyphens, points and
   * underscores, the first a letter or a digit. Every UUID is such a name; it can stand in an address as it is.
   */
  public static boolean isName(String text) {
    if (text.isEmpty() || text.length() > LONGEST_NAME || !isLetterOrDigit(text.charAt(0))) return false;
    for (int i = 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!isLetterOrDigit(c) && c != '-' && c != '.' && c != '_') return false;
    }
    return true;
  }

  /** The one way to write an id, so that the same id is the same text. */
  static String lower(String uuid) {
    StringBuilder lower = new StringBuilder(LENGTH);
    for (int i = 0; i < uuid.length(); i++) {
      char c = uuid.charAt(i);
      lower.append(c >= 'A' && c <= 'F' ? (char) (c + ('a' - 'A')) : c);
    }
    return lower.toString();
  }

  private static boolean isHexadecimal(char c) {
    return c >= '0' && c <= '9' || c >= 'a' && c <= 'f' || c >= 'A' && c <= 'F';
  }

  private static boolean isLetterOrDigit(char c) {
    return c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
  }
}
