package steening.stage.drilling.hole;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.MovedOver;
import steening.well.Stratum;
import steening.well.Well;

/** What the hole given up still tells the one beside it: where the ground changes. And whether its depth is sure. */
public final class FirstHole {
  private FirstHole() {}

  /** The next change of ground in the earlier hole with the deepest log, below what is drilled here. */
  public static Optional<Expectation> nextChange(Well well, Length drilled) {
    Optional<Well> told = well.earlier().stream()
        .reduce((a, b) -> b.get(GroundLog.PART).bottom().isLessThan(a.get(GroundLog.PART).bottom()) ? a : b);
    if (told.isEmpty()) return Optional.empty();
    Optional<Stratum> next = told.get().get(GroundLog.PART).strata().stream()
        .filter(s -> s.from().isMoreThan(drilled)).findFirst();
    String number = Integer.toString(told.get().number());
    return next.map(stratum -> {
      Phrase what = Phrase.of("{0}, by the log of hole {1}", "{0}, según el registro del barreno {1}",
          stratum.material().label(), number);
      Outcome logged = Outcome.empty().with("depth", Term.given(
          "z", Phrase.of("top in hole {0}, not far from here", "tope en el barreno {0}, cerca de aquí", number),
          Scale.DEPTH, stratum.from()));
      return new Expectation(what, logged.figure("depth"), Optional.empty(), logged);
    });
  }

  /** The depth that was said when the hole was given up, against what was written while it was drilled. */
  public static List<Finding> findings(Well well) {
    List<Well> holes = new ArrayList<>(well.earlier());
    holes.add(well);
    List<Finding> findings = new ArrayList<>();
    for (Well hole : holes) twoDepths(hole).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> twoDepths(Well hole) {
    Optional<MovedOver> away = hole.get(MovedOver.AWAY);
    Drilling drilling = hole.get(Drilling.PART);
    Length drilled = drilling.rodDepth().max(
        drilling.stretches().isEmpty() ? Length.ZERO : hole.get(Hole.PART).depth());
    if (away.isEmpty() || drilled.equals(Length.ZERO)) return Optional.empty();
    Length said = away.get().depth();
    Length apart = said.isMoreThan(drilled) ? said.minus(drilled) : drilled.minus(said);
    if (!apart.isMoreThan(HoleFindings.AGREES)) return Optional.empty();
    return Optional.of(Finding.of("drilling.depth-given-up", Weight.LOOK, DrillingStage.NAME, Phrase.of(
            "Hole {0} was given up at {1}; what was written while drilling says {2}.",
            "El barreno {0} se abandonó a {1}; lo anotado al perforar dice {2}.",
            Integer.toString(hole.number()), depth(said), depth(drilled)))
        .comparing(depth(said), depth(drilled))
        .because(Phrase.of(
            "A rod not counted, or the part that caved in was left out.",
            "Un tubo sin contar, o se omitió la parte derrumbada."))
        .so(Phrase.of(
            "Give the full depth: the hole has to be plugged from its bottom.",
            "Dé toda la profundidad: el barreno se sella desde el fondo."))
        .from(List.of(away.get().entry())));
  }
}
