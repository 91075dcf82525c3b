package steening.stage.decommissioning;

import static steening.stage.decommissioning.DecommissioningFindings.depth;
import static steening.stage.decommissioning.DecommissioningFindings.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.well.Closing;

/** The state in which a hole is closed: how far the casing comes off, what blocks it, how clean its water is. */
final class ClosingFindings {
  /** Ohio 3745-9-10(C)(3), seen. */
  private static final Quantity LEAST_CHLORINE = Measure.of(50, Unit.MILLIGRAM_PER_LITRE);

  private ClosingFindings() {}

  static List<Finding> of(Plugging plugging) {
    List<Finding> findings = new ArrayList<>();
    if (plugging.plugs().closing().isEmpty()) return findings;
    Closing closing = plugging.plugs().closing().get();
    cut(closing).ifPresent(findings::add);
    blocked(plugging, closing).ifPresent(findings::add);
    chlorine(closing).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> cut(Closing closing) {
    if (closing.pipe() != Closing.Casing.LEFT || closing.cut().isEmpty()) return Optional.empty();
    Length cut = closing.cut().get();
    if (!cut.isLessThan(Plugging.BELOW_GROUND)) return Optional.empty();
    Figure least = depth(Plugging.BELOW_GROUND);
    return Optional.of(look("cut-high", Phrase.of(
            "The casing is cut {0} below ground; {1} is asked for.",
            "El ademe se cortó {0} bajo el terreno; se piden {1}.", depth(cut), least))
        .comparing(depth(cut), least)
        .because(Phrase.of("A plough or a digger finds it.", "Un arado o una excavadora lo encuentra."))
        .so(SealingRules.CASING_OFF.cited()).from(List.of(closing.entry())));
  }

  private static Optional<Finding> blocked(Plugging plugging, Closing closing) {
    Length deepest = plugging.bore().bottom();
    Optional<Length> at = closing.obstruction().filter(d -> d.isLessThan(deepest.minus(Plugging.AGREES)));
    return at.map(d -> look("blocked", Phrase.of(
            "Hole {0} is {1} deep and blocked at {2}: below that nothing can be sealed.",
            "El barreno {0} tiene {1} y está obstruido a {2}: abajo no se puede sellar.",
            plugging.number(), depth(deepest), depth(d)))
        .comparing(depth(d), depth(deepest))
        .because(Phrase.of("Lost tools, or ground that caved in.", "Herramienta perdida o derrumbe."))
        .so(Phrase.of(
            "Try to wash down beside it with the tremie; else ask the authority before you plug above it.",
            "Intente lavar al lado con la tremie; si no, consulte a la autoridad antes de sellar encima."))
        .from(List.of(closing.entry())));
  }

  private static Optional<Finding> chlorine(Closing closing) {
    Optional<Quantity> weak = closing.chlorine().filter(c -> c.coherent() < LEAST_CHLORINE.coherent());
    return weak.map(c -> Finding.of("decommissioning.chlorine", Weight.NOTE, DecommissioningStage.NAME, Phrase.of(
            "{0} of chlorine before the plugs; {1} is asked for where there is slime.",
            "{0} de cloro antes de los tapones; se piden {1} donde haya limo.",
            new Figure(c, Scale.CONCENTRATION), new Figure(LEAST_CHLORINE, Scale.CONCENTRATION)))
        .comparing(new Figure(c, Scale.CONCENTRATION), new Figure(LEAST_CHLORINE, Scale.CONCENTRATION))
        .so(SealingRules.CHLORINE.cited()).from(List.of(closing.entry())));
  }
}
