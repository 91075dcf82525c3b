package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.bore.CarriedTop;
import steening.bore.Overbreak;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * Where the tape should find the top of the pack after so many bags, and how sure that is.
 *
 * <p>z = z₀ − V / A, reach by reach from the bottom of the hole up: the full bore below the string, the annulus above;
 * V = n b. Give or take w = 2 √((0.04 V/A)² + t²); z depth of the top, z₀ of the bottom, A volume per length, n bags of
 * volume b, t how well a tape is read. Source: geometry; the 4 % for the volume of the bags and of the hole together
 * and the 0.2 ft for the tape are common practice, no source. Range: a hole near the size it was drilled.
 */
public final class ExpectedTape {
  public static final BoreField HOLE = PackVolume.HOLE;
  public static final QuantityField CASING = PackVolume.CASING;
  public static final QuantityField STRING_BOTTOM = PackVolume.STRING_BOTTOM;
  public static final QuantityField BOTTOM = Plan.DEPTH.named("bottom")
      .labelled("bottom of the hole", "fondo del barreno");
  public static final CountField BAGS = PackBags.BAGS;
  public static final QuantityField BAG_VOLUME = PackVolume.BAG_VOLUME;
  public static final QuantityField STICK_UP = Plan.STICK_UP.optional();

  /** How well a weighted tape on sand is read (common practice, no source). */
  static final Length READ_TO = Length.of(0.2, Unit.FOOT);

  /** Bags and hole together, as a share of the volume (common practice, no source). */
  static final double UNEVEN = 0.04;

  static final Answer TAPE =
      new Answer("tape", Phrase.of("expected tape, below ground", "lectura esperada, bajo el terreno"), Scale.DEPTH);
  static final Answer READING =
      new Answer(
          "reading", Phrase.of("the same from the top of casing", "la misma desde la boca del ademe"), Scale.DEPTH);
  static final Answer SPREAD = CarriedTop.SPREAD;
  static final Answer BAND = CarriedTop.BAND;

  public static final Reckoning RECKONING = new Reckoning(
      "pack-tape",
      PackStage.NAME,
      Phrase.of("Expected tape on the pack", "Lectura esperada sobre el filtro"),
      List.of(HOLE, CASING, STRING_BOTTOM, BOTTOM, BAGS, BAG_VOLUME, STICK_UP),
      List.of(TAPE, READING, SPREAD, BAND),
      Source.derived(
          "Geometry. 4 % for bags and hole, 0.2 ft for the tape: common practice, no source.",
          "Geometría. 4 % por sacos y barreno, 0.06 m por la sonda: práctica común, sin fuente."),
      List.of(
          Phrase.of("A hole near the size it was drilled.", "Un barreno cercano a su diámetro perforado."),
          Phrase.of(
              "Sand that has settled: fine grains fall 100 ft of water in about 40 minutes, coarse in 5 (from memory,"
                  + " good to 25 %).",
              "Arena ya asentada: los granos finos caen 30 m de agua en unos 40 minutos, los gruesos en 5 (de"
                  + " memoria, al 25 %).")),
      ExpectedTape::reckon);

  static final Phrase POURED = Phrase.of("put in", "vertido");

  private ExpectedTape() {}

  private static Outcome reckon(Inputs inputs) {
    Length bottom = inputs.length(BOTTOM);
    Length stringBottom = inputs.find(STRING_BOTTOM).map(q -> (Length) q).orElse(bottom);
    Annulus annulus =
        new Annulus(inputs.value(HOLE), Bore.straight(inputs.length(CASING), Length.ZERO, stringBottom));
    Term volume = poured(inputs.given("n", BAGS), inputs.given("b", BAG_VOLUME, PackVolume.BAG));
    return of(annulus, bottom, volume, 1, inputs.find(STICK_UP).map(q -> (Length) q));
  }

  /** So many bags of one size. */
  static Term poured(Term bags, Term bagVolume) {
    return bags.times(bagVolume).named("V", POURED, Scale.VOLUME);
  }

  /**
   * The same for an annulus and a volume at hand.
   *
   * @param tapes how many readings it rests on: this one, and the one below where that was sounded
   * @param stickUp where the tape will be read from the top of casing
   */
  static Outcome of(Annulus annulus, Length bottom, Term volume, int tapes, Optional<Length> stickUp) {
    Term tape = annulus.top("z", TAPE.label(), bottom, volume);
    Outcome outcome = Outcome.empty().with(TAPE.name(), tape);
    if (stickUp.isPresent()) {
      Term up = Term.given("u", STICK_UP.label(), Scale.DEPTH, stickUp.get());
      outcome = outcome.with(READING.name(), tape.plus(up).named("r", READING.label(), Scale.DEPTH));
    }
    Term uneven = Term.number(UNEVEN).times(CarriedTop.rise(annulus, bottom, tape, volume));
    Term read = CarriedTop.read(READ_TO);
    Term readings = tapes == 1 ? read.squared() : Term.number(tapes).times(read.squared());
    return CarriedTop.banded(
        outcome, uneven.squared().plus(readings).squareRoot().named("s", SPREAD.label(), Scale.DEPTH));
  }

  /** What the hole took so far carried on to a lot on top of it. */
  static Outcome learned(Annulus annulus, Length bottom, Term volume, Overbreak hole) {
    return CarriedTop.of(TAPE, annulus, bottom, volume, hole, READ_TO);
  }
}
