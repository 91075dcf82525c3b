package steening.ground;

import java.util.ArrayList;
import java.util.List;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Neighbours;

/**
 * How deep a sand lies, by the neighbours' logs: its top as an elevation, the nearer wells weighing more.
 *
 * <p>μ = Σwz / Σw, w = (1 mile / d)²; n = (Σw)² / Σw²; s² = Σw(z − μ)² / Σw · n / (n − 1); σ = s √(1 + 1/n); depth =
 * ground − μ, nine times in ten within t σ of it, t Student's with one degree less than wells. z elevation of the top
 * in a neighbour's well, d how far it is. Two wells weigh alike. Beside it the same with equal weights. Chance that
 * there is such a sand: (1 + found) / (2 + found + not found).
 *
 * <p>Source: weighting by the square of the distance is common practice, no source; predictive interval of a normal
 * mean and the rule of succession, statistics by the book (memory). Range: a layer without faults or old river beds
 * between the wells; from two wells. Accuracy: what the interval says, if the neighbours' logs are right.
 */
public final class SandForecast {
  static final SeriesField TOPS = SeriesField.of(
      QuantityField.of(
              "tops", Scale.DEPTH,
              Phrase.of("elevations of the top in the neighbours' wells", "cotas del tope en los pozos vecinos"),
              "116 ft", "35.4 m")
          .between("-8000 ft", "29100 ft").usually("-3000 ft", "9000 ft"),
      2, "116 112 120 110 113 ft", "35.4 34.1 36.6 33.5 34.4 m");
  static final SeriesField DISTANCES = SeriesField.of(
      Neighbours.DISTANCE.named("distances").labelled("how far those wells are", "a qué distancia están"),
      2, "0.3 0.5 0.6 0.9 1.2 mi", "0.5 0.8 1 1.4 1.9 km");
  static final QuantityField GROUND = QuantityField.of(
          "ground", Scale.DEPTH, Phrase.of("ground elevation here", "cota del terreno aquí"), "218 ft", "66.4 m")
      .between("-1500 ft", "29100 ft").usually("-300 ft", "9000 ft");
  static final CountField FOUND = wells("found", "wells that found it, where some give no top",
      "pozos que la hallaron, si alguno no da el tope");
  static final CountField MISSED = wells("missed", "wells deep enough that did not find it",
      "pozos bastante hondos que no la hallaron");

  public static final Answer DEPTH = depth("depth", "top of the sand expected at", "tope de la arena esperado a");
  public static final Answer SHALLOW = depth("shallow", "19 times in 20 deeper than", "19 de 20 veces más honda que");
  public static final Answer DEEP = depth("deep", "19 times in 20 shallower than", "19 de 20 veces menos honda que");
  public static final Answer DEVIATION = depth("deviation", "standard deviation", "desviación estándar");
  public static final Answer CHANCE = new Answer(
      "chance", Phrase.of("chance that there is such a sand", "probabilidad de que haya tal arena"), Scale.SHARE);
  static final Answer ELEVATION = depth("elevation", "mean elevation of the top", "cota media del tope");
  static final Answer WELLS = new Answer(
      "wells", Phrase.of("wells that count in effect", "pozos que cuentan en efecto"), Scale.NUMBER);
  static final Answer DEPTH_ALIKE = depth("depth-alike", "depth, all weighed alike", "profundidad, todos por igual");
  static final Answer SHALLOW_ALIKE = depth("shallow-alike", "shallow end, all alike", "extremo somero, por igual");
  static final Answer DEEP_ALIKE = depth("deep-alike", "deep end, all alike", "extremo hondo, por igual");

  public static final Reckoning RECKONING = new Reckoning(
      "sand-forecast",
      "site",
      Phrase.of("How deep the sand is", "A qué profundidad está la arena"),
      List.of(TOPS, DISTANCES, GROUND, FOUND, MISSED),
      List.of(
          DEPTH, SHALLOW, DEEP, CHANCE, DEVIATION, ELEVATION, WELLS, DEPTH_ALIKE, SHALLOW_ALIKE, DEEP_ALIKE),
      Source.memory(
          "Predictive interval by Student's t and rule of succession: statistics by the book. Weights by the square of"
              + " the distance: common practice, no source.",
          "Intervalo de predicción por t de Student y regla de sucesión: estadística de libro. Pesos por el cuadrado"
              + " de la distancia: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "A layer that goes through from well to well: no fault, no old river bed between them.",
              "Una capa continua de pozo a pozo: sin falla ni cauce antiguo entre ellos."),
          Phrase.of(
              "Elevations, not depths: correct each log for the ground at that well.",
              "Cotas, no profundidades: corrija cada registro por el terreno de ese pozo."),
          Phrase.of(
              "Two wells say little, and their interval shows it. One well gives none.",
              "Dos pozos dicen poco, y su intervalo lo muestra. Uno solo no da ninguno."),
          Phrase.of(
              "The spread is taken as no less than 1 ft: logs and elevations are no better (common practice, no"
                  + " source).",
              "La dispersión se toma no menor que 0.3 m: ni registros ni cotas son mejores (práctica común, sin"
                  + " fuente).")),
      SandForecast::reckon);

  private static final Quantity A_MILE = Length.of(1, Unit.MILE);

  private static final int FEWEST_TO_WEIGH = 3;

  private SandForecast() {}

  private static Outcome reckon(Inputs inputs) {
    List<Quantity> tops = inputs.value(TOPS);
    List<Quantity> distances = inputs.value(DISTANCES);
    if (tops.size() != distances.size()) {
      throw new NotReckonable(
          "{0} tops, but {1} distances: each well needs both.", "{0} topes, pero {1} distancias: cada pozo da las dos.",
          Integer.toString(tops.size()), Integer.toString(distances.size()));
    }
    WeighedTops nearest = WeighedTops.of(elevations(tops), weights(distances), "");
    Outcome outcome = nearest.answers(inputs, List.of(DEPTH, SHALLOW, DEEP))
        .with(DEVIATION.name(), nearest.deviation())
        .with(ELEVATION.name(), nearest.mean())
        .with(WELLS.name(), nearest.effective())
        .with(CHANCE.name(), chance(inputs, tops.size()));
    if (tops.size() < FEWEST_TO_WEIGH) {
      return outcome.remarking(Phrase.of(
          "Two wells: both weigh alike, whatever their distance.",
          "Dos pozos: ambos pesan igual, sea cual sea su distancia."));
    }
    WeighedTops alike = WeighedTops.of(elevations(tops), tops.stream().map(t -> Term.number(1)).toList(), "′");
    Outcome plain = alike.answers(inputs, List.of(DEPTH_ALIKE, SHALLOW_ALIKE, DEEP_ALIKE));
    for (String name : plain.answers().keySet()) outcome = outcome.with(name, plain.term(name));
    return outcome;
  }

  private static List<Term> elevations(List<Quantity> tops) {
    List<Term> elevations = new ArrayList<>();
    for (Quantity top : tops) {
      String index = Term.index(elevations.size() + 1);
      elevations.add(Term.given(
          "z" + index, Phrase.of("top, well {0}", "tope, pozo {0}", Integer.toString(elevations.size() + 1)),
          Scale.DEPTH, top));
    }
    return elevations;
  }

  private static List<Term> weights(List<Quantity> distances) {
    List<Term> weights = new ArrayList<>();
    Term mile = Term.given(
        "a", Phrase.of("distance that weighs one", "distancia que pesa uno"), Scale.FAR, A_MILE);
    for (Quantity distance : distances) {
      String number = Integer.toString(weights.size() + 1);
      String index = Term.index(weights.size() + 1);
      Term far =
          Term.given("d" + index, Phrase.of("distance, well {0}", "distancia, pozo {0}", number), Scale.FAR, distance);
      weights.add(distances.size() < FEWEST_TO_WEIGH
          ? Term.number(1)
          : mile.over(far).squared()
              .named("w" + index, Phrase.of("weight, well {0}", "peso, pozo {0}", number), Scale.NUMBER));
    }
    return weights;
  }

  /** By the rule of succession: a chance that was never met is not yet nought. */
  private static Term chance(Inputs inputs, int withTops) {
    Term found = inputs.find(FOUND).isPresent()
        ? inputs.given("h", FOUND)
        : Inputs.count("h", Phrase.of("wells that found it", "pozos que la hallaron"), withTops);
    Term missed = Inputs.count("v", MISSED.label(), inputs.find(MISSED).orElse(0));
    return Coefficient.giving(Scale.SHARE, 1).term()
        .times(Term.number(1).plus(found))
        .over(Term.number(2).plus(found).plus(missed))
        .named("p", CHANCE.label(), CHANCE.scale());
  }

  private static CountField wells(String name, String english, String spanish) {
    return CountField.of(name, Phrase.of(english, spanish), 0, 1000).usuallyUpTo(40).optional();
  }

  private static Answer depth(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.DEPTH);
  }
}
