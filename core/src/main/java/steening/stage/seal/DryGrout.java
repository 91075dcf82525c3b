package steening.stage.seal;

import steening.field.ChoiceField;
import steening.language.Phrase;
import steening.mix.Mixture;

/** What grout is mixed from, beside water. */
public enum DryGrout {
  /** Sodium bentonite: specific gravity 2.6, good to 4 % (trade article on mud, part 2; seen). */
  BENTONITE("bentonite", "bentonite", "bentonita", Mixture.BENTONITE_GRAVITY),
  /** Portland cement: specific gravity 3.15, good to 1 % (trade article on the volume of grout; seen). */
  CEMENT("cement", "cement", "cemento", Mixture.CEMENT_GRAVITY),
  /** The same, made to set within the hour. */
  RAPID_CEMENT("rapid-cement", "rapid-setting cement", "cemento rápido", Mixture.CEMENT_GRAVITY);

  public static final ChoiceField FIELD = ChoiceField.of(
      "material", Phrase.of("material", "material"), BENTONITE.option(), CEMENT.option(), RAPID_CEMENT.option());

  private final String code;
  private final Phrase label;
  private final double specificGravity;

  DryGrout(String code, String english, String spanish, double specificGravity) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
    this.specificGravity = specificGravity;
  }

  Phrase label() {
    return label;
  }

  /** How many times as heavy as water the grains themselves are. */
  double specificGravity() {
    return specificGravity;
  }

  public static DryGrout of(String code) {
    for (DryGrout material : values()) if (material.code.equals(code)) return material;
    return BENTONITE;
  }

  /** Whether it warms as it sets. */
  public boolean isCement() {
    return this != BENTONITE;
  }

  private ChoiceField.Option option() {
    return new ChoiceField.Option(code, label);
  }
}
