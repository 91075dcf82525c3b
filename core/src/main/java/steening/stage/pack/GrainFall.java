package steening.stage.pack;

import java.util.List;
import steening.field.QuantityField;
import steening.ground.SettlingVelocity;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How long to wait after the last bag before the tape says where the pack stands: until its finest grains have come
 * down.
 *
 * <p>t = H / w, w as in {@link SettlingVelocity} with G = 2.65; wait = t / 0.75, since the formula is good to 25 %.
 */
final class GrainFall {
  static final QuantityField GRAIN = QuantityField.of(
          "grain", Scale.GRAIN, Phrase.of("size of the finest grains", "tamaño de los granos más finos"), "0.6 mm",
          "0.6 mm")
      .between("0.03 mm", "50 mm").usually("0.07 mm", "5 mm");
  static final QuantityField HEIGHT = QuantityField.of(
          "height", Scale.DEPTH, Phrase.of("water to fall through", "agua por la que caen"), "115 ft", "35 m")
      .between("0.1 ft", "6000 ft").usually("5 ft", "600 ft");

  static final Answer VELOCITY = new Answer("velocity", SettlingVelocity.VELOCITY, Scale.ENTRANCE_VELOCITY);
  static final Answer MINUTES =
      new Answer("minutes", Phrase.of("time of the fall", "tiempo de caída"), Scale.MINUTES);
  static final Answer WAIT = new Answer(
      "wait", Phrase.of("wait after the last bag", "espera tras el último saco"), Scale.MINUTES);

  static final Reckoning RECKONING = new Reckoning(
      "grain-fall",
      PackStage.NAME,
      Phrase.of("Fall of pack grains", "Caída de los granos del filtro"),
      List.of(GRAIN, HEIGHT, SettlingVelocity.TEMPERATURE),
      List.of(VELOCITY, MINUTES, WAIT),
      Source.memory(
          "Ferguson and Church (2004), a formula for natural sand; quartz, specific gravity 2.65.",
          "Ferguson y Church (2004), fórmula para arena natural; cuarzo, densidad relativa 2.65."),
      List.of(
          Phrase.of(
              "Single grains in clear water at rest, good to 25 %. In mud, or poured all at once, they take longer.",
              "Granos sueltos en agua limpia y quieta, con 25 % de error. En lodo, o vertidos de golpe, tardan más."),
          Phrase.of("Water at 10 °C where no temperature is given.", "Agua a 10 °C si no se da temperatura.")),
      inputs -> of(inputs, inputs.length(GRAIN), inputs.length(HEIGHT)));

  private static final Quantity QUARTZ = new Measure(Dimension.NUMBER, 2.65);
  private static final double SLOWEST = 0.75;

  private GrainFall() {}

  static Outcome of(Length grain, Length height) {
    return of(Inputs.none(), grain, height);
  }

  private static Outcome of(Inputs inputs, Length grain, Length height) {
    Term velocity = SettlingVelocity.velocity(inputs, grain, QUARTZ, SettlingVelocity.SAND_DRAG);
    Term minutes = SettlingVelocity.minutes(velocity, height);
    Term wait = minutes.over(SLOWEST).named("tw", WAIT.label(), WAIT.scale());
    return Outcome.empty()
        .with(VELOCITY.name(), velocity).with(MINUTES.name(), minutes).with(WAIT.name(), wait);
  }
}
