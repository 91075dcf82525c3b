package steening.stage.drilling.fluid;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * How high the water of a flowing well would stand, by a gauge on the closed well.
 *
 * <p>h = p / (g ρ) + e. p pressure at the gauge, e height of the gauge above ground, ρ density of water.
 *
 * <p>Source: hydrostatics (derived). Range: the well closed and at rest, no gas. Accuracy: that of the gauge: 1 psi is
 * 2.3 ft.
 */
public final class ShutInHead {
  static final QuantityField PRESSURE = QuantityField.of(
          "shut-in", Scale.PRESSURE, Phrase.of("shut-in pressure", "presión a pozo cerrado"), "4 psi", "28 kPa")
      .between("0 psi", "500 psi").usually("0 psi", "40 psi");
  static final QuantityField GAUGE = DrillingEntries.HEAD.named("gauge-height")
      .labelled("gauge above ground", "manómetro sobre el terreno").optional();

  static final Answer HEAD =
      new Answer("head", Phrase.of("head above ground", "carga sobre el terreno"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "shut-in-head",
      DrillingStage.NAME,
      Phrase.of("Head of a closed flowing well", "Carga de un pozo surgente cerrado"),
      List.of(PRESSURE, GAUGE),
      List.of(HEAD),
      Source.derived("Hydrostatics.", "Hidrostática."),
      List.of(Phrase.of(
          "The well closed and at rest, without gas. Open it slowly; pipe that is not held can lift.",
          "Pozo cerrado y en reposo, sin gas. Ábralo despacio; la tubería suelta puede levantarse.")),
      ShutInHead::reckon);

  private static final double GRAVITY = 9.80665;

  private ShutInHead() {}

  static Outcome of(Quantity pressure, Optional<Length> gauge) {
    Inputs inputs = Inputs.none().with(PRESSURE, pressure);
    return RECKONING.of(gauge.map(g -> inputs.with(GAUGE, g)).orElse(inputs));
  }

  private static Outcome reckon(Inputs inputs) {
    Term water = Term.given("ρ", Phrase.of("density of water", "densidad del agua"), Scale.DENSITY, Buoyancy.WATER);
    Term head = Coefficient.giving(Scale.DEPTH, 1 / GRAVITY).of(Scale.PRESSURE).of(Scale.DENSITY, -1).term()
        .times(inputs.given("p", PRESSURE))
        .over(water)
        .plus(inputs.given("e", GAUGE, Length.ZERO))
        .named("h", HEAD.label(), HEAD.scale());
    return Outcome.empty().with(HEAD.name(), head);
  }
}
