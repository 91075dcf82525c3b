package steening.ground;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
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

/**
 * What a sand of some thickness and conductivity gives, roughly, and the drawdown a wanted rate takes.
 *
 * <p>T = K b and c = T / 2000 or T / 1500 as {@link SandYield} has them; Q = c s, s = top of the sand − level at rest −
 * 5 ft. Source: Driscoll 1986 (memory); 5 ft above the sand, common practice, no source. Range: all of the sand
 * screened, a developed well. Accuracy: × or ÷ 3.
 */
public final class RoughYield {
  static final QuantityField CONDUCTIVITY = QuantityField.of(
          "conductivity", Scale.CONDUCTIVITY, Phrase.of("hydraulic conductivity K", "conductividad hidráulica K"),
          "300 gpd/ft2", "12 m/d")
      .between("0.001 gpd/ft2", "10000000 gpd/ft2").usually("0.1 gpd/ft2", "100000 gpd/ft2");
  static final QuantityField THICKNESS = SandYield.SAND;
  static final QuantityField TOP = depth("top", "top of the sand", "tope de la arena", "118 ft", "36 m");
  static final QuantityField AT_REST =
      depth("static-level", "water level at rest", "nivel estático", "30 ft", "9 m");
  static final QuantityField WANTED = QuantityField.of(
          "rate", Scale.FLOW, Phrase.of("rate wanted", "gasto deseado"), "12 gpm", "0.8 L/s")
      .between("0.1 gpm", "5000 gpm").usually("0.5 gpm", "60 gpm").optional();

  static final Answer DRAWDOWN =
      new Answer("drawdown", Phrase.of("drawdown there is", "abatimiento disponible"), Scale.DEPTH);
  public static final Answer YIELD = flow("yield", "yield, rough", "gasto, aproximado");
  public static final Answer LEAST = flow("yield-least", "yield, ÷ 3", "gasto, ÷ 3");
  public static final Answer MOST = flow("yield-most", "yield, × 3", "gasto, × 3");
  static final Answer NEEDED = new Answer(
      "drawdown-needed", Phrase.of("drawdown the rate wanted takes", "abatimiento que pide el gasto deseado"),
      Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "sand-yield",
      Grain.STAGE,
      Phrase.of("What a sand gives", "Lo que da una arena"),
      List.of(CONDUCTIVITY, THICKNESS, SandYield.AQUIFER, TOP, AT_REST, WANTED),
      List.of(
          SandYield.TRANSMISSIVITY, SandYield.CAPACITY, SandYield.LEAST, SandYield.MOST, DRAWDOWN, YIELD, LEAST, MOST,
          NEEDED),
      Source.memory(
          "Driscoll 1986: T / 2000, T / 1500. × / ÷ 3, and 5 ft of water above the sand: common practice, no source.",
          "Driscoll 1986: T / 2000, T / 1500. × / ÷ 3, y 1.5 m de agua sobre la arena: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "All of the sand screened, the well developed. No better than × or ÷ 3.",
              "Toda la arena enrejillada y el pozo desarrollado. No mejor que × o ÷ 3."),
          Phrase.of(
              "A test decides; this only says what to expect before one.",
              "Decide una prueba; esto solo dice qué esperar antes.")),
      RoughYield::reckon);

  private static final Length ABOVE_THE_SAND = Length.feet(5);

  private RoughYield() {}

  /** Of a sand with its top so deep, where the water at rest stands so deep; nothing where it stands too low. */
  public static Optional<Outcome> of(Quantity conductivity, Length thickness, Length top, Length atRest) {
    return Outcome.ifReckonable(() -> RECKONING.of(Inputs.none()
        .with(CONDUCTIVITY, conductivity).with(THICKNESS, thickness).with(TOP, top).with(AT_REST, atRest)));
  }

  private static Outcome reckon(Inputs inputs) {
    Outcome capacity =
        SandYield.added(Outcome.empty(), inputs.given("K", CONDUCTIVITY), inputs.given("b", THICKNESS), inputs);
    Outcome outcome = inputs.find(WANTED).isEmpty() ? capacity : capacity.with(NEEDED.name(), needed(inputs, capacity));
    if (inputs.find(TOP).isEmpty() || inputs.find(AT_REST).isEmpty()) return outcome;
    Term margin = Term.given(
        "e", Phrase.of("water kept above the sand", "agua que se deja sobre la arena"), Scale.DEPTH, ABOVE_THE_SAND);
    Term drawdown = inputs.given("z", TOP).minus(inputs.given("a", AT_REST)).minus(margin)
        .named("s", DRAWDOWN.label(), DRAWDOWN.scale());
    if (drawdown.quantity().coherent() <= 0) {
      throw new NotReckonable(
          "The water at rest does not stand high enough above the sand.",
          "El agua en reposo no queda bastante arriba de la arena.");
    }
    Term rate = Coefficient.giving(YIELD.scale(), 1).of(Scale.SPECIFIC_CAPACITY).of(Scale.DEPTH).term()
        .times(capacity.term(SandYield.CAPACITY.name())).times(drawdown).named("Q", YIELD.label(), YIELD.scale());
    return outcome
        .with(DRAWDOWN.name(), drawdown)
        .with(YIELD.name(), rate)
        .with(LEAST.name(), rate.over(SandYield.THREEFOLD).named("Q₁", LEAST.label(), LEAST.scale()))
        .with(MOST.name(), rate.times(SandYield.THREEFOLD).named("Q₂", MOST.label(), MOST.scale()));
  }

  private static Term needed(Inputs inputs, Outcome capacity) {
    return Coefficient.giving(NEEDED.scale(), 1).of(Scale.FLOW).of(Scale.SPECIFIC_CAPACITY, -1).term()
        .times(inputs.given("R", WANTED)).over(capacity.term(SandYield.CAPACITY.name()))
        .named("S", NEEDED.label(), NEEDED.scale());
  }

  private static QuantityField depth(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric)
        .between("-100 ft", "6000 ft").usually("-30 ft", "2000 ft").optional();
  }

  private static Answer flow(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.FLOW);
  }
}
