package steening.stage.disinfection;

import java.util.List;
import java.util.stream.Stream;
import steening.field.ChoiceField;
import steening.language.Phrase;

/**
 * What takes chlorine out of water, and how many milligrams of it one milligram of chlorine uses up. Source:
 * Disinfection of Pipelines and Storage Facilities Field Guide, Table 7-2 (seen).
 */
enum Neutraliser {
  ASCORBIC_ACID("ascorbic-acid", 2.5, "ascorbic acid (vitamin C)", "ácido ascórbico (vitamina C)"),
  SODIUM_ASCORBATE("sodium-ascorbate", 2.8, "sodium ascorbate", "ascorbato de sodio"),
  SODIUM_THIOSULFATE("sodium-thiosulfate", 1.9, "sodium thiosulfate", "tiosulfato de sodio"),
  CALCIUM_THIOSULFATE("calcium-thiosulfate", 1.22, "calcium thiosulfate", "tiosulfato de calcio"),
  SODIUM_SULFITE("sodium-sulfite", 1.96, "sodium sulfite", "sulfito de sodio"),
  SODIUM_BISULFITE("sodium-bisulfite", 1.61, "sodium bisulfite", "bisulfito de sodio"),
  SODIUM_METABISULFITE("sodium-metabisulfite", 1.47, "sodium metabisulfite", "metabisulfito de sodio");

  static final ChoiceField FIELD = ChoiceField.of(
      "product", Phrase.of("product", "producto"),
      Stream.of(values()).map(n -> n.option).toArray(ChoiceField.Option[]::new));

  final ChoiceField.Option option;

  /** Milligrams to one milligram of chlorine. */
  final double perChlorine;

  Neutraliser(String code, double perChlorine, String english, String spanish) {
    this.option = ChoiceField.option(code, english, spanish);
    this.perChlorine = perChlorine;
  }

  static List<Neutraliser> all() {
    return List.of(values());
  }

  static Neutraliser of(ChoiceField.Option option) {
    return all().stream().filter(n -> n.option.equals(option)).findFirst().orElseThrow();
  }
}
