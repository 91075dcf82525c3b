package steening.well;

import java.util.Optional;
import steening.language.Phrase;

/**
 * What a hole is filled with when it is closed for good. Sand, gravel and drilling mud do not seal (Alberta's Working
 * Well, module 9; seen); they are on the list because they are found in holes.
 */
public enum PlugMaterial {
  NEAT_CEMENT("neat-cement", "neat cement", "lechada de cemento", Sort.SLURRY),
  BENTONITE_SLURRY("bentonite-slurry", "bentonite slurry", "lechada de bentonita", Sort.SLURRY),
  CHIPS("chips", "bentonite chips", "pellets de bentonita", Sort.POURED),
  CONCRETE("concrete", "concrete", "concreto", Sort.SLURRY),
  SAND("sand", "sand", "arena", Sort.FILL),
  GRAVEL("gravel", "gravel", "grava", Sort.FILL),
  MUD("mud", "drilling mud or cuttings", "lodo o recortes de perforación", Sort.FILL);

  /** How a material behaves on its way down. */
  private enum Sort {
    SLURRY,
    POURED,
    FILL
  }

  private final String code;
  private final Phrase label;
  private final Sort sort;

  PlugMaterial(String code, String english, String spanish, Sort sort) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
    this.sort = sort;
  }

  public String code() {
    return code;
  }

  public Phrase label() {
    return label;
  }

  /** Whether water cannot pass it. */
  public boolean isSeal() {
    return sort != Sort.FILL;
  }

  /** Whether it goes in through a tremie pipe. */
  public boolean isPumped() {
    return sort == Sort.SLURRY;
  }

  public static Optional<PlugMaterial> of(String code) {
    for (PlugMaterial material : values()) if (material.code.equals(code)) return Optional.of(material);
    return Optional.empty();
  }
}
