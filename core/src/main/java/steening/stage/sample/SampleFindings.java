package steening.stage.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
 * Whether a sample says anything about the well, and what it says. Bottles before the last are looked at only as far as
 * they bear on it: a failed one was answered by the next.
 */
final class SampleFindings {
  /** From the tap to the start of the test, for coliform bacteria in public supplies: 40 CFR 141.21(f)(3) (seen). */
  private static final Quantity LONGEST = Measure.of(30, Unit.HOUR);

  /** What some laboratories take: a county laboratory's collection sheet (seen). */
  private static final Quantity SOME_LABORATORIES = Measure.of(24, Unit.HOUR);

  /** As nitrogen, for public supplies: 40 CFR 141.62 (seen in a secondary list); for a private well a guide. */
  private static final Quantity MOST_NITRATE = Measure.of(10, Unit.MILLIGRAM_PER_LITRE);

  /** Encouraged on the way, for coliform bacteria: 40 CFR 141.21(f)(3); some laboratories want 6 °C (both seen). */
  private static final Quantity WARMEST = Measure.of(10, Unit.CELSIUS);

  private SampleFindings() {}

  static List<Finding> of(Samples samples, Residual residual) {
    List<Finding> findings = new ArrayList<>();
    if (!samples.unmatched().isEmpty()) findings.add(unmatched(samples));
    Optional<Sample> last = samples.last();
    if (last.isEmpty()) return findings;
    Stream.of(chlorine(last.get()), onTheWay(last.get()), warm(last.get()), nitrate(samples))
        .flatMap(Optional::stream)
        .forEach(findings::add);
    findings.addAll(LimitFindings.of(samples));
    findings.addAll(Coliform.findings(samples, residual));
    return findings;
  }

  private static Finding unmatched(Samples samples) {
    return Finding.of("sample.no-bottle", Weight.LOOK, SampleStage.NAME, Phrase.of(
            "A receipt or a result came for a bottle that nobody filled.",
            "Llegó un recibo o un resultado de un frasco que nadie llenó."))
        .so(Phrase.of("Look at the bottle number and at the hours.", "Revise el número del frasco y las horas."))
        .from(samples.unmatched());
  }

  private static Optional<Finding> chlorine(Sample sample) {
    if (sample.residual().isEmpty()) {
      return Optional.of(Finding.of("sample.residual-unknown", Weight.LOOK, SampleStage.NAME, Phrase.of(
              "Bottle {0} was filled without a reading of the chlorine residual since the last disinfection.",
              "El frasco {0} se llenó sin medir el cloro residual desde la última desinfección.", sample.bottle()))
          .so(Phrase.of(
              "Measure it. Unless it is zero, flush and take another sample.",
              "Mídalo. Si no es cero, enjuague y tome otra muestra."))
          .from(List.of(sample.entry())));
    }
    if (sample.residual().get().isZero()) return Optional.empty();
    Figure residual = new Figure(sample.residual().get().chlorine(), Scale.CONCENTRATION);
    Figure none = new Figure(Measure.of(0, Unit.MILLIGRAM_PER_LITRE), Scale.CONCENTRATION);
    return Optional.of(Finding.of("sample.chlorine", Weight.STOP, SampleStage.NAME, Phrase.of(
            "Chlorine residual {0} when bottle {1} was filled, {2} wanted: the sample would be false.",
            "Cloro residual {0} al llenar el frasco {1}, se quiere {2}: la muestra sería falsa.",
            residual, sample.bottle(), none))
        .comparing(residual, none)
        .because(Phrase.of(
            "What is left of the chlorine kills what the test looks for.",
            "El cloro que queda mata lo que la prueba busca."))
        .so(Phrase.of(
            "Flush until the residual is zero, then fill another bottle.",
            "Enjuague hasta que el residual sea cero y llene otro frasco."))
        .from(List.of(sample.residual().get().entry(), sample.entry())));
  }

  private static Optional<Finding> onTheWay(Sample sample) {
    if (sample.received().isEmpty()) return Optional.empty();
    Quantity hours = Measure.of(sample.received().get().at().minutesSince(sample.taken()), Unit.MINUTE);
    List<String> entries = List.of(sample.entry(), sample.received().get().entry());
    Figure taken = new Figure(hours, Scale.HOURS);
    if (hours.coherent() > LONGEST.coherent()) {
      Figure longest = new Figure(LONGEST, Scale.HOURS);
      return Optional.of(Finding.of("sample.late", Weight.LOOK, SampleStage.NAME, Phrase.of(
              "{0} from tap to laboratory; {1} are the most for coliform bacteria (40 CFR 141.21(f)(3)).",
              "{0} de la llave al laboratorio; lo más para coliformes son {1} (40 CFR 141.21(f)(3)).", taken, longest))
          .comparing(taken, longest)
          .so(Phrase.of(
              "Take another sample when the laboratory is open.",
              "Tome otra muestra cuando el laboratorio esté abierto."))
          .from(entries));
    }
    if (hours.coherent() <= SOME_LABORATORIES.coherent()) return Optional.empty();
    Figure some = new Figure(SOME_LABORATORIES, Scale.HOURS);
    return Optional.of(Finding.of("sample.day-old", Weight.NOTE, SampleStage.NAME, Phrase.of(
            "{0} from tap to laboratory; some laboratories take nothing older than {1}.",
            "{0} de la llave al laboratorio; algunos no aceptan más de {1}.", taken, some))
        .comparing(taken, some)
        .from(entries));
  }

  private static Optional<Finding> warm(Sample sample) {
    if (sample.temperature().isEmpty() || sample.temperature().get().coherent() <= WARMEST.coherent()) {
      return Optional.empty();
    }
    Figure measured = new Figure(sample.temperature().get(), Scale.TEMPERATURE);
    Figure warmest = new Figure(WARMEST, Scale.TEMPERATURE);
    return Optional.of(Finding.of("sample.warm", Weight.NOTE, SampleStage.NAME, Phrase.of(
            "{0} in the ice box; below {1} is advised on the way to the laboratory.",
            "{0} en la hielera; se aconseja menos de {1} en camino al laboratorio.", measured, warmest))
        .comparing(measured, warmest)
        .so(Phrase.of("Pack the bottle in wet ice.", "Ponga el frasco en hielo con agua."))
        .from(List.of(sample.entry())));
  }

  /** Of the last sample that was tested for it. */
  private static Optional<Finding> nitrate(Samples samples) {
    Optional<Sample.Result> tested =
        samples.results().stream().filter(r -> r.nitrate().isPresent()).reduce((a, b) -> b);
    if (tested.isEmpty() || tested.get().nitrate().get().coherent() <= MOST_NITRATE.coherent()) return Optional.empty();
    Figure found = new Figure(tested.get().nitrate().get(), Scale.CONCENTRATION);
    Figure most = new Figure(MOST_NITRATE, Scale.CONCENTRATION);
    return Optional.of(Finding.of("sample.nitrate", Weight.STOP, SampleStage.NAME, Phrase.of(
            "Nitrate {0} as nitrogen; the limit of public supplies is {1} (40 CFR 141.62).",
            "Nitrato {0} como nitrógeno; el límite de los sistemas públicos es {1} (40 CFR 141.62).", found, most))
        .comparing(found, most)
        .because(Phrase.of(
            "Fertilizer, manure or sewage reaches the water. Boiling makes nitrate stronger, not weaker.",
            "Fertilizante, estiércol o drenaje llega al agua. Hervir concentra el nitrato, no lo quita."))
        .so(Phrase.of(
            "Not for infants' food or drink. Tell the owner and the health authority, which decides; sample again.",
            "No es para alimento ni bebida de bebés. Avise al dueño y a la autoridad de salud; repita la muestra."))
        .from(List.of(tested.get().entry())));
  }
}
