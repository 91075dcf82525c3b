package steening.stage.drilling.fluid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingFindings;
import steening.stage.drilling.DrillingStage;
import steening.well.Losses;
import steening.well.Well;

/** Every fall of the pit that the hole does not explain. */
final class PitFindings {
  /** A pit is read to about this. Common practice, no source. */
  static final Length READS = Length.of(2, Unit.INCH);

  /** The reading may stand before the rod it was taken after. Common practice, no source. */
  private static final Length A_ROD = Length.feet(20);

  /** Over more than a shift the mean of a loss says little. Common practice, no source. */
  private static final double A_SHIFT = 12 * 60;

  private PitFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Optional<Drilling.Mud> before = Optional.empty();
    for (Drilling.Mud mud : well.get(Drilling.PART).muds()) {
      bothWays(mud).ifPresent(findings::add);
      if (!isWritten(well, before, mud)) lost(well.get(Drilling.PART), before, mud).ifPresent(findings::add);
      before = Optional.of(mud);
    }
    return findings;
  }

  /** Whether the driller has said where the mud went. */
  private static boolean isWritten(Well well, Optional<Drilling.Mud> before, Drilling.Mud mud) {
    Length from = before.map(Drilling.Mud::depth).orElse(Length.ZERO).min(mud.depth());
    return !well.get(Losses.PART).between(from, mud.depth().plus(A_ROD)).isEmpty();
  }

  /** Minutes since the reading before, where a rate can be made of them. */
  static Optional<Measure> minutes(Optional<Drilling.Mud> before, Drilling.Mud mud) {
    return before.map(b -> mud.at().minutesSince(b.at())).filter(m -> m >= 1 && m <= A_SHIFT)
        .map(m -> Measure.of(m, Unit.MINUTE));
  }

  private static Optional<Finding> bothWays(Drilling.Mud mud) {
    Length fell = mud.pitDrop().orElse(Length.ZERO);
    Length rose = mud.pitRise().orElse(Length.ZERO);
    if (!fell.isMoreThan(Length.ZERO) || !rose.isMoreThan(Length.ZERO)) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.pit-both-ways", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud pit is said to have fallen {0} and risen {1} since the same reading.",
                "Según el registro la fosa bajó {0} y subió {1} desde la misma lectura.",
                new Figure(fell, Scale.DIAMETER), new Figure(rose, Scale.DIAMETER)))
        .so(Phrase.of("Correct the entry: keep one of the two.", "Corrija el registro: deje uno de los dos."))
        .from(List.of(mud.entry())));
  }

  private static Optional<Finding> lost(Drilling drilling, Optional<Drilling.Mud> before, Drilling.Mud mud) {
    Length fell = mud.pitDrop().orElse(Length.ZERO);
    boolean comparable = drilling.rig().isPresent() && mud.depth().isMoreThan(Length.ZERO);
    if (!comparable || !fell.isMoreThan(READS)) return Optional.empty();
    Drilling.Rig rig = drilling.rig().get();
    Length from = before.map(Drilling.Mud::depth).orElse(Length.ZERO).min(mud.depth());
    Outcome explained = PitFall.of(rig.bit(), rig.pitArea(), from, mud.depth().plus(A_ROD));
    Length expected = (Length) explained.quantity("fall");
    if (!fell.minus(expected).isMoreThan(READS)) return Optional.empty();
    Outcome lost = rig.pitArea().map(area -> PitFall.lost(explained, fell, area)).orElse(explained);
    Outcome working = minutes(before, mud).filter(m -> rig.pitArea().isPresent())
        .map(m -> PitFall.lossRate(lost, m, rig.pumpRate())).orElse(lost);
    Figure measured = new Figure(fell, Scale.DIAMETER);
    return Optional.of(Finding.of(
            "drilling.lost-circulation", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud pit fell {0}; the hole drilled since then, and a rod more, explain {1} at most.",
                "La fosa bajó {0}; el barreno perforado desde entonces, y un tubo más, explican {1} a lo más.",
                measured, explained.figure("fall")))
        .comparing(measured, explained.figure("fall"))
        .because(cause(working, minutes(before, mud), from, mud.depth()))
        .so(Phrase.of(
            "Keep the hole full. Write down at what depth and when it began, the rate of loss, and what was added.",
            "Mantenga lleno el barreno. Anote a qué profundidad y cuándo empezó, la pérdida y lo que agregó."))
        .shownBy(working)
        .from(List.of(mud.entry())));
  }

  private static Phrase cause(Outcome working, Optional<Measure> minutes, Length from, Length to) {
    if (minutes.isEmpty() || !working.answers().containsKey("loss-rate")) {
      return Phrase.of("Mud is going into the ground.", "El lodo se está yendo al terreno.");
    }
    return Phrase.of(
        "Mud is going into the ground: at least {0} over {1}, which is {2} of the pump rate, with the hole at {3} to"
            + " {4}.",
        "El lodo se está yendo al terreno: por lo menos {0} durante {1}, o sea {2} del gasto de la bomba, con el"
            + " barreno de {3} a {4}.",
        working.figure("loss-rate"), new Figure(minutes.get(), Scale.MINUTES), working.figure("share"),
        DrillingFindings.depth(from), DrillingFindings.depth(to));
  }
}
