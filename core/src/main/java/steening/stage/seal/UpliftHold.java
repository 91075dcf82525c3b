package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * With how much a closed string floats in liquid grout, and what holds it: weight on top, a heavier fluid inside, or
 * less of it in liquid grout at a time.
 *
 * <p>U = −N, N as in {@link Buoyancy}; needed inside ρₙ = ρᵢ + U / (π/4 d² L); highest lift l = W L / U. W what holds
 * it, L length in grout, d inside diameter, ρᵢ density inside.
 */
final class UpliftHold {
  static final QuantityField OUTSIDE = GroutLifts.OUTSIDE;
  static final QuantityField INSIDE = QuantityField.of(
          "inside", Scale.DIAMETER, Phrase.of("casing inside diameter", "diámetro interior del ademe"), "4.07 in",
          "103 mm")
      .between("0.5 in", "36 in").usually("1.9 in", "13 in");
  static final QuantityField PER_LENGTH = QuantityField.of(
          "pipe-weight", Scale.PIPE_WEIGHT,
          Phrase.of("pipe weight per length, as printed", "peso del tubo por longitud, impreso"), "1.85 lb/ft",
          "2.75 kg/m")
      .between("0.05 lb/ft", "200 lb/ft").usually("0.5 lb/ft", "20 lb/ft").optional();
  static final QuantityField GROUT = GroutLifts.GROUT;
  static final QuantityField WITHIN = GroutLifts.WITHIN;
  static final QuantityField LENGTH = GroutLifts.COLUMN.named("length")
      .labelled("length of casing in liquid grout", "longitud de ademe en lechada líquida");
  static final QuantityField HELD = QuantityField.of(
          "held", Scale.WEIGHT, Phrase.of("weight that holds it down", "peso que lo sujeta"), "300 lb", "140 kg")
      .between("0 lb", "100000 lb").usually("0 lb", "5000 lb").optional();

  static final Answer UPLIFT = new Answer(
      "uplift", Phrase.of("lift; weight on top that holds it", "empuje; peso encima que lo sujeta"), Scale.WEIGHT);
  static final Answer NEEDED = new Answer(
      "needed-inside", Phrase.of("weight of a fluid inside that holds it", "densidad adentro que lo sujeta"),
      Scale.DENSITY);
  static final Answer LIFT = new Answer(
      "lift", Phrase.of("highest lift with what holds it", "etapa máxima con lo que lo sujeta"), Scale.DEPTH);

  static final Reckoning RECKONING = new Reckoning(
      "uplift-hold",
      SealStage.NAME,
      Phrase.of("What holds the casing down", "Qué sujeta el ademe"),
      List.of(OUTSIDE, INSIDE, PER_LENGTH, GROUT, WITHIN, LENGTH, HELD),
      answers(),
      Buoyancy.SOURCE,
      List.of(
          Phrase.of(
              "PVC with a closed bottom. Printed pipe weights differ by 8 %: hold it with half as much again.",
              "PVC con fondo cerrado. Los pesos impresos difieren en 8 %: sujételo con la mitad más."),
          Phrase.of(
              "Plastic casing is always anchored while it is grouted (trade article, seen). A lift that has set holds "
                  + "the casing for the next.",
              "El ademe plástico siempre se sujeta al cementar (artículo técnico, leído). Una etapa fraguada sujeta el "
                  + "ademe para la siguiente."),
          Phrase.of(
              "A heavier fluid inside must still let the casing be cleaned: mud, not grout.",
              "Un fluido más denso adentro debe poder limpiarse después: lodo, no lechada.")),
      UpliftHold::reckon);

  private static final Quantity NOTHING = new Measure(Dimension.MASS, 0);

  private UpliftHold() {}

  private static Outcome reckon(Inputs inputs) {
    Density within = inputs.find(WITHIN).map(q -> (Density) q).orElse(Buoyancy.WATER);
    Length length = inputs.length(LENGTH);
    Outcome weights = Buoyancy.of(
        inputs.length(OUTSIDE), inputs.length(INSIDE), inputs.find(PER_LENGTH), length,
        (Density) inputs.amount(GROUT), within);
    return of(weights, inputs.length(INSIDE), within, length, inputs.find(HELD));
  }

  /**
   * The weights, and what holds the string where it floats.
   *
   * @param held what holds it already
   */
  static Outcome of(Outcome weights, Length inside, Density within, Length length, Optional<Quantity> held) {
    Term closed = weights.term(Buoyancy.CLOSED.name());
    if (closed.quantity().coherent() >= 0) {
      return weights.remarking(Phrase.of("It does not float.", "No flota."));
    }
    Term uplift = Term.number(0).minus(closed).named("U", UPLIFT.label(), UPLIFT.scale());
    Term bore = Term.given("d", Phrase.of("inside diameter", "diámetro interior"), Scale.DIAMETER, inside).squared();
    Term filling = Term.given("ρᵢ", Phrase.of("density inside", "densidad interior"), Scale.DENSITY, within);
    Term run = Term.given("L", Phrase.of("length of the string", "longitud de la columna"), Scale.DEPTH, length);
    Term heavier = Coefficient.giving(Scale.DENSITY, 1 / Annulus.QUARTER_PI)
        .of(Scale.WEIGHT).of(Scale.DIAMETER, -2).of(Scale.DEPTH, -1).term();
    Term needed = filling.plus(heavier.times(uplift).over(bore.times(run)))
        .named("ρₙ", NEEDED.label(), NEEDED.scale());
    Outcome outcome = weights.with(UPLIFT.name(), uplift).with(NEEDED.name(), needed);
    double weight = held.orElse(NOTHING).coherent();
    if (held.isEmpty() || weight <= 0) return outcome;
    Term lift = Term.given("W₁", HELD.label(), HELD.scale(), held.get()).times(run).over(uplift)
        .named("l", LIFT.label(), LIFT.scale());
    Outcome with = outcome.with(LIFT.name(), lift);
    return weight < -closed.quantity().coherent() ? with
        : with.remarking(Phrase.of("What is on it holds it.", "Lo que tiene encima lo sujeta."));
  }

  private static List<Answer> answers() {
    List<Answer> answers = new ArrayList<>(Buoyancy.ANSWERS);
    answers.addAll(List.of(UPLIFT, NEEDED, LIFT));
    return answers;
  }
}
