package steening.stage.pump.line;

import java.util.List;
import steening.field.ChoiceField;

/**
 * Fittings with the feet of straight pipe they are worth, by nominal size from 1/2 to 3 in and by source; 0 where a
 * source has none. Plastic: an information page on PVC pipe (seen). Wrought and cast: Illinois Administrative Code
 * 77-890, Subpart M, Appendix A, Table Q (seen; the run of a cast tee of 1 1/4 in stands as printed, out of order).
 * Diameters: a piping design sheet, so many inside diameters (seen).
 */
enum Fitting {
  ELL_90("ell-90", "90° ell", "codo de 90°",
      row(1.5, 2, 2.3, 4, 4, 6, 8, 8), row(0.5, 1, 1, 2, 2, 2, 2, 3), row(1, 2, 4, 5, 8, 11, 14, 18),
      row(1.55, 2.06, 2.62, 3.45, 4.03, 5.17, 6.17, 7.67)),
  ELL_45("ell-45", "45° ell", "codo de 45°",
      row(0.8, 1, 1.4, 1.8, 2, 2.5, 3, 4), row(0.5, 0.5, 1, 1, 2, 2, 3, 4), row(0.5, 1, 2, 2, 3, 5, 8, 11), row()),
  TEE_RUN("tee-run", "tee, straight through", "te, paso recto",
      row(1, 1.4, 1.7, 2.3, 2.7, 4.3, 5.1, 6.3), row(0.5, 0.5, 0.5, 0.5, 1, 1, 2),
      row(0.5, 0.5, 0.5, 1.5, 1, 2, 2, 2), row(1.04, 1.37, 1.75, 2.3, 2.68, 3.45, 4.12, 5.11)),
  TEE_BRANCH("tee-branch", "tee, into the branch", "te, salida lateral",
      row(4, 5, 6, 7, 8, 12, 15, 16), row(1, 2, 3, 4, 5, 7, 9), row(2, 3, 5, 7, 9, 12, 16, 20),
      row(3.11, 4.12, 5.25, 6.9, 8.05, 10.3, 12.3, 15.3)),
  GATE("gate", "gate valve, open", "válvula de compuerta, abierta",
      row(), row(0, 0, 1, 1, 2, 2, 2, 2), row(0, 0, 1, 1, 2, 2, 2, 2),
      row(0.41, 0.55, 0.7, 0.92, 1.07, 1.38, 1.65, 2.04)),
  GLOBE("globe", "globe valve, open", "válvula de globo, abierta",
      row(), row(0, 0, 0, 53, 66, 90), row(0, 0, 0, 53, 66, 90), row(17.6, 23.3, 29.7, 39.1, 45.6, 58.6, 70, 86.9)),
  STOP("stop", "compression stop", "llave de compresión", row(), row(13, 21, 30), row(13, 21, 30), row()),
  CHECK("check", "swing check valve", "válvula de retención de columpio",
      row(), row(), row(), row(5.18, 6.86, 8.74, 11.5, 13.4, 17.2, 20.6, 25.5));

  static final List<String> SIZES = List.of("0.5", "0.75", "1", "1.25", "1.5", "2", "2.5", "3");

  private final ChoiceField.Option option;
  private final List<double[]> bySource;

  Fitting(String code, String english, String spanish, double[] plastic, double[] wrought, double[] cast,
      double[] diameters) {
    this.option = ChoiceField.option(code, english, spanish);
    this.bySource = List.of(plastic, wrought, cast, diameters);
  }

  static Fitting of(ChoiceField.Option option) {
    return List.of(values()).stream().filter(f -> f.option.equals(option)).findFirst().orElseThrow();
  }

  ChoiceField.Option option() {
    return option;
  }

  /**
   * Feet of pipe by a source.
   *
   * @param source 0 plastic, 1 wrought, 2 cast, 3 by diameters
   * @return 0 where the source has no such fitting of this size
   */
  double feet(int source, String size) {
    double[] row = bySource.get(source);
    int place = SIZES.indexOf(size);
    return place < row.length ? row[place] : 0;
  }

  private static double[] row(double... feet) {
    return feet;
  }
}
