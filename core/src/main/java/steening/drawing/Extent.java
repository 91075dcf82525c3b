package steening.drawing;

import java.util.stream.Stream;
import steening.bore.Bore;
import steening.bore.Reach;
import steening.quantity.Length;
import steening.well.Levels;
import steening.well.Plan;
import steening.well.Stratum;

/**
 * How far a drawing has to reach.
 *
 * @param deepest of all that is known or planned, below ground; a hundred feet while there is nothing
 * @param highest of it, as a height above ground
 * @param widest hole or pipe
 */
record Extent(Length deepest, Length highest, Length widest) {
  private static final Length EMPTY_SHEET = Length.feet(100);
  private static final Length LEAST_SHEET = Length.feet(10);

  static Extent of(AsBuilt well) {
    return new Extent(deepest(well), highest(well), widest(well));
  }

  private static Length deepest(AsBuilt well) {
    Stream<Length> bores = Stream.of(well.hole(), well.pipe(), well.hanging(), well.plannedPipe())
        .map(Bore::bottom);
    Stream<Length> fills = well.fills().stream().map(FillReach::bottom);
    Stream<Length> log = Stream.of(well.log().bottom());
    Stream<Length> known = Stream.of(
            bores, log, fills, levels(well), well.plan().length(Plan.DEPTH).stream(), well.intake().stream())
        .flatMap(s -> s);
    Length deepest = known.max(Length::compareTo).orElse(Length.ZERO);
    return deepest.isMoreThan(Length.ZERO) ? deepest.max(LEAST_SHEET) : EMPTY_SHEET;
  }

  private static Length highest(AsBuilt well) {
    Stream<Length> tops = Stream.of(
            tops(well.pipe()), tops(well.plannedPipe()), tops(well.hole()), levels(well),
            well.log().strata().stream().map(Stratum::from), well.fills().stream().map(FillReach::top))
        .flatMap(s -> s);
    return Length.ZERO.minus(tops.min(Length::compareTo).orElse(Length.ZERO).min(Length.ZERO));
  }

  private static Length widest(AsBuilt well) {
    Stream<Length> drawn = Stream.of(well.hole(), well.pipe(), well.plannedPipe())
        .flatMap(bore -> bore.reaches().stream().map(Reach::diameter));
    return Stream.concat(drawn, well.plan().length(Plan.HOLE).stream())
        .max(Length::compareTo).filter(width -> width.isMoreThan(Length.ZERO)).orElse(AsBuilt.USUAL_HOLE);
  }

  private static Stream<Length> tops(Bore bore) {
    return bore.reaches().stream().map(Reach::from);
  }

  private static Stream<Length> levels(AsBuilt well) {
    return Stream.concat(well.levels().atRest().stream(), well.levels().pumping().stream()).map(Levels.Level::depth);
  }
}
