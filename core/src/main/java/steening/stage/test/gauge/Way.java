package steening.stage.test.gauge;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.Field;
import steening.journal.Body;
import steening.language.Phrase;
import steening.reckoning.Reckoning;

/** A way to measure a rate. */
enum Way {
  VESSEL("vessel", "vessel and watch", "recipiente y reloj", BucketRate.RECKONING),
  V_NOTCH("v-notch", "V-notch weir", "vertedor triangular", VNotchWeir.RECKONING),
  RECTANGULAR("rectangular-weir", "rectangular weir", "vertedor rectangular", RectangularWeir.RECKONING),
  ORIFICE("orifice", "circular orifice", "orificio circular", OrificeRate.RECKONING),
  JET("jet", "jet of a level pipe", "chorro de un tubo a nivel", PipeJet.RECKONING),
  METER("meter", "water meter", "medidor", MeterRate.RECKONING);

  static final ChoiceField FIELD = ChoiceField.of(
      "how", Phrase.of("measured by", "medido con"),
      Arrays.stream(values()).map(w -> w.option).toArray(ChoiceField.Option[]::new));

  final Reckoning reckoning;
  private final ChoiceField.Option option;

  Way(String code, String english, String spanish, Reckoning reckoning) {
    this.option = ChoiceField.option(code, english, spanish);
    this.reckoning = reckoning;
  }

  static Optional<Way> in(Body body) {
    return FIELD.in(body).flatMap(o -> List.of(values()).stream().filter(w -> w.option.equals(o)).findFirst());
  }

  Phrase label() {
    return option.label();
  }

  /** What this way must read and the entry does not have. */
  List<Field> missing(Body body) {
    return reckoning.inputs().stream().filter(f -> f.isRequired() && !f.isIn(body)).toList();
  }
}
