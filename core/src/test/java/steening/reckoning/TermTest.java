package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;

class TermTest {
  private static final Phrase WORDS = Phrase.same("x");
  private static final Term A = number("a", 12);
  private static final Term B = number("b", 3);
  private static final Term C = number("c", 2);

  @Test
  void writesNoMoreBracketsThanNeeded() {
    assertThat(formula(A.plus(B).minus(C))).isEqualTo("a + b − c");
    assertThat(formula(A.minus(B.plus(C)))).isEqualTo("a − (b + c)");
    assertThat(formula(A.plus(B).times(C))).isEqualTo("(a + b) × c");
    assertThat(formula(A.over(B.times(C)))).isEqualTo("a / (b × c)");
    assertThat(formula(A.times(B).over(C))).isEqualTo("a × b / c");
    assertThat(formula(A.plus(B).squared())).isEqualTo("(a + b)²");
    assertThat(formula(A.squared().squared())).isEqualTo("(a²)²");
    assertThat(formula(A.power(0.5).over(B))).isEqualTo("a^0.5 / b");
    assertThat(formula(A.power(-1.5))).isEqualTo("a^(−1.5)");
    assertThat(formula(A.over(B).squareRoot())).isEqualTo("√(a / b)");
    assertThat(formula(A.over(B).log10().times(-2))).isEqualTo("log(a / b) × (−2)");
    assertThat(formula(A.most(B).plus(A.least(B)).roundedUp())).isEqualTo("up(max(a; b) + min(a; b))");
  }

  @Test
  void aFactorOfOneIsNotWritten() {
    Term one = Coefficient.giving(Scale.DEPTH, 1).of(Scale.DEPTH).term();
    assertThat(formula(one.times(A).times(one))).isEqualTo("a");
  }

  @Test
  void bracketsANegativeNumber() {
    Term cold = number("t", -4);
    assertThat(figures(A.plus(cold))).isEqualTo("12 + (−4)");
    assertThat(figures(cold.squared())).isEqualTo("(−4)²");
    assertThat(figures(cold)).isEqualTo("−4");
  }

  @Test
  void hasItsOwnValueInEachSystem() {
    Term foot = Term.given("h", WORDS, Scale.DEPTH, Length.feet(10));
    Term twice = foot.times(2).named("H", WORDS, Scale.DEPTH);
    assertThat(twice.in(UnitSystem.US)).isEqualTo(20);
    assertThat(twice.in(UnitSystem.METRIC)).isCloseTo(6.096, within(1e-12));
    assertThat(twice.quantity()).isEqualTo(Length.feet(20));
    Working metric = Working.of(List.of(twice), new Reader(Language.ENGLISH, UnitSystem.METRIC));
    assertThat(metric.lines().get(0)).isEqualTo(new Working.Line("h", WORDS, "", "", "3.048", "m"));
    assertThat(metric.lines().get(1)).isEqualTo(new Working.Line("H", WORDS, "h × 2", "3.048 × 2", "6.096", "m"));
    assertThatThrownBy(() -> foot.times(2).quantity()).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void saysOneStepOnce() {
    Term area = A.times(B).named("S", WORDS, Scale.NUMBER);
    Term again = number("a", 12).times(number("b", 3)).named("S", WORDS, Scale.NUMBER);
    Working working = Working.of(List.of(area.plus(again).named("T", WORDS, Scale.NUMBER)), Reader.US_ENGLISH);
    assertThat(working.lines()).extracting(Working.Line::symbol).containsExactly("a", "b", "S", "T");
  }

  @Test
  void aHairOverIsNotAnotherBag() {
    assertThat(number("n", 9.0000000001).roundedUp().in(UnitSystem.US)).isEqualTo(9);
    assertThat(number("n", 9.00001).roundedUp().in(UnitSystem.US)).isEqualTo(10);
    assertThat(number("n", 9).roundedUp().in(UnitSystem.US)).isEqualTo(9);
    assertThat(number("n", 0).roundedUp().in(UnitSystem.US)).isEqualTo(0);
  }

  /** Formulas grown at random say in print what they are worth. */
  @Test
  void whateverIsBuiltCanBeWorkedOutAgain() {
    SplittableRandom random = new SplittableRandom(20260506);
    for (int i = 0; i < 5_000; i++) {
      Term term = grown(random, 4);
      double value = term.in(UnitSystem.US);
      boolean tame = Math.abs(value) > 1e-3 && Math.abs(value) < 1e6;
      if (!tame) continue;
      String figures = figures(term);
      assertThat(Pencil.workOut(figures).meets(Pencil.Span.of(figures(number("x", value))))).as(figures).isTrue();
    }
  }

  private static Term grown(SplittableRandom random, int height) {
    if (height == 0) return number("x", (random.nextInt(198) - 99) / 10.0);
    Term a = grown(random, height - 1);
    Term b = grown(random, height - 1 - random.nextInt(height));
    return switch (random.nextInt(8)) {
      case 0 -> a.plus(b);
      case 1 -> a.minus(b);
      case 2 -> a.times(b);
      case 3 -> Math.abs(b.in(UnitSystem.US)) < 0.1 ? a : a.over(b);
      case 4 -> a.squared();
      case 5 -> a.in(UnitSystem.US) < 0.1 ? a : a.squareRoot();
      case 6 -> a.in(UnitSystem.US) < 0.1 ? a : a.log10();
      default -> a.most(b);
    };
  }

  private static String formula(Term term) {
    return line(term).formula();
  }

  private static String figures(Term term) {
    return line(term).figures();
  }

  private static Working.Line line(Term term) {
    List<Working.Line> lines = Working.of(List.of(term.named("Z", WORDS, Scale.NUMBER)), Reader.US_ENGLISH).lines();
    return lines.get(lines.size() - 1);
  }

  private static Term number(String symbol, double value) {
    return Term.given(symbol, WORDS, Scale.NUMBER, new Measure(Dimension.NUMBER, Unit.ONE.toCoherent(value)));
  }
}
