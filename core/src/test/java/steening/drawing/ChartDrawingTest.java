package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import steening.language.Language;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Scale;

class ChartDrawingTest {
  private static final Reader SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  private static Chart chart(boolean logAcross, boolean logDown, boolean downward, double[][] line,
      double[]... points) {
    List<Chart.Point> all = new ArrayList<>();
    for (double[] point : points) all.add(new Chart.Point(point[0], point[1], point.length < 3));
    Optional<List<Chart.Point>> fitted = Optional.empty();
    if (line != null) {
      fitted = Optional.of(List.of(new Chart.Point(line[0][0], line[0][1], true),
          new Chart.Point(line[1][0], line[1][1], true)));
    }
    return new Chart(
        Phrase.of("Drawdown <&> time", "Abatimiento <&> tiempo"),
        new Chart.Axis(Phrase.of("time", "tiempo"), Scale.MINUTES, logAcross, false),
        new Chart.Axis(Phrase.of("drawdown", "abatimiento"), Scale.DEPTH, logDown, downward),
        all, fitted);
  }

  /** Three readings of a test at 12 gpm with a slope of 1.32 ft to the decade; two early ones beside the line. */
  private static Chart semiLog() {
    return chart(true, false, true, new double[][] {{1, 9.26}, {1000, 13.22}},
        new double[] {1, 4, 0}, new double[] {3, 6, 0}, new double[] {10, 10.58}, new double[] {100, 11.90},
        new double[] {240, 12.40});
  }

  @Test
  void laysDecadesAtEvenDistancesAndDrawdownDownward() {
    Drawn drawn = new Drawn(ChartDrawing.draw(semiLog(), Reader.US_ENGLISH));
    double one = x(drawn, "1");
    double ten = x(drawn, "10");
    double hundred = x(drawn, "100");
    double thousand = x(drawn, "1000");
    assertThat(hundred - ten).isCloseTo(ten - one, within(0.02));
    assertThat(thousand - hundred).isCloseTo(ten - one, within(0.02));
    List<Element> points = drawn.all("circle").subList(0, 5);
    assertThat(Drawn.number(points.get(0), "cx")).isCloseTo(one, within(0.01));
    assertThat(Drawn.number(points.get(3), "cx")).isCloseTo(hundred, within(0.01));
    double deeper = Drawn.number(points.get(4), "cy") - Drawn.number(points.get(3), "cy");
    double deep = Drawn.number(points.get(3), "cy") - Drawn.number(points.get(2), "cy");
    assertThat(deep).isPositive();
    assertThat(deeper / deep).isCloseTo(0.50 / 1.32, within(0.001));
  }

  @Test
  void fillsThePointsThatTheLineRestsOn() {
    List<Element> points = new Drawn(ChartDrawing.draw(semiLog(), Reader.US_ENGLISH)).all("circle");
    assertThat(points.subList(0, 5)).extracting(p -> p.getAttribute("fill"))
        .containsExactly(Ink.PAPER, Ink.PAPER, Ink.INK, Ink.INK, Ink.INK);
    List<Element> withoutLine = new Drawn(ChartDrawing.draw(
        chart(false, false, false, null, new double[] {1, 2, 0}, new double[] {2, 3}), Reader.US_ENGLISH))
            .all("circle");
    assertThat(withoutLine).hasSize(2).extracting(p -> p.getAttribute("fill")).containsOnly(Ink.INK);
  }

  @Test
  void drawsTheLineThroughItsOwnPoints() {
    Drawn drawn = new Drawn(ChartDrawing.draw(semiLog(), Reader.US_ENGLISH));
    Element line = drawn.all("path").stream().filter(p -> p.getAttribute("stroke").equals(Ink.WATER)).findFirst()
        .orElseThrow();
    String[] numbers = line.getAttribute("d").substring(1).split("[L ]");
    double share = (Double.parseDouble(numbers[3]) - Double.parseDouble(numbers[1])) / (13.22 - 9.26);
    List<Element> points = drawn.all("circle");
    double foot = (Drawn.number(points.get(3), "cy") - Drawn.number(points.get(2), "cy")) / 1.32;
    assertThat(share).isCloseTo(foot, within(0.02));
    assertThat(Double.parseDouble(numbers[0])).isCloseTo(x(drawn, "1"), within(0.01));
  }

  @Test
  void hasTheLinesOfTwoToNineInEveryDecade() {
    assertThat(ChartScale.of(true, List.of(2.0, 400.0), 9).minors()).hasSize(24).contains(2.0, 9.0, 20.0, 900.0);
    assertThat(ChartScale.of(true, List.of(2.0, 400.0), 9).majors()).containsExactly(1.0, 10.0, 100.0, 1000.0);
    assertThat(ChartScale.of(true, List.of(1.0, 1000.0), 9).majors()).containsExactly(1.0, 10.0, 100.0, 1000.0);
    assertThat(ChartScale.of(true, List.of(0.01), 9).majors()).containsExactly(0.01, 0.1);
    assertThat(ChartScale.of(false, List.of(10.58, 12.40), 7).minors()).isEmpty();
  }

  @Test
  void saysWhatItLeavesOut() {
    Chart chart = chart(true, true, false, null, new double[] {0, 5}, new double[] {1, 0}, new double[] {-3, 2},
        new double[] {10, 20});
    Drawn drawn = new Drawn(ChartDrawing.draw(chart, Reader.US_ENGLISH));
    assertThat(drawn.all("circle")).hasSize(1);
    assertThat(drawn.all("text")).extracting(Element::getTextContent).contains("3 not shown (≤ 0)");
  }

  @Test
  void speaksBothLanguages() {
    Drawn drawn = new Drawn(ChartDrawing.draw(semiLog(), SPANISH));
    assertThat(drawn.root().getAttribute("aria-label")).isEqualTo("Abatimiento <&> tiempo");
    assertThat(drawn.all("text")).extracting(Element::getTextContent)
        .contains("Abatimiento <&> tiempo", "abatimiento, m", "tiempo, min", "usado por la recta", "no usado");
    assertThat(drawn.all("desc").get(0).getTextContent())
        .as("4, 12.4, 9.26 and 13.22 ft in metres")
        .isEqualTo("Puntos: 5. tiempo, min: de 1 a 240. abatimiento, m: de 1.219 a 3.78. "
            + "Línea de 1; 2.822 a 1000; 4.029.");
  }

  @ParameterizedTest
  @CsvSource({
    "false,false,5,5,5,5", "true,true,5,5,5,5", "false,false,0,0,0,0", "true,false,1e-7,123456,1e9,-987654",
    "true,true,1e-300,1e300,1,1",
    "false,false,NaN,1,2,Infinity", "false,true,-5,0.001,1e12,1000", "false,false,1e14,1,-1e14,2",
    "false,false,1,1,1.0000000001,1.00000001"
  })
  void drawsWhateverItIsGiven(boolean logAcross, boolean logDown, double x1, double y1, double x2, double y2) {
    for (boolean downward : new boolean[] {true, false}) {
      Chart chart = chart(logAcross, logDown, downward, new double[][] {{x1, y1}, {x2, y2}}, new double[] {x1, y1},
          new double[] {x2, y2, 0});
      String svg = ChartDrawing.draw(chart, Reader.US_ENGLISH);
      assertThat(svg).isEqualTo(ChartDrawing.draw(chart, Reader.US_ENGLISH)).doesNotContain("NaN")
          .doesNotContain("Infinity");
      hasItsTextApart(new Drawn(svg));
    }
  }

  @Test
  void drawsEmptyAxesFromNothing() {
    for (boolean logarithmic : new boolean[] {true, false}) {
      Chart empty = chart(logarithmic, logarithmic, true, null);
      Drawn drawn = new Drawn(ChartDrawing.draw(empty, Reader.US_ENGLISH, 540, 360));
      assertThat(drawn.all("circle")).isEmpty();
      hasItsTextApart(drawn);
    }
    hasItsTextApart(new Drawn(ChartDrawing.draw(semiLog(), SPANISH)));
  }

  private static void hasItsTextApart(Drawn drawn) {
    List<Drawn.Box> boxes = drawn.boxes();
    for (int i = 0; i < boxes.size(); i++) {
      Drawn.Box box = boxes.get(i);
      assertThat(box.left() >= 0 && box.right() <= drawn.width() && box.bottom() <= drawn.height()).as(box.toString())
          .isTrue();
      for (Drawn.Box other : boxes.subList(i + 1, boxes.size())) {
        assertThat(box.overlaps(other)).as(box + " on " + other).isFalse();
      }
    }
  }

  /** Where a number stands under the horizontal axis. */
  private static double x(Drawn drawn, String number) {
    return drawn.all("text").stream()
        .filter(t -> t.getTextContent().equals(number) && t.getAttribute("text-anchor").equals("middle"))
        .map(t -> Drawn.number(t, "x")).findFirst().orElseThrow();
  }
}
