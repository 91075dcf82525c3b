package steening.well;

import steening.language.Phrase;

/**
 * What the ground is made of, in standard terms, each with the number of its pattern in FGDC-STD-013-2006 section 37
 * (numbers seen in two public copies that agree; the pattern drawings are our own).
 */
public enum Material {
  TOPSOIL("topsoil", "topsoil", "suelo vegetal", 0, "", false, false),
  CLAY("clay", "clay", "arcilla", 620, "CL, CH", false, true),
  SANDY_CLAY("sandy-clay", "sandy clay", "arcilla arenosa", 619, "CL", false, true),
  SILT("silt", "silt", "limo", 616, "ML", false, true),
  SILTY_SAND("silty-sand", "silty sand", "arena limosa", 612, "SM", false, false),
  FINE_SAND("fine-sand", "fine sand", "arena fina", 607, "SP", true, false),
  MEDIUM_SAND("medium-sand", "medium sand", "arena media", 607, "SP, SW", true, false),
  COARSE_SAND("coarse-sand", "coarse sand", "arena gruesa", 607, "SP, SW", true, false),
  SAND_AND_GRAVEL("sand-and-gravel", "sand and gravel", "arena y grava", 602, "SW, GW", true, false),
  GRAVEL("gravel", "gravel", "grava", 601, "GP, GW", true, false),
  CLAYEY_SAND("clayey-sand", "clayey sand", "arena arcillosa", 612, "SC", false, false),
  CLAYEY_GRAVEL("clayey-gravel", "clayey gravel", "grava arcillosa", 601, "GC, GM", false, false),
  BOULDERS("boulders", "boulders", "bloques", 601, "", false, false),
  CONGLOMERATE("conglomerate", "conglomerate", "conglomerado", 601, "", false, false),
  SHELLS("shells", "shells", "conchas", 652, "", true, false),
  PEAT("peat", "peat", "turba", 657, "PT", false, false),
  TILL("till", "till", "till", 681, "CL, SC, GC", false, true),
  LOESS("loess", "loess", "loes", 684, "ML", false, true),
  MARL("marl", "marl", "marga", 623, "CL, ML", false, true),
  CALICHE("caliche", "caliche", "costra caliza", 617, "", false, true),
  LIMESTONE("limestone", "limestone", "caliza", 627, "", false, false),
  SANDSTONE("sandstone", "sandstone", "arenisca", 607, "", false, false),
  SHALE("shale", "shale", "lutita", 620, "", false, true),
  CHERT("chert", "chert", "pedernal", 649, "", false, false),
  COAL("coal", "coal", "carbón", 658, "", false, false),
  GRANITE("granite", "granite", "granito", 718, "", false, false),
  FILL("fill", "fill", "relleno", 0, "", false, false);

  private final String code;
  private final Phrase label;
  private final int pattern;
  private final String symbols;
  private final boolean givesWater;
  private final boolean tight;

  Material(
      String code, String english, String spanish, int pattern, String symbols, boolean givesWater, boolean tight) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
    this.pattern = pattern;
    this.symbols = symbols;
    this.givesWater = givesWater;
    this.tight = tight;
  }

  public String code() {
    return code;
  }

  public Phrase label() {
    return label;
  }

  /** The pattern's number, or 0 where the standard has none. */
  public int pattern() {
    return pattern;
  }

  /**
   * The symbols of the unified soil classification that the word alone suggests; empty for rock and where it suggests
   * none. From memory; a sieve or the hand decides.
   */
  public String symbols() {
    return symbols;
  }

  /** Loose and coarse enough to take a screen. */
  public boolean givesWater() {
    return givesWater;
  }

  /** Holds water back: a screen must not stand against it. */
  public boolean isTight() {
    return tight;
  }

  public static Material of(String code) {
    for (Material material : values()) if (material.code.equals(code)) return material;
    throw new IllegalArgumentException("no material: " + code);
  }
}
