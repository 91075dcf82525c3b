package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.well.Plug;
import steening.well.PlugMaterial;
import steening.well.Plugs;
import steening.well.Well;

/** A plug as it is drawn, from its top as last sounded, and how: cement hatched, bentonite as in the annulus. */
record PlugReach(Length top, Length bottom, PlugMaterial material) {
  private static final Tile CEMENT = Tile.of(8, 8).lines("M0 0L8 8M-1 7L1 9M7 -1L9 1");

  static List<PlugReach> of(Well well) {
    List<PlugReach> plugs = new ArrayList<>();
    for (Plug plug : well.get(Plugs.PART).upward()) {
      if (plug.to().isMoreThan(plug.top())) plugs.add(new PlugReach(plug.top(), plug.to(), plug.material()));
    }
    return plugs;
  }

  String patternId() {
    return "plug-" + material.code();
  }

  Phrase label() {
    return material.label();
  }

  Tile tile() {
    return switch (material) {
      case NEAT_CEMENT, CONCRETE -> CEMENT;
      case BENTONITE_SLURRY -> Filling.GROUT.tile();
      case CHIPS -> Filling.CHIPS.tile();
      case SAND, GRAVEL, MUD -> Filling.PACK.tile();
    };
  }
}
