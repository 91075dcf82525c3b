package steening.ground;

import java.math.BigDecimal;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;

/**
 * The grades of Wentworth (1922), coarsest first; a grain on a limit belongs to the coarser grade. They are not the
 * limits of the soil classification, whose sand begins at 0.075 mm and whose gravel begins at 4.75 mm.
 */
public enum Wentworth {
  BOULDER("256", "boulder", "bloque"),
  COBBLE("64", "cobble", "canto"),
  VERY_COARSE_PEBBLE("32", "pebble (very coarse)", "guijarro (muy grueso)"),
  COARSE_PEBBLE("16", "pebble (coarse)", "guijarro (grueso)"),
  MEDIUM_PEBBLE("8", "pebble (medium)", "guijarro (mediano)"),
  FINE_PEBBLE("4", "pebble (fine)", "guijarro (fino)"),
  GRANULE("2", "granule (very fine gravel)", "gránulo (grava muy fina)"),
  VERY_COARSE_SAND("1", "very coarse sand", "arena muy gruesa"),
  COARSE_SAND("0.5", "coarse sand", "arena gruesa"),
  MEDIUM_SAND("0.25", "medium sand", "arena media"),
  FINE_SAND("0.125", "fine sand", "arena fina"),
  VERY_FINE_SAND("0.0625", "very fine sand", "arena muy fina"),
  COARSE_SILT("0.03125", "coarse silt", "limo grueso"),
  MEDIUM_SILT("0.015625", "medium silt", "limo medio"),
  FINE_SILT("0.0078125", "fine silt", "limo fino"),
  VERY_FINE_SILT("0.00390625", "very fine silt", "limo muy fino"),
  CLAY("0", "clay", "arcilla");

  private final Length least;
  private final Phrase label;

  Wentworth(String leastMillimetres, String english, String spanish) {
    this.least = (Length) Unit.MILLIMETRE.of(new BigDecimal(leastMillimetres));
    this.label = Phrase.of(english, spanish);
  }

  public static Wentworth of(Length size) {
    for (Wentworth grade : values()) if (!size.isLessThan(grade.least)) return grade;
    return CLAY;
  }

  public Phrase label() {
    return label;
  }
}
