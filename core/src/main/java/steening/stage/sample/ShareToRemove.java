package steening.stage.sample;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How much of something a treatment would have to take out.
 *
 * <p>r = 100 (1 − L / c); c found, L the limit, in the same unit. Source: a share. Range: found above the limit.
 * Accuracy: the laboratory's; a single sample says little about the next season.
 */
public final class ShareToRemove {
  static final QuantityField FOUND =
      concentration("found", Phrase.of("found in the sample", "hallado en la muestra"), "0.9 mg/L");
  static final QuantityField LIMIT =
      concentration("limit", Phrase.of("limit", "límite"), "0.3 mg/L");

  static final Answer SHARE =
      new Answer("share", Phrase.of("share to take out", "parte por quitar"), Scale.SHARE);

  public static final Reckoning RECKONING = new Reckoning(
      "share-to-remove",
      SampleStage.NAME,
      Phrase.of("What a treatment would have to take out", "Lo que un tratamiento tendría que quitar"),
      List.of(FOUND, LIMIT),
      List.of(SHARE),
      Source.derived("A share of what was found.", "Una parte de lo hallado."),
      List.of(Phrase.of(
          "The least it must do when new; the maker's tests and a sample behind it say what it does.",
          "Lo menos que debe lograr cuando es nuevo; los ensayos del fabricante y una muestra a la salida dicen qué"
              + " logra.")),
      ShareToRemove::reckon);

  private ShareToRemove() {}

  private static Outcome reckon(Inputs inputs) {
    if (inputs.amount(FOUND).coherent() <= inputs.amount(LIMIT).coherent()) {
      throw new NotReckonable(
          "What was found is not above the limit: there is nothing to take out.",
          "Lo hallado no pasa del límite: no hay nada que quitar.");
    }
    Term found = inputs.given("c", FOUND);
    Term limit = inputs.given("L", LIMIT);
    Term share = Coefficient.giving(Scale.SHARE, 1).term().times(Term.number(1).minus(limit.over(found)))
        .named("r", SHARE.label(), SHARE.scale());
    return Outcome.empty().with(SHARE.name(), share);
  }

  static Optional<Outcome> of(Quantity found, Quantity limit) {
    return Outcome.ifReckonable(() -> RECKONING.of(Inputs.none().with(FOUND, found).with(LIMIT, limit)));
  }

  private static QuantityField concentration(String name, Phrase label, String example) {
    return QuantityField.of(name, Scale.TRACE, label, example, example)
        .between("0.0000001 mg/L", "100000 mg/L").usually("0.0001 mg/L", "2000 mg/L");
  }
}
