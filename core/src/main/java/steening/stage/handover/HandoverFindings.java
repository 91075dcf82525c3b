package steening.stage.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.CasingString;
import steening.well.Completion;
import steening.well.Hole;
import steening.well.Permit;
import steening.well.Screen;
import steening.well.Tag;
import steening.well.Well;

/** Where what goes into the report contradicts itself. */
final class HandoverFindings {
  private HandoverFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    tagAndPermit(well).ifPresent(findings::add);
    Optional<Completion> completion = well.get(Completion.PART);
    if (completion.isEmpty()) return findings;
    findings.addAll(CompletionDate.findings(completion.get(), well));
    unsigned(completion.get()).ifPresent(findings::add);
    tooDeep(completion.get(), well).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> tagAndPermit(Well well) {
    Optional<Tag> tag = well.get(Tag.PART);
    Optional<Permit.Grant> grant = well.get(Permit.PART).grant();
    if (tag.isEmpty() || tag.get().permit().isEmpty() || grant.isEmpty()) return Optional.empty();
    String onTag = tag.get().permit().get();
    boolean known = well.get(Permit.PART).grants().stream().anyMatch(g -> same(g.number(), onTag));
    if (known) return Optional.empty();
    return Optional.of(Finding.of("handover.tag-permit", Weight.STOP, HandoverStage.NAME, Phrase.of(
            "The tag says permit {0}; the permit says {1}.", "La placa dice permiso {0}; el permiso dice {1}.",
            onTag, grant.get().number()))
        .because(Phrase.of(
            "A number typed twice, or the tag of another well.",
            "Un número escrito dos veces, o la placa de otro pozo."))
        .so(Phrase.of(
            "Read tag and permit again before the report is signed.",
            "Lea otra vez placa y permiso antes de firmar el informe."))
        .from(List.of(grant.get().entry(), tag.get().entry())));
  }

  private static Optional<Finding> unsigned(Completion completion) {
    if (completion.isSigned()) return Optional.empty();
    Phrase text = completion.driller().isEmpty()
        ? Phrase.of("Nobody is named who answers for this well.", "Nadie figura como responsable de este pozo.")
        : Phrase.of("No licence number for {0}.", "Falta el número de licencia de {0}.", completion.driller().get());
    return Optional.of(Finding.of("handover.unsigned", Weight.LOOK, HandoverStage.NAME, text)
        .so(Phrase.of(
            "Name the licensed driller with the number of the licence.",
            "Anote al perforador con su número de licencia."))
        .from(List.of(completion.entry())));
  }

  private static Optional<Finding> tooDeep(Completion completion, Well well) {
    Hole hole = well.get(Hole.PART);
    CasingString string = well.get(CasingString.PART);
    if (!hole.isBegun() || string.bottom().isEmpty()) return Optional.empty();
    Optional<Length> screen = string.screens().stream().map(Screen::bottom).max(Length::compareTo);
    boolean screenToo = screen.isPresent() && screen.get().isMoreThan(hole.depth());
    Length deepest = screenToo ? screen.get() : string.bottom().get();
    if (!deepest.isMoreThan(hole.depth())) return Optional.empty();
    Figure built = new Figure(deepest, Scale.DEPTH);
    Figure drilled = new Figure(hole.depth(), Scale.DEPTH);
    Phrase text = screenToo
        ? Phrase.of("Screen to {0}, hole only {1} deep.", "Rejilla hasta {0}, barreno de solo {1}.", built, drilled)
        : Phrase.of("Casing to {0}, hole only {1} deep.", "Ademe hasta {0}, barreno de solo {1}.", built, drilled);
    String code = screenToo ? "handover.screen-too-deep" : "handover.string-too-deep";
    return Optional.of(Finding.of(code, Weight.STOP, HandoverStage.NAME, text)
        .comparing(built, drilled)
        .because(Phrase.of(
            "A joint too many, a slip in the depth of the hole, or the stick-up.",
            "Un tubo de más, un error en la profundidad del barreno, o la altura sobre el terreno."))
        .so(Phrase.of("Settle it before the report is signed.", "Aclárelo antes de firmar el informe."))
        .from(List.of(completion.entry())));
  }

  /** The same letters and digits, whatever stands between them. */
  private static boolean same(String one, String other) {
    return bare(one).equalsIgnoreCase(bare(other));
  }

  private static String bare(String number) {
    StringBuilder bare = new StringBuilder();
    for (char c : number.toCharArray()) if (Character.isLetterOrDigit(c)) bare.append(c);
    return bare.toString();
  }
}
