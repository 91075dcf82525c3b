package steening.stage.drilling.ahead;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.ground.GrainSizeConductivity;
import steening.ground.Outlook;
import steening.ground.RoughYield;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.drilling.DrillingStage;
import steening.well.CasingString;
import steening.well.Plan;
import steening.well.Well;

/** What the sieved sand would give, by each formula that holds for it, against what is wanted. */
final class ThinSand {
  private ThinSand() {}

  static List<Finding> findings(Well well) {
    List<Finding> findings = new ArrayList<>();
    Optional<FlowRate> wanted = well.get(Plan.PART).rate();
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    if (wanted.isEmpty() || lowered) return findings;
    for (SievedSand sand : SievedSand.all(well)) thin(well, sand, wanted.get()).ifPresent(findings::add);
    return findings;
  }

  static Sheet on(Sheet sheet, Well well) {
    Sheet with = sheet;
    List<List<Shown>> rows = new ArrayList<>();
    for (SievedSand sand : SievedSand.all(well)) {
      Optional<Outcome> gives = sand.gives(well);
      if (gives.isEmpty()) continue;
      with = with.line(
          Phrase.of("yield to hope for, sand {0} to {1}", "gasto esperable, arena {0} a {1}",
              depth(sand.top()), depth(sand.bottom())),
          range(gives.get(), RoughYield.YIELD.name(), RoughYield.LEAST.name(), RoughYield.MOST.name()), gives.get());
      rows.addAll(byMethod(well, sand));
    }
    return with.table(
        Phrase.of("What the sand gives, by each formula that holds", "Lo que da la arena, por cada fórmula válida"),
        List.of(
            Phrase.of("Sample from", "Muestra desde"), Phrase.of("to", "hasta"), Phrase.of("Formula", "Fórmula"),
            Phrase.of("Holds for", "Vale para"), Phrase.of("K", "K"),
            Phrase.of("Specific capacity, ÷ 3 to × 3", "Capacidad específica, ÷ 3 a × 3")),
        rows);
  }

  private static List<List<Shown>> byMethod(Well well, SievedSand sand) {
    List<List<Shown>> rows = new ArrayList<>();
    for (GrainSizeConductivity.ByMethod method : GrainSizeConductivity.byMethod(sand.conductivity())) {
      sand.gives(well, method.conductivity()).ifPresent(gives -> rows.add(List.of(
          depth(sand.sample().from()), depth(sand.sample().to()), method.title(), method.domain(),
          new Figure(method.conductivity(), Scale.CONDUCTIVITY),
          range(gives, "specific-capacity", "specific-capacity-least", "specific-capacity-most"))));
    }
    return rows;
  }

  private static Optional<Finding> thin(Well well, SievedSand sand, FlowRate wanted) {
    Optional<Outcome> gives = sand.gives(well);
    if (gives.isEmpty() || gives.get().quantity(RoughYield.YIELD.name()).coherent() >= wanted.coherent()) {
      return Optional.empty();
    }
    Figure asked = new Figure(wanted, Scale.FLOW);
    Figure middle = gives.get().figure(RoughYield.YIELD.name());
    return Optional.of(Finding.of(
            "drilling.sand-thin", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The sand from {0} to {1} would give about {2} by its grains, {3} to {4}; {5} are wanted.",
                "La arena de {0} a {1} daría cerca de {2} según sus granos, {3} a {4}; se quieren {5}.",
                depth(sand.top()), depth(sand.bottom()), middle, gives.get().figure(RoughYield.LEAST.name()),
                gives.get().figure(RoughYield.MOST.name()), asked))
        .comparing(middle, asked)
        .because(Phrase.of(
            "Fine or dirty sand, or little of it; the estimate is no better than × or ÷ 3.",
            "Arena fina o sucia, o poca; la estimación no es mejor que × o ÷ 3."))
        .so(Phrase.of(
            "Case it, deepen, or call the customer? Screen all of it if it is cased.{0}",
            "¿Ademarla, profundizar o llamar al cliente? Si se adema, enrejíllela toda.{0}", below(well, sand)))
        .shownBy(gives.get())
        .from(List.of(sand.sample().entry())));
  }

  private static Phrase below(Well well, SievedSand sand) {
    return Outlook.next(well, sand.bottom())
        .map(next -> Phrase.of(
            " The next sand is expected at {0}, with a chance of {1}.",
            " La arena siguiente se espera a {0}, con probabilidad de {1}.",
            depth(next.likely()), new Figure(next.chance(), Scale.SHARE)))
        .orElse(Phrase.same(""));
  }

  private static Phrase range(Outcome outcome, String middle, String least, String most) {
    return Phrase.of(
        "{0}, {1} to {2}", "{0}, {1} a {2}", outcome.figure(middle), outcome.figure(least), outcome.figure(most));
  }
}
