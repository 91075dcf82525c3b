package steening.stage.site;

import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.ground.Outlook;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.Forecast;
import steening.well.Neighbours;
import steening.well.Well;

/**
 * What is known of the ground before it is drilled: neighbours' logs, one entry for each sand in them, or a forecast
 * where nobody's logs are at hand.
 */
final class NeighbourEntries {
  static final TextField WELL =
      TextField.of("neighbour", Phrase.of("neighbour's well", "pozo vecino"), "Well 104, Heron Lane");
  static final QuantityField DISTANCE = Neighbours.DISTANCE;
  static final QuantityField ELEVATION = QuantityField.of(
          "elevation", Scale.DEPTH, Phrase.of("ground elevation there", "cota del terreno ahí"), "221 ft", "67.4 m")
      .between("-1500 ft", "29100 ft").usually("-300 ft", "9000 ft").optional();
  static final CountField SAND = CountField.of(
          "sand", Phrase.of("which sand from the top; 1 is the wanted one", "qué arena desde arriba; 1 es la buscada"),
          1, 9)
      .usuallyUpTo(3).optional();
  static final ChoiceField FOUND = ChoiceField.of(
      "found", Phrase.of("that sand was found there", "esa arena se halló ahí"),
      ChoiceField.option("yes", "yes", "sí"), ChoiceField.option("no", "no, though deep enough", "no, aunque llegó"));
  static final QuantityField TOP = depth("top", "top of the sand", "tope de la arena", "105 ft", "32 m");
  static final QuantityField BOTTOM = depth("bottom", "bottom of the sand", "fondo de la arena", "122 ft", "37.2 m");
  static final QuantityField DEPTH =
      depth("depth", "depth of the finished well", "profundidad del pozo terminado", "124 ft", "37.8 m");
  static final QuantityField AT_REST =
      depth("static-level", "water level at rest there", "nivel estático ahí", "33 ft", "10 m");
  static final QuantityField YIELD = QuantityField.of(
          "yield", Scale.FLOW, Phrase.of("yield there", "gasto ahí"), "12 gpm", "0.8 L/s")
      .between("0 gpm", "10000 gpm").usually("0.2 gpm", "300 gpm").optional();
  static final Kind NEIGHBOUR = Kind.of(
          "neighbour", Phrase.of("A neighbour's log", "Registro de un vecino"), WELL, DISTANCE, ELEVATION, SAND, FOUND,
          TOP, BOTTOM, DEPTH, AT_REST, YIELD);

  static final QuantityField LIKELY = ends(
      "likely", "top of the sand, as likely deeper as shallower",
      "tope de la arena, tan probable más hondo como más somero", "103 ft", "31.4 m");
  static final QuantityField SHALLOWEST = ends(
      "shallowest", "shallowest: less once in twenty", "el más somero: menos una de veinte veces", "94 ft", "28.6 m");
  static final QuantityField DEEPEST = ends(
      "deepest", "deepest: more once in twenty", "el más hondo: más una de veinte veces", "112 ft", "34.1 m");
  static final QuantityField CHANCE = QuantityField.of(
          "chance", Scale.SHARE, Phrase.of("chance that there is one", "probabilidad de que la haya"), "80 %", "80 %")
      .between("1 %", "99 %");
  static final Kind FORECAST = Kind.of(
      "forecast", Phrase.of("Forecast of a sand", "Pronóstico de una arena"), SAND, LIKELY, SHALLOWEST, DEEPEST,
      CHANCE);

  private NeighbourEntries() {}

  static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    int sand = SAND.in(body).orElse(Outlook.WANTED);
    if (!entry.kind().equals(FORECAST.name())) {
      return well.with(Neighbours.PART, well.get(Neighbours.PART).with(log(body, sand, entry.id())));
    }
    Optional<Length> likely = LIKELY.length(body);
    if (likely.isEmpty() || SHALLOWEST.length(body).isEmpty() || DEEPEST.length(body).isEmpty()) return well;
    return CHANCE.in(body)
        .map(chance -> new Forecast.Sand(
            sand, likely.get(), SHALLOWEST.length(body).get(), DEEPEST.length(body).get(), chance, entry.id()))
        .map(said -> well.with(Forecast.PART, well.get(Forecast.PART).with(said)))
        .orElse(well);
  }

  private static Neighbours.Log log(Body body, int sand, String entry) {
    return new Neighbours.Log(
        WELL.text(body).orElse(""),
        DISTANCE.length(body).orElse(Length.ZERO),
        ELEVATION.length(body),
        sand,
        FOUND.in(body).map(option -> option.code().equals("yes")).orElse(false),
        TOP.length(body),
        BOTTOM.length(body),
        DEPTH.length(body),
        AT_REST.length(body),
        YIELD.in(body).map(q -> (FlowRate) q),
        entry);
  }

  private static QuantityField depth(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric)
        .between("-100 ft", "6000 ft").usually("-30 ft", "1200 ft").optional();
  }

  private static QuantityField ends(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric)
        .between("1 ft", "6000 ft").usually("5 ft", "1200 ft");
  }
}
