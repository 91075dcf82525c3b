package steening.ground;

import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * The slot that keeps back as much of the pack as it should, or of the formation where there is no pack.
 *
 * <p>S = the size that 100 − R percent are finer than, R retained: 90 % of a pack; half of a formation. p = what a slot
 * at hand lets through, by the same line between two sieves turned round: p₁ + (p₂ − p₁) log(s / d₁) / log(d₂ / d₁).
 *
 * <p>Source: at least 90 % of the pack: EPA Private Water Systems, gravel pack design, step 6; Wis. NR 812.16(3). 85 to
 * 100 %: TI 814-01 page 5-17; TM 5-813-1. No pack: D50 where the water corrodes and Cu is under 3, Water and Wastewater
 * Engineering page 4-38; a pack where the slot would be under 0.010 in: EPA (all seen). 40 to 50 % of the formation,
 * 30 % if uneven under a firm roof: Driscoll 1986 (memory). Range: between the end sieves. Accuracy: 5 points.
 */
public final class SlotChoice {
  public static final ChoiceField ROUND = ChoiceField.of(
          "around", Phrase.of("what lies against the screen", "lo que toca la rejilla"),
          ChoiceField.option("formation", "the formation itself", "la formación misma"),
          ChoiceField.option("pack", "pack", "filtro"))
      .optional();
  public static final QuantityField RETAINED = Plan.SLOT_RETAINS.named("retained-share").labelled("share to keep back", "parte que se retiene");
  public static final QuantityField AT_HAND =
      Plan.SLOT.labelled("slot at hand", "ranura disponible").optional();

  public static final Answer RULE = Answer.word("rule", Phrase.of("rule followed", "regla seguida"));
  public static final Answer SLOT = new Answer("chosen-slot", Phrase.of("slot", "ranura"), Scale.SLOT);
  static final Answer NINETY = slot("slot-ninety", "keeps 90 % of the pack: EPA, Wisconsin",
      "retiene 90 % del filtro: EPA, Wisconsin");
  static final Answer EIGHTY_FIVE = slot("slot-eighty-five", "keeps 85 % of the pack: TI 814-01, TM 5-813-1",
      "retiene 85 % del filtro: TI 814-01, TM 5-813-1");
  static final Answer FIFTY = slot("slot-fifty", "keeps 50 % of the formation: corrosive water, doubtful sample",
      "retiene 50 % de la formación: agua corrosiva, muestra dudosa");
  static final Answer FORTY =
      slot("slot-forty", "keeps 40 % of the formation", "retiene 40 % de la formación");
  static final Answer THIRTY = slot("slot-thirty", "keeps 30 % of the formation: uneven sand, firm roof",
      "retiene 30 % de la formación: arena desigual, techo firme");
  public static final Answer PASSES =
      new Answer("passes", Phrase.of("the slot at hand lets through", "la ranura disponible deja pasar"), Scale.SHARE);

  /** EPA, Private Water Systems (seen). */
  public static final Length NATURAL_LEAST = Length.of(0.010, Unit.INCH);

  public static final Reckoning RECKONING = new Reckoning(
      "slot-choice",
      "casing",
      Phrase.of("Choice of slot", "Elección de la ranura"),
      List.of(ROUND, Sieves.OPENINGS, Sieves.FINER, SieveWeights.RETAINED, SieveWeights.PAN, RETAINED, AT_HAND),
      List.of(RULE, SLOT, NINETY, EIGHTY_FIVE, FIFTY, FORTY, THIRTY, PASSES),
      Source.seen(
          "EPA, Private Water Systems, gravel pack design, step 6; Wis. NR 812.16(3); TI 814-01 p. 5-17; TM 5-813-1; "
              + "Water and Wastewater Engineering p. 4-38. 30 to 50 % without a pack: Driscoll 1986, from memory.",
          "EPA, Private Water Systems, diseño del filtro, paso 6; Wis. NR 812.16(3); TI 814-01 p. 5-17; TM 5-813-1; "
              + "Water and Wastewater Engineering p. 4-38. 30 a 50 % sin filtro: Driscoll 1986, de memoria."),
      List.of(
          Phrase.of(
              "Against a pack: EPA and Wisconsin keep back at least 90 % of it, two Army manuals 85 to 100 %. Without "
                  + "a share of your own, 90 %. Where nothing is said of it, a pack lies against the screen.",
              "Con filtro: la EPA y Wisconsin retienen al menos 90 %, dos manuales del Ejército 85 a 100 %. Sin "
                  + "porcentaje propio, 90 %. Si no se dice qué toca la rejilla, es un filtro."),
          Phrase.of(
              "Without a pack sources reach from 30 to 50 %; 50 % where the water corrodes or the sample is doubtful. "
                  + "Without a share of your own, 50 %.",
              "Sin filtro las fuentes van de 30 a 50 %; 50 % si el agua corroe o la muestra es dudosa. Sin porcentaje "
                  + "propio, 50 %."),
          Phrase.of(
              "EPA asks for a pack where the slot would be under 0.010 in, under 0.015 to 0.020 where the water leaves "
                  + "scale; coastal practice goes to 0.006.",
              "La EPA pide filtro si la ranura quedara bajo 0.25 mm (0.010 in), o bajo 0.38 a 0.51 mm si el agua "
                  + "incrusta; la práctica costera llega a 0.15 mm."),
          Phrase.of(
              "The next finer slot that is made is bought, never the next wider.",
              "Se compra la ranura más fina siguiente que se fabrique, nunca la más ancha.")),
      SlotChoice::reckon);

  private static final Quantity PACK_KEPT = Measure.of(90, Unit.PERCENT);
  private static final Quantity FORMATION_KEPT = Measure.of(50, Unit.PERCENT);

  private SlotChoice() {}

  private static Outcome reckon(Inputs inputs) {
    Sieves sieves = Sieves.of(inputs);
    boolean pack = inputs.find(ROUND).filter(round -> round.code().equals("formation")).isEmpty();
    Term kept = inputs.given("R", RETAINED, pack ? PACK_KEPT : FORMATION_KEPT);
    Figure share = new Figure(kept.quantity(), Scale.SHARE);
    Outcome outcome = Outcome.empty().naming(RULE.name(), pack
        ? Phrase.of("keeps {0} of the pack", "retiene {0} del filtro", share)
        : Phrase.of("keeps {0} of the formation", "retiene {0} de la formación", share));
    outcome = slot(outcome, SLOT, "S", sieves, Term.number(100).minus(kept));
    if (outcome.shown(SLOT.name()).isEmpty()) {
      outcome = outcome.remarking(Phrase.of(
          "The sieves do not reach that far, and nothing is guessed beyond them.",
          "Los tamices no llegan hasta ahí, y más allá no se supone nada."));
    } else if (!pack && outcome.quantity(SLOT.name()).coherent() < NATURAL_LEAST.coherent()) {
      outcome = outcome.remarking(Phrase.of(
          "That is under {0}: a pack is the usual answer (EPA).",
          "Eso queda bajo {0}: lo usual es poner filtro (EPA).", new Figure(NATURAL_LEAST, Scale.SLOT)));
    }
    if (pack) {
      outcome = slot(slot(outcome, NINETY, "S₉₀", sieves, Term.number(10)), EIGHTY_FIVE, "S₈₅", sieves, Term.number(15));
    } else {
      outcome = slot(slot(outcome, FIFTY, "S₅₀", sieves, Term.number(50)), FORTY, "S₄₀", sieves, Term.number(60));
      outcome = slot(outcome, THIRTY, "S₃₀", sieves, Term.number(70));
    }
    return inputs.find(AT_HAND).isPresent() ? passing(outcome, sieves, inputs) : outcome;
  }

  /** The size in the unit that slots are bought in; left out beyond the end sieves. */
  private static Outcome slot(Outcome outcome, Answer answer, String symbol, Sieves sieves, Term finer) {
    return sieves.size(finer)
        .map(size -> outcome.with(answer.name(), Coefficient.giving(Scale.SLOT, 1).of(Scale.GRAIN).term().times(size)
            .named(symbol, answer.label(), answer.scale())))
        .orElse(outcome);
  }

  /** A slot wider than the widest sieve lets through at least what that one does. */
  private static Outcome passing(Outcome outcome, Sieves sieves, Inputs inputs) {
    Term slot = Term.given("s", AT_HAND.label(), Scale.GRAIN, inputs.length(AT_HAND));
    Optional<Term> passing = sieves.passing(slot);
    if (passing.isPresent()) {
      return outcome.with(PASSES.name(), passing.get().named("p", PASSES.label(), PASSES.scale()));
    }
    Sieves.Sieve widest = sieves.all().get(sieves.all().size() - 1);
    if (inputs.length(AT_HAND).isLessThan(widest.opening())) {
      return outcome.remarking(Phrase.of(
          "The slot at hand is finer than the finest sieve: it lets through no more than that one.",
          "La ranura disponible es más fina que el tamiz más fino: no deja pasar más que este."));
    }
    return outcome
        .with(PASSES.name(), widest.passing().named("p", PASSES.label(), PASSES.scale()))
        .remarking(Phrase.of(
            "The slot at hand is wider than the widest sieve: it lets through at least what that one does.",
            "La ranura disponible es más ancha que el tamiz más abierto: deja pasar al menos lo que este."));
  }

  private static Answer slot(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.SLOT);
  }
}
