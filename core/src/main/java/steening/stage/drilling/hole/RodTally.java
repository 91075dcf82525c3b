package steening.stage.drilling.hole;

import java.util.List;
import steening.field.CountField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * How deep the bit is, by what hangs in the hole.
 *
 * <p>z = n l + s + b − a; n rods, l length of one, s subs, b bit, a top of the string above ground.
 *
 * <p>Source: arithmetic. Range: rods of one length, measured and not nominal.
 */
public final class RodTally {
  static final CountField RODS = CountField.of("rods", Phrase.of("number of rods", "número de tubos"), 0, 999)
      .usuallyUpTo(60);
  static final QuantityField LENGTH = DrillingEntries.ROD_LENGTH;
  static final QuantityField SUBS = piece("subs", "subs, all together", "sustitutos, en total", "2.5 ft", "0.76 m");
  static final QuantityField BIT_LENGTH =
      piece("bit-length", "bit length", "longitud de la barrena", "0.8 ft", "0.24 m");
  static final QuantityField ABOVE =
      piece("above-ground", "top of the string above ground", "extremo de la columna sobre el terreno", "3.2 ft",
          "0.98 m");

  static final Answer DEPTH = new Answer("depth", Phrase.of("bit depth", "profundidad de la barrena"), Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "rod-tally",
      DrillingStage.NAME,
      Phrase.of("Depth by the rods", "Profundidad por la tubería"),
      List.of(RODS, LENGTH, SUBS, BIT_LENGTH, ABOVE),
      List.of(DEPTH),
      Source.derived("Arithmetic.", "Aritmética."),
      List.of(Phrase.of(
          "Rods of one length, measured, not nominal.", "Tubos de una sola longitud, medidos, no nominales.")),
      RodTally::reckon);

  private static final Phrase LAST_DEPTH = Phrase.of("depth after the last rod", "profundidad después del último tubo");

  private RodTally() {}

  /** How deep the hole will be after one more rod like the last. */
  public static Outcome next(Drilling.Rod last) {
    Term depth = Term.given("z₀", LAST_DEPTH, Scale.DEPTH, last.depth())
        .plus(Term.given("l", LENGTH.label(), Scale.DEPTH, last.length()))
        .named("z", DEPTH.label(), DEPTH.scale());
    return Outcome.empty().with(DEPTH.name(), depth);
  }

  private static Outcome reckon(Inputs inputs) {
    Term depth = inputs.given("n", RODS)
        .times(inputs.given("l", LENGTH))
        .plus(inputs.given("s", SUBS, Length.ZERO))
        .plus(inputs.given("b", BIT_LENGTH, Length.ZERO))
        .minus(inputs.given("a", ABOVE, Length.ZERO))
        .named("z", DEPTH.label(), DEPTH.scale());
    return Outcome.empty().with(DEPTH.name(), depth);
  }

  private static QuantityField piece(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric)
        .between("0 ft", "60 ft").usually("0 ft", "20 ft").optional();
  }
}
