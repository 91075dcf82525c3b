package steening.stage.pump.motor;

import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.language.Phrase;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Unit;
import steening.reckoning.Inputs;

/**
 * Sizes of copper cable by American wire gauge with their resistance: NEC chapter 9, Table 8, uncoated stranded copper,
 * direct current at 75 °C (memory). Cooler cable has less.
 */
enum WireSize {
  AWG_14("14", 3.14),
  AWG_12("12", 1.98),
  AWG_10("10", 1.24),
  AWG_8("8", 0.778),
  AWG_6("6", 0.491),
  AWG_4("4", 0.308),
  AWG_2("2", 0.194);

  private final ChoiceField.Option option;
  private final double ohmsPerThousandFeet;

  WireSize(String gauge, double ohmsPerThousandFeet) {
    this.option = ChoiceField.option(gauge, "AWG " + gauge, "calibre " + gauge + " (AWG)");
    this.ohmsPerThousandFeet = ohmsPerThousandFeet;
  }

  static ChoiceField field(String name, Phrase label) {
    return ChoiceField.of(name, label, AWG_10.option, AWG_14.option, AWG_12.option, AWG_8.option, AWG_6.option,
        AWG_4.option, AWG_2.option);
  }

  static Optional<WireSize> in(Inputs inputs, ChoiceField field) {
    return inputs.find(field).flatMap(o -> List.of(values()).stream().filter(s -> s.option.equals(o)).findFirst());
  }

  Quantity resistance() {
    return Measure.of(ohmsPerThousandFeet, Unit.OHM_PER_THOUSAND_FEET);
  }

  Phrase label() {
    return option.label();
  }
}
