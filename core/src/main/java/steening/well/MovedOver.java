package steening.well;

import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Length;

/**
 * A hole given up, and the rig moved over to begin another under the same job.
 *
 * @param depth of the hole that was given up
 * @param distance from that hole to the next
 */
public record MovedOver(Length depth, Length distance, Direction direction, Why why, Moment at, String entry) {
  /** How the rig came to this hole; empty for the first. */
  public static final Part<Optional<MovedOver>> HERE = Part.ofHole("moved-here", Optional.empty());

  /** How the rig left this hole; empty for the present one. */
  public static final Part<Optional<MovedOver>> AWAY = Part.ofHole("moved-away", Optional.empty());

  /** Which way, by the compass. */
  public enum Direction {
    NORTH("north", "north", "norte"),
    NORTH_EAST("north-east", "north-east", "noreste"),
    EAST("east", "east", "este"),
    SOUTH_EAST("south-east", "south-east", "sureste"),
    SOUTH("south", "south", "sur"),
    SOUTH_WEST("south-west", "south-west", "suroeste"),
    WEST("west", "west", "oeste"),
    NORTH_WEST("north-west", "north-west", "noroeste");

    private final String code;
    private final Phrase label;

    Direction(String code, String english, String spanish) {
      this.code = code;
      this.label = Phrase.of(english, spanish);
    }

    public String code() {
      return code;
    }

    public Phrase label() {
      return label;
    }
  }

  /** Why a hole is given up. */
  public enum Why {
    LOST_TOOLS("lost-tools", "lost tools", "herramienta perdida"),
    CAVED("caved", "caved in", "derrumbado"),
    CROOKED("crooked", "crooked", "torcido"),
    DRY("dry", "dry", "seco"),
    OTHER("other", "other", "otro");

    private final String code;
    private final Phrase label;

    Why(String code, String english, String spanish) {
      this.code = code;
      this.label = Phrase.of(english, spanish);
    }

    public String code() {
      return code;
    }

    public Phrase label() {
      return label;
    }
  }
}
