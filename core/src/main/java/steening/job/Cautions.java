package steening.job;

import static steening.job.RigHazards.BURIED_LINES;
import static steening.job.RigHazards.DRILLING_RIGS;
import static steening.job.RigHazards.ELECTROCUTED;
import static steening.job.RigHazards.FLOWING;
import static steening.job.RigHazards.GAS;
import static steening.job.RigHazards.MAST;
import static steening.job.RigHazards.NOISE;
import static steening.job.RigHazards.OPEN_HOLE;
import static steening.job.RigHazards.PITS;
import static steening.job.RigHazards.POWER_LINES;
import static steening.job.RigHazards.ROTATION;
import static steening.job.RigHazards.SILICA;
import static steening.job.RigHazards.VOLTAGE_UNKNOWN;
import static steening.job.RigHazards.WEATHER;
import static steening.job.WellHazards.ACID;
import static steening.job.WellHazards.AIR_CLEANING;
import static steening.job.WellHazards.AIR_HOSES;
import static steening.job.WellHazards.AIR_IN_PLASTIC;
import static steening.job.WellHazards.BAD_AIR;
import static steening.job.WellHazards.CEMENT_VAPOUR;
import static steening.job.WellHazards.CURRENT;
import static steening.job.WellHazards.DRY_CHLORINE;
import static steening.job.WellHazards.HOISTING;

import java.util.List;
import steening.language.Phrase;
import steening.stage.Stage;

/**
 * The usual cautions, stage by stage. What holds for one material alone, sand, cement or chlorine, its room says beside
 * its own figures; it is not said again here.
 */
public final class Cautions {
  /** Stands below every list of cautions. */
  public static final Phrase DEFER = Phrase.of(
      "These are the usual cautions, not all of them. Local code, product label and the licensed person come first.",
      "Son los cuidados usuales, no todos. La norma local, la etiqueta y la persona con licencia van primero.");

  private Cautions() {}

  /** What is on the register for a stage; may be none. */
  static List<Phrase> of(Stage stage) {
    return register(stage.name()).stream().map(Caution::said).toList();
  }

  private static List<Caution> register(String stage) {
    return switch (stage) {
      case "site" -> List.of(POWER_LINES, VOLTAGE_UNKNOWN, DRILLING_RIGS, WEATHER);
      case "permit" -> List.of(BURIED_LINES);
      case "plan" -> List.of(FLOWING);
      case "drilling" -> List.of(
          POWER_LINES, VOLTAGE_UNKNOWN, DRILLING_RIGS, MAST, ELECTROCUTED, ROTATION, NOISE, SILICA, AIR_HOSES, PITS,
          FLOWING, GAS, OPEN_HOLE, WEATHER);
      case "casing" -> List.of(HOISTING, CEMENT_VAPOUR, OPEN_HOLE);
      case "development" -> List.of(AIR_HOSES, AIR_IN_PLASTIC, AIR_CLEANING, ACID, NOISE);
      case "test" -> List.of(CURRENT, GAS);
      case "pump" -> List.of(POWER_LINES, VOLTAGE_UNKNOWN, ELECTROCUTED, HOISTING, CURRENT, BAD_AIR);
      case "disinfection" -> List.of(DRY_CHLORINE);
      case "handover" -> List.of(OPEN_HOLE);
      case "decommissioning" -> List.of(POWER_LINES, HOISTING, OPEN_HOLE);
      default -> List.of();
    };
  }
}
