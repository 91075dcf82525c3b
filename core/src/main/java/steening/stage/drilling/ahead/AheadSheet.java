package steening.stage.drilling.ahead;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.Optional;
import steening.ground.GoingOn;
import steening.ground.Outlook;
import steening.ground.SandAhead;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Well;

/** What is ahead: chance and depth of the sand, cost of the next feet, when the customer is called, what it gives. */
public final class AheadSheet {
  private AheadSheet() {}

  public static Sheet on(Sheet sheet, Well well) {
    return Ahead.of(well).map(ahead -> ahead(sheet, ahead)).orElse(sheet);
  }

  /** What the sand that was met would give, by its sieved samples. */
  public static Sheet withYield(Sheet sheet, Well well) {
    return ThinSand.on(sheet, well);
  }

  private static Sheet ahead(Sheet sheet, Ahead ahead) {
    Sheet with = sheet;
    if (!ahead.met() && ahead.wanted().isPresent()) with = wanted(with, ahead, ahead.wanted().get());
    if (ahead.next().isPresent()) with = next(with, ahead, ahead.next().get());
    if (ahead.met() || ahead.callAt().isEmpty()) return with;
    return with.line(
        Phrase.of("call the customer, if the sand has not come, at", "llamar al cliente, si no salió la arena, a"),
        depth(ahead.callAt().get()));
  }

  private static Sheet wanted(Sheet sheet, Ahead ahead, Outlook wanted) {
    Sheet with = outlook(sheet, wanted, ahead.logged());
    Optional<Outcome> left = wanted.ahead(ahead.logged(), ahead.rodDown());
    if (left.isEmpty() || !ahead.logged().isMoreThan(Length.ZERO)) return with;
    with = with
        .line(
            Phrase.of(
                "chance that it is still below {0}", "probabilidad de que esté aún bajo {0}", depth(ahead.logged())),
            left.get().figure(SandAhead.AHEAD.name()), left.get())
        .line(
            Phrase.of("chance that it comes by {0}", "probabilidad de que salga hasta {0}", depth(ahead.rodDown())),
            left.get().figure(SandAhead.FOUND_BY.name()), left.get());
    Optional<Outcome> cost = ahead.oneRod();
    return cost.isEmpty() ? with : cost(with, ahead.rodDown(), cost.get());
  }

  private static Sheet next(Sheet sheet, Ahead ahead, Outlook next) {
    Sheet with = outlook(sheet, next, ahead.logged());
    Optional<Outcome> cost = ahead.toNext();
    return cost.isEmpty() ? with : cost(with, ahead.goal().orElseThrow(), cost.get());
  }

  private static Sheet outlook(Sheet sheet, Outlook outlook, Length logged) {
    Phrase label = Phrase.of("top of {0}", "tope de {0}", outlook.name());
    return outlook.working().or(() -> outlook.ahead(logged))
        .map(working -> sheet.line(label, outlook.said(), working))
        .orElse(sheet.line(label, outlook.said()));
  }

  private static Sheet cost(Sheet sheet, Length to, Outcome cost) {
    Phrase label = Phrase.of("drilling on to {0}", "seguir hasta {0}", depth(to));
    Phrase feet = Phrase.of(
        "{0}, {1}", "{0}, {1}", cost.figure(GoingOn.FEET.name()), cost.figure(GoingOn.COST.name()));
    if (cost.shown(GoingOn.ADVICE.name()).isPresent()) {
      return sheet.line(label, Phrase.of(
          "{0}; by expected value: {1} ({2})", "{0}; según el valor esperado: {1} ({2})",
          feet, cost.shown(GoingOn.ADVICE.name()).get(), cost.figure(GoingOn.BALANCE.name())), cost);
    }
    if (cost.shown(GoingOn.PAYS_FROM.name()).isEmpty()) return sheet.line(label, feet, cost);
    return sheet.line(label, Phrase.of(
        "{0}; pays if a well, beyond finishing it, is worth more than {1}",
        "{0}; conviene si un pozo, aparte de terminarlo, vale más que {1}",
        feet, cost.figure(GoingOn.PAYS_FROM.name())), cost);
  }
}
