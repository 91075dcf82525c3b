package steening.stage.casing;

import static steening.stage.casing.CasingFindings.across;
import static steening.stage.casing.CasingFindings.depth;
import static steening.stage.casing.CasingFindings.differ;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Reach;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.well.CasingString;
import steening.well.Hole;
import steening.well.Plan;
import steening.well.Well;

/** The string against the hole it stands in. */
final class HoleFindings {
  /** Two tapes agree as well as this. Common practice, no source. */
  private static final Length TENTH = Length.of(0.1, Unit.FOOT);

  /** As far off bottom as goes without a word, beyond what is planned. Common practice, no source. */
  private static final Length OFF_BOTTOM = Length.feet(3);

  private HoleFindings() {}

  static List<Finding> of(Well well) {
    if (!well.get(Hole.PART).isBegun()) return List.of();
    List<Finding> findings = new ArrayList<>();
    larger(well).ifPresent(findings::add);
    deeper(well).or(() -> offBottom(well)).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> larger(Well well) {
    CasingString string = well.get(CasingString.PART);
    Optional<Length> outside = string.outside().or(() -> well.get(Plan.PART).length(Plan.CASING_OUTSIDE));
    Length bottom = string.bottom().or(() -> well.get(Plan.PART).stringBottom()).orElse(well.get(Hole.PART).depth());
    Optional<Reach> narrowest = well.get(Hole.PART).bore().reaches().stream()
        .filter(r -> r.from().isLessThan(bottom))
        .min((a, b) -> a.diameter().compareTo(b.diameter()));
    boolean known = outside.isPresent() && narrowest.isPresent();
    if (!known || outside.get().isLessThan(narrowest.get().diameter())) return Optional.empty();
    return Optional.of(Finding.of(
            "casing.larger-than-hole", Weight.STOP, CasingStage.NAME,
            Phrase.of(
                "The casing is {0} across, the hole between {1} and {2} only {3}.",
                "El ademe mide {0}; el barreno entre {1} y {2}, solo {3}.",
                across(outside.get()), depth(narrowest.get().from()), depth(narrowest.get().to()),
                across(narrowest.get().diameter())))
        .comparing(across(outside.get()), across(narrowest.get().diameter()))
        .because(Phrase.of(
            "A slip in one of the two diameters, or a hole not reamed.",
            "Un error en un diámetro, o un barreno sin ampliar."))
        .so(Phrase.of("Correct the diameter, or ream.", "Corrija el diámetro o amplíe el barreno."))
        .from(setting(well)));
  }

  /** Where it stands, or, with the first piece in the hole, where it is to stand. */
  private static Optional<Finding> deeper(Well well) {
    CasingString string = well.get(CasingString.PART);
    Length hole = well.get(Hole.PART).depth();
    boolean begun = !string.pieces().isEmpty();
    Optional<Length> bottom = string.isSet() ? string.bottom() : well.get(Plan.PART).stringBottom().filter(b -> begun);
    if (bottom.isEmpty() || !bottom.get().minus(hole).isMoreThan(TENTH)) return Optional.empty();
    return Optional.of(Finding.of(
            "casing.string-deeper-than-hole", Weight.STOP, CasingStage.NAME,
            Phrase.of(
                string.isSet()
                    ? "The string ends at {0}, the hole at {1}."
                    : "The string is planned to {0}, the hole ends at {1}.",
                string.isSet()
                    ? "La columna termina a {0}, el barreno a {1}."
                    : "La columna está planeada hasta {0}, el barreno termina a {1}.",
                depth(bottom.get()), depth(hole)))
        .comparing(depth(bottom.get()), depth(hole))
        .because(Phrase.of(
            "A joint counted that was not run, or a hole entered too shallow.",
            "Un tubo contado que no se bajó, o un barreno registrado con menos."))
        .so(Phrase.of("Count the joints left, and sound the hole.", "Cuente los tubos que quedan y sondee el barreno."))
        .from(setting(well)));
  }

  /** Where the string ends as planned, or no plan says where; else the comparison with the plan says it all. */
  private static Optional<Finding> offBottom(Well well) {
    Optional<Length> bottom = well.get(CasingString.PART).bottom();
    Plan plan = well.get(Plan.PART);
    if (bottom.isEmpty()) return Optional.empty();
    if (plan.stringBottom().filter(b -> differ(b, bottom.get(), ToCome.AGREES)).isPresent()) return Optional.empty();
    Length planned = plan.length(Plan.DEPTH)
        .flatMap(depth -> plan.stringBottom().map(depth::minus)).orElse(Length.ZERO).max(Length.ZERO);
    Length off = well.get(Hole.PART).depth().minus(bottom.get());
    if (!off.minus(planned).isMoreThan(OFF_BOTTOM)) return Optional.empty();
    return Optional.of(Finding.of(
            "casing.off-bottom", Weight.NOTE, CasingStage.NAME,
            Phrase.of(
                "The string stands {0} off the bottom of the hole; {1} is planned.",
                "La columna queda a {0} del fondo del barreno; lo planeado es {1}.", depth(off), depth(planned)))
        .comparing(depth(off), depth(planned))
        .because(Phrase.of("Drilled deeper than planned.", "Se perforó más de lo planeado."))
        .so(Phrase.of("The open hole below takes pack too.", "El barreno abierto de abajo también lleva filtro."))
        .from(setting(well)));
  }

  private static List<String> setting(Well well) {
    return well.get(Tally.PART).setting().map(Tally.Setting::entry).stream().toList();
  }
}
