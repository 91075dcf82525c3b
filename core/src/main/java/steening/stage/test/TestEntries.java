package steening.stage.test;

import java.util.List;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.stage.test.gauge.RateEntry;
import steening.well.DepthFrom;
import steening.well.Plan;

/** What is taken down during a pumping test. */
final class TestEntries {
  /** A level as read; negative where the water stands above the point it is read from. */
  static final QuantityField LEVEL = QuantityField.of(
          "level", Scale.DEPTH, Phrase.of("water level", "nivel del agua"), "43.40 ft", "13.23 m")
      .between("-100 ft", "6000 ft").usually("0 ft", "400 ft");

  static final QuantityField AT_REST = LEVEL.labelled("static water level", "nivel estático");

  static final QuantityField PUMPING = LEVEL.labelled("pumping water level", "nivel dinámico");

  static final QuantityField RATE = Plan.RATE.labelled("discharge rate", "gasto");

  static final QuantityField SINCE_START =
      minutes("minutes since the pump was started", "minutos desde el arranque de la bomba");

  static final QuantityField SINCE_STOP =
      minutes("minutes since the pump was stopped", "minutos desde el paro de la bomba");

  static final Kind STATIC_LEVEL = Kind.of(
      "static-level", Phrase.of("Static water level", "Nivel estático"), AT_REST, DepthFrom.FIELD)
      .carrying(DepthFrom.FIELD);

  static final Kind START = Kind.of("pumping-start", Phrase.of("Pump started", "Arranque de la bomba"), RATE);

  static final Kind PUMPING_LEVEL = Kind.of(
      "pumping-level", Phrase.of("Pumping water level", "Nivel dinámico"), SINCE_START, PUMPING, DepthFrom.FIELD)
      .carrying(DepthFrom.FIELD);

  static final Kind STOP = Kind.of("pumping-stop", Phrase.of("Pump stopped", "Paro de la bomba"));

  static final Kind RECOVERY_LEVEL = Kind.of(
      "recovery-level", Phrase.of("Recovery level", "Nivel de recuperación"), SINCE_STOP, LEVEL, DepthFrom.FIELD)
      .carrying(DepthFrom.FIELD);

  static final List<Kind> ALL = List.of(STATIC_LEVEL, START, PUMPING_LEVEL, RateEntry.KIND, STOP, RECOVERY_LEVEL);

  private TestEntries() {}

  private static QuantityField minutes(String english, String spanish) {
    return QuantityField.of("minutes", Scale.MINUTES, Phrase.of(english, spanish), "10 min", "10 min")
        .between("0 min", "100000 min").usually("0 min", "4320 min");
  }
}
