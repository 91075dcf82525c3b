package steening.stage.disinfection;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What takes the chlorine out of water that is flushed from a well.
 *
 * <p>M = k c V, and M_s = 1.1 M to be sure; k weight of product to one of chlorine, c residual in mg/L, V water.
 * Source: Disinfection of Pipelines and Storage Facilities Field Guide, Table 7-2; the tenth more from a guidance manual
 * (both seen). Range: product as pure as its label; free chlorine. Accuracy: as good as the reading of the residual, which is
 * read again before the water runs off.
 */
public final class Dechlorination {
  static final QuantityField WATER = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("chlorinated water to let off", "agua clorada por soltar"), "300 gal",
          "1100 L")
      .between("0.1 gal", "1000000 gal").usually("5 gal", "20000 gal");

  static final Answer WEIGHT = new Answer(
      "weight", Phrase.of("product, just enough", "producto, lo justo"), Scale.SMALL_WEIGHT);
  static final Answer SURE = new Answer(
      "weight-sure", Phrase.of("product, a tenth more to be sure", "producto, un décimo más por seguridad"),
      Scale.SMALL_WEIGHT);

  static final List<Phrase> CAUTIONS = List.of(
      Phrase.of(
          "Chlorinated water does not go into a septic tank or a stream: it kills what lives there.",
          "El agua clorada no se vierte en fosa séptica ni arroyo: mata lo que vive ahí."),
      Phrase.of(
          "Read the residual again before the water runs off; the local code says where it may go.",
          "Mida otra vez el residual antes de soltar el agua; el reglamento local dice adónde puede ir."),
      Phrase.of(
          "Much too much of a sulfite takes the oxygen out of the water; it also harms fish. Follow the label.",
          "Un gran exceso de sulfito quita el oxígeno del agua y también daña a los peces. Siga la etiqueta."));

  public static final Reckoning RECKONING = new Reckoning(
      "dechlorination",
      DisinfectionStage.NAME,
      Phrase.of("Taking chlorine out of flushed water", "Quitar el cloro del agua purgada"),
      List.of(WATER, DisinfectionEntries.CHLORINE, Neutraliser.FIELD),
      List.of(WEIGHT, SURE),
      Source.seen(
          "Disinfection of Pipelines and Storage Facilities Field Guide, Table 7-2; a tenth more by a guidance manual.",
          "Guía de campo de desinfección de tuberías y tanques, tabla 7-2; un décimo más según un manual."),
      CAUTIONS,
      Dechlorination::reckon);

  private Dechlorination() {}

  private static Outcome reckon(Inputs inputs) {
    Neutraliser product = Neutraliser.of(inputs.value(Neutraliser.FIELD));
    Term perChlorine = Inputs.count(
        "k", Phrase.of("weight of product to one of chlorine", "peso de producto por uno de cloro"),
        product.perChlorine);
    Term weight = Coefficient.giving(Scale.SMALL_WEIGHT, 1).of(Scale.CONCENTRATION).of(Scale.LIQUID).term()
        .times(perChlorine).times(inputs.given("c", DisinfectionEntries.CHLORINE)).times(inputs.given("V", WATER))
        .named("M", WEIGHT.label(), WEIGHT.scale());
    Term sure = weight.times(1.1).named("M_s", SURE.label(), SURE.scale());
    return Outcome.empty().with(WEIGHT.name(), weight).with(SURE.name(), sure);
  }
}
