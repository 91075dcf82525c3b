package steening.stage.disinfection;

import java.util.Optional;
import org.pcollections.PVector;
import org.pcollections.TreePVector;
import steening.field.ChoiceField;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.well.Part;

/** The chlorine that was put into a well, in order of time. */
record Dosing(PVector<Dose> doses) {
  static final Part<Dosing> PART = Part.ofHole("dosing", new Dosing(TreePVector.empty()));

  /**
   * One dose.
   *
   * @param strength share of available chlorine
   * @param amount of bleach; absent for a dry product
   * @param weight of a dry product; absent for bleach
   * @param contact how long it is to stay
   * @param ph of the water after mixing, where it was read
   */
  record Dose(
      ChoiceField.Option product,
      Quantity strength,
      Optional<Quantity> amount,
      Optional<Quantity> weight,
      Quantity target,
      Quantity contact,
      Optional<Quantity> ph,
      Moment at,
      String entry) {

    boolean isDry() {
      return product.code().equals(DisinfectionEntries.DRY.code());
    }

    /** What was put in, where it was given as the product is measured and in no other way. */
    Optional<Quantity> measured() {
      if (isDry()) return amount.isPresent() ? Optional.empty() : weight;
      return weight.isPresent() ? Optional.empty() : amount;
    }

    Shown shown() {
      if (measured().isEmpty()) return Phrase.same("–");
      return new Figure(measured().get(), isDry() ? Scale.SMALL_WEIGHT : Scale.DOSE);
    }
  }

  Dosing with(Dose dose) {
    return new Dosing(doses.plus(dose));
  }

  Optional<Dose> last() {
    return doses.isEmpty() ? Optional.empty() : Optional.of(doses.get(doses.size() - 1));
  }
}
