package steening.drawing;

import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.well.Fill;
import steening.well.Part;
import steening.well.Plan;

/** What fills the annulus, from the bottom up, and how it is drawn: pack stippled, chips as pieces, grout hatched. */
enum Filling {
  PACK("pack", Fill.PACK, Plan.PACK_TOP, Phrase.of("pack top", "tope del filtro"),
      Tile.of(18, 15).grains(
          1.2,
          26, 2, 35, 2, 19, 3, 31, 3, 9, 4, 16, 5, 24, 5, 3, 6, 33, 6, 20, 7, 28, 7, 11, 10, 6, 11, 22, 11,
          34, 11, 15, 12, 27, 14, 7, 15, 1, 16, 18, 16, 12, 17, 23, 17, 32, 17, 5, 18, 8, 21, 21, 21, 2, 22,
          13, 22, 31, 23, 26, 24, 9, 25, 19, 26, 29, 27, 4, 28, 13, 28, 34, 28)),
  CHIPS("chips", Fill.CHIPS, Plan.CHIPS_TOP, Phrase.of("chips top", "tope del sello"),
      Tile.of(14, 12)
          .lines("M1.5 2.5l3.5-1.5 2 2.5-2.5 2.5ZM8.5 1.5l3.5.5.5 3-3.5.5Z")
          .lines("M2 8l3-.5 1.5 3-3.5.5ZM8.5 7.5l3 1 1 2.5-3.5.5Z")),
  GROUT("grout", Fill.GROUT, Plan.GROUT_TOP, Phrase.of("grout top", "tope de la lechada"),
      Tile.of(8, 8).lines("M0 8L8 0M-1 1L1 -1M7 9L9 7"));

  private final String id;
  private final Part<Fill> part;
  private final QuantityField plannedTop;
  private final Phrase label;
  private final Tile tile;

  Filling(String id, Part<Fill> part, QuantityField plannedTop, Phrase label, Tile tile) {
    this.id = id;
    this.part = part;
    this.plannedTop = plannedTop;
    this.label = label;
    this.tile = tile;
  }

  /** The id of what is filled; that of its pattern has {@code pattern-} before it. */
  String id() {
    return id;
  }

  Part<Fill> part() {
    return part;
  }

  Phrase label() {
    return label;
  }

  Tile tile() {
    return tile;
  }

  Optional<Length> plannedTop(Plan plan) {
    return plan.length(plannedTop);
  }

  /** The bottom of the hole, or the planned top of what lies below. */
  Optional<Length> plannedBottom(Plan plan) {
    for (int i = ordinal() - 1; i >= 0; i--) {
      Optional<Length> below = values()[i].plannedTop(plan);
      if (below.isPresent()) return below;
    }
    return plan.length(Plan.DEPTH);
  }
}
