package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * An invented well to pour a pack into, whose truth is known: ground that breaks away differently from five feet to
 * five feet, bags that are not quite the printed size, a tape that is read to a tenth or two, and sand that hangs now
 * and then. All lengths in feet, volumes in cubic feet. It knows nothing of how the program reckons.
 */
final class PouredWell {
  static final double BIT = 7.875;
  static final double PIPE = 4.5;
  static final double BAG = 0.5;
  /** 50 lb of bentonite in 24 gal make 26.31 gal. */
  static final double GROUT_BAG = 26.31 / 7.480519;
  private static final double QUARTER_PI_IN_FEET = 0.0054541539;
  private static final double STRETCH = 5;
  private static final double CHANCE_OF_A_BRIDGE = 0.04;

  private final Random random;
  private final List<Double> ratios = new ArrayList<>();
  /** Of the ground above the pack. */
  private final List<Double> above = new ArrayList<>();
  private final double groutYield;
  private final Random groutTape;
  private int groutBags;
  private double groutBottom;
  private final double bagSize;
  private final double tapeError;
  private double in;

  final double depth;
  final double stringBottom;
  final double packTop;
  final boolean soundedFirst;
  /** Length of the void under a bridge that hangs now. */
  double hanging;

  /**
   * @param breakaway how much more than the bit the ground takes, in the mean of all wells, as a share
   */
  PouredWell(Random random, double breakaway) {
    this.random = random;
    depth = between(80, 220);
    stringBottom = depth - between(1, 5);
    packTop = depth - between(18, 45);
    soundedFirst = random.nextBoolean();
    // Gamma of shape two: most ground near the mean, some much looser, none narrower than the bit.
    double ground = breakaway / 2 * (exponential() + exponential());
    for (int i = 0; i * STRETCH < depth + STRETCH; i++) {
      ratios.add(1 + ground * Math.exp(0.5 * random.nextGaussian() - 0.125));
    }
    // Its own chance, so that what was invented below stays as it was.
    Random bed = new Random(Double.doubleToLongBits(depth));
    double another = -breakaway / 2 * Math.log((1 - bed.nextDouble()) * (1 - bed.nextDouble()));
    double other = bed.nextBoolean() ? ground : another;
    for (int i = 0; i * STRETCH < depth + 20; i++) above.add(1 + other * Math.exp(0.5 * bed.nextGaussian() - 0.125));
    groutYield = GROUT_BAG * (1 + 0.02 * bed.nextGaussian());
    groutTape = bed;
    bagSize = BAG * (1 + 0.025 * random.nextGaussian());
    tapeError = between(0.1, 0.2);
  }

  /** So many bags; now and then the last of them hang. */
  void pour(int bags) {
    for (int i = 0; i < bags; i++) in += bagSize * (1 + 0.02 * random.nextGaussian());
    if (hanging == 0 && random.nextDouble() < CHANCE_OF_A_BRIDGE) {
      hanging = Math.min(between(0.5, 12), top() - 1);
    }
  }

  void breakBridge() {
    hanging = 0;
  }

  /** What a tape finds now: below the ground, to a tenth of a foot as crews read it. */
  double tape() {
    double read = top() - hanging + tapeError * random.nextGaussian();
    return Math.rint(read * 10) / 10;
  }

  /** Bags that the pack still takes, not whole ones. */
  double bagsLeft() {
    return Math.max(0, (volume(packTop, depth) - in) / bagSize);
  }

  /** The pack is done: the grout starts where its sand stands. */
  void beginGrout() {
    groutBottom = Math.max(1, top());
  }

  void pump(int bags) {
    groutBags += bags;
  }

  /** What a tape finds on the grout, which is softer than sand: to three tenths. */
  double tapeOnGrout() {
    double low = 0;
    double high = groutBottom;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (grouted(middle) > groutBags * groutYield) low = middle;
      else high = middle;
    }
    return Math.max(0, Math.rint((high + 0.3 * groutTape.nextGaussian()) * 10) / 10);
  }

  /** Bags that the grout still takes, not whole ones. */
  double groutLeft() {
    return Math.max(0, grouted(0) / groutYield - groutBags);
  }

  private double grouted(double from) {
    double volume = 0;
    for (double at = from; at < groutBottom; at = Math.min(groutBottom, next(at))) {
      double end = Math.min(groutBottom, next(at));
      double ratio = above.get((int) Math.floor(at / STRETCH + 1e-9));
      volume += QUARTER_PI_IN_FEET * (BIT * BIT - PIPE * PIPE) * ratio * (end - at);
    }
    return volume;
  }

  /** What the pack took over what the bit's hole would have: what a firm finds in its papers. */
  double ratio() {
    double even = QUARTER_PI_IN_FEET
        * ((BIT * BIT - PIPE * PIPE) * (stringBottom - packTop) + BIT * BIT * (depth - stringBottom));
    return volume(packTop, depth) / bagSize * BAG / even;
  }

  /** Top of the sand if none of it hangs. */
  private double top() {
    double low = -500;
    double high = depth;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (volume(middle, depth) > in) low = middle;
      else high = middle;
    }
    return high;
  }

  private double volume(double from, double to) {
    double volume = 0;
    double at = from;
    while (at < to) {
      double end = Math.min(to, at < stringBottom ? Math.min(next(at), stringBottom) : next(at));
      double pipe = at < stringBottom ? PIPE : 0;
      volume += QUARTER_PI_IN_FEET * (BIT * BIT - pipe * pipe) * ratio(at) * (end - at);
      at = end;
    }
    return volume;
  }

  private static double next(double at) {
    return (Math.floor(at / STRETCH + 1e-9) + 1) * STRETCH;
  }

  private double ratio(double at) {
    return at < 0 ? 1 : ratios.get((int) Math.floor(at / STRETCH + 1e-9));
  }

  private double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  private double exponential() {
    return -Math.log(1 - random.nextDouble());
  }
}
