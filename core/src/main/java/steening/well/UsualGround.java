package steening.well;

import java.util.Optional;
import steening.bore.UsualOverbreak;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Scale;

/**
 * What holes usually take in this ground, as the firm reckons with it here. The numbers stand in the well's own
 * journal: other wells may have led to them, but the well does not change when those do.
 *
 * @param wells which wells they come from, in the words of who entered them
 */
public record UsualGround(UsualOverbreak overbreak, Optional<String> wells, String entry) {
  public static final Part<Optional<UsualGround>> PART = Part.ofJob("usual-ground", Optional.empty());

  public static final QuantityField MEAN = QuantityField.of(
          "mean-ratio", Scale.NUMBER,
          Phrase.of("usual ratio, placed over drilled", "razón usual, vertido entre perforado"), "1.14", "1.14")
      .between("0.5", "5").usually("0.9", "2");
  public static final QuantityField SPREAD = QuantityField.of(
          "spread", Scale.NUMBER, Phrase.of("its standard deviation", "su desviación estándar"), "0.12", "0.12")
      .between("0.001", "2").usually("0.02", "0.5");
  public static final TextField WELLS = TextField.of(
      "wells", Phrase.of("from which wells", "de qué pozos"), "Orchard Road, Mill Lane").optional();

  private static UsualGround in(Entry entry) {
    return new UsualGround(
        new UsualOverbreak(MEAN.in(entry.body()).orElseThrow(), SPREAD.in(entry.body()).orElseThrow()),
        WELLS.text(entry.body()), entry.id());
  }

  /** The well with what an entry says. */
  public static Well fold(Well well, Entry entry) {
    boolean whole = MEAN.isIn(entry.body()) && SPREAD.isIn(entry.body());
    return whole ? well.with(PART, Optional.of(in(entry))) : well;
  }

  /** What to reckon with: as entered, else as anywhere. */
  public static UsualOverbreak of(Well well) {
    return well.get(PART).map(UsualGround::overbreak).orElse(UsualOverbreak.ANYWHERE);
  }
}
