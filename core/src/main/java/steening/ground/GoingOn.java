package steening.ground;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * What the next feet cost, and whether they are worth it.
 *
 * <p>C = h c; going on is worth P (V − F) − C. h feet to go, c price of a foot, P chance that a well comes of it, V
 * what a well is worth to the customer, F what is left to pay to finish it. It pays from a worth beyond finishing of
 * C / P.
 *
 * <p>Source: expected value (derived). Range: all feet paid, even where the sand comes sooner; the risk to the hole
 * itself is not in it. Accuracy: that of the chance.
 */
public final class GoingOn {
  static final QuantityField FROM = depth("from", "drilled to", "perforado hasta", "118 ft", "36 m");
  static final QuantityField TO = depth("to", "drilled on to", "perforando hasta", "165 ft", "50 m");
  public static final QuantityField PRICE = QuantityField.of(
          "price", Scale.PRICE, Phrase.of("price of drilling on", "precio de seguir perforando"), "$28/ft", "$92/m")
      .between("$0/ft", "$100000/ft").usually("$3/ft", "$500/ft");
  static final QuantityField CHANCE = QuantityField.of(
          "chance", Scale.SHARE, Phrase.of("chance that a well comes of it", "probabilidad de que dé un pozo"), "75 %",
          "75 %")
      .between("0.1 %", "100 %").optional();
  public static final QuantityField VALUE = Plan.WORTH.named("value");
  public static final QuantityField FINISHING = Plan.FINISHING.named("finishing");

  public static final Answer FEET = new Answer("feet", Phrase.of("still to drill", "por perforar"), Scale.DEPTH);
  public static final Answer COST = money("cost", "cost of drilling on", "costo de seguir perforando");
  public static final Answer BALANCE = money("balance", "going on is worth", "seguir vale");
  public static final Answer PAYS_FROM = money(
      "pays-from", "it pays if a well is worth more, beyond finishing it, than",
      "conviene si un pozo vale más, aparte de terminarlo, que");
  public static final Answer ADVICE =
      Answer.word("advice", Phrase.of("by expected value", "según el valor esperado"));

  public static final Reckoning RECKONING = new Reckoning(
      "next-feet-cost",
      Grain.STAGE,
      Phrase.of("The next feet: cost and worth", "Lo que falta perforar: costo y valor"),
      List.of(FROM, TO, PRICE, CHANCE, VALUE, FINISHING),
      List.of(FEET, COST, BALANCE, PAYS_FROM, ADVICE),
      Source.derived("Expected value.", "Valor esperado."),
      List.of(
          Phrase.of(
              "All feet are paid, even where the sand comes sooner.",
              "Se paga todo el tramo, aunque la arena salga antes."),
          Phrase.of(
              "The risk to the open hole is not in it. The customer decides, before the depth that was agreed.",
              "No incluye el riesgo del barreno abierto. Decide el cliente, antes de la profundidad acordada.")),
      GoingOn::reckon);

  private GoingOn() {}

  /** From one depth to another at the prices of a plan; nothing where it has no price of drilling. */
  public static Optional<Outcome> of(Plan plan, Length from, Length to, Optional<Quantity> chance) {
    if (plan.amount(Plan.FOOT_PRICE).isEmpty()) return Optional.empty();
    Inputs inputs =
        Inputs.none().with(FROM, from).with(TO, to).with(PRICE, plan.amount(Plan.FOOT_PRICE).get());
    if (chance.isPresent()) inputs = inputs.with(CHANCE, chance.get());
    if (plan.amount(Plan.WORTH).isPresent()) inputs = inputs.with(VALUE, plan.amount(Plan.WORTH).get());
    if (plan.amount(Plan.FINISHING).isPresent()) inputs = inputs.with(FINISHING, plan.amount(Plan.FINISHING).get());
    Inputs given = inputs;
    return Outcome.ifReckonable(() -> RECKONING.of(given));
  }

  private static Outcome reckon(Inputs inputs) {
    if (!inputs.length(TO).isMoreThan(inputs.length(FROM))) {
      throw new NotReckonable(
          "Drilling on must end below where it begins.", "Seguir perforando debe terminar más abajo que el inicio.");
    }
    Term feet = inputs.given("M", TO).minus(inputs.given("N", FROM)).named("h", FEET.label(), FEET.scale());
    Term cost = Coefficient.giving(COST.scale(), 1).of(Scale.PRICE).of(Scale.DEPTH).term()
        .times(feet).times(inputs.given("c", PRICE)).named("C", COST.label(), COST.scale());
    Outcome outcome = Outcome.empty().with(FEET.name(), feet).with(COST.name(), cost);
    if (inputs.find(CHANCE).isEmpty()) return outcome;
    Term chance = inputs.given("P", CHANCE).over(100)
        .named("f", Phrase.of("the same as a fraction", "lo mismo en fracción"), Scale.NUMBER);
    if (inputs.find(VALUE).isEmpty() || inputs.find(FINISHING).isEmpty()) {
      return outcome.with(
          PAYS_FROM.name(), cost.over(chance).named("E", PAYS_FROM.label(), PAYS_FROM.scale()));
    }
    Term balance = chance.times(inputs.given("V", VALUE).minus(inputs.given("F", FINISHING))).minus(cost)
        .named("B", BALANCE.label(), BALANCE.scale());
    boolean pays = balance.in(UnitSystem.US) > 0;
    return outcome
        .with(PAYS_FROM.name(), cost.over(chance).named("E", PAYS_FROM.label(), PAYS_FROM.scale()))
        .with(BALANCE.name(), balance)
        .naming(ADVICE.name(), pays ? Phrase.of("drill on", "seguir") : Phrase.of("stop here", "parar aquí"));
  }

  private static QuantityField depth(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric)
        .between("0 ft", "6000 ft").usually("0 ft", "2000 ft");
  }

  private static Answer money(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.MONEY);
  }
}
