package steening.ground;

import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;

/** What the reckonings of this package share. */
final class Grain {
  /** The stage of the job in which ground is looked at. */
  static final String STAGE = "drilling";

  private Grain() {}

  /** A field for the size of a grain. */
  static QuantityField size(String name, Phrase label, String example) {
    return QuantityField.of(name, Scale.GRAIN, label, example, example)
        .between("0.0001 mm", "5000 mm").usually("0.001 mm", "300 mm");
  }
}
