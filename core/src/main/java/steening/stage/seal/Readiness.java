package steening.stage.seal;

import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Density;
import steening.quantity.Scale;
import steening.well.Part;
import steening.well.Well;

/**
 * How the casing stands before grout is pumped: what is in it, and whether it is held down.
 *
 * @param within density of what is in it; zero for an empty one
 * @param held by a chain, or by weight on top
 */
record Readiness(Density within, boolean held, String entry) {
  /** None until somebody looked. */
  static final Part<Optional<Readiness>> PART = Part.ofHole("grout-readiness", Optional.empty());

  static final ChoiceField INSIDE = ChoiceField.of(
      "inside",
      Phrase.of("the casing is", "el ademe está"),
      ChoiceField.option("water", "full of water", "lleno de agua"),
      ChoiceField.option("mud", "full of mud", "lleno de lodo"),
      ChoiceField.option("empty", "empty", "vacío"));
  static final QuantityField WEIGHT = QuantityField.of(
          "inside-weight", Scale.DENSITY, Phrase.of("weight of the mud in it", "densidad del lodo de adentro"),
          "9.5 lb/gal", "1140 kg/m3")
      .between("8 lb/gal", "20 lb/gal").usually("8.3 lb/gal", "12 lb/gal").optional();
  static final ChoiceField HELD = ChoiceField.of(
      "held",
      Phrase.of("held down", "sujeto"),
      ChoiceField.option("chained", "chained to the rig", "encadenado al equipo"),
      ChoiceField.option("weighted", "weight on top", "con peso encima"),
      ChoiceField.option("no", "no", "no"));
  static final Kind KIND =
      Kind.of("grout-ready", Phrase.of("Casing before the grout", "Ademe antes de la lechada"), INSIDE, WEIGHT, HELD);

  static final Density EMPTY = new Density(0);

  static Well fold(Well well, Entry entry) {
    Optional<String> inside = INSIDE.text(entry.body());
    Optional<String> held = HELD.text(entry.body());
    if (inside.isEmpty() || held.isEmpty()) return well;
    // Mud that nobody weighed is at least as heavy as water.
    Density mud = WEIGHT.in(entry.body()).map(w -> (Density) w).orElse(Buoyancy.WATER);
    Density within = switch (inside.get()) {
      case "empty" -> EMPTY;
      case "mud" -> mud;
      default -> Buoyancy.WATER;
    };
    return well.with(PART, Optional.of(new Readiness(within, !held.get().equals("no"), entry.id())));
  }
}
