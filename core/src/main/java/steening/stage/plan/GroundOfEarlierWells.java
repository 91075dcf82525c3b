package steening.stage.plan;

import java.util.ArrayList;
import java.util.List;
import steening.bore.UsualOverbreak;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.UsualGround;

/**
 * What the next hole will take, from what earlier ones took, drawn toward the usual where they are few.
 *
 * <p>m = (k R₀ + n r̄) / (k + n); s² = (k s₀² + Σ (r − r̄)² + k n (r̄ − R₀)² / (k + n)) / (k + n) × (1 + 1 / (k + n)). r
 * ratio of each well, n how many, r̄ their mean, R₀ and s₀ the usual ratio and its deviation, which weigh as much as k
 * wells; m and s for the next well.
 *
 * <p>Source: the conjugate normal model with mean and variance unknown, statistics by the book (memory); k = 4 is a
 * judgement, common practice, no source. Range: wells in like ground, drilled alike. Accuracy: s.
 */
public final class GroundOfEarlierWells {
  /** The usual weighs as much as so many wells (a judgement; common practice, no source). */
  private static final int USUAL_WEIGHS = 4;

  public static final SeriesField RATIOS = SeriesField.of(
      QuantityField.of(
              "ratios", Scale.NUMBER, Phrase.of("ratio of each earlier well", "razón de cada pozo anterior"),
              "1.10", "1.10")
          .between("0.5", "5").usually("0.9", "2.5"),
      1, "1.08; 1.21; 1.15", "1.08; 1.21; 1.15");
  static final QuantityField USUAL = UsualGround.MEAN.named("usual-ratio").optional();
  static final QuantityField SPREAD = UsualGround.SPREAD.named("usual-spread").optional();

  public static final Answer MEAN = new Answer("mean-ratio", UsualGround.MEAN.label(), Scale.NUMBER);
  public static final Answer DEVIATION = new Answer("spread", UsualGround.SPREAD.label(), Scale.NUMBER);
  static final Answer PLAIN =
      new Answer("mean-of-these", Phrase.of("mean of these wells", "media de estos pozos"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "ground-of-earlier-wells",
      PlanStage.NAME,
      Phrase.of("Ground of earlier wells", "Terreno de pozos anteriores"),
      List.of(RATIOS, USUAL, SPREAD),
      List.of(PLAIN, MEAN, DEVIATION),
      Source.memory(
          "Normal model with mean and variance unknown, statistics by the book. The usual weighs as much as 4 wells:"
              + " common practice, no source.",
          "Modelo normal con media y varianza desconocidas, estadística de manual. Lo usual pesa como 4 pozos:"
              + " práctica común, sin fuente."),
      List.of(
          Phrase.of("Wells in like ground, drilled alike.", "Pozos en terreno parecido, perforados igual."),
          Phrase.of(
              "Without a usual ratio, 1.14 ± 0.12 (common practice, no source).",
              "Sin razón usual, 1.14 ± 0.12 (práctica común, sin fuente).")),
      GroundOfEarlierWells::reckon);

  private GroundOfEarlierWells() {}

  private static Outcome reckon(Inputs inputs) {
    UsualOverbreak usual = new UsualOverbreak(
        inputs.find(USUAL).orElse(UsualOverbreak.MEAN), inputs.find(SPREAD).orElse(UsualOverbreak.SPREAD));
    return of(inputs.value(RATIOS), usual);
  }

  /** For ratios at hand, at least one. */
  static Outcome of(List<Quantity> ratios, UsualOverbreak usual) {
    List<Term> found = new ArrayList<>();
    for (Quantity ratio : ratios) {
      found.add(Term.given("r" + Term.index(found.size() + 1), RATIOS.label(), Scale.NUMBER, ratio));
    }
    Term few = Inputs.count("k", Phrase.of("wells that the usual weighs", "pozos que pesa lo usual"), USUAL_WEIGHS);
    Term many = Inputs.count("n", Phrase.of("wells", "pozos"), found.size());
    Term all = few.plus(many).named("N", Phrase.of("both", "ambos"), Scale.NUMBER);
    Term plain = Term.sum(found).over(many).named("r̄", PLAIN.label(), Scale.NUMBER);
    Term usually = Term.given("R₀", Phrase.of("usual ratio", "razón usual"), Scale.NUMBER, usual.mean());
    Term deviation = Term.given("s₀", UsualGround.SPREAD.label(), Scale.NUMBER, usual.spread());
    Term mean = few.times(usually).plus(many.times(plain)).over(all).named("m", MEAN.label(), Scale.NUMBER);
    Term squares = Term.sum(found.stream().map(r -> r.minus(plain).squared()).toList())
        .named("S", Phrase.of("squares about their mean", "cuadrados respecto a su media"), Scale.NUMBER);
    Term drawn = few.times(many).over(all).times(plain.minus(usually).squared())
        .named("D", Phrase.of("their mean away from the usual", "su media lejos de lo usual"), Scale.NUMBER);
    Term variance = few.times(deviation.squared()).plus(squares).plus(drawn).over(all)
        .named("u", Phrase.of("variance from well to well", "varianza de pozo a pozo"), Scale.NUMBER);
    Term next = variance.times(Term.number(1).plus(Term.number(1).over(all))).squareRoot()
        .named("s", DEVIATION.label(), Scale.NUMBER);
    return Outcome.empty().with(PLAIN.name(), plain).with(MEAN.name(), mean).with(DEVIATION.name(), next);
  }
}
