package steening.stage.drilling.ahead;

import java.util.List;
import java.util.Optional;
import steening.finding.Expectation;
import steening.ground.Outlook;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Well;

/** How deep the sand is expected, before it is met; past its forecast, the next one. */
public final class AheadExpectations {
  private AheadExpectations() {}

  public static List<Expectation> of(Well well) {
    Optional<Ahead> ahead = Ahead.of(well);
    if (ahead.isEmpty() || ahead.get().met()) return List.of();
    Optional<Outlook> wanted = ahead.get().wanted();
    return (ahead.get().isPassed() ? ahead.get().next() : wanted).stream()
        .flatMap(outlook -> expectation(outlook, ahead.get().logged()).stream())
        .toList();
  }

  /** A band is give or take: only the neighbours' forecast reaches as far up as down. */
  private static Optional<Expectation> expectation(Outlook outlook, Length logged) {
    Optional<Outcome> working = outlook.working().or(() -> outlook.ahead(logged));
    if (working.isEmpty()) return Optional.empty();
    Figure likely = new Figure(outlook.likely(), Scale.DEPTH);
    if (outlook.working().isEmpty()) {
      Phrase between = Phrase.of(
          "top of {0}, 9 times in 10 between {1} and {2}", "tope de {0}, 9 de 10 veces entre {1} y {2}",
          outlook.name(), new Figure(outlook.shallow(), Scale.DEPTH), new Figure(outlook.deep(), Scale.DEPTH));
      return Optional.of(new Expectation(between, likely, Optional.empty(), working.get()));
    }
    Phrase top = Phrase.of("top of {0}, 9 times in 10", "tope de {0}, 9 de 10 veces", outlook.name());
    Figure band = new Figure(outlook.deep().minus(outlook.likely()), Scale.DEPTH);
    return Optional.of(new Expectation(top, likely, Optional.of(band), working.get()));
  }
}
