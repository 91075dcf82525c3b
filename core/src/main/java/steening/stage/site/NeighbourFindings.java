package steening.stage.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.Forecast;
import steening.well.Neighbours;
import steening.well.Site;
import steening.well.Well;

/** Neighbours' logs that cannot be reckoned with, and forecasts that contradict themselves. */
final class NeighbourFindings {
  /** Ground seldom falls or rises more between neighbours in one county. Common practice, no source. */
  private static final Length HIGH = Length.feet(500);

  private NeighbourFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Optional<Length> ground = well.get(Site.PART).place().flatMap(Site.Place::elevation);
    List<Neighbours.Log> logs = well.get(Neighbours.PART).logs();
    for (Neighbours.Log log : logs) {
      upsideDown(log).ifPresent(findings::add);
      unlevelled(log).ifPresent(findings::add);
      ground.flatMap(g -> elsewhere(log, g)).ifPresent(findings::add);
    }
    boolean levelled = logs.stream().anyMatch(log -> log.topElevation().isPresent());
    if (ground.isEmpty() && levelled) findings.add(groundUnknown(logs));
    for (Forecast.Sand sand : well.get(Forecast.PART).sands()) outOfOrder(sand).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> upsideDown(Neighbours.Log log) {
    Optional<Length> below = log.bottom().or(log::depth);
    if (log.top().isEmpty() || below.isEmpty() || below.get().isMoreThan(log.top().get())) return Optional.empty();
    return Optional.of(look("site.neighbour-upside-down", Phrase.of(
            "{0}: top of the sand at {1}, but its bottom or the well's at {2}.",
            "{0}: tope de la arena a {1}, pero su fondo o el del pozo a {2}.",
            log.well(), depth(log.top().get()), depth(below.get())))
        .comparing(depth(log.top().get()), depth(below.get()))
        .so(Phrase.of("Correct the entry.", "Corrija el registro."))
        .from(List.of(log.entry())));
  }

  private static Optional<Finding> unlevelled(Neighbours.Log log) {
    if (log.top().isEmpty() || !log.found() || log.elevation().isPresent()) return Optional.empty();
    return Optional.of(look("site.neighbour-elevation-unknown", Phrase.of(
            "{0}: the sand is at {1} there, but the ground's elevation is not written down.",
            "{0}: la arena está ahí a {1}, pero falta la cota del terreno.",
            log.well(), depth(log.top().get())))
        .because(Phrase.of(
            "A depth there says nothing about a depth here unless both grounds are known.",
            "Una profundidad de allá no dice nada aquí si no se conocen ambos terrenos."))
        .so(Phrase.of("Read it off a map; until then this log is left out.",
            "Léala en un mapa; hasta entonces ese registro no cuenta."))
        .from(List.of(log.entry())));
  }

  private static Optional<Finding> elsewhere(Neighbours.Log log, Length ground) {
    if (log.elevation().isEmpty()) return Optional.empty();
    Length there = log.elevation().get();
    Length apart = there.isMoreThan(ground) ? there.minus(ground) : ground.minus(there);
    if (!apart.isMoreThan(HIGH)) return Optional.empty();
    return Optional.of(look("site.neighbour-elevation", Phrase.of(
            "{0}: ground at {1}, and at {2} here: {3} apart.", "{0}: terreno a {1}, y aquí a {2}: {3} de diferencia.",
            log.well(), depth(there), depth(ground), depth(apart)))
        .comparing(depth(there), depth(ground))
        .because(Phrase.of("Feet for metres, or a slip.", "Pies por metros, o un error."))
        .so(Phrase.of("Look at both on a map.", "Vea ambas en un mapa."))
        .from(List.of(log.entry())));
  }

  private static Finding groundUnknown(List<Neighbours.Log> logs) {
    return look("site.elevation-unknown", Phrase.of(
            "The neighbours' sand is known by elevation, but the ground's elevation here is not written down.",
            "La arena de los vecinos se conoce por cota, pero falta la cota del terreno aquí."))
        .so(Phrase.of("Read it off a map: it makes a depth of their elevations.",
            "Léala en un mapa: convierte sus cotas en una profundidad."))
        .from(List.of(logs.get(logs.size() - 1).entry()));
  }

  private static Optional<Finding> outOfOrder(Forecast.Sand sand) {
    boolean good = sand.shallowest().isLessThan(sand.likely()) && sand.likely().isLessThan(sand.deepest());
    if (good) return Optional.empty();
    return Optional.of(look("site.forecast-order", Phrase.of(
            "Forecast: shallowest {0}, likely {1}, deepest {2} do not follow each other downward.",
            "Pronóstico: más somero {0}, probable {1}, más hondo {2} no van hacia abajo.",
            depth(sand.shallowest()), depth(sand.likely()), depth(sand.deepest())))
        .so(Phrase.of("Correct the entry.", "Corrija el registro."))
        .from(List.of(sand.entry())));
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, SiteStage.NAME, text);
  }

  private static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }
}
