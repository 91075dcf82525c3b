package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import steening.bore.Settling;
import steening.finding.Expectation;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Sheet;
import steening.well.CasingString;
import steening.well.Fill;
import steening.well.Hole;
import steening.well.PumpingTest;
import steening.well.Well;

/** The cycles side by side, and what the next readings are held to. */
final class DevelopmentSheet {
  private static final Length TAPE = Length.of(0.2, Unit.FOOT);

  private DevelopmentSheet() {}

  static Sheet of(Well well) {
    Development development = well.get(Development.PART);
    List<CycleCapacity> capacities = CycleCapacity.all(well);
    Sheet sheet = Sheet.EMPTY;
    List<Development.Cycle> last = SandReadings.last(development, Optional.empty());
    if (!last.isEmpty()) {
      Outcome mean = SandReadings.mean(last);
      sheet = sheet.line(
          Phrase.of("sand, mean of the last {0} readings", "arena, media de las últimas {0} lecturas",
              Integer.toString(last.size())),
          mean.figure("mean"), mean);
    }
    if (!capacities.isEmpty()) {
      Outcome capacity = capacities.get(capacities.size() - 1).working();
      sheet = sheet.line(
          Phrase.of("specific capacity in the last cycle", "caudal específico en el último ciclo"),
          capacity.figure("specific-capacity"), capacity);
    }
    Optional<PackSettling> settling = PackSettling.of(well);
    if (settling.isPresent()) {
      sheet = sheet.line(
          Phrase.of("pack went down by", "el filtro bajó"),
          new Figure(settling.get().fallen().max(Length.ZERO), Scale.DEPTH));
    }
    return charted(ruled(sheet, well), development)
        .table(Phrase.of("Cycles", "Ciclos"), heads(), rows(development, capacities))
        .table(Phrase.of("When to stop", "Cuándo parar"), StopRule.HEADS, StopRule.rows(StopRule.of(well)));
  }

  private static Sheet ruled(Sheet sheet, Well well) {
    List<StopRule.Criterion> criteria = StopRule.of(well);
    if (criteria.isEmpty()) return sheet;
    return sheet.line(Phrase.of("enough developed?", "¿desarrollo suficiente?"), StopRule.said(criteria));
  }

  private static Sheet charted(Sheet sheet, Development development) {
    Optional<SandCourse> course = SandCourse.of(development);
    Sheet more = course.flatMap(SandChart::of).map(sheet::chart).orElse(sheet);
    Optional<Outcome> decay = course.flatMap(SandCourse::decay);
    if (decay.isEmpty()) return more;
    return more.line(SandDecay.RECKONING.title(), decay.get().words().get(SandDecay.FOUND.name()), decay.get());
  }

  private static List<Phrase> heads() {
    return List.of(
        Phrase.of("method", "método"), Phrase.of("minutes", "minutos"), Phrase.of("rate", "gasto"),
        Phrase.of("level below ground", "nivel bajo el terreno"), Phrase.of("specific capacity", "caudal específico"),
        Phrase.of("turbidity", "turbiedad"), Phrase.of("sand settled", "arena sedimentada"),
        Phrase.of("sand", "arena"));
  }

  private static List<List<Shown>> rows(Development development, List<CycleCapacity> capacities) {
    Map<String, Quantity> sizes = new TreeMap<>();
    for (CycleCapacity capacity : capacities) sizes.put(capacity.cycle().entry(), capacity.size());
    List<List<Shown>> rows = new ArrayList<>();
    for (Development.Cycle cycle : development.cycles()) {
      Optional<Quantity> capacity = Optional.ofNullable(sizes.get(cycle.entry()));
      boolean sand = cycle.settled().isPresent() && cycle.water().coherent() > 0;
      rows.add(List.of(
          cycle.method().map(m -> (Shown) m.label()).orElse(Phrase.same("–")),
          shown(cycle.minutes(), Scale.MINUTES),
          shown(cycle.rate(), Scale.FLOW),
          shown(cycle.level(), Scale.DEPTH),
          shown(capacity, Scale.SPECIFIC_CAPACITY),
          shown(cycle.turbidity(), Scale.TURBIDITY),
          shown(cycle.settled(), Scale.SETTLED_SAND),
          sand ? SandReadings.content(cycle).figure(SandContent.CONTENT.name()) : Phrase.same("–")));
    }
    return rows;
  }

  private static Shown shown(Optional<? extends Quantity> quantity, Scale scale) {
    return quantity.isEmpty() ? Phrase.same("–") : new Figure(quantity.get(), scale);
  }

  private static Optional<Outcome> settled(Well well, Fill.Tag tag) {
    Length bottom = well.get(Hole.PART).depth();
    if (tag.bags() == 0 || !bottom.isMoreThan(tag.depth())) return Optional.empty();
    return Optional.of(Settling.of(tag.depth(), bottom, well.get(CasingString.PART).screenTop()));
  }

  /** How much sand a pail may show, and where the tape should find the pack. */
  static List<Expectation> expectations(Well well) {
    if (well.get(PumpingTest.PART).started().isPresent()) return List.of();
    List<Expectation> expectations = new ArrayList<>();
    Development development = well.get(Development.PART);
    Quantity water = development.withSand().stream().reduce((a, b) -> b).map(Development.Cycle::water)
        .orElse(SandContent.PAIL);
    Term limit = Term.given("c", Phrase.of("limit for a house", "límite para una casa"), Scale.CONCENTRATION,
        SandReadings.LIMIT);
    Term from = Term.given("V", SandContent.WATER.label(), Scale.LIQUID, water);
    Outcome most = Outcome.empty()
        .with("sand", SandContent.sand(limit, from).named("v", SandContent.SAND.label(), Scale.SETTLED_SAND));
    expectations.add(new Expectation(
        Phrase.of("sand settled from {0}, at most", "arena sedimentada de {0}, como máximo",
            new Figure(water, Scale.LIQUID)),
        most.figure("sand"), Optional.empty(), most));
    Optional<Fill.Tag> tag = well.get(Fill.PACK).lastTag();
    if (tag.isPresent()) {
      Term top = Term.given(
          "z", Phrase.of("top of the pack as last sounded", "tope del filtro según el último sondeo"), Scale.DEPTH,
          tag.get().depth());
      Outcome same = Outcome.empty().with("top", top);
      expectations.add(new Expectation(
          Phrase.of("top of the pack, below ground", "tope del filtro, bajo el terreno"), same.figure("top"),
          Optional.of(new Figure(TAPE, Scale.DEPTH)), same));
      settled(well, tag.get()).ifPresent(o -> expectations.add(new Expectation(
          Phrase.of("the same once it has settled, no deeper than", "lo mismo ya asentado, no más abajo que"),
          o.figure(Settling.TOP_MOST.name()), Optional.empty(), o)));
    }
    SandCourse.of(development).flatMap(SandCourse::next).ifPresent(expectations::add);
    return expectations;
  }
}
