package steening.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.language.Reader;
import steening.quantity.Dimension;
import steening.quantity.Notation;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;

/** What an unlikely amount was probably meant as: the same digits in another unit, or with the other sign. */
final class Slips {
  private Slips() {}

  /** Texts that would be usual for the field, the likeliest first; none where the field does not say what is usual. */
  static List<String> of(Notation.Typed typed, QuantityField field, Reader reader) {
    List<String> slips = new ArrayList<>();
    if (typed.number().isEmpty() || !field.hasUsual()) return slips;
    if (field.scale().dimension() == Dimension.ANGLE) offer(slips, otherSign(typed.number()), typed.unit(), field);
    for (Unit unit : units(field.scale(), reader)) {
      if (unit != typed.unit()) offer(slips, typed.number(), unit, field);
    }
    return slips;
  }

  private static void offer(List<String> slips, String number, Unit unit, QuantityField field) {
    String text = unit == Unit.ONE ? number : number + " " + unit.symbol();
    Optional<Quantity> amount = Notation.read(text, unit).map(Notation.Typed::quantity);
    if (amount.filter(field::isPossible).filter(field::isUsual).isPresent()) slips.add(text);
  }

  private static String otherSign(String number) {
    return number.startsWith("-") ? number.substring(1) : "-" + number;
  }

  /**
   * The reader's own unit, the other system's, then the rest of those that crews read; slots for slots, miles for what is far,
   * cubic feet for air.
   */
  private static List<Unit> units(Scale scale, Reader reader) {
    List<Unit> units = new ArrayList<>(List.of(scale.of(reader), scale.us(), scale.metric()));
    for (Scale other : Scale.values()) {
      boolean fits = other.dimension() == scale.dimension() && other != Scale.SLOT && other != Scale.FAR
          && other != Scale.AIR_FLOW;
      if (fits) units.addAll(List.of(other.us(), other.metric()));
    }
    // Labels of chlorine and papers of laboratories count in millionths as well.
    if (scale == Scale.SHARE) units.add(Unit.PART_PER_MILLION);
    if (scale == Scale.TRACE) units.add(Unit.MICROGRAM_PER_LITRE);
    return units.stream().distinct().toList();
  }
}
