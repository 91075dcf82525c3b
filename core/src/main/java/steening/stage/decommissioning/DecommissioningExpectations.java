package steening.stage.decommissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Plug;
import steening.well.PlugMaterial;
import steening.well.Well;

/** Where the tape should find the plug, and what the next stretch takes. */
final class DecommissioningExpectations {
  private DecommissioningExpectations() {}

  static List<Expectation> of(Well well) {
    List<Expectation> expectations = new ArrayList<>();
    for (Plugging plugging : Plugging.all(well)) {
      for (Plug plug : plugging.plugs().plugs()) tape(plugging, plug).ifPresent(expectations::add);
      if (expectations.isEmpty()) stretch(plugging).ifPresent(expectations::add);
    }
    return expectations;
  }

  private static Optional<Expectation> tape(Plugging plugging, Plug plug) {
    if (plug.fill().bagsSinceTag() == 0) return Optional.empty();
    return plugging.expectedTop(plug, plug.fill().volume()).map(top -> new Expectation(
        Phrase.of(
            "tape on the plug in hole {0} after {1}, below ground",
            "sonda sobre el tapón del barreno {0} tras {1}, bajo el terreno",
            plugging.number(), Bagged.said(plug.fill().bags())),
        new Figure(((Length) top.quantity(Plugging.TOP)).max(Length.ZERO), Scale.DEPTH), Optional.empty(), top));
  }

  /** The lowest stretch that is open, in bags of what was used last, else of chips. */
  private static Optional<Expectation> stretch(Plugging plugging) {
    List<Plugging.Stretch> open = plugging.open();
    if (open.isEmpty()) return Optional.empty();
    List<Plug> plugs = plugging.plugs().plugs();
    PlugMaterial material = plugs.isEmpty() ? PlugMaterial.CHIPS : plugs.get(plugs.size() - 1).material();
    Plugging.Stretch stretch = open.get(0);
    Optional<Outcome> bags = Outcome.ifReckonable(() -> PlugVolume.of(
        plugging.bore(), stretch.from(), stretch.to(), Filler.bag(material), PlugVolume.TEN_PERCENT));
    return bags.map(outcome -> new Expectation(
        Phrase.of(
            "bags for hole {0}, {1} to {2}, with 10 % more: {3}", "sacos para el barreno {0}, {1} a {2}, con 10 %"
                + " más: {3}",
            plugging.number(), new Figure(stretch.to(), Scale.DEPTH), new Figure(stretch.from(), Scale.DEPTH),
            material.label()),
        outcome.figure(PlugVolume.ORDER_BAGS.name()), Optional.empty(), outcome));
  }
}
