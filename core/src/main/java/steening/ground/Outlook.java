package steening.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.well.Forecast;
import steening.well.Neighbours;
import steening.well.Site;
import steening.well.Well;

/**
 * How deep one sand is expected at a well: by the neighbours' logs, or as somebody entered it where they do not say.
 *
 * @param sand which sand, counted from the top: 1 is the wanted one
 * @param likely depth of its top
 * @param shallow nineteen times in twenty it is deeper
 * @param deep nineteen times in twenty it is shallower
 * @param chance that there is one
 * @param working of the forecast; none where it was entered
 * @param entries it rests on
 */
public record Outlook(
    int sand, Length likely, Length shallow, Length deep, Quantity chance, Inputs spread, Optional<Outcome> working,
    List<String> entries) {
  /** The sand the well is drilled for. */
  public static final int WANTED = 1;

  private static final int MOST_SANDS = 9;

  /** Two wells at least, and the ground here, give a forecast. */
  private static final int FEWEST = 2;

  public static Optional<Outlook> of(Well well, int sand) {
    return byNeighbours(well, sand).or(() -> well.get(Forecast.PART).of(sand).map(Outlook::asEntered));
  }

  /** Every sand that anything is expected of, from the top. */
  public static List<Outlook> all(Well well) {
    List<Outlook> all = new ArrayList<>();
    for (int sand = WANTED; sand <= MOST_SANDS; sand++) of(well, sand).ifPresent(all::add);
    return all;
  }

  /** The first sand below the wanted one that is expected deeper than this. */
  public static Optional<Outlook> next(Well well, Length depth) {
    return all(well).stream().filter(o -> o.sand() > WANTED && o.likely().isMoreThan(depth)).findFirst();
  }

  private static Optional<Outlook> byNeighbours(Well well, int sand) {
    List<Neighbours.Log> logs = well.get(Neighbours.PART).of(sand);
    List<Neighbours.Log> topped = logs.stream().filter(log -> log.topElevation().isPresent()).toList();
    Optional<Length> ground = well.get(Site.PART).place().flatMap(Site.Place::elevation);
    if (topped.size() < FEWEST || ground.isEmpty()) return Optional.empty();
    int found = (int) logs.stream().filter(Neighbours.Log::found).count();
    Inputs inputs = Inputs.none()
        .with(SandForecast.TOPS, topped.stream().map(l -> (Quantity) l.topElevation().orElseThrow()).toList())
        .with(SandForecast.DISTANCES, topped.stream().map(l -> (Quantity) l.distance()).toList())
        .with(SandForecast.GROUND, ground.get())
        .with(SandForecast.FOUND, found)
        .with(SandForecast.MISSED, logs.size() - found);
    return Outcome.ifReckonable(() -> SandForecast.RECKONING.of(inputs)).map(forecast -> new Outlook(
        sand,
        depth(forecast, SandForecast.DEPTH.name()),
        depth(forecast, SandForecast.SHALLOW.name()),
        depth(forecast, SandForecast.DEEP.name()),
        forecast.quantity(SandForecast.CHANCE.name()),
        Inputs.none()
            .with(SandAhead.DEVIATION, forecast.quantity(SandForecast.DEVIATION.name()))
            .with(SandAhead.WELLS, topped.size()),
        Optional.of(forecast),
        logs.stream().map(Neighbours.Log::entry).toList()));
  }

  private static Outlook asEntered(Forecast.Sand sand) {
    Inputs spread =
        Inputs.none().with(SandAhead.SHALLOWEST, sand.shallowest()).with(SandAhead.DEEPEST, sand.deepest());
    return new Outlook(
        sand.number(), sand.likely(), sand.shallowest(), sand.deepest(), sand.chance(), spread, Optional.empty(),
        List.of(sand.entry()));
  }

  /** The chance that this sand is still below, when it was not met down to here. */
  public Optional<Outcome> ahead(Length now) {
    return Outcome.ifReckonable(() -> SandAhead.RECKONING.of(at(now)));
  }

  /** The same, and the chance that it comes before a depth. */
  public Optional<Outcome> ahead(Length now, Length by) {
    return Outcome.ifReckonable(() -> SandAhead.RECKONING.of(at(now).with(SandAhead.BY, by)));
  }

  private Inputs at(Length now) {
    return spread.with(SandAhead.NOW, now).with(SandAhead.LIKELY, likely).with(SandAhead.CHANCE, chance);
  }

  /** The forecast on a sheet: depth with its ends, its working, and the chance. */
  public Phrase said() {
    return Phrase.of(
        "{0}, 9 times in 10 between {1} and {2}; chance that there is one {3}",
        "{0}, 9 de 10 veces entre {1} y {2}; probabilidad de que la haya {3}",
        figure(likely), figure(shallow), figure(deep), new Figure(chance, Scale.SHARE));
  }

  /** What it is called: the wanted sand, or the second, third. */
  public Phrase name() {
    return sand == WANTED
        ? Phrase.of("the wanted sand", "la arena buscada")
        : Phrase.of("sand {0} from the top", "la arena {0} desde arriba", Integer.toString(sand));
  }

  /** Water level at rest below the ground here, by the neighbours' levels in this sand; their plain mean. */
  public static Optional<Length> atRest(Well well, int sand) {
    Optional<Length> ground = well.get(Site.PART).place().flatMap(Site.Place::elevation);
    List<Length> levels = well.get(Neighbours.PART).of(sand).stream()
        .flatMap(l -> l.elevation().flatMap(e -> l.atRest().map(e::minus)).stream())
        .toList();
    if (ground.isEmpty() || levels.isEmpty()) return Optional.empty();
    Length sum = levels.stream().reduce(Length.ZERO, Length::plus);
    return Optional.of(ground.get().minus(Length.ofMetres(sum.coherent() / levels.size())));
  }

  static Figure figure(Length depth) {
    return new Figure(depth, Scale.DEPTH);
  }

  private static Length depth(Outcome forecast, String answer) {
    return (Length) forecast.quantity(answer);
  }
}
