package steening.well;

import steening.language.Phrase;

/**
 * What the ground is made of, in standard terms, each with the number of its pattern in FGDC-STD-013-2006 section 37
 * (numbers seen in two public copies that agree; the pattern drawings are our own).
 */
public enum Material {
  TOPSOIL("topsoil", "topsoil", "suelo vegetal", 0, false, false),
  CLAY("clay", "clay", "arcilla", 620, false, true),
  SANDY_CLAY("sandy-clay", "sandy clay", "arcilla arenosa", 619, false, true),
  SILT("silt", "silt", "limo", 616, false, true),
  SILTY_SAND("silty-sand", "silty sand", "arena limosa", 612, false, false),
  FINE_SAND("fine-sand", "fine sand", "arena fina", 607, true, false),
  MEDIUM_SAND("medium-sand", "medium sand", "arena media", 607, true, false),
  COARSE_SAND("coarse-sand", "coarse sand", "arena gruesa", 607, true, false),
  SAND_AND_GRAVEL("sand-and-gravel", "sand and gravel", "arena y grava", 602, true, false),
  GRAVEL("gravel", "gravel", "grava", 601, true, false),
  PEAT("peat", "peat", "turba", 657, false, false),
  TILL("till", "till", "till", 681, false, true),
  LIMESTONE("limestone", "limestone", "caliza", 627, false, false),
  SANDSTONE("sandstone", "sandstone", "arenisca", 607, false, false),
  SHALE("shale", "shale", "lutita", 620, false, true),
  GRANITE("granite", "granite", "granito", 718, false, false);

  private final String code;
  private final Phrase label;
  private final int pattern;
  private final boolean givesWater;
  private final boolean tight;

  Material(String code, String english, String spanish, int pattern, boolean givesWater, boolean tight) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
    this.pattern = pattern;
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
