package steening.stage.disinfection;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;

/** What is taken down when a well is disinfected. */
final class DisinfectionEntries {
  static final ChoiceField.Option BLEACH =
      ChoiceField.option("bleach", "bleach (sodium hypochlorite)", "blanqueador (hipoclorito de sodio)");

  static final ChoiceField.Option DRY =
      ChoiceField.option("calcium-hypochlorite", "dry calcium hypochlorite", "hipoclorito de calcio seco");

  static final ChoiceField PRODUCT = ChoiceField.of("product", Phrase.of("product", "producto"), BLEACH, DRY);

  /** Chlorine that is available, as the label says. */
  static final QuantityField STRENGTH = QuantityField.of(
          "strength", Scale.SHARE, Phrase.of("available chlorine on the label", "cloro disponible según la etiqueta"),
          "5.25 %", "5.25 %")
      .between("0.5 %", "100 %").usually("3 %", "75 %");

  static final QuantityField DRY_STRENGTH = QuantityField.of("strength", Scale.SHARE, STRENGTH.label(), "65 %", "65 %")
      .between("0.5 %", "100 %").usually("25 %", "80 %");

  static final QuantityField AMOUNT = QuantityField.of(
          "amount", Scale.DOSE, Phrase.of("bleach poured in", "blanqueador vertido"), "22 fl oz", "650 mL")
      .between("0.01 fl oz", "200 gal").usually("1 fl oz", "5 gal").optional();

  static final QuantityField WEIGHT = QuantityField.of(
          "weight", Scale.SMALL_WEIGHT, Phrase.of("dry product put in", "producto seco puesto"), "2 oz", "60 g")
      .between("0.01 oz", "200 lb").usually("0.2 oz", "10 lb").optional();

  static final QuantityField TARGET = QuantityField.of(
          "target", Scale.CONCENTRATION, Phrase.of("chlorine wanted in the well", "cloro deseado en el pozo"),
          "100 mg/L", "100 mg/L")
      .between("1 mg/L", "20000 mg/L").usually("25 mg/L", "1000 mg/L");

  static final QuantityField CONTACT = QuantityField.of(
          "contact", Scale.HOURS, Phrase.of("contact time", "tiempo de contacto"), "24 h", "24 h")
      .between("0 h", "1000 h").usually("1 h", "72 h");

  static final QuantityField CHLORINE = QuantityField.of(
          "chlorine", Scale.CONCENTRATION, Phrase.of("chlorine residual", "cloro residual"), "0 mg/L", "0 mg/L")
      .between("0 mg/L", "20000 mg/L").usually("0 mg/L", "300 mg/L");

  /** Of the water in the well, read after the chlorine was mixed in. */
  static final QuantityField PH =
      ChlorineAndPh.PH.labelled("pH after mixing", "pH después de mezclar").optional();

  static final Kind DISINFECTION = Kind.of(
          "disinfection", Phrase.of("Disinfection", "Desinfección"), PRODUCT, STRENGTH, AMOUNT, WEIGHT, TARGET, CONTACT,
          PH)
      .seldom(PH);

  static final Kind RESIDUAL = Kind.of("residual", Phrase.of("Chlorine residual", "Cloro residual"), CHLORINE);

  static final List<Kind> ALL = List.of(DISINFECTION, RESIDUAL);

  private DisinfectionEntries() {}
}
