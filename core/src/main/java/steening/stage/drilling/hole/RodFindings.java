package steening.stage.drilling.hole;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.CasingString;
import steening.well.Hole;
import steening.well.Well;

/** The rods as counted against the depths they should have reached. */
public final class RodFindings {
  /** The depth after a rod is read on the kelly to about this. Common practice, no source. */
  private static final Length READS = Length.of(0.5, Unit.FOOT);

  private RodFindings() {}

  public static List<Finding> of(Well well) {
    List<Drilling.Rod> entered = well.get(Drilling.PART).rods();
    List<Finding> findings = new ArrayList<>(misdated(entered));
    List<Drilling.Rod> rods = findings.isEmpty() ? entered : counted(entered);
    if (!rods.isEmpty()) first(well, rods.get(0)).ifPresent(findings::add);
    for (int i = 1; i < rods.size(); i++) {
      number(rods.get(i - 1), rods.get(i)).ifPresent(findings::add);
      depthAfter(rods.get(i - 1), rods.get(i), i == rods.size() - 1).ifPresent(findings::add);
    }
    if (!rods.isEmpty() && HoleFindings.metresForFeet(well).isEmpty()) againstTheHole(well).ifPresent(findings::add);
    return findings;
  }

  /** No deeper than bit, subs and rod are long, where they were measured. */
  private static Optional<Finding> first(Well well, Drilling.Rod rod) {
    Optional<Length> whole = well.get(Drilling.PART).rig().flatMap(Drilling.Rig::below).map(rod.length()::plus);
    boolean tooDeep = rod.number() == 1 && whole.filter(w -> rod.depth().minus(w).isMoreThan(READS)).isPresent();
    return tooDeep ? Optional.of(Finding.of(
            "drilling.first-rod", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "After the first rod the depth is entered as {0}; bit, sub and rod are {1} long.",
                "Después del primer tubo se registró {0}; barrena, sustituto y tubo miden {1}.",
                depth(rod.depth()), depth(whole.get())))
        .comparing(depth(rod.depth()), depth(whole.get()))
        .because(Phrase.of("A length not measured, or a depth from the floor.", "Una longitud sin medir, o una"
            + " profundidad desde el piso del equipo."))
        .so(Phrase.of("Measure bit, sub and rod; depths are from the ground.", "Mida barrena, sustituto y tubo; las"
            + " profundidades son desde el terreno."))
        .from(List.of(rod.entry()))) : Optional.empty();
  }

  /** A rod dated after one that stands on it: one of the two hours is wrong. */
  private static List<Finding> misdated(List<Drilling.Rod> rods) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 1; i < rods.size(); i++) {
      Drilling.Rod before = rods.get(i - 1);
      Drilling.Rod rod = rods.get(i);
      if (rod.number() >= before.number() || !rod.depth().isLessThan(before.depth())) continue;
      findings.add(Finding.of(
              "drilling.rod-time", Weight.LOOK, DrillingStage.NAME,
              Phrase.of(
                  "Rod {0} to {1} is dated before rod {2} to {3}, which goes less deep.",
                  "El tubo {0} a {1} tiene hora anterior al tubo {2} a {3}, que es menos profundo.",
                  Integer.toString(before.number()), depth(before.depth()), Integer.toString(rod.number()),
                  depth(rod.depth())))
          .because(Phrase.of("The hour of one of them is wrong.", "La hora de uno de ellos está mal."))
          .so(Phrase.of("Correct the hour.", "Corrija la hora."))
          .from(List.of(before.entry(), rod.entry())));
    }
    return findings;
  }

  private static List<Drilling.Rod> counted(List<Drilling.Rod> rods) {
    return rods.stream().sorted(Comparator.comparingInt(Drilling.Rod::number)).toList();
  }

  private static Optional<Finding> number(Drilling.Rod before, Drilling.Rod rod) {
    if (rod.number() == before.number() + 1) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.rod-number", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "Rod {0} follows rod {1}.", "El tubo {0} sigue al tubo {1}.",
                Integer.toString(rod.number()), Integer.toString(before.number())))
        .because(Phrase.of("A rod not entered, or entered twice.", "Un tubo sin registrar, o registrado dos veces."))
        .so(Phrase.of("Count the rods in the hole.", "Cuente los tubos en el barreno."))
        .from(List.of(before.entry(), rod.entry())));
  }

  /** The last rod may not be all the way down yet; none can go further than it is long. */
  private static Optional<Finding> depthAfter(Drilling.Rod before, Drilling.Rod rod, boolean last) {
    Length expected = before.depth().plus(rod.length());
    boolean tooDeep = rod.depth().minus(expected).isMoreThan(READS);
    boolean mayBeHalfWay = last && !rod.depth().isLessThan(before.depth());
    boolean tooShallow = expected.minus(rod.depth()).isMoreThan(READS) && !mayBeHalfWay;
    if (!tooDeep && !tooShallow) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.rod-depth", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "After rod {0} the depth is entered as {1}; {2} and a rod of {3} make {4}.",
                "Después del tubo {0} se registró {1}; {2} más un tubo de {3} son {4}.",
                Integer.toString(rod.number()), depth(rod.depth()), depth(before.depth()), depth(rod.length()),
                depth(expected)))
        .comparing(depth(rod.depth()), depth(expected))
        .because(Phrase.of(
            "A rod miscounted, or a nominal length for a measured one.",
            "Un tubo mal contado, o una longitud nominal por una medida."))
        .so(Phrase.of("Measure the rods that are in the hole.", "Mida los tubos que están en el barreno."))
        .shownBy(RodTally.next(new Drilling.Rod(rod.number(), rod.length(), before.depth(), rod.at(), rod.entry())))
        .from(List.of(before.entry(), rod.entry())));
  }

  /**
   * The kelly may drill on without another rod; the hole cannot be deeper than that, nor the rods deeper than the hole.
   */
  private static Optional<Finding> againstTheHole(Well well) {
    if (!well.get(Hole.PART).isBegun()) return Optional.empty();
    Length hole = well.get(Hole.PART).depth();
    Drilling drilling = well.get(Drilling.PART);
    Drilling.Rod last = drilling.rods().get(drilling.rods().size() - 1);
    Length rods = drilling.rodDepth();
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    boolean knownDeeper = drilling.lastStretch().known().minus(hole).isMoreThan(HoleFindings.AGREES);
    boolean holeDeeper = hole.minus(rods).isMoreThan(last.length());
    boolean rodsDeeper = rods.minus(hole).isMoreThan(HoleFindings.AGREES) && (lowered || knownDeeper);
    if (!holeDeeper && !rodsDeeper) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.rods-against-hole", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The rods went to {0}, the hole is entered as {1}.",
                "La tubería llegó a {0}, el barreno está registrado con {1}.",
                depth(rods), depth(hole)))
        .comparing(depth(rods), depth(hole))
        .so(Phrase.of("Count the rods, and sound the hole.", "Cuente los tubos y sondee el barreno."))
        .from(List.of(last.entry(), drilling.lastStretch().entry())));
  }
}
