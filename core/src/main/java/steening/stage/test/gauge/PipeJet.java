package steening.stage.test.gauge;

import java.util.List;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Rate of a level pipe that runs full, from how far its jet flies while it falls.
 *
 * <p>Q = (π/4) d² x √(g / (2 y)): d inside diameter, x reach, y drop, both of the top of the jet from the top of the
 * pipe's inside. Source: New Mexico State University Guide A-104, Table 1 (seen). Range: a full level pipe, a reach of
 * 6 in and more. Accuracy: about 10 %.
 */
public final class PipeJet {
  public static final QuantityField PIPE = OrificeRate.PIPE;
  public static final QuantityField REACH = QuantityField.of(
          "jet-reach", Scale.DIAMETER, Phrase.of("reach of the jet", "alcance del chorro"), "20 in", "508 mm")
      .between("0.5 in", "300 in").usually("6 in", "80 in");
  public static final QuantityField DROP = QuantityField.of(
          "jet-drop", Scale.DIAMETER,
          Phrase.of("drop of the jet there, from its top", "caída del chorro ahí, desde su borde superior"),
          "13 in", "330 mm")
      .between("0.5 in", "200 in").usually("4 in", "60 in");

  public static final Reckoning RECKONING = new Reckoning(
      "pipe-jet",
      "test",
      Phrase.of("Rate by the jet of a level pipe", "Aforo por el chorro de un tubo a nivel"),
      List.of(PIPE, REACH, DROP),
      List.of(RateBand.RATE, RateBand.LEAST, RateBand.MOST),
      Source.seen(
          "New Mexico State University Guide A-104, Table 1. Its 405 gpm for a cubic foot a second is a misprint.",
          "New Mexico State University Guide A-104, tabla 1. Sus 405 gpm por pie cúbico por segundo son una errata."),
      List.of(
          Phrase.of(
              "A level pipe that runs full, with a straight piece before its end; a reach of 6 in and more.",
              "Tubo a nivel y lleno, con un tramo recto antes de su extremo; alcance de 150 mm o más."),
          Phrase.of("Good to about 10 %.", "Exacto a cerca de 10 %.")),
      PipeJet::reckon);

  private static final double ERROR = 0.1;
  private static final Length LEAST = Length.of(6, Unit.INCH);
  private static final Length MOST = Length.of(300, Unit.INCH);

  private PipeJet() {}

  private static Outcome reckon(Inputs inputs) {
    RateBand.check(inputs, REACH, LEAST, MOST, Phrase.of(
        "So short a jet does not fill the pipe: use a vessel and a watch.",
        "Un chorro tan corto no llena el tubo: use recipiente y reloj."));
    double factor = Annulus.QUARTER_PI * Elementary.sqrt(Gravity.METRES_PER_SECOND_SQUARED / 2);
    Term rate = Coefficient.giving(Scale.FLOW, factor).of(Scale.DIAMETER, 2).of(Scale.DIAMETER, 0.5).term()
        .times(inputs.given("d", PIPE).squared()).times(inputs.given("x", REACH))
        .over(inputs.given("y", DROP).squareRoot());
    return RateBand.around(rate, RateBand.error(ERROR));
  }
}
