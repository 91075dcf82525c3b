package steening.stage.pack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import steening.field.SeriesField;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.job.Stages;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.well.Well;

/** Invented wells poured bag by bag through the fold and the findings that a crew gets; what became of them, counted. */
final class Calibration {
  private static final Moment MORNING = Moment.parse("2026-05-12T08:00:00-05:00");
  private static final int AT_ONCE = 3;
  private static final String GROUT = "grout";
  private static final int[] SHARES = {50, 80, 90};

  int bridges;
  int caught;
  int longBridges;
  int longCaught;
  int soundWells;
  int soundCalledBridged;
  int soundReadings;
  int soundReadingsCalled;
  /** Forecasts, and how many of them each band held, by when they were made. */
  final Map<String, int[]> forecasts = new LinkedHashMap<>();

  private double breakaway;
  private int earlier;
  private Well well;
  private int place;

  /**
   * @param earlier how many wells of the firm in the same ground each well's usual ground is taken from; with none it is
   *     the one anywhere
   */
  static Calibration of(long seed, int wells, double breakaway, int earlier) {
    Calibration calibration = new Calibration();
    calibration.breakaway = breakaway;
    calibration.earlier = earlier;
    for (String when : new String[] {
      "before the first bag", "after one sounding", "after two", "after three or more", GROUT + ", before it",
      GROUT + ", after a tape"
    }) {
      calibration.forecasts.put(when, new int[6]);
    }
    Random seeds = new Random(seed);
    for (int i = 0; i < wells; i++) {
      long own = seeds.nextLong();
      calibration.pour(new PouredWell(new Random(own), breakaway), new Random(own + 1));
    }
    return calibration;
  }

  private void pour(PouredWell truth, Random others) {
    start(truth);
    if (earlier > 0) usualGround(others);
    boolean everHung = false;
    boolean everCalled = false;
    boolean wasHanging = false;
    if (truth.soundedFirst) tape(truth);
    forecast(truth, "before the first bag");
    for (int sounding = 1; sounding < 40; sounding++) {
      int bags = bagsNext();
      if (bags == 0) break;
      write("pack-bags", "bags", "" + bags);
      truth.pour(bags);
      tape(truth);
      boolean called = isCalledBridged();
      if (truth.hanging > 0) {
        everHung = true;
        if (!wasHanging) count(truth.hanging, called);
      } else {
        soundReadings++;
        if (called) soundReadingsCalled++;
        everCalled |= called;
      }
      wasHanging = truth.hanging > 0 && !called;
      if (called) {
        truth.breakBridge();
        tape(truth);
      }
      if (called && isCalledBridged()) break;
      forecast(truth, sounding == 1 ? "after one sounding" : sounding == 2 ? "after two" : "after three or more");
    }
    if (truth.hanging == 0) grout(truth);
    if (everHung) return;
    soundWells++;
    if (everCalled) soundCalledBridged++;
  }

  /** Grout on the pack, two bags at a time, sounded after each batch. */
  private void grout(PouredWell truth) {
    truth.beginGrout();
    double packStands = truth.tape();
    write("pack-tape", "reading", feet(packStands), "from", "ground");
    write("grout-mix", "material", "bentonite", "solids", "50 lb", "water", "24 gal");
    forecastGrout(truth, ", before it");
    for (int batch = 0; batch < 40 && truth.groutLeft() > 1; batch++) {
      write("grout-batch", "bags", "2", "water", "48 gal", "returns", "no");
      truth.pump(2);
      write("grout-tape", "reading", feet(truth.tapeOnGrout()), "from", "ground");
      forecastGrout(truth, ", after a tape");
    }
  }

  private void forecastGrout(PouredWell truth, String when) {
    Stages.named("seal").orElseThrow().expectations(well).stream()
        .map(Expectation::working).filter(o -> o.answers().containsKey("low-50"))
        .forEach(o -> held(forecasts.get(GROUT + when), o, truth.groutLeft()));
  }

  private void count(double length, boolean called) {
    bridges++;
    if (called) caught++;
    if (length <= 2) return;
    longBridges++;
    if (called) longCaught++;
  }

  private void start(PouredWell truth) {
    well = Well.named("w");
    place = 0;
    write("plan", "hole-diameter", PouredWell.BIT + " in", "hole-depth", feet(truth.depth),
        "casing-outside", PouredWell.PIPE + " in", "casing-wall", "0.214 in", "stick-up", "1.5 ft",
        "screen-top", feet(truth.packTop + 5), "screen-bottom", feet(truth.stringBottom), "sump", "0 ft",
        "slot", "20 slot", "pack-top", feet(truth.packTop), "grout-top", "0 ft", "rate", "10 gpm");
    write("hole", "from", "0 ft", "to", feet(truth.depth), "diameter", PouredWell.BIT + " in");
  }

  /** What the firm makes of its earlier wells in this ground, by the reckoning that its page uses. */
  private void usualGround(Random others) {
    List<String> ratios = new ArrayList<>();
    for (int i = 0; i < earlier; i++) {
      PouredWell other = new PouredWell(new Random(others.nextLong()), breakaway);
      ratios.add("" + BigDecimal.valueOf(other.ratio()).setScale(2, RoundingMode.HALF_UP));
    }
    Reckoning ground = Stages.reckoning("ground-of-earlier-wells").orElseThrow();
    Outcome found =
        ground.of(Inputs.of(Body.of(ground.inputs().get(0).name(), SeriesField.joined(ratios))));
    write("usual-ground", "mean-ratio", number(found, "mean-ratio"), "spread", number(found, "spread"));
  }

  private static String number(Outcome found, String answer) {
    return "" + BigDecimal.valueOf(found.quantity(answer).coherent()).setScale(3, RoundingMode.HALF_UP);
  }

  private void tape(PouredWell truth) {
    write("pack-tape", "reading", feet(truth.tape()), "from", "ground");
  }

  private void write(String kind, String... namesAndTexts) {
    place++;
    Moment at = MORNING.plusMinutes(10L * place);
    Entry entry = new Entry(
        kind + "-" + place, "w", "d", place, "crew", at, at, kind, 1, Body.of(namesAndTexts), List.of());
    well = Stages.ofKind(kind).orElseThrow().fold(well, entry);
  }

  private int bagsNext() {
    Optional<Integer> left = Pouring.of(well).flatMap(PackExpectations::bagsLeft);
    return Math.min(AT_ONCE, left.orElse(0));
  }

  private boolean isCalledBridged() {
    return PackFindings.of(well).stream().map(Finding::code).anyMatch("pack.bridged"::equals);
  }

  private void forecast(PouredWell truth, String when) {
    Optional<Outcome> left = Pouring.of(well).flatMap(Standing::bagsLeft);
    if (left.isEmpty()) return;
    held(forecasts.get(when), left.get(), truth.bagsLeft());
  }

  private static void held(int[] counts, Outcome left, double bags) {
    counts[0]++;
    for (int i = 0; i < SHARES.length; i++) {
      double low = left.quantity("low-" + SHARES[i]).coherent();
      double high = left.quantity("high-" + SHARES[i]).coherent();
      if (low <= bags && bags <= high) counts[i + 1]++;
    }
    if (bags <= left.quantity("most").coherent()) counts[4]++;
    if (bags <= left.quantity("bags").coherent()) counts[5]++;
  }

  private static String feet(double feet) {
    return BigDecimal.valueOf(feet).setScale(3, RoundingMode.HALF_UP) + " ft";
  }

  double longCaughtShare() {
    return (double) longCaught / longBridges;
  }

  double falseShare() {
    return (double) soundCalledBridged / soundWells;
  }

  /**
   * Share of all forecasts of the pack made with at least one sounding that a band held, in percent; 4: nine in ten, 5:
   * the whole bags to have.
   */
  double held(int band) {
    int all = 0;
    int held = 0;
    for (Map.Entry<String, int[]> e : forecasts.entrySet()) {
      if (e.getKey().startsWith("before") || e.getKey().startsWith(GROUT)) continue;
      all += e.getValue()[0];
      held += e.getValue()[band];
    }
    return 100.0 * held / all;
  }

  @Override
  public String toString() {
    StringBuilder out = new StringBuilder("bridges " + bridges + " caught " + caught + "; longer than 2 ft "
        + longBridges + " caught " + longCaught + " (" + 100 * longCaughtShare() + " %); sound wells " + soundWells
        + " called bridged " + soundCalledBridged + " (" + 100 * falseShare() + " %); sound readings " + soundReadings
        + " called " + soundReadingsCalled + "\n");
    forecasts.forEach((when, c) -> out.append(when).append(": ").append(c[0]).append(" forecasts; 50/80/90/P90/whole held ")
        .append(percent(c[1], c[0])).append(' ').append(percent(c[2], c[0])).append(' ')
        .append(percent(c[3], c[0])).append(' ').append(percent(c[4], c[0])).append(' ')
        .append(percent(c[5], c[0])).append('\n'));
    return out.append("with soundings: ").append(held(1)).append(' ').append(held(2)).append(' ').append(held(3))
        .append(' ').append(held(4)).append(' ').append(held(5)).toString();
  }

  private static double percent(int part, int whole) {
    return whole == 0 ? 0 : Math.rint(1000.0 * part / whole) / 10;
  }
}
