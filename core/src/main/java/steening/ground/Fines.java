package steening.ground;

import java.util.Optional;
import steening.language.Phrase;

/**
 * The silts and clays of the soil classification.
 *
 * <p>Source: ASTM D2487, the criteria as a laboratory report reproduces them (seen); CL-ML (memory).
 */
enum Fines {
  ML("silt", "limo", "with silt", "con limo", "silty", "limosa"),
  CL("lean clay", "arcilla de baja plasticidad", "with clay", "con arcilla", "clayey", "arcillosa"),
  CL_ML("silty clay", "arcilla limosa", "with silty clay", "con arcilla limosa", "silty, clayey", "limo-arcillosa"),
  MH("elastic silt", "limo de alta plasticidad", "with silt", "con limo", "silty", "limosa"),
  CH("fat clay", "arcilla de alta plasticidad", "with clay", "con arcilla", "clayey", "arcillosa");

  private final Phrase alone;
  private final Phrase some;
  private final Phrase much;

  Fines(String alone, String solos, String some, String algunos, String much, String muchos) {
    this.alone = Phrase.of(alone, solos);
    this.some = Phrase.of(some, algunos);
    this.much = Phrase.of(much, muchos);
  }

  String symbol() {
    return name().replace('_', '-');
  }

  /** As a soil of its own. */
  Phrase alone() {
    return alone;
  }

  /** In a sand or gravel that has some. */
  Phrase some() {
    return some;
  }

  /** In a sand or gravel that has much. */
  Phrase much() {
    return much;
  }

  /** The second letter they give a sand or gravel. */
  String letter() {
    return this == ML || this == MH ? "M" : "C";
  }

  static Optional<Fines> written(String symbol) {
    for (Fines fines : values()) if (fines.symbol().equals(symbol)) return Optional.of(fines);
    return Optional.empty();
  }

  /**
   * By the plasticity chart.
   *
   * @param line the A line at this liquid limit
   */
  static Fines of(double liquidLimit, double plasticity, double line) {
    boolean above = plasticity >= line;
    if (liquidLimit >= 50) return above ? CH : MH;
    if (above && plasticity > 7) return CL;
    return above && plasticity >= 4 ? CL_ML : ML;
  }
}
