package steening.stage.decommissioning;

import static steening.stage.decommissioning.DecommissioningFindings.depth;
import static steening.stage.decommissioning.DecommissioningFindings.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.mix.Mixture;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.well.Plug;
import steening.well.PlugMaterial;

/** What a plug is made of and how it went in. */
final class MaterialFindings {
  /** Makers' and state guidance, from memory: three to five minutes a bag. */
  private static final Quantity LEAST_TIME = Measure.of(3, Unit.MINUTE);

  /** Usual maximum of Michigan, Maryland, Washington and Minnesota (seen); Ohio asks for 5.2. */
  private static final Quantity MOST_CEMENT_WATER = Volume.of(6, Unit.GALLON);

  /** South Carolina R.61-71 and others, seen; a tenth of a percent off is the rounding of the bucket. */
  private static final Quantity LEAST_SOLIDS = Measure.of(20, Unit.PERCENT);

  private static final double ROUNDING = 0.001;

  private MaterialFindings() {}

  static List<Finding> of(Plugging plugging) {
    List<Finding> findings = new ArrayList<>();
    List<Plug> upward = plugging.plugs().upward();
    for (int i = 0; i < upward.size(); i++) {
      Plug plug = upward.get(i);
      boolean between = upward.subList(0, i).stream().anyMatch(p -> p.material().isSeal())
          && upward.subList(i + 1, upward.size()).stream().anyMatch(p -> p.material().isSeal());
      if (!plug.material().isSeal()) findings.add(notASeal(plugging, plug, between));
      for (Plug.Way way : plug.ways()) {
        fast(plug, way).ifPresent(findings::add);
        noTremie(plug, way).ifPresent(findings::add);
        water(plug, way).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Finding notASeal(Plugging plugging, Plug plug, boolean between) {
    boolean tolerated = between && plug.material() != PlugMaterial.MUD;
    Weight weight = tolerated ? Weight.NOTE : Weight.LOOK;
    return Finding.of("decommissioning.not-a-seal", weight, DecommissioningStage.NAME, Phrase.of(
            "Hole {0}, {1} to {2}: {3} does not seal.", "Barreno {0}, {1} a {2}: {3} no sella.",
            plugging.number(), depth(plug.from()), depth(plug.to()), plug.material().label()))
        .so(SealingRules.NOT_A_SEAL.cited())
        .from(plug.entries());
  }

  private static Optional<Finding> fast(Plug plug, Plug.Way way) {
    if (plug.material() != PlugMaterial.CHIPS || way.minutes().isEmpty()) return Optional.empty();
    Measure each = new Measure(LEAST_TIME.dimension(), way.minutes().get().coherent() / way.bags());
    if (each.coherent() >= LEAST_TIME.coherent()) return Optional.empty();
    Figure took = new Figure(each, Scale.MINUTES);
    Figure least = new Figure(LEAST_TIME, Scale.MINUTES);
    return Optional.of(look("poured-fast", Phrase.of(
            "The chips went in at {0} a bag; {1} is the least.",
            "Los pellets entraron a {0} por saco; lo menos es {1}.",
            took, least))
        .comparing(took, least)
        .because(Phrase.of(
            "Chips poured fast bridge and leave a void.", "Vertidos rápido hacen puente y dejan un hueco."))
        .so(SealingRules.SLOWLY.cited()).from(List.of(way.entry())));
  }

  private static Optional<Finding> noTremie(Plug plug, Plug.Way way) {
    boolean poured = plug.material().isPumped() && way.tremie().filter(t -> !t).isPresent();
    if (!poured) return Optional.empty();
    return Optional.of(look("no-tremie", Phrase.of(
            "{0} was poured from the top, down to {1}.", "{0}: vertido desde arriba, hasta {1}.",
            plug.material().label(), depth(plug.to())))
        .because(Phrase.of(
            "Falling through water it thins out and comes apart.", "Al caer por el agua se diluye y se separa."))
        .so(SealingRules.BY_TREMIE.cited()).from(List.of(way.entry())));
  }

  private static Optional<Finding> water(Plug plug, Plug.Way way) {
    if (!Filler.isMixed(plug.material()) || way.water().isEmpty()) return Optional.empty();
    Volume each = way.water().get().times(1.0 / way.bags());
    Optional<Outcome> mixed = Outcome.ifReckonable(
        () -> Filler.mixed(plug.material(), Filler.usualSolids(plug.material()), each));
    if (mixed.isEmpty()) return Optional.empty();
    return plug.material() == PlugMaterial.NEAT_CEMENT
        ? wetCement(each, mixed.get(), way)
        : thinSlurry(mixed.get(), way);
  }

  private static Optional<Finding> wetCement(Volume each, Outcome mixed, Plug.Way way) {
    if (each.coherent() <= MOST_CEMENT_WATER.coherent() * (1 + ROUNDING)) return Optional.empty();
    Figure found = new Figure(each, Scale.LIQUID);
    Figure most = new Figure(MOST_CEMENT_WATER, Scale.LIQUID);
    return Optional.of(look("wet-cement", Phrase.of(
            "The cement has {0} of water a sack; {1} is the usual most.",
            "El cemento lleva {0} de agua por saco; lo usual es {1} a lo más.", found, most))
        .comparing(found, most)
        .because(Phrase.of(
            "Cement with more water shrinks and lets water by.",
            "Con más agua el cemento se encoge y deja pasar agua."))
        .so(Phrase.of(
            "Mix the next lot drier; ask whether this one may stay.",
            "Mezcle más seco el siguiente; pregunte si este puede quedar."))
        .shownBy(mixed).from(List.of(way.entry())));
  }

  private static Optional<Finding> thinSlurry(Outcome mixed, Plug.Way way) {
    double solids = mixed.quantity(Mixture.SOLIDS.name()).coherent();
    if (solids >= LEAST_SOLIDS.coherent() - ROUNDING) return Optional.empty();
    Figure found = mixed.figure(Mixture.SOLIDS.name());
    Figure least = new Figure(LEAST_SOLIDS, Scale.SHARE);
    return Optional.of(look("thin-slurry", Phrase.of(
            "The slurry has {0} solids; {1} is asked for.", "La lechada lleva {0} de sólidos; se piden {1}.",
            found, least))
        .comparing(found, least)
        .because(Phrase.of("Too much water to a bag.", "Demasiada agua por saco."))
        .so(Phrase.of(
            "Mix the next lot thicker, and sound the plug again the next day.",
            "Mezcle más espeso el siguiente, y sondee el tapón al día siguiente."))
        .shownBy(mixed).from(List.of(way.entry())));
  }
}
