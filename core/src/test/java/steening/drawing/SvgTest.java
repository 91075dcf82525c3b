package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTest {
  @Test
  void nestsAndClosesElements() {
    Svg svg = new Svg();
    svg.open("g").with("id", "a").rect(0, 1.5, 2, 3).close().open("text").text("hi").close().close();
    assertThat(svg).hasToString("<g id=\"a\"><rect x=\"0\" y=\"1.5\" width=\"2\" height=\"3\"/><text>hi</text></g>");
  }

  @Test
  void carriesAnyTextToAReaderUnharmed() {
    String text = "A <b>\"&' ñ ½ \uD83D\uDCA7 ]]> <!-- tab\tend";
    Svg svg = new Svg();
    svg.open("g").with("title", text.replace('\t', ' ')).text(text).close();
    Drawn drawn = new Drawn(svg.toString());
    assertThat(drawn.root().getTextContent()).isEqualTo(text);
    assertThat(drawn.root().getAttribute("title")).isEqualTo(text.replace('\t', ' '));
  }

  @Test
  void replacesWhatXmlCannotHold() {
    Svg svg = new Svg();
    svg.open("g").text("a\u0000b\u001Bc\uD83Dd\uDCA7e\uFFFEf\uFFFFg").close();
    assertThat(new Drawn(svg.toString()).root().getTextContent())
        .isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\uFFFDf\uFFFDg");
  }

  @Test
  void writesAtMostTwoDecimals() {
    assertThat(Svg.number(1.0 / 3)).isEqualTo("0.33");
    assertThat(Svg.number(-0.001)).isEqualTo("0");
    assertThat(Svg.number(1e6)).isEqualTo("1000000");
    assertThat(Path.at(1.006, -2).to(3, 4).across(5).down(6).bend(1, 2, 3, 4).shut())
        .hasToString("M1.01 -2L3 4H5V6Q1 2 3 4Z");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNoNumber(double value) {
    Svg svg = new Svg().open("rect");
    assertThatThrownBy(() -> svg.with("x", value)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesToBeReadHalfWritten() {
    Svg svg = new Svg().open("g");
    assertThatThrownBy(svg::toString).isInstanceOf(IllegalStateException.class);
    svg.text("x");
    assertThatThrownBy(() -> svg.with("late", "attribute")).isInstanceOf(IllegalStateException.class);
  }
}
