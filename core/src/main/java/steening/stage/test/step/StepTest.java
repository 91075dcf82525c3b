package steening.stage.test.step;

import java.util.List;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
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
import steening.stage.test.StraightLine;
import steening.stage.test.TestStage;

/**
 * What the aquifer and what the well take of the drawdown, from a test in steps: s/Q is a straight line over Q.
 *
 * <p>s/Q = B + C Q, unweighted least squares; Q rate of a step, s drawdown after the same time in each. The rates stand
 * in the line as shares x of the highest, so that its slope is C Q_max. Source: Jacob 1947; Hantush 1964 and Bierschenk
 * 1963. Range: steps of one length, each begun before the level came back. Accuracy: the line is exact; B is good to 10
 * %, C to 25 %, by what authors made of the same steps.
 */
public final class StepTest {
  public static final SeriesField RATES = Steps.RATES;
  public static final SeriesField DRAWDOWNS = Steps.DRAWDOWNS;
  public static final QuantityField AT = WellLoss.RATE.optional();

  static final Answer AQUIFER = new Answer(
      "aquifer-loss-coefficient", Phrase.of("B, what the aquifer takes", "B, lo que toma el acuífero"),
      Scale.SPECIFIC_DRAWDOWN);
  static final Answer WELL = new Answer(
      "well-loss-coefficient", Phrase.of("C, what the well takes", "C, lo que toma el pozo"), Scale.WELL_LOSS);

  public static final Reckoning RECKONING = new Reckoning(
      "step-test",
      TestStage.NAME,
      Phrase.of("Step test", "Prueba escalonada"),
      List.of(RATES, DRAWDOWNS, AT),
      List.of(AQUIFER, WELL, WellLoss.AQUIFER, WellLoss.WELL, WellLoss.DRAWDOWN, WellLoss.EFFICIENCY, WellLoss.CLASS,
          LossExponent.EXPONENT, LossExponent.ERROR),
      Source.seen("Jacob 1947; Bierschenk 1963, of which the abstract was read; the exponent Rorabaugh 1953, memory.",
          "Jacob 1947; Bierschenk 1963, del que se leyó el resumen; el exponente Rorabaugh 1953, de memoria."),
      List.of(
          Phrase.of("Drawdowns after the same time in each step.",
              "Abatimientos tras el mismo tiempo en cada escalón."),
          Phrase.of(
              "Ends of steps as read still carry the earlier steps on: B and C come out some 10 to 15 % high.",
              "Los finales de escalón leídos arrastran los anteriores: B y C resultan un 10 a 15 % altos."),
          Phrase.of("Without a rate given, the highest step.", "Si no se da un gasto, el escalón mayor.")),
      StepTest::reckon);

  private StepTest() {}

  private static Outcome reckon(Inputs inputs) {
    Steps steps = Steps.in(inputs);
    Quantity most = new FlowRate(steps.most());
    Term highest = Term.given("Q_m", Phrase.of("highest rate", "gasto mayor"), Scale.FLOW, most);
    Phrase across = Phrase.of("rate / highest rate", "gasto / gasto mayor");
    StraightLine.Sums sums = StraightLine.Sums.of(steps.shares(), steps.specific(), Scale.SPECIFIC_DRAWDOWN, across,
        Phrase.of("the s/Q", "los s/Q"));
    Term slope = sums.slope()
        .named("m", Phrase.of("slope of s/Q", "pendiente de s/Q"), Scale.SPECIFIC_DRAWDOWN);
    Term aquifer = sums.start(slope).named("B", AQUIFER.label(), AQUIFER.scale());
    Term well = Coefficient.giving(Scale.WELL_LOSS, 1).of(Scale.SPECIFIC_DRAWDOWN).of(Scale.FLOW, -1).term()
        .times(slope).over(highest).named("C", WELL.label(), WELL.scale());
    refuseBackwards(aquifer, slope);
    Quantity wanted = inputs.find(AT).orElse(most);
    Term rate = Term.given("Q", AT.label(), Scale.FLOW, wanted);
    Outcome outcome = Outcome.empty().with(AQUIFER.name(), aquifer).with(WELL.name(), well);
    outcome = WellLoss.at(outcome, rate, aquifer, well);
    outcome = LossExponent.added(outcome, steps, aquifer.quantity().coherent(), well.quantity().coherent());
    if (steps.size() == 2) {
      outcome = outcome.remarking(Phrase.of(
          "Two steps always lie on a line: nothing tells how good it is.",
          "Dos escalones siempre están en una recta: nada dice qué tan buena es."));
    }
    if (wanted.coherent() <= most.coherent()) return outcome;
    return outcome.remarking(Phrase.of(
        "{0} is above the highest step, {1}.", "{0} está por encima del escalón mayor, {1}.",
        new Figure(wanted, Scale.FLOW), steps.highest()));
  }

  private static void refuseBackwards(Term aquifer, Term slope) {
    if (!(slope.quantity().coherent() > 0)) {
      throw new NotReckonable(
          "s/Q does not grow with the rate: {0} from no rate to the highest. No well loss shows; perhaps the well was"
              + " still developing, or a step was too short.",
          "s/Q no crece con el gasto: {0} de cero al gasto mayor. No se ve pérdida del pozo; quizá el pozo seguía"
              + " desarrollándose o un escalón fue corto.",
          new Figure(slope.quantity(), Scale.SPECIFIC_DRAWDOWN));
    }
    if (!(aquifer.quantity().coherent() > 0)) {
      throw new NotReckonable(
          "The line meets no rate at {0}, below zero. See the levels and rates of the steps.",
          "La recta llega a gasto cero en {0}, bajo cero. Revise niveles y gastos de los escalones.",
          new Figure(aquifer.quantity(), Scale.SPECIFIC_DRAWDOWN));
    }
  }
}
