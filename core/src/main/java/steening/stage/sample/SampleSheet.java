package steening.stage.sample;

import java.util.List;
import steening.field.ChoiceField;
import steening.journal.Dates;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.stage.Sheet;

/** The bottles, one to a row: how they travelled, and what was found. */
final class SampleSheet {
  private static final Phrase NOT_KNOWN = Phrase.same("–");

  private SampleSheet() {}

  static Sheet of(Samples samples) {
    Sheet bottles = Sheet.EMPTY.table(
        Phrase.of("Samples", "Muestras"),
        List.of(
            SampleEntries.BOTTLE.label(),
            SampleEntries.LABORATORY.label(),
            Phrase.of("filled", "llenado"),
            Phrase.of("chlorine residual then", "cloro residual entonces"),
            SampleEntries.TEMPERATURE.label(),
            Phrase.of("on the way", "en camino"),
            SampleEntries.COLIFORM.label(),
            SampleEntries.NITRATE.label()),
        samples.bottles().stream().map(SampleSheet::row).toList());
    return LimitTable.added(bottles, samples);
  }

  private static List<Shown> row(Sample sample) {
    return List.of(
        Phrase.same(sample.bottle()),
        sample.laboratory().map(Phrase::same).orElse(NOT_KNOWN),
        moment(sample.taken()),
        sample.residual().<Shown>map(r -> new Figure(r.chlorine(), Scale.CONCENTRATION)).orElse(NOT_KNOWN),
        sample.temperature().<Shown>map(t -> new Figure(t, Scale.TEMPERATURE)).orElse(NOT_KNOWN),
        sample.received().<Shown>map(r -> hours(sample.taken(), r.at())).orElse(NOT_KNOWN),
        sample.result().<Shown>map(SampleSheet::coliform).orElse(NOT_KNOWN),
        sample.result().flatMap(Sample.Result::nitrate).<Shown>map(SampleSheet::nitrate).orElse(NOT_KNOWN));
  }

  private static Shown coliform(Sample.Result result) {
    ChoiceField.Option found = result.coliformPresent() ? SampleEntries.PRESENT : SampleEntries.ABSENT;
    return found.label();
  }

  private static Figure nitrate(Quantity nitrate) {
    return new Figure(nitrate, SampleEntries.NITRATE.scale());
  }

  private static Figure hours(Moment from, Moment to) {
    return new Figure(Measure.of(to.minutesSince(from), Unit.MINUTE), Scale.HOURS);
  }

  private static Phrase moment(Moment moment) {
    return Phrase.same(Dates.format(moment.date()) + " " + moment.clock());
  }
}
