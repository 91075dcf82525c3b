package steening.bore;

import java.util.List;
import steening.language.Phrase;
import steening.number.Decimal;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Outcome;
import steening.reckoning.Term;

/**
 * What a stretch of the annulus takes of something that comes in bags, and how much of it to load.
 *
 * <p>n = V / b, rounded up; loaded: V (1 + o) / b, rounded up; V volume, b volume of a bag, o overage.
 */
public final class Bagged {
  public static final Answer VOLUME = new Answer("volume", Phrase.of("volume", "volumen"), Scale.VOLUME);
  public static final Answer FILLED =
      new Answer("bags-filled", Phrase.of("that is, in bags", "es decir, en sacos"), Scale.NUMBER);
  public static final Answer BAGS = new Answer("bags", Phrase.of("whole bags", "sacos enteros"), Scale.NUMBER);
  public static final Answer ORDER =
      new Answer("order-volume", Phrase.of("volume to load", "volumen a cargar"), Scale.VOLUME);
  public static final Answer ORDER_BAGS =
      new Answer("order-bags", Phrase.of("bags to load", "sacos a cargar"), Scale.NUMBER);
  public static final List<Answer> ANSWERS = List.of(VOLUME, FILLED, BAGS, ORDER, ORDER_BAGS);

  /** For the hole as drilled and nothing more. */
  public static final Quantity NO_OVERAGE = new Measure(Dimension.NUMBER, 0);

  private static final Phrase BAG = Phrase.of("volume of a bag", "volumen de un saco");
  private static final Phrase OVERAGE = Phrase.of("overage", "excedente");

  private Bagged() {}

  /**
   * The answers for a stretch between two depths.
   *
   * @param bagVolume more than nothing
   * @param overage as a share
   */
  public static Outcome of(Annulus annulus, Length from, Length to, Quantity bagVolume, Quantity overage) {
    Term volume = annulus.volume("V", VOLUME.label(), from, to);
    Term bag = Term.given("b", BAG, Scale.VOLUME, bagVolume);
    Term filled = volume.over(bag).named("n", FILLED.label(), FILLED.scale());
    Term order = volume.times(oneAnd(overage)).named("W", ORDER.label(), ORDER.scale());
    return Outcome.empty()
        .with(VOLUME.name(), volume)
        .with(FILLED.name(), filled)
        .with(BAGS.name(), filled.roundedUp().named("N", BAGS.label(), BAGS.scale()))
        .with(ORDER.name(), order)
        .with(ORDER_BAGS.name(), order.over(bag).roundedUp().named("M", ORDER_BAGS.label(), ORDER_BAGS.scale()));
  }

  /** So many bags, said. */
  public static Phrase said(int bags) {
    return bags == 1
        ? Phrase.of("1 bag", "1 saco")
        : Phrase.of("{0} bags", "{0} sacos", Integer.toString(bags));
  }

  /** A whole number of bags that was reckoned, said. */
  public static Phrase said(Quantity bags) {
    return said((int) bags.coherent());
  }

  /** Bags that are not whole, to a tenth. */
  public static Phrase about(Quantity bags) {
    return Phrase.same(Decimal.fixed(bags.coherent(), 1));
  }

  /** One and the overage, which is read in percent: 1 + 0.01 o. */
  public static Term oneAnd(Quantity overage) {
    Term share = Coefficient.giving(Scale.NUMBER, 1).of(Scale.SHARE).term();
    return Term.number(1).plus(share.times(Term.given("o", OVERAGE, Scale.SHARE, overage)));
  }
}
