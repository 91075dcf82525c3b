package steening.stage.decommissioning;

import static steening.stage.decommissioning.DecommissioningFindings.depth;
import static steening.stage.decommissioning.DecommissioningFindings.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.well.Plug;

/** Plugs where none can be: below the hole, in each other, with more or fewer bags than their stretch takes. */
final class PlaceFindings {
  /** Placed over reckoned, while no tape says where it stands (a judgement; common practice, no source). */
  private static final double TOO_MANY = 1.5;

  private static final double TOO_FEW = 0.9;

  private PlaceFindings() {}

  static List<Finding> of(Plugging plugging) {
    List<Finding> findings = new ArrayList<>();
    List<Plug> upward = plugging.plugs().upward();
    for (int i = 0; i < upward.size(); i++) {
      tooDeep(plugging, upward.get(i)).ifPresent(findings::add);
      if (i > 0) overlap(plugging, upward.get(i - 1), upward.get(i)).ifPresent(findings::add);
      bags(plugging, upward.get(i)).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> tooDeep(Plugging plugging, Plug plug) {
    if (!plugging.bottom().plus(Plugging.AGREES).isLessThan(plug.to())) return Optional.empty();
    return Optional.of(look("plug-too-deep", Phrase.of(
            "Plug down to {0}, but hole {1} can be filled only to {2}.",
            "Tapón hasta {0}, pero el barreno {1} solo puede llenarse hasta {2}.",
            depth(plug.to()), plugging.number(), depth(plugging.bottom())))
        .comparing(depth(plug.to()), depth(plugging.bottom()))
        .because(Phrase.of(
            "A slip in one of the two, or the plug of another hole.", "Un error en uno de los dos, o de otro barreno."))
        .so(Phrase.of("Sound the hole and correct the entry.", "Sondee el barreno y corrija el registro."))
        .from(plug.entries()));
  }

  private static Optional<Finding> overlap(Plugging plugging, Plug below, Plug above) {
    if (!above.to().minus(Plugging.AGREES).isMoreThan(below.top())) return Optional.empty();
    List<String> entries = new ArrayList<>(below.entries());
    entries.addAll(above.entries());
    return Optional.of(look("overlap", Phrase.of(
            "In hole {0} the plug from {1} to {2} lies in the one whose top is at {3}.",
            "En el barreno {0} el tapón de {1} a {2} queda dentro del que tiene su tope a {3}.",
            plugging.number(), depth(above.from()), depth(above.to()), depth(below.top())))
        .comparing(depth(above.to()), depth(below.top()))
        .because(Phrase.of("One lot typed twice, or a slip in a depth.", "Un lote escrito dos veces, o un error."))
        .so(Phrase.of("Correct one of the two.", "Corrija uno de los dos."))
        .from(entries));
  }

  /** Once a tape says where it stands, that says more. */
  private static Optional<Finding> bags(Plugging plugging, Plug plug) {
    Optional<Outcome> needed = plug.fill().tags().isEmpty() ? plugging.needed(plug) : Optional.empty();
    if (needed.isEmpty()) return Optional.empty();
    double exact = needed.get().quantity(PlugVolume.EXACT.name()).coherent();
    double ratio = plug.fill().bags() / exact;
    boolean many = ratio > TOO_MANY && plug.fill().bags() - exact > 1;
    boolean few = ratio < TOO_FEW && exact - plug.fill().bags() > 1;
    if (!many && !few) return Optional.empty();
    Length from = plug.from();
    Phrase text = Phrase.of(
        "From {0} to {1} hole {2} takes {3} bags; {4} went in.",
        "De {0} a {1} el barreno {2} lleva {3} sacos; entraron {4}.",
        depth(from), depth(plug.to()), plugging.number(),
        Bagged.about(needed.get().quantity(PlugVolume.EXACT.name())), Bagged.said(plug.fill().bags()));
    Finding finding = many
        ? look("too-many-bags", text)
            .because(Phrase.of(
                "A void beside the hole, or a slip in the count.", "Un hueco junto al barreno, o un error de cuenta."))
        : look("too-few-bags", text)
            .because(Phrase.of(
                "A bridge with a void below it, or the plug ends lower.",
                "Un puente con hueco debajo, o el tapón queda más abajo."));
    return Optional.of(finding
        .so(Phrase.of("Sound the top and write it down.", "Sondee el tope y anótelo."))
        .shownBy(needed.get()).from(plug.entries()));
  }
}
