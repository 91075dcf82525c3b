package steening.stage.test.gauge;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Rate by a water meter, from two readings of its register.
 *
 * <p>V = M₂ − M₁, Q = V / t; error e = 2 % + m / V with m the finest mark. Source: a definition; the 2 % is common
 * practice, no source. Range: the rates the meter is made for, running full and without air. Accuracy: e.
 */
public final class MeterRate {
  public static final QuantityField FIRST = register("meter-first", "register at first", "registro inicial",
      "1204.5 gal", "4560 L");
  public static final QuantityField SECOND = register("meter-second", "register then", "registro final",
      "1304.5 gal", "4940 L");
  public static final QuantityField TIME = QuantityField.of(
          "meter-time", Scale.MINUTES, Phrase.of("time between them", "tiempo entre ambos"), "10 min", "10 min")
      .between("0.05 min", "100000 min").usually("0.5 min", "1500 min");
  public static final QuantityField MARK = QuantityField.of(
          "meter-mark", Scale.LIQUID, Phrase.of("finest mark of the register", "marca más fina del registro"),
          "0.1 gal", "1 L")
      .between("0 gal", "1000 gal").optional();

  static final Answer VOLUME = new Answer(
      "metered", Phrase.of("volume through the meter", "volumen por el medidor"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "meter-rate",
      "test",
      Phrase.of("Rate by a water meter", "Aforo con medidor"),
      List.of(FIRST, SECOND, TIME, MARK),
      List.of(RateBand.RATE, RateBand.LEAST, RateBand.MOST, VOLUME),
      Source.derived("Definition; 2 % of the meter: common practice, no source.",
          "Definición; 2 % del medidor: práctica común, sin fuente."),
      List.of(
          Phrase.of("The pipe full, no air, the rate within what the meter is made for.",
              "Tubo lleno, sin aire, gasto dentro de lo que admite el medidor."),
          Phrase.of("Good to 2 % and one mark of the register; sand spoils a meter.",
              "Exacto a 2 % y una marca del registro; la arena estropea el medidor.")),
      MeterRate::reckon);

  private static final double METER = 0.02;
  private static final Quantity TENTH = Volume.of(0.1, Unit.GALLON);

  private MeterRate() {}

  private static Outcome reckon(Inputs inputs) {
    double first = inputs.amount(FIRST).coherent();
    double passed = inputs.amount(SECOND).coherent() - first;
    if (passed <= 0) {
      throw new NotReckonable(
          "The register went from {0} to {1}: nothing passed. Look at the flow and at the readings.",
          "El registro fue de {0} a {1}: no pasó nada. Vea el gasto y las lecturas.",
          new Figure(inputs.amount(FIRST), Scale.LIQUID), new Figure(inputs.amount(SECOND), Scale.LIQUID));
    }
    Quantity mark = inputs.find(MARK).orElse(TENTH);
    if (passed < mark.coherent() * 10) {
      throw new NotReckonable(
          "Only {0} passed, less than ten marks of {1}: read the meter over a longer time.",
          "Solo pasó {0}, menos de diez marcas de {1}: lea el medidor durante más tiempo.",
          new Figure(new Volume(passed), Scale.LIQUID), new Figure(mark, Scale.LIQUID));
    }
    Term volume = inputs.given("M₂", SECOND).minus(inputs.given("M₁", FIRST))
        .named("V", VOLUME.label(), VOLUME.scale());
    Term own = Term.given("u", Phrase.of("error of the meter", "error del medidor"), Scale.SHARE,
        new Measure(Dimension.NUMBER, METER));
    Term error = own.plus(Coefficient.giving(Scale.SHARE, 1).term()
        .times(inputs.given("m", MARK, TENTH)).over(volume));
    Term rate = Coefficient.giving(Scale.FLOW, 1).of(Scale.LIQUID).of(Scale.MINUTES, -1).term()
        .times(volume).over(inputs.given("t", TIME));
    return RateBand.around(rate, RateBand.error(error)).with(VOLUME.name(), volume);
  }

  private static QuantityField register(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.LIQUID, Phrase.of(english, spanish), us, metric)
        .between("0 gal", "1000000000 gal");
  }
}
