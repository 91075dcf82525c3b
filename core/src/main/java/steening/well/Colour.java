package steening.well;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;

/**
 * The colours that loose ground mostly has, in words, and what they look like on a screen; a colour may also be said in
 * words of one's own, or in the notation hue value/chroma of soil colour charts (10YR 5/4), read from the moist sample in
 * daylight.
 */
public enum Colour {
  BROWN("brown", "brown", "café", "#7a5230"),
  YELLOW_BROWN("yellow-brown", "yellow-brown", "café amarillento", "#a9813d"),
  RED_BROWN("red-brown", "red-brown", "café rojizo", "#8a3f25"),
  GREY("grey", "gray", "gris", "#8b8b86"),
  LIGHT_GREY("light grey", "light gray", "gris claro", "#c4c3bd"),
  BLUE("blue", "blue", "azul", "#6f8394"),
  GREEN("green", "green", "verde", "#7b8a63"),
  BLACK("black", "black", "negro", "#2b2a28"),
  DARK_BROWN("dark brown", "dark brown", "café oscuro", "#4a3220"),
  TAN("tan", "tan", "crema", "#c9ad80"),
  WHITE("white", "white", "blanco", "#f1efe8"),
  RED("red", "red", "rojo", "#a8432f"),
  YELLOW("yellow", "yellow", "amarillo", "#c99a2e");

  /** Of soil colour charts; N is without hue. From memory. */
  private static final List<String> HUES = List.of(
      "10R", "2.5YR", "5YR", "7.5YR", "10YR", "2.5Y", "5Y", "10Y", "5GY", "10GY", "5G", "10G", "5BG", "10BG", "5B",
      "10B", "5PB", "N");

  private final String code;
  private final Phrase label;
  private final String onScreen;

  Colour(String code, String english, String spanish, String onScreen) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
    this.onScreen = onScreen;
  }

  public String code() {
    return code;
  }

  public Phrase label() {
    return label;
  }

  public String onScreen() {
    return onScreen;
  }

  /** By its code, or by its name in English or Spanish. */
  public static Optional<Colour> of(String text) {
    for (Colour colour : values()) {
      Phrase label = colour.label;
      if (List.of(colour.code, label.english(), label.spanish()).contains(text)) return Optional.of(colour);
    }
    return Optional.empty();
  }

  /** Whether a text means to be in the notation: it has a stroke, and begins with a figure or with N. */
  public static boolean isMeantAsNotation(String text) {
    boolean figures = text.startsWith("N") || !text.isEmpty() && Character.isDigit(text.charAt(0));
    return figures && text.indexOf('/') > 0;
  }

  /** Whether a text is in the notation: a hue of the charts, a value from 2 to 8, a chroma from 1 to 8, none with N. */
  public static boolean isNotation(String text) {
    int gap = text.indexOf(' ');
    int stroke = text.indexOf('/');
    if (gap < 0 || stroke < gap || !HUES.contains(text.substring(0, gap))) return false;
    boolean hueless = text.startsWith("N ");
    String chroma = text.substring(stroke + 1).trim();
    boolean chromaFits = hueless ? chroma.isEmpty() || chroma.equals("0") : isWithin(chroma, 1, 8);
    return chromaFits && isWithin(text.substring(gap + 1, stroke).trim(), 2, 8);
  }

  private static boolean isWithin(String figure, int least, int most) {
    if (figure.equals("2.5")) return least <= 2;
    return figure.length() == 1 && figure.charAt(0) >= '0' + least && figure.charAt(0) <= '0' + most;
  }
}
