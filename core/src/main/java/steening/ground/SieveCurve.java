package steening.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Characteristic sizes of a sieve analysis, and what pack and slot they ask for.
 *
 * <p>Dₙ is the size that n percent by weight are finer than. Cu = D60 / D10; Cc = D30² / (D10 D60); D30 of the pack 4
 * to 6 times D30 of the finest stratum screened; natural slot D60 to D50, which retains 40 to 50 %.
 *
 * <p>Sources: EPA Private Water Systems; TI 814-01; Wis. NR 812.16; ASTM D5092 (seen) for the pack; Driscoll 1986
 * (memory) for the natural slot. Range: between the end sieves. Accuracy: 1 % of a size against the same arithmetic, 5
 * % against a curve drawn by hand; the sample itself, washed up the hole, loses fines.
 */
public final class SieveCurve {
  static final List<Integer> PERCENTS = List.of(10, 17, 20, 30, 50, 60, 70, 90);

  static final Answer UNIFORMITY =
      new Answer("cu", Phrase.of("uniformity coefficient Cu", "coeficiente de uniformidad Cu"), Scale.NUMBER);
  static final Answer CURVATURE =
      new Answer("cc", Phrase.of("coefficient of curvature Cc", "coeficiente de curvatura Cc"), Scale.NUMBER);
  static final Answer PACK_LEAST = new Answer(
      "pack-least", Phrase.of("D30 of the pack, 4 times", "D30 del filtro, 4 veces"), Scale.GRAIN);
  static final Answer PACK_MOST = new Answer(
      "pack-most", Phrase.of("D30 of the pack, 6 times", "D30 del filtro, 6 veces"), Scale.GRAIN);
  static final Answer SLOT_40 = new Answer(
      "natural-slot-forty",
      Phrase.of("slot without a pack, 40 % retained", "ranura sin filtro, 40 % retenido"), Scale.SLOT);
  static final Answer SLOT_50 = new Answer(
      "natural-slot-fifty",
      Phrase.of("slot without a pack, 50 % retained", "ranura sin filtro, 50 % retenido"), Scale.SLOT);

  public static final Reckoning RECKONING = new Reckoning(
      "sieve-curve",
      Grain.STAGE,
      Phrase.of("Sieve curve", "Curva granulométrica"),
      List.of(Sieves.OPENINGS, Sieves.FINER, SieveWeights.RETAINED, SieveWeights.PAN, SieveWeights.SAMPLE),
      answers(),
      Source.seen(
          "EPA, Private Water Systems, gravel pack design; TI 814-01 p. 5-17; Wis. NR 812.16(2); ASTM D5092 6.3.3.1. "
              + "Slot without a pack: Driscoll 1986, from memory.",
          "EPA, Private Water Systems, diseño del filtro de grava; TI 814-01 p. 5-17; Wis. NR 812.16(2); ASTM D5092 "
              + "6.3.3.1. Ranura sin filtro: Driscoll 1986, de memoria."),
      List.of(
          Phrase.of(
              "Straight between two sieves on a logarithmic axis; nothing beyond the end sieves.",
              "Recta entre dos tamices en eje logarítmico; nada más allá de los tamices extremos."),
          Phrase.of(
              "Pack and slot go by the finest stratum screened. 4 times where it is fine and uniform, 6 where coarse "
                  + "and mixed; EPA goes to 6 to 9 where highly mixed.",
              "Filtro y ranura van con el estrato más fino enrejillado. 4 veces si es fino y uniforme, 6 si es grueso "
                  + "y mezclado; la EPA llega a 6 a 9 si es muy mezclado."),
          Phrase.of(
              "Percent finer, or weights of each sieve and the pan; percents are of what was found again.",
              "Porcentaje que pasa, o pesos de cada tamiz y del fondo; los porcentajes son de lo recuperado."),
          Phrase.of(
              "Cuttings washed up the hole have lost fines.",
              "Los recortes lavados por el barreno han perdido finos.")),
      SieveCurve::reckon);

  private SieveCurve() {}

  /** Of sieves as they were typed. */
  public static Outcome of(Body sieves) {
    return RECKONING.of(Inputs.of(sieves));
  }

  static Answer size(int percent) {
    return new Answer(
        "d" + percent,
        Phrase.of("{0}: {1} % are finer", "{0}: el {1} % es más fino", "D" + percent, Integer.toString(percent)),
        Scale.GRAIN);
  }

  private static List<Answer> answers() {
    List<Answer> answers = new ArrayList<>();
    for (int percent : PERCENTS) answers.add(size(percent));
    answers.addAll(List.of(UNIFORMITY, CURVATURE, PACK_LEAST, PACK_MOST, SLOT_40, SLOT_50));
    answers.addAll(List.of(SieveWeights.TOTAL, SieveWeights.LOSS));
    return answers;
  }

  private static Outcome reckon(Inputs inputs) {
    Sieves sieves = Sieves.of(inputs);
    Outcome outcome = SieveWeights.of(inputs).map(weights -> weights.on(Outcome.empty())).orElse(Outcome.empty());
    Map<Integer, Term> sizes = new TreeMap<>();
    List<Integer> missing = new ArrayList<>();
    for (int percent : PERCENTS) {
      Answer answer = size(percent);
      Optional<Term> size = sieves.size(percent, answer.label());
      if (size.isEmpty()) missing.add(percent);
      else {
        sizes.put(percent, size.get());
        outcome = outcome.with(answer.name(), size.get());
      }
    }
    for (Phrase sentence : sieves.missing(missing)) outcome = outcome.remarking(sentence);
    return advice(coefficients(outcome, sizes), sizes);
  }

  private static Outcome coefficients(Outcome outcome, Map<Integer, Term> sizes) {
    if (!sizes.containsKey(10) || !sizes.containsKey(60)) return outcome;
    Term uniformity = sizes.get(60).over(sizes.get(10)).named("Cu", UNIFORMITY.label(), UNIFORMITY.scale());
    Outcome with = outcome.with(UNIFORMITY.name(), uniformity);
    if (!sizes.containsKey(30)) return with;
    Term curvature = sizes.get(30).squared().over(sizes.get(10).times(sizes.get(60)));
    return with.with(CURVATURE.name(), curvature.named("Cc", CURVATURE.label(), CURVATURE.scale()));
  }

  private static Outcome advice(Outcome outcome, Map<Integer, Term> sizes) {
    Outcome with = outcome;
    if (sizes.containsKey(30)) {
      Term grain = sizes.get(30);
      with = with
          .with(PACK_LEAST.name(), Term.number(4).times(grain).named("P₄", PACK_LEAST.label(), PACK_LEAST.scale()))
          .with(PACK_MOST.name(), Term.number(6).times(grain).named("P₆", PACK_MOST.label(), PACK_MOST.scale()));
    }
    if (sizes.containsKey(60)) with = with.with(SLOT_40.name(), slot(SLOT_40, "S₄₀", sizes.get(60)));
    if (sizes.containsKey(50)) with = with.with(SLOT_50.name(), slot(SLOT_50, "S₅₀", sizes.get(50)));
    return with;
  }

  /** The size itself, in the unit that slots are bought in. */
  private static Term slot(Answer answer, String symbol, Term size) {
    return Coefficient.giving(answer.scale(), 1).of(Scale.GRAIN).term().times(size)
        .named(symbol, answer.label(), answer.scale());
  }
}
