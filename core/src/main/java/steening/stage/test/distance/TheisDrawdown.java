package steening.stage.test.distance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.test.ConstantRateTest;
import steening.stage.test.TestStage;
import steening.stage.test.curve.TheisCurve;

/**
 * Drawdown at a distance and a time, after pumping at one rate or at several one after another, with a neighbour's well
 * beside it where there is one.
 *
 * <p>s = Σ ΔQᵢ W(uᵢ) / (4 π T), uᵢ = r² S / (4 T (t − tᵢ)); ΔQᵢ what the rate changed by at tᵢ. The neighbour pumps
 * from the beginning at one rate. Source: Theis 1935; adding up is exact, since the equation of flow is linear. Range:
 * confined, endless, even aquifer; at the pumped well itself its own losses come on top. Accuracy: 1e-9.
 */
public final class TheisDrawdown {
  public static final QuantityField TRANSMISSIVITY = QuantityField.of(
          "transmissivity", Scale.TRANSMISSIVITY, Phrase.of("transmissivity", "transmisividad"), "4500 gpd/ft",
          "56 m2/d")
      .between("0.01 gpd/ft", "100000000 gpd/ft");
  public static final QuantityField STORATIVITY = QuantityField.of(
          "storativity", Scale.NUMBER, Phrase.of("storativity", "coeficiente de almacenamiento"), "0.0002", "0.0002")
      .between("0.000000001", "0.5");
  public static final QuantityField DISTANCE = ConstantRateTest.OBSERVED_AT.labelled(
      "distance from the pumped well", "distancia al pozo bombeado").between("0.05 ft", "200000 ft");
  public static final QuantityField DAYS = Periods.AT;
  public static final QuantityField NEIGHBOUR_DISTANCE = DISTANCE.named("neighbour-distance")
      .labelled("distance from the neighbour's well", "distancia al pozo del vecino").optional();
  public static final QuantityField NEIGHBOUR_RATE = ConstantRateTest.RATE.named("neighbour-rate")
      .labelled("the neighbour's rate, from the beginning", "gasto del vecino, desde el principio").optional();

  static final Answer OWN = new Answer(
      "drawdown", Phrase.of("drawdown by this well", "abatimiento por este pozo"), Scale.DEPTH);
  static final Answer INTERFERENCE = new Answer(
      "interference", Phrase.of("drawdown by the neighbour's well", "abatimiento por el pozo del vecino"), Scale.DEPTH);
  static final Answer TOTAL =
      new Answer("total", Phrase.of("drawdown by both", "abatimiento por ambos"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "theis-drawdown",
      TestStage.NAME,
      Phrase.of("Drawdown to come, at a distance", "Abatimiento por venir, a distancia"),
      List.of(TRANSMISSIVITY, STORATIVITY, DISTANCE, Periods.STARTS, Periods.RATES, DAYS, NEIGHBOUR_DISTANCE,
          NEIGHBOUR_RATE),
      List.of(OWN, INTERFERENCE, TOTAL),
      Source.memory("Theis 1935; one rate after another by superposition.",
          "Theis 1935; un gasto tras otro por superposición."),
      List.of(
          Phrase.of(
              "Confined aquifer without end, the same everywhere; no leakage, no recharge.",
              "Acuífero confinado sin fin, igual en todas partes; sin goteo ni recarga."),
          Phrase.of("In the pumped well its own losses come on top.",
              "En el pozo bombeado se suman sus propias pérdidas."),
          Phrase.of("A stop is a period at no rate.", "Un paro es un período a gasto cero.")),
      TheisDrawdown::reckon);

  private static final Phrase U_LABEL = Phrase.of("u of that change", "u de ese cambio");
  private static final Phrase W_LABEL = Phrase.of("well function of it", "su función de pozo");
  private static final Phrase PART =
      Phrase.of("drawdown by that change of rate", "abatimiento por ese cambio de gasto");

  private final Term transmissivity;
  private final Term storativity;

  private TheisDrawdown(Inputs inputs) {
    this.transmissivity = inputs.given("T", TRANSMISSIVITY);
    this.storativity = inputs.given("S", STORATIVITY);
  }

  private static Outcome reckon(Inputs inputs) {
    return new TheisDrawdown(inputs).of(inputs);
  }

  private Outcome of(Inputs inputs) {
    Term distance = inputs.given("r", DISTANCE);
    List<Term> parts = new ArrayList<>();
    for (Periods.Change change : Periods.changes(inputs)) {
      String index = Term.index(change.number());
      parts.add(drawdown(distance, change.since(), change.rate(), index).named("s" + index, PART, Scale.DEPTH));
    }
    Term own = Term.sum(parts).named("s", OWN.label(), OWN.scale());
    Outcome outcome = Outcome.empty().with(OWN.name(), own);
    Optional<Quantity> rate = inputs.find(NEIGHBOUR_RATE);
    if (rate.isEmpty() || inputs.find(NEIGHBOUR_DISTANCE).isEmpty()) return outcome;
    Term minutes = Term.given("t_n", Phrase.of("minutes since the beginning", "minutos desde el principio"),
        Scale.MINUTES, inputs.amount(DAYS));
    Term neighbour = drawdown(
        inputs.given("r_n", NEIGHBOUR_DISTANCE), minutes, inputs.given("Q_n", NEIGHBOUR_RATE), "_n")
        .named("s_n", INTERFERENCE.label(), INTERFERENCE.scale());
    return outcome.with(INTERFERENCE.name(), neighbour)
        .with(TOTAL.name(), own.plus(neighbour).named("s_t", TOTAL.label(), TOTAL.scale()));
  }

  private Term drawdown(Term distance, Term minutes, Term rate, String index) {
    Term u = TheisCurve.u(distance, storativity, transmissivity, minutes).named("u" + index, U_LABEL, Scale.NUMBER);
    Term w = u.wellFunction().named("W" + index, W_LABEL, Scale.NUMBER);
    return TheisCurve.drawdown(rate, transmissivity, w);
  }
}
