package steening.stage.drilling.ahead;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.ground.GoingOn;
import steening.ground.Outlook;
import steening.ground.SandAhead;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.drilling.DrillingStage;
import steening.well.GroundLog;
import steening.well.Stratum;
import steening.well.Well;

/** A forecast that did not come true, and a customer who has to be asked before the money is drilled. */
public final class AheadFindings {
  /** The drilled depth is known to the foot. Common practice, no source. */
  private static final Length AGREES = Length.feet(1);

  private AheadFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Optional<Ahead> ahead = Ahead.of(well);
    if (ahead.isPresent()) {
      Optional<Finding> passed = passed(ahead.get(), well);
      passed.ifPresent(findings::add);
      boolean calling = passed.isPresent() && ahead.get().isNextTooDeep();
      call(ahead.get(), calling).ifPresent(findings::add);
    }
    findings.addAll(ThinSand.findings(well));
    return findings;
  }

  private static Optional<Finding> passed(Ahead ahead, Well well) {
    if (!ahead.isPassed()) return Optional.empty();
    Outlook wanted = ahead.wanted().orElseThrow();
    Optional<Outcome> left = wanted.ahead(ahead.logged());
    if (left.isEmpty()) return Optional.empty();
    Figure chance = left.get().figure(SandAhead.AHEAD.name());
    List<String> entries = new ArrayList<>(wanted.entries());
    List<Stratum> strata = well.get(GroundLog.PART).strata();
    entries.add(strata.get(strata.size() - 1).entry());
    return Optional.of(Finding.of(
            "drilling.forecast-passed", ahead.isTimeToCall() ? Weight.STOP : Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "Forecast interval passed: logged to {0} without {1}, expected at {2}, 19 times in 20 above {3}."
                    + " The chance that it is still below is {4}.",
                "Intervalo del pronóstico rebasado: registrado hasta {0} sin {1}, esperada a {2}, 19 de 20 veces"
                    + " arriba de {3}. La probabilidad de que esté aún abajo es {4}.",
                depth(ahead.logged()), wanted.name(), depth(wanted.likely()), depth(wanted.deep()), chance))
        .comparing(depth(ahead.logged()), depth(wanted.deep()))
        .because(Phrase.of(
            "The layer pinches out here or dips more than the neighbours' wells show; or thin sand was missed in the"
                + " cuttings.",
            "La capa se acaba aquí o baja más de lo que muestran los vecinos; o no se notó una arena delgada en los"
                + " recortes."))
        .so(next(ahead, chance))
        .shownBy(left.get())
        .from(entries));
  }

  private static Phrase next(Ahead ahead, Figure chance) {
    Phrase finishing = Phrase.of(
        "Finishing here counts on that {0}.", "Terminar aquí cuenta con ese {0}.", chance);
    if (ahead.next().isEmpty()) {
      return Phrase.of(
          "Call the customer before the next rod: nothing is known of a sand below. {0}",
          "Llame al cliente antes del siguiente tubo: no se sabe de otra arena abajo. {0}", finishing);
    }
    Phrase below = below(ahead, ahead.next().get());
    if (!ahead.isNextTooDeep()) return Phrase.of("{0} {1}", "{0} {1}", below, finishing);
    if (!ahead.isTimeToCall()) {
      return Phrase.of(
          "Another rod may be worth it; call the customer at {0}, not at the {1} agreed. {2} {3}",
          "Otro tubo puede convenir; llame al cliente a {0}, no a los {1} acordados. {2} {3}",
          depth(ahead.callAt().orElseThrow()), depth(ahead.agreed().orElseThrow()), below, finishing);
    }
    return Phrase.of(
        "Call the customer now, at {0}, not at the {1} agreed, which ends above the next sand. {2} {3}",
        "Llame al cliente ahora, a {0}, no a los {1} acordados, que terminan arriba de la arena siguiente. {2} {3}",
        depth(ahead.logged()), depth(ahead.agreed().orElseThrow()), below, finishing);
  }

  private static Phrase below(Ahead ahead, Outlook next) {
    Length goal = ahead.goal().orElseThrow();
    Figure feet = depth(goal.minus(ahead.logged()));
    Phrase expected = Phrase.of(
        "The next sand is expected at {0}, with a chance of {1}; to {2} there are {3} to drill",
        "La arena siguiente se espera a {0}, con probabilidad de {1}; hasta {2} faltan {3} por perforar",
        depth(next.likely()), new Figure(next.chance(), Scale.SHARE), depth(goal), feet);
    return ahead.toNext()
        .map(cost -> Phrase.of("{0}, {1}.", "{0}, {1}.", expected, cost.figure(GoingOn.COST.name())))
        .orElse(Phrase.of("{0}.", "{0}.", expected));
  }

  /** Before the agreed depth is reached, and all the more past it. */
  private static Optional<Finding> call(Ahead ahead, boolean calling) {
    if (ahead.agreed().isEmpty()) return Optional.empty();
    Length agreed = ahead.agreed().get();
    boolean past = ahead.drilled().minus(agreed).isMoreThan(AGREES);
    boolean near = !ahead.met() && !ahead.drilled().plus(Ahead.A_ROD).isLessThan(agreed);
    if (past) return Optional.of(pastAgreed(ahead, agreed));
    if (calling || !near) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.call-customer", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "Drilled to {0} and no sand yet; the customer agreed to {1}: {2} left.",
                "Perforado hasta {0} y aún sin arena; el cliente aceptó {1}: quedan {2}.",
                depth(ahead.drilled()), depth(agreed), depth(agreed.minus(ahead.drilled()).max(Length.ZERO))))
        .comparing(depth(ahead.drilled()), depth(agreed))
        .so(Phrase.of(
            "Call the customer before the next rod, with the chance left and the price of going on.",
            "Llame al cliente antes del siguiente tubo, con la probabilidad que queda y el precio de seguir.")));
  }

  private static Finding pastAgreed(Ahead ahead, Length agreed) {
    return Finding.of(
            "drilling.call-customer", Weight.STOP, DrillingStage.NAME,
            Phrase.of(
                "Drilled to {0}; the customer agreed to {1}.", "Perforado hasta {0}; el cliente aceptó {1}.",
                depth(ahead.drilled()), depth(agreed)))
        .comparing(depth(ahead.drilled()), depth(agreed))
        .so(Phrase.of(
            "Stop until the customer has agreed, in writing; then enter the plan with the new depth.",
            "Pare hasta que el cliente acepte, por escrito; luego registre el plan con la nueva profundidad."));
  }
}
