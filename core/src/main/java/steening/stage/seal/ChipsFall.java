package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.ground.SettlingVelocity;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How long chips or pellets are on their way, how slowly they are to be poured, and how much water they may fall
 * through before they swell.
 *
 * <p>t = H / w, w as in {@link SettlingVelocity}; wait = t / 0.6, since the drag is known to 40 %; pouring = n m;
 * deepest = 0.6 w s. H water to fall through, n bags, m minutes for a bag, s time before they swell, from the label.
 *
 * <p>Source: drag of an angular piece (memory); specific gravity 2.0 of a chip: 72 lb/ft³ in the bag, two fifths of it
 * gaps. It gives about 1 ft/s for 3/8 in. One bag of 50 lb in not less than 3 to 5 minutes (memory).
 */
final class ChipsFall {
  static final QuantityField HEIGHT = QuantityField.of(
          "height", Scale.DEPTH, Phrase.of("water to fall through", "agua por la que caen"), "115 ft", "35 m")
      .between("0.1 ft", "6000 ft").usually("1 ft", "600 ft");
  static final QuantityField SIZE = QuantityField.of(
          "size", Scale.GRAIN, Phrase.of("size of a chip or pellet", "tamaño de un pellet"), "3/8 in", "10 mm")
      .between("1 mm", "100 mm").usually("5 mm", "26 mm").optional();
  static final CountField BAGS = Chips.BAGS;
  static final QuantityField A_BAG = QuantityField.of(
          "a-bag", Scale.MINUTES, Phrase.of("minutes to pour a bag", "minutos para verter un saco"), "5 min", "5 min")
      .between("0.1 min", "120 min").usually("3 min", "15 min").optional();
  static final QuantityField SWELLS = QuantityField.of(
          "swells", Scale.MINUTES,
          Phrase.of("time before they swell, from the label", "tiempo antes de hincharse, según la etiqueta"),
          "15 min", "15 min")
      .between("0.5 min", "600 min").usually("2 min", "90 min").optional();

  static final Answer VELOCITY = new Answer("velocity", SettlingVelocity.VELOCITY, Scale.ENTRANCE_VELOCITY);
  static final Answer WAIT = new Answer(
      "wait", Phrase.of("wait after the last of them", "espera tras el último"), Scale.MINUTES);
  static final Answer POURING = new Answer(
      "pouring", Phrase.of("time to pour them in", "tiempo para verterlos"), Scale.MINUTES);
  static final Answer DEEPEST = new Answer(
      "deepest", Phrase.of("most water before they swell", "agua máxima antes de que se hinchen"), Scale.DEPTH);

  static final Reckoning RECKONING = new Reckoning(
      "chips-fall",
      SealStage.NAME,
      Phrase.of("Fall of chips and pellets", "Caída de los pellets"),
      List.of(HEIGHT, SIZE, BAGS, A_BAG, SWELLS, SettlingVelocity.TEMPERATURE),
      List.of(VELOCITY, WAIT, POURING, DEEPEST),
      Source.memory(
          "Ferguson and Church (2004), drag of angular pieces; one bag of 50 lb in not less than 3 to 5 minutes.",
          "Ferguson y Church (2004), resistencia de piezas angulosas; un saco de 22.7 kg en no menos de 3 a 5 min."),
      List.of(
          Phrase.of(
              "Good to 40 %, in water at rest; in mud they fall slower and stick sooner.",
              "Con 40 % de error, en agua quieta; en lodo caen más despacio y se pegan antes."),
          Phrase.of(
              "Chips of 3/8 in and 5 minutes for a bag where nothing is given; screen out the fines.",
              "Pellets de 10 mm y 5 minutos por saco si no se da otra cosa; cribe los finos."),
          Phrase.of(
              "Chips and pellets only: fine granular bentonite never into an annulus that holds fluid (Mich. R "
                  + "325.1633a, seen).",
              "Solo pellets: bentonita granular fina nunca en un espacio anular con fluido (Mich. R "
                  + "325.1633a, leído)."),
          Phrase.of(
              "Some rules keep bentonite from water over 1,000 mg/L of solids or under pH 4 (Md.), over 4,000 mg/L of "
                  + "chloride or 700 of calcium (Alberta); both seen. Your code and the label decide.",
              "Algunas normas no la admiten con más de 1,000 mg/L de sólidos o pH menor de 4 (Md.), ni con más de "
                  + "4,000 mg/L de cloruro o 700 de calcio (Alberta); leídas. Deciden su norma y la etiqueta."),
          Phrase.of(
              "Let them take up water before grout goes on them, as long as the label says.",
              "Deje que tomen agua antes de la lechada, tanto como diga la etiqueta.")),
      ChipsFall::reckon);

  private static final Length USUAL_SIZE = Length.of(0.375, Unit.INCH);
  private static final Quantity CHIP = new Measure(Dimension.NUMBER, 2.0);
  private static final Quantity A_BAG_USUALLY = Measure.of(5, Unit.MINUTE);
  private static final double SLOWEST = 0.6;

  private ChipsFall() {}

  /** For chips of the usual size. */
  static Outcome of(Length height) {
    return falling(Inputs.none(), height);
  }

  private static Outcome reckon(Inputs inputs) {
    Outcome fall = falling(inputs, inputs.length(HEIGHT));
    Term pouring = inputs.given("n", BAGS).times(inputs.given("m", A_BAG, A_BAG_USUALLY))
        .named("tp", POURING.label(), POURING.scale());
    Outcome outcome = fall.with(POURING.name(), pouring);
    Optional<Quantity> swells = inputs.find(SWELLS);
    if (swells.isEmpty()) return outcome;
    Term deepest = Coefficient.giving(Scale.DEPTH, SLOWEST)
        .of(Scale.ENTRANCE_VELOCITY).of(Scale.MINUTES).term()
        .times(fall.term(VELOCITY.name())).times(inputs.given("s", SWELLS))
        .named("h", DEEPEST.label(), DEEPEST.scale());
    Outcome with = outcome.with(DEEPEST.name(), deepest);
    if (swells.get().coherent() > fall.quantity(WAIT.name()).coherent()) return with;
    return with.remarking(Phrase.of(
        "They swell on the way and bridge: coated pellets, or place them through a pipe.",
        "Se hinchan al bajar y hacen puente: use pellets recubiertos o colóquelos por un tubo."));
  }

  private static Outcome falling(Inputs inputs, Length height) {
    Length size = inputs.find(SIZE).map(q -> (Length) q).orElse(USUAL_SIZE);
    Term velocity = SettlingVelocity.velocity(inputs, size, CHIP, SettlingVelocity.ANGULAR_DRAG);
    Term wait = SettlingVelocity.minutes(velocity, height).over(SLOWEST).named("tw", WAIT.label(), WAIT.scale());
    return Outcome.empty().with(VELOCITY.name(), velocity).with(WAIT.name(), wait);
  }
}
