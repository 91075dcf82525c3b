package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static steening.field.Hands.METRIC;
import static steening.field.Hands.US;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import steening.job.Stages;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;

/** Every line of every working is worked out again from its print. */
class WorkingTest {
  static Stream<Named<Reckoning>> reckonings() {
    return Stages.reckonings().stream().map(r -> Named.of(r.name(), r));
  }

  @ParameterizedTest
  @MethodSource("reckonings")
  void everyLineCanBeWorkedOutWithAPencil(Reckoning reckoning) {
    for (Outcome outcome : Samples.outcomes(reckoning)) {
      for (Reader reader : List.of(US, METRIC)) {
        Map<String, Pencil.Span> known = new HashMap<>();
        for (Working.Line line : outcome.working(reader).lines()) {
          Pencil.Span printed = Pencil.Span.of(line.value());
          if (!line.isGiven()) {
            check(line.figures(), Pencil.workOut(line.figures()), printed);
            check(line.formula(), Pencil.workOut(line.formula(), known), printed);
          }
          Pencil.Span before = known.put(line.symbol().replace(" ", ""), printed);
          assertThat(before).as("%s means two things in %s", line.symbol(), outcome.working(reader).lines()).isNull();
        }
      }
    }
  }

  /** Within what the printed digits leave open; and they may not leave open so much that the check is worth nothing. */
  private static void check(String text, Pencil.Span worked, Pencil.Span printed) {
    assertThat(worked.meets(printed)).as("%s = %s, printed %s", text, worked, printed).isTrue();
    double size = Math.abs(printed.middle());
    boolean comparable = size > 0.001 && !text.contains("up(");
    if (comparable) assertThat(worked.middle()).as(text).isCloseTo(printed.middle(), within(size * 1e-3));
  }

  @ParameterizedTest
  @MethodSource("reckonings")
  void bothSystemsOfUnitsGiveTheSameQuantity(Reckoning reckoning) {
    for (Outcome outcome : Samples.outcomes(reckoning)) {
      outcome.answers().forEach((name, term) -> {
        double us = coherent(term, UnitSystem.US);
        assertThat(coherent(term, UnitSystem.METRIC)).as(name).isCloseTo(us, within(Math.abs(us) * 1e-9 + 1e-12));
      });
    }
  }

  private static double coherent(Term term, UnitSystem system) {
    Unit unit = system == UnitSystem.METRIC ? term.scale().metric() : term.scale().us();
    return unit.toCoherent(term.in(system));
  }
}
