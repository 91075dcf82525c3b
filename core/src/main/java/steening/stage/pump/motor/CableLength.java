package steening.stage.pump.motor;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Whether a cable is long enough for its size by the makers' table, one size or two in series.
 *
 * <p>k = L/M + l/m, at most 1: L and l lengths one way, M and m the longest that the table allows for each size.
 * Source:
 * drop-wire table of a pump supplier and a motor manufacturer's worked example (seen). Range: single-phase motors of
 * the
 * table, 5 % drop. Accuracy: exact by the table.
 */
public final class CableLength {
  static final Answer LONGEST = new Answer(
      "longest", Phrase.of("longest allowed of the first size", "máximo permitido del primer calibre"), Scale.DEPTH);
  static final Answer USED = new Answer(
      "used", Phrase.of("used of what is allowed", "usado de lo permitido"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "cable-length",
      "pump",
      Phrase.of("Longest pump cable by the table", "Cable de bomba más largo según la tabla"),
      List.of(CableTable.FIELD, Cable.FIRST_SIZE, Cable.FIRST, Cable.SECOND_SIZE, Cable.SECOND),
      List.of(LONGEST, USED),
      Source.seen(
          "Drop-wire table of a pump supplier; two sizes as in a motor manufacturer's application manual.",
          "Tabla de cables de un proveedor de bombas; dos calibres como en el manual de un fabricante de motores."),
      List.of(
          Phrase.of("Copper, single phase, 5 % drop; the sum of the shares must not be over 1.",
              "Cobre, monofásico, caída de 5 %; la suma de las partes no debe pasar de 1."),
          Phrase.of("The motor maker's own table and the electrical code go first.",
              "Valen antes la tabla del fabricante del motor y el reglamento eléctrico.")),
      CableLength::reckon);

  private CableLength() {}

  private static Outcome reckon(Inputs inputs) {
    CableTable motor = CableTable.of(inputs.value(CableTable.FIELD));
    Optional<WireSize> second = Cable.second(inputs);
    Term longest = longest("M", motor, WireSize.in(inputs, Cable.FIRST_SIZE).orElseThrow());
    Term used = inputs.given("L", Cable.FIRST).over(longest);
    if (second.isPresent()) used = used.plus(inputs.given("l", Cable.SECOND).over(longest("m", motor, second.get())));
    used = used.named("k", USED.label(), USED.scale());
    Outcome outcome = Outcome.empty().with(LONGEST.name(), longest).with(USED.name(), used);
    if (used.quantity().coherent() <= 1) return outcome;
    return outcome.remarking(Phrase.of(
        "{0} of what is allowed, more than 1: refuse this cable and take a heavier one in the well.",
        "{0} de lo permitido, más de 1: rechace este cable y ponga uno más grueso en el pozo.",
        new Figure(used.quantity(), Scale.NUMBER)));
  }

  private static Term longest(String symbol, CableTable motor, WireSize size) {
    int feet = motor.longest(size);
    if (feet == 0) {
      throw new NotReckonable(
          "The table does not allow {0} for a motor of {1}: the conductor is too small.",
          "La tabla no permite {0} para un motor de {1}: el conductor es muy delgado.", size.label(), motor.label());
    }
    return Term.given(symbol, Phrase.of("longest allowed of {0}", "máximo permitido de {0}", size.label()),
        Scale.DEPTH, Length.feet(feet));
  }
}
