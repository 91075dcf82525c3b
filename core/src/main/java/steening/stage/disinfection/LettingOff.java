package steening.stage.disinfection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Residual;
import steening.well.Well;

/** What takes the chlorine out of the well's own water, as long as there is some in it. */
final class LettingOff {
  private LettingOff() {}

  static Sheet added(Sheet sheet, Well well) {
    Optional<Residual.Reading> left = well.get(Residual.PART).standing().filter(r -> !r.isZero());
    Optional<Outcome> water = WaterInWell.of(well).outcome();
    if (left.isEmpty() || water.isEmpty()) return sheet;
    Quantity volume = water.get().quantity(WaterToTreat.WATER.name());
    List<List<Shown>> rows = new ArrayList<>();
    for (Neutraliser product : Neutraliser.all()) {
      Inputs inputs = Inputs.none().with(Dechlorination.WATER, volume)
          .with(DisinfectionEntries.CHLORINE, left.get().chlorine()).with(Neutraliser.FIELD, product.option);
      Outcome.ifReckonable(() -> Dechlorination.RECKONING.of(inputs)).ifPresent(o -> rows.add(List.of(
          product.option.label(), o.figure(Dechlorination.WEIGHT.name()), o.figure(Dechlorination.SURE.name()))));
    }
    return sheet.table(
            Phrase.of(
                "To take {0} of chlorine out of the {1} in the well", "Para quitar {0} de cloro de los {1} del pozo",
                new Figure(left.get().chlorine(), Scale.CONCENTRATION), new Figure(volume, Scale.LIQUID)),
            List.of(Neutraliser.FIELD.label(), Dechlorination.WEIGHT.label(), Dechlorination.SURE.label()), rows)
        .cautioning(Dechlorination.CAUTIONS);
  }
}
