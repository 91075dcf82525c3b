package steening.ground;

import java.util.Optional;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.reckoning.NotReckonable;

/**
 * A sand or gravel of the soil classification.
 *
 * <p>Source: ASTM D2487, the criteria as a laboratory report reproduces them (seen): well graded from Cu 4 for gravel
 * and 6 for sand with Cc from 1 to 3; under 5 % fines clean, over 12 % with fines, between them a double symbol.
 *
 * @param fine percent passing No. 200
 * @param passing4 percent passing No. 4
 */
record CoarseSoil(double fine, double passing4, Optional<Double> cu, Optional<Double> cc, Optional<Fines> fines) {
  private static final double CLEAN_BELOW = 5;
  private static final double DIRTY_ABOVE = 12;

  /** Gravel where more than half of the coarse part stays on No. 4. */
  private boolean isGravel() {
    return 100 - passing4 > (100 - fine) / 2;
  }

  String symbol() {
    String letter = isGravel() ? "G" : "S";
    if (fine < CLEAN_BELOW) return letter + (isWellGraded() ? "W" : "P");
    Fines present = present();
    if (fine > DIRTY_ABOVE) {
      return present == Fines.CL_ML ? letter + "C-" + letter + "M" : letter + present.letter();
    }
    return letter + (isWellGraded() ? "W-" : "P-") + letter + present.letter();
  }

  Phrase words() {
    Phrase soil = isGravel() ? Phrase.of("gravel", "grava") : Phrase.of("sand", "arena");
    if (fine > DIRTY_ABOVE) return Phrase.of("{0} {1}", "{1} {0}", present().much(), soil);
    Phrase graded = isWellGraded()
        ? Phrase.of("well-graded {0}", "{0} bien graduada", soil)
        : Phrase.of("poorly graded {0}", "{0} mal graduada", soil);
    return fine < CLEAN_BELOW ? graded : Phrase.of("{0} {1}", "{0} {1}", graded, present().some());
  }

  private boolean isWellGraded() {
    if (cu.isEmpty() || cc.isEmpty()) {
      throw new NotReckonable(
          "With {0} % fines the name needs Cu and Cc.", "Con {0} % de finos el nombre necesita Cu y Cc.", percent());
    }
    return cu.get() >= (isGravel() ? 4 : 6) && cc.get() >= 1 && cc.get() <= 3;
  }

  private Fines present() {
    return fines.orElseThrow(() -> new NotReckonable(
        "With {0} % fines the name needs the limits of the fines, or their symbol.",
        "Con {0} % de finos el nombre necesita los límites de los finos, o su símbolo.", percent()));
  }

  private String percent() {
    return Decimal.upTo(fine, 1);
  }
}
