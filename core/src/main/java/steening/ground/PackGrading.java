package steening.ground;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * What pack the finest stratum screened asks for.
 *
 * <p>P₃₀ = m D₃₀, m from 4 to 6; a pack of uniformity U that is straight on the semi-logarithmic axes has D₁₀ = P₃₀ /
 * U^0.4 and D₆₀ = P₃₀ U^0.6, since D₁₀, D₃₀ and D₆₀ then lie 20 and 30 points apart on one line. k = G₃₀ / D₃₀ is the
 * multiple of a pack at hand.
 *
 * <p>Source: EPA Private Water Systems, gravel pack design, steps 1 and 2; Wis. NR 812.16(2); TI 814-01 page 5-17; ASTM
 * D5092 6.3.3.1 (all seen): 4 to 6, EPA to 9 where highly mixed; U at most 2.5. By D50, 4 to 6 times: Bureau of
 * Reclamation, Ground Water Manual (memory). Range: sand and gravel. Accuracy: that of the sample.
 */
public final class PackGrading {
  public static final QuantityField D30 =
      Grain.size("d30", Phrase.of("D30 of the finest stratum screened", "D30 del estrato más fino"), "0.20 mm")
          .usually("0.03 mm", "5 mm");
  public static final QuantityField D50 =
      Grain.size("d50", Phrase.of("D50 of the same", "D50 del mismo"), "0.27 mm").optional();
  public static final QuantityField LEAST = Plan.PACK_TIMES_LEAST;
  public static final QuantityField MOST = Plan.PACK_TIMES_MOST;
  static final QuantityField UNIFORMITY = QuantityField.of(
          "uniformity", Scale.NUMBER, Phrase.of("greatest Cu of the pack", "Cu máximo del filtro"), "2.5", "2.5")
      .between("1", "20").usually("1", "4").optional();
  public static final QuantityField AT_HAND =
      Grain.size("pack-d30", Phrase.of("D30 of a pack at hand", "D30 de un filtro disponible"), "0.9 mm").optional();

  public static final Answer PACK_LEAST =
      new Answer("pack-least", Phrase.of("D30 of the pack, at least", "D30 del filtro, al menos"), Scale.GRAIN);
  public static final Answer PACK_MOST =
      new Answer("pack-most", Phrase.of("D30 of the pack, at most", "D30 del filtro, a lo sumo"), Scale.GRAIN);
  static final Answer FINEST = new Answer("finest", Phrase.of(
      "D10 of the finest such pack, at that Cu", "D10 del filtro más fino así, con ese Cu"), Scale.GRAIN);
  static final Answer COARSEST = new Answer("coarsest", Phrase.of(
      "D60 of the coarsest such pack, at that Cu", "D60 del filtro más grueso así, con ese Cu"), Scale.GRAIN);
  static final Answer MIXED = new Answer("mixed-most", Phrase.of(
      "EPA, where the sand is highly mixed, at most", "EPA, si la arena es muy mezclada, a lo sumo"), Scale.GRAIN);
  static final Answer MIDDLE_LEAST = new Answer("d50-least", Phrase.of(
      "another view: D50 of the pack, 4 times", "otra opinión: D50 del filtro, 4 veces"), Scale.GRAIN);
  static final Answer MIDDLE_MOST = new Answer("d50-most", Phrase.of(
      "another view: D50 of the pack, 6 times", "otra opinión: D50 del filtro, 6 veces"), Scale.GRAIN);
  public static final Answer MULTIPLE = new Answer("multiple", Phrase.of(
      "the pack at hand, times the stratum", "el filtro disponible, veces el estrato"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "pack-grading",
      "casing",
      Phrase.of("Grading of the pack", "Granulometría del filtro"),
      List.of(D30, D50, LEAST, MOST, UNIFORMITY, AT_HAND),
      List.of(PACK_LEAST, PACK_MOST, FINEST, COARSEST, MIXED, MIDDLE_LEAST, MIDDLE_MOST, MULTIPLE),
      Source.seen(
          "EPA, Private Water Systems, gravel pack design, steps 1 and 2; Wis. NR 812.16(2); TI 814-01 p. 5-17; ASTM "
              + "D5092 6.3.3.1. By D50: Bureau of Reclamation, Ground Water Manual, from memory.",
          "EPA, Private Water Systems, diseño del filtro, pasos 1 y 2; Wis. NR 812.16(2); TI 814-01 p. 5-17; ASTM "
              + "D5092 6.3.3.1. Por D50: Bureau of Reclamation, Ground Water Manual, de memoria."),
      List.of(
          Phrase.of(
              "The finest stratum screened governs: a pack for the coarse part lets the fine part through.",
              "Manda el estrato más fino enrejillado: un filtro para la parte gruesa deja pasar la fina."),
          Phrase.of(
              "Sources agree on 4 to 6 times D30: 4 where fine and uniform, 6 where coarse and mixed; EPA goes to 9 "
                  + "where highly mixed. Without a multiple of your own, 4 to 6.",
              "Las fuentes coinciden en 4 a 6 veces D30: 4 si es fino y uniforme, 6 si es grueso y mezclado; la EPA "
                  + "llega a 9 si es muy mezclado. Sin múltiplo propio, 4 a 6."),
          Phrase.of(
              "Cu of the pack at most 2.5 (EPA; Wis. NR 812.16), for monitoring wells rather 1 to 3 (ASTM D5092, from "
                  + "memory). D10 and D60 are of a pack straight on semi-logarithmic axes.",
              "Cu del filtro a lo sumo 2.5 (EPA; Wis. NR 812.16); en pozos de monitoreo, de 1 a 3 (ASTM D5092, de "
                  + "memoria). D10 y D60 son de un filtro recto en ejes semilogarítmicos."),
          Phrase.of(
              "At most 5 % of the pack's grains of lime (EPA): acid dissolves them.",
              "A lo sumo 5 % de granos calcáreos en el filtro (EPA): el ácido los disuelve.")),
      PackGrading::reckon);

  private static final Quantity FOUR = number(4);
  private static final Quantity SIX = number(6);
  private static final Quantity USUAL_UNIFORMITY = number(2.5);

  private PackGrading() {}

  private static Outcome reckon(Inputs inputs) {
    Term grain = inputs.given("D₃₀", D30);
    Term least = inputs.given("m₁", LEAST, inputs.find(MOST).filter(m -> m.coherent() < 4).orElse(FOUR));
    Term most = inputs.given("m₂", MOST, inputs.find(LEAST).filter(m -> m.coherent() > 6).orElse(SIX));
    if (most.quantity().coherent() < least.quantity().coherent()) {
      throw new NotReckonable(
          "The least multiple of D30 is above the greatest.", "El múltiplo mínimo de D30 supera al máximo.");
    }
    Term uniformity = inputs.given("U", UNIFORMITY, USUAL_UNIFORMITY);
    Term fine = least.times(grain).named("P₁", PACK_LEAST.label(), PACK_LEAST.scale());
    Term coarse = most.times(grain).named("P₂", PACK_MOST.label(), PACK_MOST.scale());
    Outcome outcome = Outcome.empty()
        .with(PACK_LEAST.name(), fine)
        .with(PACK_MOST.name(), coarse)
        .with(FINEST.name(), fine.over(uniformity.power(0.4)).named("A", FINEST.label(), FINEST.scale()))
        .with(COARSEST.name(), coarse.times(uniformity.power(0.6)).named("B", COARSEST.label(), COARSEST.scale()))
        .with(MIXED.name(), Term.number(9).times(grain).named("P₉", MIXED.label(), MIXED.scale()));
    return atHand(byMiddle(outcome, inputs), inputs, grain);
  }

  private static Outcome byMiddle(Outcome outcome, Inputs inputs) {
    if (inputs.find(D50).isEmpty()) return outcome;
    Term middle = inputs.given("D₅₀", D50);
    if (middle.quantity().coherent() < inputs.amount(D30).coherent()) {
      throw new NotReckonable(
          "D30 and D50 are percent finer, so D50 is the larger.", "D30 y D50 son de porcentaje que pasa: D50 es mayor.");
    }
    return outcome
        .with(MIDDLE_LEAST.name(), Term.number(4).times(middle).named("M₄", MIDDLE_LEAST.label(), Scale.GRAIN))
        .with(MIDDLE_MOST.name(), Term.number(6).times(middle).named("M₆", MIDDLE_MOST.label(), Scale.GRAIN));
  }

  private static Outcome atHand(Outcome outcome, Inputs inputs, Term grain) {
    Optional<Quantity> pack = inputs.find(AT_HAND);
    if (pack.isEmpty()) return outcome;
    return outcome.with(
        MULTIPLE.name(), inputs.given("G₃₀", AT_HAND).over(grain).named("k", MULTIPLE.label(), MULTIPLE.scale()));
  }

  private static Quantity number(double value) {
    return new Measure(Dimension.NUMBER, value);
  }
}
