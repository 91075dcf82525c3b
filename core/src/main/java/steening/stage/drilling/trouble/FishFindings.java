package steening.stage.drilling.trouble;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.drilling.DrillingStage;
import steening.well.Well;

/** Tools in the hole: where their top should be, whether the counts agree, and whether fishing still pays. */
final class FishFindings {
  /** A top is felt to about this. Common practice, no source. */
  private static final Length FELT_TO = Length.feet(2);

  private FishFindings() {}

  static List<Finding> of(Well well) {
    Troubles troubles = well.get(Troubles.PART);
    List<Finding> findings = new ArrayList<>();
    if (troubles.fish().isEmpty()) return findings;
    Troubles.Fish fish = troubles.fish().get();
    findings.add(lost(fish, troubles.costs().isPresent()));
    felt(fish).ifPresent(findings::add);
    count(fish).ifPresent(findings::add);
    troubles.costs().flatMap(costs -> worth(fish, costs)).ifPresent(findings::add);
    return findings;
  }

  private static Finding lost(Troubles.Fish fish, boolean costed) {
    try {
      Outcome top = FishTop.of(fish.hole(), fish.lengths(), Optional.empty());
      return stop(fish, Phrase.of(
              "Fish of {0} in a hole of {1}: its top is expected at {2}.",
              "Quedaron {0} en un barreno de {1}: el tope se espera a {2}.",
              depth(fish.length()), depth(fish.hole()), top.figure(FishTop.TOP.name())), costed)
          .comparing(depth(fish.length()), top.figure(FishTop.TOP.name()))
          .shownBy(top);
    } catch (NotReckonable longerThanTheHole) {
      return stop(fish, Phrase.of(
          "Fish of {0} in a hole of {1}: longer than the hole is deep.",
          "Quedaron {0} en un barreno de {1}: más largo que el barreno.", depth(fish.length()), depth(fish.hole())),
          costed);
    }
  }

  private static Finding stop(Troubles.Fish fish, Phrase text, boolean costed) {
    Phrase next = costed
        ? Phrase.of(
            "Count and measure what came out, draw what is left, circulate, and lower the fishing tool to its top."
                + " Stand"
                + " clear of a rope under strain.",
            "Cuente y mida lo que salió, dibuje lo que quedó, circule y baje el pescante hasta el tope. Aléjese de un"
                + " cable tenso.")
        : Phrase.of(
            "Count and measure what came out, draw what is left, circulate. Enter what fishing costs, to know how long"
                + " it pays. Stand clear of a rope under strain.",
            "Cuente y mida lo que salió, dibuje lo que quedó, circule. Registre lo que cuesta pescar para saber hasta"
                + " cuándo conviene. Aléjese de un cable tenso.");
    return Finding.of("drilling.fish", Weight.STOP, DrillingStage.NAME, text)
        .because(Phrase.of("The string parted, or was dropped.", "La sarta se rompió o se cayó."))
        .so(next).from(List.of(fish.entry()));
  }

  private static Optional<Finding> felt(Troubles.Fish fish) {
    Optional<Outcome> top = Outcome.ifReckonable(() -> FishTop.of(fish.hole(), fish.lengths(), fish.felt()))
        .filter(o -> o.answers().containsKey(FishTop.HANGS.name()));
    if (top.isEmpty()) return Optional.empty();
    Length above = (Length) top.get().quantity(FishTop.HANGS.name());
    boolean agrees = !above.isMoreThan(FELT_TO) && !Length.ZERO.minus(above).isMoreThan(FELT_TO);
    if (agrees) return Optional.empty();
    Figure felt = depth(fish.felt().orElseThrow());
    Figure expected = top.get().figure(FishTop.TOP.name());
    return Optional.of(Finding.of(
            "drilling.fish-felt", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The top of the fish is felt at {0}; on the bottom it would be at {1}.",
                "El tope de lo perdido se toca a {0}; en el fondo estaría a {1}.", felt, expected))
        .comparing(felt, expected)
        .because(above.isMoreThan(Length.ZERO)
            ? Phrase.of("It hangs {0} above the bottom, or stands on fill.", "Cuelga a {0} del fondo, o hay relleno.",
                depth(above))
            : Phrase.of(
                "The list is too long: a length counted twice, or a piece that broke off and lies beside it.",
                "Sobra longitud en la lista, o hay un pedazo roto al lado."))
        .so(Phrase.of(
            "Count again before a tool goes in; a fish that hangs may fall on it.",
            "Cuente otra vez antes de bajar el pescante; lo que cuelga puede caer."))
        .shownBy(top.get())
        .from(List.of(fish.entry())));
  }

  private static Optional<Finding> count(Troubles.Fish fish) {
    if (fish.inHole().isEmpty()) return Optional.empty();
    Troubles.Rest rest = fish.inHole().get();
    Length apart = rest.length().max(fish.length()).minus(rest.length().min(fish.length()));
    if (!apart.isMoreThan(rest.longest()) && rest.out() <= rest.down()) return Optional.empty();
    return Optional.of(Finding.of(
            "drilling.string-count", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "{0} rods went down and {1} came out, so that {2} should be left; {3} is entered.",
                "Bajaron {0} tubos y salieron {1}, así que deberían quedar {2}; se registró {3}.",
                Integer.toString(rest.down()), Integer.toString(rest.out()), depth(rest.length()),
                depth(fish.length())))
        .comparing(depth(fish.length()), depth(rest.length()))
        .because(Phrase.of("A rod miscounted, or not entered.", "Un tubo mal contado, o sin registrar."))
        .so(Phrase.of("Count the rods on the rack again.", "Cuente otra vez los tubos en el soporte."))
        .from(List.of(fish.entry())));
  }

  private static Optional<Finding> worth(Troubles.Fish fish, Troubles.Costs costs) {
    return Outcome.ifReckonable(() -> FishOrRedrill.of(costs, fish.tried())).map(reckoned -> {
      Figure chance = reckoned.figure(FishOrRedrill.CHANCE.name());
      Figure pays = reckoned.figure(FishOrRedrill.PAYS.name());
      return Finding.of(
              "drilling.fish-or-redrill", Weight.LOOK, DrillingStage.NAME,
              Phrase.of(
                  "After {0} without success the next hour has a chance of {1}; it pays from {2} on.",
                  "Tras {0} sin éxito la próxima hora tiene una probabilidad de {1}; conviene desde {2}.",
                  new Figure(fish.tried(), Scale.HOURS), chance, pays))
          .comparing(chance, pays)
          .so(next(reckoned))
          .shownBy(reckoned)
          .from(List.of(costs.entry(), fish.entry()));
    });
  }

  private static Phrase next(Outcome reckoned) {
    return FishOrRedrill.isWorth(reckoned)
        ? Phrase.of(
            "Go on fishing, until {0} in all.", "Siga pescando, hasta {0} en total.",
            reckoned.figure(FishOrRedrill.STOP.name()))
        : Phrase.of(
            "Stop fishing and drill again; seal the lost hole by the rule.",
            "Deje de pescar y perfore de nuevo; selle el barreno perdido según la norma.");
  }
}
