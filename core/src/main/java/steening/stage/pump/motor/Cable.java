package steening.stage.pump.motor;

import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;

/** A cable of one size, or of two in series: the one in place and the one in the well. */
public final class Cable {
  public static final ChoiceField FIRST_SIZE = WireSize.field("cable", Phrase.of("pump cable", "cable de la bomba"));
  public static final QuantityField FIRST = length("cable-length", "its length, one way", "su longitud, una vía");
  public static final ChoiceField SECOND_SIZE =
      WireSize.field("second-cable", Phrase.of("second cable in series", "segundo cable en serie")).optional();
  public static final QuantityField SECOND =
      length("second-cable-length", "length of the second, one way", "longitud del segundo, una vía").optional();

  private Cable() {}

  /** The size of the second cable; empty where there is one cable only. */
  static Optional<WireSize> second(Inputs inputs) {
    Optional<WireSize> size = WireSize.in(inputs, SECOND_SIZE);
    if (size.isPresent() == inputs.find(SECOND).isPresent()) return size;
    throw new NotReckonable(
        "A second cable needs both its size and its length; only one of the two is given.",
        "Un segundo cable pide calibre y longitud; solo se dio uno de los dos.");
  }

  private static QuantityField length(String name, String english, String spanish) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), "160 ft", "49 m")
        .between("1 ft", "20000 ft").usually("10 ft", "3000 ft");
  }
}
