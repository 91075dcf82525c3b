package steening.stage.seal.placing;

import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.seal.DryGrout;

/**
 * How long a batch stays workable. Bentonite mixed in one step: w₁ = 15 min / 2ˣ to w₂ = 30 min / 2ˣ, x = (T − 60 °F) /
 * 18 °F and at least 0; T temperature of the mix. Cement: 45 min, when it may begin to set at the earliest.
 *
 * <p>Source: 15 to 30 min at 60 °F and less when warm, and 45 min (ASTM C150), from memory; half the time for every
 * 18 °F (10 °C) is common practice, no source. Cold is not counted in favour. The label goes before all of it.
 */
public final class WorkingTime {
  public static final ChoiceField MATERIAL = DryGrout.FIELD;
  public static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE, Phrase.of("temperature of the mix", "temperatura de la mezcla"), "78 °F",
          "26 °C")
      .between("32 °F", "140 °F").usually("35 °F", "105 °F").optional();

  public static final Answer LEAST =
      new Answer("least", Phrase.of("workable for at least", "trabajable al menos"), Scale.MINUTES);
  public static final Answer MOST =
      new Answer("most", Phrase.of("and at most", "y a lo más"), Scale.MINUTES);

  private static final Quantity COOL = Measure.of(60, Unit.FAHRENHEIT);
  private static final double PER_KELVIN = 0.1;

  public static final Reckoning RECKONING = new Reckoning(
      "working-time",
      "seal",
      Phrase.of("Working time of a batch", "Tiempo de trabajo de una mezcla"),
      List.of(MATERIAL, TEMPERATURE),
      List.of(LEAST, MOST),
      Source.memory(
          "One-step bentonite 15 to 30 min at 60 °F, less when warm; cement 45 min at the least (ASTM C150). Half the"
              + " time for every 18 °F: common practice, no source.",
          "Bentonita de un paso 15 a 30 min a 16 °C, menos con calor; cemento 45 min como mínimo (ASTM C150). La mitad"
              + " del tiempo cada 10 °C: práctica común, sin fuente."),
      List.of(
          Phrase.of("The label of the bag comes first.", "La etiqueta del saco va primero."),
          Phrase.of(
              "Below 60 °F it is taken as at 60 °F; without a temperature likewise.",
              "Bajo 16 °C se toma como a 16 °C; sin temperatura también.")),
      WorkingTime::reckon);

  private WorkingTime() {}

  private static Outcome reckon(Inputs inputs) {
    return of(inputs.text(MATERIAL).map(DryGrout::of).orElse(DryGrout.BENTONITE), inputs.find(TEMPERATURE));
  }

  /** @throws NotReckonable for rapid-setting cement, of which only the label can tell */
  public static Outcome of(DryGrout material, Optional<Quantity> temperature) {
    if (material == DryGrout.RAPID_CEMENT) {
      throw new NotReckonable(
          "How long rapid-setting cement stays workable is on its label.",
          "El tiempo de trabajo del cemento rápido está en su etiqueta.");
    }
    if (material == DryGrout.CEMENT) {
      return Outcome.empty().with(LEAST.name(), minutes("w₀", 45).named("w₁", LEAST.label(), Scale.MINUTES));
    }
    Term given = Term.given("T", TEMPERATURE.label(), Scale.TEMPERATURE, temperature.orElse(COOL));
    Term cool = Term.given("T₀", Phrase.of("temperature of the figures", "temperatura de las cifras"),
        Scale.TEMPERATURE, COOL);
    Term halvings = Coefficient.giving(Scale.NUMBER, PER_KELVIN).of(Scale.TEMPERATURE).term()
        .times(given.minus(cool)).most(Term.number(0))
        .named("x", Phrase.of("times halved by warmth", "veces a la mitad por calor"), Scale.NUMBER);
    Term shorter = Term.number(2).power(halvings);
    return Outcome.empty()
        .with(LEAST.name(), minutes("m₁", 15).over(shorter).named("w₁", LEAST.label(), Scale.MINUTES))
        .with(MOST.name(), minutes("m₂", 30).over(shorter).named("w₂", MOST.label(), Scale.MINUTES));
  }

  private static Term minutes(String symbol, double minutes) {
    return Term.given(
        symbol, Phrase.of("as remembered", "de memoria"), Scale.MINUTES, Measure.of(minutes, Unit.MINUTE));
  }
}
