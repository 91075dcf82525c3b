package steening.stage.sample;

import java.util.List;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.well.Residual;

/**
 * What a failed test for coliform bacteria leads to: disinfect once more; after a second failure look for the opening
 * instead; then two good samples a day apart.
 *
 * <p>Two negative samples at least 24 h apart: COMAR 26.04.04.30 (seen), there for every new well. The rest is common
 * practice, no source.
 */
final class Coliform {
  private static final Quantity A_DAY = Measure.of(24, Unit.HOUR);

  private static final Phrase SECOND_BOTTLE = Phrase.of(
      "Chlorine went in again since: let it stand, flush to zero residual, fill the second bottle.",
      "Ya se volvió a clorar: deje actuar, enjuague hasta cloro cero y llene el segundo frasco.");

  private Coliform() {}

  static List<Finding> findings(Samples samples, Residual residual) {
    List<Sample> tested = samples.bottles().stream().filter(s -> s.result().isPresent()).toList();
    long failures = tested.stream().filter(Coliform::failed).count();
    if (failures == 0) return List.of();
    Sample last = tested.get(tested.size() - 1);
    if (!failed(last)) return goodOnes(tested) ? List.of() : List.of(again(last));
    boolean dosedSince = residual.dosed().filter(d -> d.isAfter(last.taken())).isPresent();
    Finding present = present(last, failures, dosedSince);
    return failures > 1 && dosedSince ? List.of(present, onceMore(last, failures)) : List.of(present);
  }

  private static Finding onceMore(Sample sample, long failures) {
    return Finding.of("sample.dosed-again", Weight.LOOK, SampleStage.NAME, Phrase.of(
            "Chlorine went in again after {0} failed bottles; after a failure it is dosed again once.",
            "Se volvió a clorar tras {0} frascos fallidos; tras una falla se vuelve a dosificar una sola vez.",
            Long.toString(failures)))
        .because(Phrase.of(
            "Chlorine hides an opening for some days and does not close it.",
            "El cloro oculta una entrada por unos días y no la cierra."))
        .so(Phrase.of(
            "Find the opening first; a good bottle now says little until one weeks later is good too.",
            "Busque primero la entrada; un frasco bueno ahora dice poco hasta que otro, semanas después, lo sea."))
        .from(List.of(sample.result().get().entry()));
  }

  private static Finding present(Sample sample, long failures, boolean dosedSince) {
    Finding finding = Finding.of("sample.coliform", Weight.STOP, SampleStage.NAME, Phrase.of(
            "Coliform bacteria present in bottle {0}, absent wanted. Not to drink unless boiled.",
            "Coliformes presentes en el frasco {0}; deben estar ausentes. No beber sin hervir.", sample.bottle()))
        .from(List.of(sample.result().get().entry()));
    if (failures == 1) {
      return finding
          .because(Phrase.of(
              "Dose, contact time, flushing, the bottle's handling, or an opening from the surface.",
              "Dosis, tiempo de contacto, enjuague, manejo del frasco, o una entrada desde la superficie."))
          .so(dosedSince ? SECOND_BOTTLE : Phrase.of(
              "Look at the cap and the seal, disinfect once more, flush to zero residual, sample again.",
              "Revise la tapa y el sello, desinfecte una vez más, enjuague hasta cloro cero y repita la muestra."));
    }
    return finding
        .because(Phrase.of(
            "Failed {0} times: more chlorine will not cure it. Something lets surface water in.",
            "Falló {0} veces: más cloro no lo cura. Por algún lado entra agua de la superficie.",
            Long.toString(failures)))
        .so(Phrase.of(
            "Look for the opening: cap, grout, pitless adapter, a cracked casing. The health authority decides on use.",
            "Busque la entrada: tapa, lechada, adaptador sin fosa, ademe roto. La autoridad de salud decide el uso."));
  }

  private static Finding again(Sample sample) {
    return Finding.of("sample.coliform-again", Weight.NOTE, SampleStage.NAME, Phrase.of(
            "Bottle {0} is good after a failure; a second good one at least {1} later makes sure.",
            "El frasco {0} salió bien tras una falla; otro bueno al menos {1} después lo asegura.",
            sample.bottle(), new Figure(A_DAY, Scale.HOURS)))
        .so(Phrase.of(
            "Not to drink unless boiled before that. Take the other sample, then tell the owner.",
            "Hasta entonces no beber sin hervir. Tome la otra muestra y después avise al dueño."))
        .from(List.of(sample.entry()));
  }

  /** Two good samples a day apart, with no failure after the first of them. */
  private static boolean goodOnes(List<Sample> tested) {
    Sample last = tested.get(tested.size() - 1);
    for (int i = tested.size() - 2; i >= 0 && !failed(tested.get(i)); i--) {
      if (last.taken().minutesSince(tested.get(i).taken()) >= A_DAY.in(Unit.MINUTE)) return true;
    }
    return false;
  }

  private static boolean failed(Sample sample) {
    return sample.result().isPresent() && sample.result().get().coliformPresent();
  }
}
