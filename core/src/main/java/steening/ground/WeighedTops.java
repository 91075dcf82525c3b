package steening.ground;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.number.StudentT;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/** A mean with its spread, from elevations that weigh so much. */
record WeighedTops(Term mean, Term effective, Term deviation, Term student, String mark) {
  /** Logs and elevations are no better. Common practice, no source. */
  private static final Length LOGGED_TO = Length.feet(1);

  /** A tail of so much at either end leaves nine tenths between. */
  private static final double EACH_END = 0.05;

  static WeighedTops of(List<Term> tops, List<Term> weights, String mark) {
    Term all = Term.sum(weights)
        .named("W" + mark, Phrase.of("sum of the weights", "suma de los pesos"), Scale.NUMBER);
    List<Term> lifted = new ArrayList<>();
    List<Term> squares = new ArrayList<>();
    for (int i = 0; i < tops.size(); i++) {
      lifted.add(weights.get(i).times(tops.get(i)));
      squares.add(weights.get(i).squared());
    }
    Term mean = Term.sum(lifted).over(all).named("μ" + mark, SandForecast.ELEVATION.label(), Scale.DEPTH);
    Term effective = all.squared().over(Term.sum(squares)).named("n" + mark, SandForecast.WELLS.label(), Scale.NUMBER);
    List<Term> off = new ArrayList<>();
    for (int i = 0; i < tops.size(); i++) {
      off.add(weights.get(i).times(tops.get(i).minus(mean).squared()));
    }
    Term middle = Term.sum(off).over(all).times(effective.over(effective.minus(Term.number(1)))).squareRoot();
    Term least = Term.given(
        "r", Phrase.of("least spread", "dispersión mínima"), Scale.DEPTH, LOGGED_TO);
    Term spread = middle.most(least)
        .named("s" + mark, Phrase.of("spread of the tops", "dispersión de los topes"), Scale.DEPTH);
    Term one = Term.number(1);
    Term deviation = spread.times(one.plus(one.over(effective)).squareRoot())
        .named("σ" + mark, SandForecast.DEVIATION.label(), Scale.DEPTH);
    return new WeighedTops(mean, effective, deviation, student(tops.size() - 1), mark);
  }

  private static Term student(int degrees) {
    return Term.given(
        "t",
        Phrase.of(
            "Student's t, 0.95, degrees of freedom {0}", "t de Student, 0.95, grados de libertad {0}",
            Integer.toString(degrees)),
        Scale.NUMBER,
        new Measure(Dimension.NUMBER, StudentT.exceeded(EACH_END, degrees)));
  }

  /** Middle, shallow and deep end of the depth, under the names of three answers. */
  Outcome answers(Inputs inputs, List<Answer> three) {
    Term depth = inputs.given("G", SandForecast.GROUND).minus(mean).named("D" + mark, three.get(0).label(), Scale.DEPTH);
    Term reach = student.times(deviation);
    return Outcome.empty()
        .with(three.get(0).name(), depth)
        .with(three.get(1).name(), depth.minus(reach).named("A" + mark, three.get(1).label(), Scale.DEPTH))
        .with(three.get(2).name(), depth.plus(reach).named("B" + mark, three.get(2).label(), Scale.DEPTH));
  }
}
