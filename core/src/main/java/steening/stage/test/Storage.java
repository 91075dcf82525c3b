package steening.stage.test;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/** What an observation well tells beyond transmissivity: storativity, and whether the straight line held. */
final class Storage {
  /** Above this the straight line is off by more than 2 % of the well function (computed). */
  private static final double GREATEST_U = 0.05;

  private Storage() {}

  static Outcome added(
      Outcome outcome, Inputs inputs, List<StraightLine.Point> used, Term transmissivity, StraightLine line) {
    if (inputs.find(ConstantRateTest.DISTANCE).isEmpty()) {
      return outcome.remarking(Phrase.of(
          "Storativity is not answered: the pumped well alone does not tell it, since its own losses shift the line."
              + " Give the distance to an observation well with its drawdowns.",
          "No se responde el coeficiente de almacenamiento: el pozo bombeado solo no lo dice, pues sus propias"
              + " pérdidas desplazan la recta. Dé la distancia a un pozo de observación con sus abatimientos."));
    }
    Optional<Term> meets = JacobConstants.zeroTime(line);
    if (meets.isEmpty()) {
      return outcome.remarking(Phrase.of(
          "The line is too flat to tell where it meets zero: no storativity.",
          "La recta es demasiado plana para decir dónde corta el cero: no hay coeficiente de almacenamiento."));
    }
    Term zeroTime = meets.get().named("t₀", ConstantRateTest.ZERO_TIME.label(), ConstantRateTest.ZERO_TIME.scale());
    Term distance = inputs.given("r", ConstantRateTest.DISTANCE);
    Term storativity = JacobConstants.storativity(transmissivity, zeroTime, distance)
        .named("S", ConstantRateTest.STORATIVITY.label(), ConstantRateTest.STORATIVITY.scale());
    double first = used.stream().mapToDouble(StraightLine.Point::minutes).min().orElseThrow();
    Term minutes = Term.given("t", Phrase.of("first reading used", "primera lectura usada"), Scale.MINUTES,
        Window.quantity(first));
    Term u = JacobConstants.u(distance, storativity, transmissivity, minutes)
        .named("u", ConstantRateTest.U.label(), ConstantRateTest.U.scale());
    Outcome more = outcome.with(ConstantRateTest.ZERO_TIME.name(), zeroTime)
        .with(ConstantRateTest.STORATIVITY.name(), storativity).with(ConstantRateTest.U.name(), u);
    if (u.in(UnitSystem.METRIC) < GREATEST_U) return more;
    return more.remarking(Phrase.of(
        "u is {0} at {1}: above 0.05 the readings are not yet on the straight line. Begin the window later.",
        "u es {0} a {1}: por encima de 0.05 las lecturas aún no están en la recta. Empiece la ventana más tarde.",
        new Figure(u.quantity(), Scale.NUMBER), Window.minutes(first)));
  }
}
