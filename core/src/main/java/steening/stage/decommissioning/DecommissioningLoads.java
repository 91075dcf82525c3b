package steening.stage.decommissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.language.Phrase;
import steening.reckoning.Outcome;
import steening.stage.Load;
import steening.well.PlugMaterial;
import steening.well.Well;

/** What closes the holes that are open, in either of two materials. */
final class DecommissioningLoads {
  private DecommissioningLoads() {}

  static List<Load> of(Well well) {
    List<Load> loads = new ArrayList<>();
    for (Plugging plugging : Plugging.all(well)) {
      for (Plugging.Stretch open : plugging.open()) {
        load(loads, plugging, open, PlugMaterial.CHIPS, Phrase.of(
            "bentonite chips for hole {0}", "pellets para el barreno {0}", plugging.number()));
        load(loads, plugging, open, PlugMaterial.NEAT_CEMENT, Phrase.of(
            "or cement for hole {0}, 94 lb", "o cemento para el barreno {0}, 42.6 kg", plugging.number()));
      }
    }
    return loads;
  }

  private static void load(
      List<Load> loads, Plugging plugging, Plugging.Stretch open, PlugMaterial material, Phrase what) {
    Outcome.ifReckonable(() -> PlugVolume.of(
            plugging.bore(), open.from(), open.to(), Filler.bag(material), PlugVolume.TEN_PERCENT))
        .ifPresent(bags -> loads.add(new Load(
            what, Bagged.said(bags.quantity(PlugVolume.ORDER_BAGS.name())), Optional.of(bags))));
  }
}
