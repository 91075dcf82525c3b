package steening.stage.test;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
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
import steening.well.Plan;

/**
 * How long a test draws on the water that stood in the casing.
 *
 * <p>t = 0.6 (D² − d²) / q; t in minutes, D casing inside and d drop pipe outside diameter in inches, q specific
 * capacity in gpm/ft. Source: Schafer 1978 (memory). Range: an open casing, one drop pipe. Accuracy: a rule; readings
 * before it mislead, those well after it do not.
 */
public final class CasingStorageTime {
  public static final QuantityField INSIDE = Plan.CASING_OUTSIDE.named("casing-inside")
      .labelled("casing inside diameter", "diámetro interior del ademe");

  public static final QuantityField DROP_PIPE = QuantityField.of(
          "drop-pipe", Scale.DIAMETER,
          Phrase.of("drop pipe outside diameter", "diámetro exterior de la columna de bombeo"), "1.25 in", "32 mm")
      .between("0 in", "20 in").usually("0.5 in", "4 in").optional();

  public static final QuantityField CAPACITY = QuantityField.of(
          "specific-capacity", Scale.SPECIFIC_CAPACITY, SpecificCapacity.CAPACITY.label(), "0.97 gpm/ft", "0.2 L/s/m")
      .between("0.0001 gpm/ft", "10000 gpm/ft").usually("0.01 gpm/ft", "100 gpm/ft");

  /** Where nothing is known of the drop pipe: an inch and a quarter (common practice, no source). */
  static final Length USUAL_DROP_PIPE = Length.of(1.25, Unit.INCH);

  static final Answer TIME = new Answer(
      "casing-storage-time", Phrase.of("time of casing storage", "tiempo de almacenamiento en el ademe"),
      Scale.MINUTES);

  private static final double FACTOR = Unit.MINUTE.toCoherent(0.6)
      * Unit.GALLON_PER_MINUTE_PER_FOOT.toCoherent(1) / Unit.SQUARE_INCH.toCoherent(1);

  public static final Reckoning RECKONING = new Reckoning(
      "casing-storage-time",
      TestStage.NAME,
      Phrase.of("Casing storage", "Almacenamiento en el ademe"),
      List.of(INSIDE, DROP_PIPE, CAPACITY),
      List.of(TIME),
      Source.memory("Schafer 1978, for inches, gpm/ft and minutes.", "Schafer 1978, para pulgadas, gpm/ft y minutos."),
      List.of(
          Phrase.of("One drop pipe in an open casing.", "Una columna de bombeo en un ademe abierto."),
          Phrase.of("Without a drop pipe given, 1 1/4 in.", "Si no se da la columna de bombeo, 32 mm (1 1/4 in).")),
      CasingStorageTime::reckon);

  private CasingStorageTime() {}

  private static Outcome reckon(Inputs inputs) {
    Term inside = inputs.given("D", INSIDE);
    Term pipe = inputs.given("d", DROP_PIPE, USUAL_DROP_PIPE);
    if (!(inside.quantity().coherent() > pipe.quantity().coherent())) {
      throw new NotReckonable(
          "The drop pipe does not fit into the casing: {0} against {1}.",
          "La columna de bombeo no cabe en el ademe: {0} contra {1}.",
          new Figure(pipe.quantity(), Scale.DIAMETER), new Figure(inside.quantity(), Scale.DIAMETER));
    }
    Term factor = Coefficient.giving(Scale.MINUTES, FACTOR).of(Scale.DIAMETER, 2).of(Scale.SPECIFIC_CAPACITY, -1)
        .term();
    return Outcome.empty().with(
        TIME.name(),
        factor.times(inside.squared().minus(pipe.squared())).over(inputs.given("q", CAPACITY))
            .named("t", TIME.label(), TIME.scale()));
  }
}
