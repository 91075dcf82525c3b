package steening.stage.development;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What an air lift takes: pressure to start and to run, air as a range, and the compressor that fills the annulus.
 *
 * <p>p₀ = ρ g (L − z₀), and a tenth to a fifth more to unload; p = ρ g (L − z). L depth of the end of the air line, z₀
 * static and z pumping level below ground. The air is that of {@link LiftAir}. Compressor: V = 6000 ft/min × π/4
 * (D² − d²). Source: hydrostatics; a state association's slides on air-lift testing, 2008 (seen). Range: clean water;
 * pressure in the hoses is not counted. Accuracy: pressure 1 %, air 30 % and worse.
 */
public final class AirLift {
  static final QuantityField AIR_LINE = QuantityField.of(
          "air-line", Scale.DEPTH, Phrase.of("depth of the end of the air line",
              "profundidad del extremo del tubo de aire"),
          "120 ft", "36 m")
      .between("1 ft", "6000 ft").usually("20 ft", "1000 ft");
  static final QuantityField STATIC = QuantityField.of(
          "static", Scale.DEPTH, Phrase.of("static water level below ground", "nivel estático bajo el terreno"),
          "30 ft", "9 m")
      .between("-50 ft", "6000 ft").usually("0 ft", "400 ft");
  static final QuantityField LEVEL = DevelopmentEntries.LEVEL;
  static final QuantityField ABOVE = QuantityField.of(
          "discharge", Scale.DEPTH, Phrase.of("discharge above ground", "descarga sobre el terreno"), "3 ft", "1 m")
      .between("0 ft", "100 ft").usually("0 ft", "30 ft").optional();
  static final QuantityField RATE = DevelopmentEntries.RATE;
  static final QuantityField INSIDE = QuantityField.of(
          "inside", Scale.DIAMETER, Phrase.of("inside diameter of the casing", "diámetro interior del ademe"), "4 in",
          "102 mm")
      .between("1 in", "60 in").usually("2 in", "24 in").optional();
  static final QuantityField PIPE = QuantityField.of(
          "air-pipe", Scale.DIAMETER,
          Phrase.of("outside diameter of the air line", "diámetro exterior del tubo de aire"),
          "1.315 in", "33.4 mm")
      .between("0.25 in", "24 in").usually("0.5 in", "6 in").optional();

  static final Answer COVERED = new Answer(
      "covered", Phrase.of("air line under still water", "tubo de aire bajo el agua en reposo"), Scale.DEPTH);
  static final Answer COVERED_SHARE = new Answer(
      "covered-share", Phrase.of("share of it under still water", "parte bajo el agua en reposo"), Scale.SHARE);
  static final Answer START =
      new Answer("start", Phrase.of("pressure of the water over it", "presión del agua sobre él"), Scale.PRESSURE);
  static final Answer START_LEAST = new Answer(
      "start-least", Phrase.of("pressure to start, at least", "presión de arranque, como mínimo"), Scale.PRESSURE);
  static final Answer START_MOST = new Answer(
      "start-most", Phrase.of("pressure to start, at most", "presión de arranque, como máximo"), Scale.PRESSURE);
  static final Answer RUNNING = new Answer(
      "running", Phrase.of("pressure while it runs", "presión durante el bombeo"), Scale.PRESSURE);
  static final Answer SUBMERGENCE = new Answer(
      "submergence", Phrase.of("submergence while it runs", "sumergencia durante el bombeo"), Scale.SHARE);
  static final Answer COMPRESSOR = new Answer(
      "compressor", Phrase.of("compressor that fills the annulus", "compresor que llena el espacio anular"),
      Scale.AIR_FLOW);

  private static final Quantity RISING = Measure.of(6000, Unit.FOOT_PER_MINUTE);

  public static final Reckoning RECKONING = new Reckoning(
      "air-lift",
      DevelopmentStage.NAME,
      Phrase.of("Air lift", "Bombeo con aire"),
      List.of(AIR_LINE, STATIC, LEVEL, ABOVE, RATE, INSIDE, PIPE),
      List.of(COVERED, COVERED_SHARE, START, START_LEAST, START_MOST, SUBMERGENCE, RUNNING, LiftAir.LEAST, LiftAir.MOST,
          COMPRESSOR),
      Source.seen(
          "Hydrostatics; start and annulus: slides on air-lift testing, 2008. Air: handbook of chemical engineering, "
              + "about 1922 (seen), and compressed-air handbooks (memory).",
          "Hidrostática; arranque y espacio anular: láminas sobre pruebas con aire, 2008. Aire: manual de ingeniería "
              + "química, hacia 1922 (visto), y manuales de aire comprimido (de memoria)."),
      List.of(
          Phrase.of(
              "The two published formulas of the air differ by about two: one gives displacement of the compressor, "
                  + "the other free air of an efficient lift. Choose between them; 30 % against the field.",
              "Las dos fórmulas publicadas del aire difieren casi al doble: una da el desplazamiento del compresor, la "
                  + "otra el aire libre de un bombeo eficiente. Elija entre ambas; 30 % frente al campo."),
          Phrase.of("The free-air formula has constants for 35 to 75 % submergence, air line outside the eductor.",
              "La fórmula de aire libre tiene constantes para 35 a 75 % de sumergencia, con el tubo de aire afuera."),
          Phrase.of(
              "Losses in hoses and pipe come on top. Never exceed what hose, fittings and casing are rated for.",
              "Las pérdidas en mangueras y tubo van aparte. Nunca exceda lo que soportan manguera, uniones y ademe.")),
      AirLift::reckon);

  private AirLift() {}

  private static Outcome reckon(Inputs inputs) {
    Term line = inputs.given("L", AIR_LINE);
    Term rest = inputs.given("z₀", STATIC);
    if (!inputs.length(AIR_LINE).isMoreThan(inputs.length(STATIC))) throw dry(STATIC.label());
    Term covered = line.minus(rest).named("S₀", COVERED.label(), COVERED.scale());
    Term start = head().times(covered).named("p₀", START.label(), START.scale());
    Outcome outcome = Outcome.empty().with(COVERED.name(), covered)
        .with(COVERED_SHARE.name(), share(covered, line).named("m₀", COVERED_SHARE.label(), COVERED_SHARE.scale()))
        .with(START.name(), start)
        .with(START_LEAST.name(), start.times(1.1).named("p₁", START_LEAST.label(), START_LEAST.scale()))
        .with(START_MOST.name(), start.times(1.2).named("p₂", START_MOST.label(), START_MOST.scale()));
    outcome = running(outcome, inputs, line);
    return inputs.find(INSIDE).isPresent() && inputs.find(PIPE).isPresent() ? filled(outcome, inputs) : outcome;
  }

  private static Outcome running(Outcome outcome, Inputs inputs, Term line) {
    Optional<Quantity> level = inputs.find(LEVEL);
    if (level.isEmpty()) return outcome;
    if (!inputs.length(AIR_LINE).isMoreThan(inputs.length(LEVEL))) throw dry(LEVEL.label());
    Term pumping = inputs.given("z", LEVEL);
    Term under = line.minus(pumping)
        .named("S", Phrase.of("air line under pumped water", "tubo de aire bajo el agua bombeada"), Scale.DEPTH);
    Term running = head().times(under).named("p", RUNNING.label(), RUNNING.scale());
    Term above = inputs.given("h", ABOVE, Length.ZERO);
    Term lift = pumping.plus(above).named("E", Phrase.of("lift", "altura de elevación"), Scale.DEPTH);
    Term submergence = share(under, under.plus(lift)).named("m", SUBMERGENCE.label(), SUBMERGENCE.scale());
    Outcome more = outcome.with(SUBMERGENCE.name(), submergence).with(RUNNING.name(), running);
    if (inputs.find(RATE).isEmpty()) return more;
    if (!(lift.quantity().coherent() > 0)) {
      throw new NotReckonable(
          "The water stands above the discharge: it flows without air.",
          "El agua está por encima de la descarga: fluye sin aire.");
    }
    return LiftAir.of(more, inputs.given("Q", RATE), lift, under, submergence);
  }

  private static Outcome filled(Outcome outcome, Inputs inputs) {
    if (!inputs.length(INSIDE).isMoreThan(inputs.length(PIPE))) {
      throw new NotReckonable(
          "The air line does not fit into the casing: {0} against {1}.",
          "El tubo de aire no cabe en el ademe: {0} contra {1}.",
          new Figure(inputs.amount(PIPE), PIPE.scale()), new Figure(inputs.amount(INSIDE), INSIDE.scale()));
    }
    Term rising = Term.given(
        "v", Phrase.of("speed of the air in the annulus", "velocidad del aire en el espacio anular"),
        Scale.UPHOLE_VELOCITY, RISING);
    Term area = Coefficient.giving(Scale.AIR_FLOW, Annulus.QUARTER_PI).of(Scale.UPHOLE_VELOCITY).of(Scale.DIAMETER, 2)
        .term();
    Term squares = inputs.given("D", INSIDE).squared().minus(inputs.given("d", PIPE).squared());
    return outcome.with(COMPRESSOR.name(),
        area.times(rising).times(squares).named("Vc", COMPRESSOR.label(), COMPRESSOR.scale()));
  }

  /** Pressure of water by depth: 1000 kg/m³ and standard gravity. */
  private static Term head() {
    return Coefficient.giving(Scale.PRESSURE, 1000 * 9.80665).of(Scale.DEPTH).term();
  }

  private static Term share(Term part, Term whole) {
    return Coefficient.giving(Scale.SHARE, 1).term().times(part).over(whole);
  }

  private static NotReckonable dry(Phrase level) {
    return new NotReckonable(Phrase.of(
        "The air line ends above the water: {0}. Lower it.", "El tubo de aire termina sobre el agua: {0}. Bájelo.",
        level));
  }
}
