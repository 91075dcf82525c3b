package steening.stage.site;

import java.util.Arrays;
import steening.field.ChoiceField;
import steening.language.Phrase;

/** What a well must keep its distance from. */
enum Hazard {
  SEPTIC_TANK("septic-tank", "septic tank", "fosa séptica"),
  ABSORPTION_FIELD("absorption-field", "absorption field", "campo de absorción"),
  SEEPAGE_PIT("seepage-pit", "seepage pit", "pozo de absorción"),
  CESSPOOL("cesspool", "cesspool", "pozo negro"),
  ANIMAL_PEN("animal-pen", "animal pen", "corral"),
  MANURE_PILE("manure-pile", "manure pile", "estercolero"),
  FUEL_TANK("fuel-tank", "fuel tank", "tanque de combustible"),
  STREAM("stream", "stream or ditch", "arroyo o zanja"),
  PROPERTY_LINE("property-line", "property line", "lindero"),
  BUILDING("building", "building", "edificio"),
  OVERHEAD_LINE("overhead-line", "overhead power line", "línea eléctrica aérea"),
  OTHER("other", "other", "otro");

  static final ChoiceField FIELD = ChoiceField.of(
      "source",
      Phrase.of("distance to", "distancia a"),
      Arrays.stream(values()).map(h -> new ChoiceField.Option(h.code, h.label)).toArray(ChoiceField.Option[]::new));

  private final String code;
  private final Phrase label;

  Hazard(String code, String english, String spanish) {
    this.code = code;
    this.label = Phrase.of(english, spanish);
  }

  Phrase label() {
    return label;
  }

  static Hazard of(String code) {
    for (Hazard hazard : values()) if (hazard.code.equals(code)) return hazard;
    return OTHER;
  }

  /** Takes in household sewage. */
  boolean isSewage() {
    return this == SEPTIC_TANK || this == ABSORPTION_FIELD || this == SEEPAGE_PIT || this == CESSPOOL;
  }
}
