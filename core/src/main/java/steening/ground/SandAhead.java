package steening.ground;

import java.util.List;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The chance that a sand is still below, when it was not met so far.
 *
 * <p>P = p q / (p q + 1 − p); p chance that there is one at all, q chance that its top is deeper than here. q is the
 * tail of Student's t where a deviation from n wells is given; else 1 / (1 + 19^x), a logistic curve through the
 * entered depths: x one at the deepest, nought at the likely, minus one at the shallowest, which leaves one in twenty
 * beyond either end.
 *
 * <p>Source: Bayes' rule, statistics by the book (memory); the logistic curve is a choice, no source. Range: a top that
 * is seen when it is drilled through. Accuracy: that of the forecast.
 */
public final class SandAhead {
  static final QuantityField NOW =
      depth("now", "logged to, without it", "registrado hasta, sin ella", "118 ft", "36 m");
  static final QuantityField LIKELY =
      depth("likely", "top as likely deeper as shallower", "tope tan probable más hondo como más somero", "103 ft",
          "31.4 m");
  static final QuantityField CHANCE = QuantityField.of(
          "chance", Scale.SHARE, Phrase.of("chance that there is one", "probabilidad de que haya una"), "86 %", "86 %")
      .between("0 %", "100 %");
  static final QuantityField DEVIATION = QuantityField.of(
          "deviation", Scale.DEPTH, SandForecast.DEVIATION.label(), "4.1 ft", "1.25 m")
      .between("0.01 ft", "2000 ft").usually("0.5 ft", "200 ft").optional();
  static final CountField WELLS =
      CountField.of("wells", Phrase.of("wells it comes from", "pozos de los que sale"), 2, 1000)
          .usuallyUpTo(40).optional();
  static final QuantityField SHALLOWEST =
      depth("shallowest", "shallower once in twenty", "más somera una de veinte veces", "94 ft", "28.6 m").optional();
  static final QuantityField DEEPEST =
      depth("deepest", "deeper once in twenty", "más honda una de veinte veces", "111 ft", "33.8 m").optional();
  static final QuantityField BY =
      depth("by", "if drilled on to", "si se perfora hasta", "138 ft", "42 m").optional();

  static final Answer DEEPER = new Answer(
      "deeper", Phrase.of("top deeper than here, if there is one", "tope más hondo que aquí, si la hay"), Scale.NUMBER);
  public static final Answer AHEAD = new Answer(
      "ahead", Phrase.of("chance that the sand is still below", "probabilidad de que la arena esté aún abajo"),
      Scale.SHARE);
  public static final Answer FOUND_BY = new Answer(
      "found-by", Phrase.of("chance that it comes by then", "probabilidad de que salga hasta ahí"), Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "sand-ahead",
      Grain.STAGE,
      Phrase.of("Chance that the sand is still below", "Probabilidad de que la arena esté aún abajo"),
      List.of(NOW, LIKELY, CHANCE, DEVIATION, WELLS, SHALLOWEST, DEEPEST, BY),
      List.of(DEEPER, AHEAD, FOUND_BY),
      Source.memory(
          "Bayes' rule and Student's t: statistics by the book. Logistic curve through entered depths: a choice, no"
              + " source.",
          "Regla de Bayes y t de Student: estadística de libro. Curva logística por profundidades dadas: una elección,"
              + " sin fuente."),
      List.of(
          Phrase.of(
              "Give the deviation and the wells it comes from, or the shallowest and deepest depth: one top in twenty"
                  + " lies beyond either.",
              "Dé la desviación y sus pozos, o la profundidad más somera y la más honda: una de veinte veces el tope"
                  + " queda más allá de cada una."),
          Phrase.of(
              "A top that is seen when it is drilled through: cuttings lag, and thin sand is missed.",
              "Un tope que se ve al perforarlo: los recortes se retrasan y una arena delgada se pasa por alto.")),
      SandAhead::reckon);

  private static final double ONE_IN_TWENTY = 19;

  /** Beyond this many times the entered reach nothing is left that a number could show. */
  private static final double FARTHEST = 20;

  private SandAhead() {}

  private static Outcome reckon(Inputs inputs) {
    Term deeper = tail(inputs, "x", inputs.given("N", NOW)).named("q", DEEPER.label(), DEEPER.scale());
    Term chance = inputs.given("p", CHANCE);
    Term hundred = Term.number(100);
    Term left = chance.times(deeper).plus(hundred.minus(chance));
    if (left.in(UnitSystem.US) <= 0) {
      throw new NotReckonable(
          "With a chance of 100 % the sand cannot be passed: give less.",
          "Con 100 % de probabilidad la arena no puede pasarse: dé menos.");
    }
    Outcome outcome = Outcome.empty()
        .with(DEEPER.name(), deeper)
        .with(AHEAD.name(), hundred.times(chance).times(deeper).over(left).named("P", AHEAD.label(), AHEAD.scale()));
    if (inputs.find(BY).isEmpty()) return outcome;
    if (inputs.length(BY).isLessThan(inputs.length(NOW))) {
      throw new NotReckonable(
          "Drilling on ends above where it begins.", "Seguir perforando termina más arriba de donde empieza.");
    }
    Term later = tail(inputs, "y", inputs.given("M", BY))
        .named("u", Phrase.of("top deeper than there, if there is one", "tope más hondo que allá, si la hay"),
            DEEPER.scale());
    return outcome.with(
        FOUND_BY.name(),
        hundred.times(chance).times(deeper.minus(later)).over(left)
            .named("F", FOUND_BY.label(), FOUND_BY.scale()));
  }

  private static Term tail(Inputs inputs, String symbol, Term at) {
    Term off = at.minus(inputs.given("L", LIKELY));
    if (inputs.find(DEVIATION).isPresent() && inputs.find(WELLS).isPresent()) {
      Phrase label = Phrase.of("deviations below the likely depth", "desviaciones bajo la profundidad probable");
      return off.over(inputs.given("σ", DEVIATION)).named(symbol, label, Scale.NUMBER)
          .tail(inputs.given("n", WELLS).minus(Term.number(1)));
    }
    if (inputs.find(SHALLOWEST).isEmpty() || inputs.find(DEEPEST).isEmpty()) {
      throw new NotReckonable(
          "Give the deviation and its wells, or the shallowest and the deepest depth.",
          "Dé la desviación y sus pozos, o la profundidad más somera y la más honda.");
    }
    if (!inputs.length(SHALLOWEST).isLessThan(inputs.length(LIKELY))
        || !inputs.length(LIKELY).isLessThan(inputs.length(DEEPEST))) {
      throw new NotReckonable(
          "Shallowest, likely and deepest must follow each other downward.",
          "La más somera, la probable y la más honda deben ir hacia abajo.");
    }
    boolean below = off.in(UnitSystem.US) >= 0;
    Term reach = below
        ? inputs.given("H", DEEPEST).minus(inputs.given("L", LIKELY))
        : inputs.given("L", LIKELY).minus(inputs.given("S", SHALLOWEST));
    Phrase label = Phrase.of("how far towards the end given", "cuánto hacia el extremo dado");
    Term share = off.over(reach).least(Term.number(FARTHEST)).named(symbol, label, Scale.NUMBER);
    return Term.number(1).over(Term.number(1).plus(Term.number(ONE_IN_TWENTY).power(share)));
  }

  private static QuantityField depth(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric)
        .between("0 ft", "6000 ft").usually("0 ft", "2000 ft");
  }
}
