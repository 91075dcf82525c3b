package steening.field;

import java.util.ArrayList;
import java.util.List;
import steening.language.Reader;
import steening.quantity.Dimension;
import steening.quantity.Notation;
import steening.quantity.Scale;
import steening.quantity.Unit;

/** What an unlikely amount was probably meant as: the same digits in another unit, or with the other sign. */
final class Slips {
  private Slips() {}

  /** Texts that would be usual for the field, the likeliest first; none where the field says nothing of what is usual. */
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
    boolean usual = Notation.read(text, unit).filter(t -> field.isPossible(t.quantity()) && field.isUsual(t.quantity())).isPresent();
    if (usual) slips.add(text);
  }

  private static String otherSign(String number) {
    return number.startsWith("-") ? number.substring(1) : "-" + number;
  }

  /** The reader's own unit first, then the other system's, then the rest of those that crews read; slots for slots only. */
  private static List<Unit> units(Scale scale, Reader reader) {
    List<Unit> units = new ArrayList<>(List.of(scale.of(reader), reader.metric() ? scale.us() : scale.metric()));
    for (Scale other : Scale.values()) {
      if (other.dimension() == scale.dimension() && other != Scale.SLOT) units.addAll(List.of(other.us(), other.metric()));
    }
    return units.stream().distinct().toList();
  }
}
