package steening.stage.sample;

import java.util.Optional;
import steening.journal.Body;
import steening.journal.Moment;
import steening.quantity.Quantity;
import steening.well.Residual;

/**
 * One bottle.
 *
 * @param taken when it was filled
 * @param residual the chlorine last read before it was filled; empty if none was, or chlorine was put in since
 * @param received when the laboratory took it over
 * @param entry the id of the entry that says it was filled
 */
record Sample(
    String bottle,
    Optional<String> laboratory,
    Optional<Quantity> temperature,
    Moment taken,
    Optional<Residual.Reading> residual,
    Optional<Receipt> received,
    Optional<Result> result,
    String entry) {

  /** When the laboratory took it over. */
  record Receipt(Moment at, String entry) {}

  /**
   * What was found.
   *
   * @param found all of it, as the laboratory's paper was entered
   */
  record Result(boolean coliformPresent, Optional<Quantity> nitrate, Body found, Moment at, String entry) {
    Optional<Quantity> amount(Constituent constituent) {
      return constituent.field.in(found);
    }
  }

  Sample with(Receipt receipt) {
    return new Sample(bottle, laboratory, temperature, taken, residual, Optional.of(receipt), result, entry);
  }

  Sample with(Result found) {
    return new Sample(bottle, laboratory, temperature, taken, residual, received, Optional.of(found), entry);
  }
}
