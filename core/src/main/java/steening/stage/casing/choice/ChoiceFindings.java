package steening.stage.casing.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.ground.PackGrading;
import steening.ground.SieveCurve;
import steening.ground.SlotChoice;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.casing.CasingStage;
import steening.stage.casing.Tally;
import steening.well.Plan;
import steening.well.Well;

/** Where pack, slot and length of the screen do not go together, or not with the sand. */
public final class ChoiceFindings {
  /** EPA, Private Water Systems; Wis. NR 812.16(2) (seen). */
  private static final double UNEVEN = 2.5;
  /** Rounding of shares between what is typed and what is reckoned, in points. */
  private static final double HAIR = 1e-6;

  private ChoiceFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Optional<PackKnown> pack = PackKnown.of(well);
    Optional<Governing> governing = Governing.of(well);
    pack.ifPresent(p -> {
      try {
        uneven(p, SieveCurve.RECKONING.of(p.sieves())).ifPresent(findings::add);
        slot(well, p, SlotChoice.RECKONING.of(Choice.slot(well, p))).ifPresent(findings::add);
        governing.flatMap(g -> grading(well, p, g, PackGrading.RECKONING.of(Choice.grading(well, g, pack))))
            .ifPresent(findings::add);
      } catch (NotReckonable contradiction) {
        findings.add(look("casing.pack-unclear", contradiction.sentence())
            .so(Phrase.of(
                "Correct the entry before the pack is bought by it.",
                "Corrija el registro antes de comprar el filtro con él."))
            .from(p.entries()));
      }
    });
    ShortScreen.finding(well).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> slot(Well well, PackKnown pack, Outcome outcome) {
    Optional<Quantity> slot = Choice.slot(well);
    if (slot.isEmpty() || outcome.shown(SlotChoice.PASSES.name()).isEmpty()) return Optional.empty();
    double kept = well.get(Plan.PART).amount(Plan.SLOT_RETAINS).map(q -> q.in(Unit.PERCENT)).orElse(90.0);
    double passes = outcome.quantity(SlotChoice.PASSES.name()).in(Unit.PERCENT);
    if (passes <= 100 - kept + HAIR) return Optional.empty();
    Figure opening = new Figure(slot.get(), Scale.SLOT);
    Figure most = new Figure(Measure.of(100 - kept, Unit.PERCENT), Scale.SHARE);
    Finding finding = Finding.of(
            "casing.slot-for-pack", passes > 50 ? Weight.STOP : Weight.LOOK, CasingStage.NAME,
            Phrase.of(
                "Slot {0} passes {1} of this pack, {2}; {3} at most is wanted.",
                "La ranura {0} deja pasar {1} de este filtro, {2}; se quiere a lo sumo {3}.",
                opening, outcome.figure(SlotChoice.PASSES.name()), pack.name(), most))
        .comparing(outcome.figure(SlotChoice.PASSES.name()), most)
        .shownBy(outcome)
        .so(outcome.shown(SlotChoice.SLOT.name()).isPresent()
            ? Phrase.of(
                "A slot no wider than {0}; or, if the slot is bought already, a pack that is coarser than {1} but for "
                    + "{2}.",
                "Una ranura no mayor que {0}; o, si ya se compró, un filtro más grueso que {1} salvo {2}.",
                outcome.figure(SlotChoice.SLOT.name()), opening, most)
            : Phrase.of(
                "A finer slot; or, if the slot is bought already, a coarser pack.",
                "Una ranura más fina; o, si ya se compró, un filtro más grueso."))
        .from(entries(well, pack));
    return Optional.of(pack.sieved() ? finding : finding.because(Phrase.of(
        "By the two sieves of its grade, taken for its ends; the maker's sieve analysis says it better.",
        "Según los dos tamices de su grado, tomados como extremos; el análisis del fabricante lo dice mejor.")));
  }

  private static Optional<Finding> grading(Well well, PackKnown pack, Governing governing, Outcome outcome) {
    List<Quantity> sizes = pack.d30();
    if (sizes.isEmpty()) return Optional.empty();
    boolean fine = sizes.get(1).coherent() < outcome.quantity(PackGrading.PACK_LEAST.name()).coherent();
    boolean coarse = sizes.get(0).coherent() > outcome.quantity(PackGrading.PACK_MOST.name()).coherent();
    if (!fine && !coarse) return Optional.empty();
    Figure size = new Figure(sizes.get(coarse ? 0 : 1), Scale.GRAIN);
    Figure least = outcome.figure(PackGrading.PACK_LEAST.name());
    Figure most = outcome.figure(PackGrading.PACK_MOST.name());
    List<String> entries = new ArrayList<>(List.of(governing.sample().entry()));
    entries.addAll(pack.entries());
    return Optional.of(look(
            coarse ? "casing.pack-coarse" : "casing.pack-fine",
            Phrase.of(
                "D30 of this pack is " + (pack.sieved() ? "" : coarse ? "over " : "under ") 
                    + "{0}; the finest sand sieved in the screen, {1} to {2}, asks for {3} to {4}.",
                "D30 de este filtro es " + (pack.sieved() ? "" : coarse ? "más de " : "menos de ") 
                    + "{0}; la arena más fina tamizada en la rejilla, {1} a {2}, pide de {3} a {4}.",
                size, ChoiceSheet.depth(governing.sample().from()),
                ChoiceSheet.depth(governing.sample().to()), least, most))
        .comparing(size, coarse ? most : least)
        .because(coarse
            ? Phrase.of("Fine sand would come through it.", "La arena fina pasaría a través de él.")
            : Phrase.of("It would hold back water as well as sand.", "Retendría agua además de arena."))
        .so(coarse
            ? Phrase.of(
                "A finer pack, and a slot that keeps it; if the slot is bought already, screen only the coarser sand.",
                "Un filtro más fino y una ranura que lo retenga; si ya se compró, enrejille solo la arena gruesa.")
            : Phrase.of("A coarser pack, or screen the finer sand too.",
                "Un filtro más grueso, o enrejille también la arena fina."))
        .shownBy(outcome)
        .from(entries));
  }

  private static Optional<Finding> uneven(PackKnown pack, Outcome curve) {
    if (!pack.sieved() || curve.shown("cu").isEmpty() || curve.quantity("cu").coherent() <= UNEVEN) {
      return Optional.empty();
    }
    Figure most = new Figure(Measure.of(UNEVEN, Unit.ONE), Scale.NUMBER);
    return Optional.of(look(
            "casing.pack-uneven",
            Phrase.of(
                "Cu of this pack is {0}; {1} at most is wanted.", "Cu de este filtro es {0}; se quiere a lo sumo {1}.",
                curve.figure("cu"), most))
        .comparing(curve.figure("cu"), most)
        .because(Phrase.of("A mixed pack sorts itself as it falls.", "Un filtro mezclado se separa al caer."))
        .so(Phrase.of("Ask for a more even pack.", "Pida un filtro más uniforme."))
        .shownBy(curve)
        .from(pack.entries()));
  }

  private static List<String> entries(Well well, PackKnown pack) {
    List<String> entries = new ArrayList<>(pack.entries());
    well.get(Tally.PART).openings().forEach(opening -> entries.add(opening.entry()));
    return entries;
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, CasingStage.NAME, text);
  }
}
