package steening.stage.test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.eclipsesource.json.JsonObject;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Working;

class ConstantRateTestTest {
  private static final Reader METRIC = new Reader(Language.ENGLISH, UnitSystem.METRIC);
  private static final Body EVERYDAY = Body.of(
      "rate", "12 gpm", "times", "10; 100; 240 min", "drawdowns", "10.58; 11.90; 12.40 ft");

  /** Todd, Groundwater Hydrology, ch. 4, constant-rate table; least squares computed outside the project. */
  @Test
  void agreesWithToddsTableAsFittedElsewhere() {
    JsonObject todd = Cases.read("P01_constant_rate_todd.json");
    JsonObject computed = Cases.at(todd, "computed", "cooper_jacob_least_squares_t_ge_10min").asObject();
    Outcome outcome = reckon(Body.of(
        "rate", "2500 m3/d", "times", Cases.series(todd, "min", "inputs", "t_min"),
        "drawdowns", Cases.series(todd, "m", "inputs", "s_m"), "from-minute", "10 min", "distance", "60 m"));
    agrees(outcome, computed);
    // published: T 1090 and S 1.84e-4, by hand on paper (memory); the file asks for 6 % and 15 %
    assertThat(outcome.quantity("transmissivity").in(Unit.SQUARE_METRE_PER_DAY)).isCloseTo(1090, withinPercentage(6));
    assertThat(outcome.quantity("storativity").in(Unit.ONE)).isCloseTo(1.84e-4, withinPercentage(15));
    assertThat(outcome.quantity("u").in(Unit.ONE)).isLessThan(0.05);
    assertThat(said(outcome)).noneMatch(s -> s.contains("above 0.05"));
  }

  /** Oude Korendijk, Kruseman and de Ridder, ILRI 47, ch. 3; least squares computed outside the project. */
  @Test
  void agreesWithOudeKorendijkAsFittedElsewhere() {
    korendijk("r30", "30 m", "1 min", "20 min", "r30_t_1_to_20min");
    korendijk("r30", "30 m", "1 min", "100000 min", "r30_all_t_ge_1min");
    korendijk("r90", "90 m", "20 min", "100000 min", "r90_t_ge_20min");
  }

  private static void korendijk(String piezometer, String distance, String from, String to, String name) {
    JsonObject wit = Cases.read("P03_oude_korendijk.json");
    Outcome outcome = reckon(Body.of(
        "rate", "788 m3/d", "times", Cases.series(wit, "min", "inputs", piezometer, "t_min"),
        "drawdowns", Cases.series(wit, "m", "inputs", piezometer, "s_m"),
        "distance", distance, "from-minute", from, "to-minute", to));
    agrees(outcome, Cases.at(wit, "computed", "cooper_jacob", name).asObject());
  }

  private static void agrees(Outcome outcome, JsonObject computed) {
    assertThat(outcome.quantity("slope").in(Unit.METRE))
        .isCloseTo(computed.getDouble("slope_per_log_cycle", 0), withinPercentage(0.1));
    assertThat(outcome.quantity("transmissivity").in(Unit.SQUARE_METRE_PER_DAY))
        .isCloseTo(computed.getDouble("T", 0), withinPercentage(0.1));
    assertThat(outcome.quantity("zero-time").in(Unit.DAY))
        .isCloseTo(computed.getDouble("t0", 0), withinPercentage(0.1));
    assertThat(outcome.quantity("storativity").in(Unit.ONE))
        .isCloseTo(computed.getDouble("S_with_2p25", 0), withinPercentage(0.1));
    assertThat(said(outcome)).anyMatch(s -> s.contains("rests on " + computed.getInt("n", 0) + " readings"));
  }

  /** The everyday well: own scenario, arithmetic checked by hand. Two readings give the slope of the paper exactly. */
  @Test
  void givesTheEverydayWell() {
    Outcome two = reckon(EVERYDAY.with("to-minute", "100 min"));
    assertThat(two.quantity("slope").in(Unit.FOOT)).isCloseTo(1.32, within(1e-6));
    assertThat(two.quantity("transmissivity").in(Unit.GALLON_PER_DAY_PER_FOOT)).isCloseTo(2398.7, within(0.1));
    Outcome three = reckon(EVERYDAY);
    assertThat(three.quantity("slope").in(Unit.FOOT)).isCloseTo(1.3190, within(0.0005));
    assertThat(three.quantity("specific-capacity").in(Unit.GALLON_PER_MINUTE_PER_FOOT))
        .isCloseTo(0.9677, within(0.0001));
  }

  /** 264 is the constant of the handbooks for gpm, feet and gpd/ft: Illinois Adm. Code 35-671 Appendix E (seen). */
  @Test
  void worksOutTheHandbooksConstant() {
    assertThat(formula("T", Reader.US_ENGLISH)).isEqualTo("263.8568 × Q / Δs");
    assertThat(formula("T", METRIC)).isEqualTo("15.83141 × Q / Δs");
  }

  @Test
  void showsTheSumsSoThatAPencilCanFollow() {
    assertThat(formula("Δs", Reader.US_ENGLISH)).isEqualTo("(n × Σxy − Σx × Σy) / (n × Σxx − Σx × Σx)");
    Working working = reckon(EVERYDAY).working(Reader.US_ENGLISH);
    assertThat(value(working, "n")).isEqualTo(3);
    // log 10 + log 100 + log 240; 10.58 + 11.90 + 12.40
    assertThat(value(working, "Σx")).isCloseTo(5.380211, within(1e-6));
    assertThat(value(working, "Σy")).isCloseTo(34.88, within(1e-5));
    double slope = (3 * value(working, "Σxy") - value(working, "Σx") * value(working, "Σy"))
        / (3 * value(working, "Σxx") - value(working, "Σx") * value(working, "Σx"));
    assertThat(value(working, "Δs")).isCloseTo(slope, within(2e-5));
  }

  @Test
  void refusesStorativityFromThePumpedWellAlone() {
    Outcome outcome = reckon(EVERYDAY);
    assertThat(outcome.answers()).doesNotContainKeys("storativity", "u");
    assertThat(said(outcome)).anyMatch(s -> s.startsWith("Storativity is not answered: the pumped well alone"));
  }

  @Test
  void saysWhenTheWindowBeginsTooEarlyForTheStraightLine() {
    JsonObject wit = Cases.read("P03_oude_korendijk.json");
    Outcome outcome = reckon(Body.of(
        "rate", "788 m3/d", "times", Cases.series(wit, "min", "inputs", "r90", "t_min"),
        "drawdowns", Cases.series(wit, "m", "inputs", "r90", "s_m"), "distance", "90 m"));
    assertThat(said(outcome)).anyMatch(s -> s.contains("above 0.05 the readings are not yet on the straight line"));
  }

  @Test
  void saysWhatIsWrongWithTheReadings() {
    refuses(EVERYDAY.with("drawdowns", "10.58; 11.90 ft"), "3 times and 2 drawdowns do not pair.");
    refuses(EVERYDAY.with("drawdowns", "12; 12; 12 ft"),
        "The drawdown does not grow in the window: 0.00 ft per log cycle."
        + " No transmissivity follows from that.");
    refuses(EVERYDAY.with("from-minute", "200 min"),
        "A line needs readings at two times at least; the window holds 1.");
    refuses(EVERYDAY.with("times", "10; 10; 10 min"),
        "A line needs readings at two times at least; the window holds 3.");
    refuses(
        EVERYDAY.with("from-minute", "50 min").with("to-minute", "10 min"),
        "The window ends at 10.0 min, before it begins at 50.0 min.");
  }

  /** Minute zero has no logarithm; the level then is the level at rest. */
  @Test
  void leavesMinuteZeroOut() {
    Body with = EVERYDAY.with("times", "0; 10; 100; 240 min").with("drawdowns", "0; 10.58; 11.90; 12.40 ft");
    assertThat(reckon(with).quantity("slope")).isEqualTo(reckon(EVERYDAY).quantity("slope"));
  }

  @Test
  void speaksSpanishAndMetric() {
    Reader reader = new Reader(Language.SPANISH, UnitSystem.METRIC);
    Outcome outcome = reckon(EVERYDAY);
    assertThat(outcome.figure("transmissivity").shownTo(reader)).isEqualTo("29.8 m²/d");
    assertThat(outcome.remarks().get(1).shownTo(reader))
        .isEqualTo("La recta se apoya en 3 lecturas de 10.0 min a 240.0 min; otra ventana da otro resultado.");
  }

  private static void refuses(Body typed, String sentence) {
    assertThatThrownBy(() -> reckon(typed)).isInstanceOf(NotReckonable.class).hasMessage(sentence);
  }

  private static Outcome reckon(Body typed) {
    return ConstantRateTest.RECKONING.of(Inputs.of(typed));
  }

  private static List<String> said(Outcome outcome) {
    return outcome.remarks().stream().map(r -> r.shownTo(Reader.US_ENGLISH)).toList();
  }

  private static String formula(String symbol, Reader reader) {
    return line(reckon(EVERYDAY).working(reader), symbol).formula();
  }

  private static double value(Working working, String symbol) {
    return Double.parseDouble(line(working, symbol).value());
  }

  private static Working.Line line(Working working, String symbol) {
    return working.lines().stream().filter(l -> l.symbol().equals(symbol)).findFirst().orElseThrow();
  }
}
