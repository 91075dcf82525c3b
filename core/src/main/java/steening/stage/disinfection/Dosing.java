package steening.stage.disinfection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.journal.Moment;
import steening.quantity.Quantity;
import steening.well.Part;

/** The chlorine that was put into a well, in order of time. */
record Dosing(List<Dose> doses) {
  static final Part<Dosing> PART = new Part<>("dosing", new Dosing(List.of()));

  Dosing {
    doses = List.copyOf(doses);
  }

  /**
   * One dose.
   *
   * @param strength share of available chlorine
   * @param amount of bleach; absent for a dry product
   * @param weight of a dry product; absent for bleach
   * @param contact how long it is to stay
   */
  record Dose(
      ChoiceField.Option product,
      Quantity strength,
      Optional<Quantity> amount,
      Optional<Quantity> weight,
      Quantity target,
      Quantity contact,
      Moment at,
      String entry) {}

  Dosing with(Dose dose) {
    List<Dose> more = new ArrayList<>(doses);
    more.add(dose);
    return new Dosing(more);
  }

  Optional<Dose> last() {
    return doses.isEmpty() ? Optional.empty() : Optional.of(doses.get(doses.size() - 1));
  }
}
