package steening.stage.disinfection;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * How much of the free chlorine is hypochlorous acid, the part that kills.
 *
 * <p>a = 100 / (1 + 10^(pH − pK)), pK = 3000/T − 10.0686 + 0.0253 T; a share in percent, T water temperature in kelvin.
 * Source: Morris 1966 (memory); it gives 7.54 at 25 °C. Range: 0 to 35 °C, pH 5 and above: below it chlorine gas forms.
 * Accuracy: pK to 0.02 in fresh water, the share to 1 in 100 of itself.
 */
public final class ChlorineAndPh {
  static final QuantityField PH = QuantityField.of("ph", Scale.NUMBER, Phrase.of("pH of the water", "pH del agua"),
          "7.5", "7.5")
      .between("0", "14").usually("5.5", "9.5");

  static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE, Phrase.of("water temperature", "temperatura del agua"), "55 °F", "13 °C")
      .between("32 °F", "95 °F").usually("36 °F", "86 °F").optional();

  static final QuantityField CHLORINE = QuantityField.of(
          "free-chlorine", Scale.CONCENTRATION, Phrase.of("free chlorine in the water", "cloro libre en el agua"),
          "100 mg/L", "100 mg/L")
      .between("0 mg/L", "20000 mg/L").usually("0 mg/L", "1000 mg/L").optional();

  static final Answer SHARE = new Answer(
      "acid-share", Phrase.of("share that is hypochlorous acid", "parte que es ácido hipocloroso"), Scale.SHARE);
  static final Answer ACID = new Answer(
      "acid", Phrase.of("chlorine as hypochlorous acid", "cloro como ácido hipocloroso"), Scale.CONCENTRATION);

  /** Where nobody measured it: that of the usual tables, and the strictest that ground water comes near. */
  private static final Quantity USUAL = Measure.of(25, Unit.CELSIUS);

  public static final Reckoning RECKONING = new Reckoning(
      "chlorine-and-ph",
      DisinfectionStage.NAME,
      Phrase.of("Chlorine that works at this pH", "Cloro que actúa a este pH"),
      List.of(PH, TEMPERATURE, CHLORINE),
      List.of(SHARE, ACID),
      Source.memory(
          "Morris 1966, dissociation of hypochlorous acid.", "Morris 1966, disociación del ácido hipocloroso."),
      Cautions.and(
          Phrase.of(
              "From 32 to 95 °F and pH 5 up; without a temperature, 77 °F (25 °C) is taken.",
              "De 0 a 35 °C y pH desde 5; sin temperatura se toman 25 °C (77 °F)."),
          Phrase.of(
              "Bleach raises the pH: a stronger dose may work less. Measure after mixing."
                  + " Below pH 5 chlorine gas comes out: leave acids to those trained in them.",
              "El blanqueador sube el pH: una dosis mayor puede actuar menos. Mida tras mezclar."
                  + " Bajo pH 5 sale gas de cloro: los ácidos son para quien está capacitado.")),
      ChlorineAndPh::reckon);

  private ChlorineAndPh() {}

  private static Outcome reckon(Inputs inputs) {
    Term kelvin = Inputs.count(
        "T", Phrase.of("water temperature in kelvin", "temperatura del agua en kelvin"),
        inputs.find(TEMPERATURE).orElse(USUAL).coherent());
    Term constant = Term.number(3000).over(kelvin).minus(Term.number(10.0686)).plus(kelvin.times(0.0253))
        .named("pK", Phrase.of("pH at which half is acid", "pH en que la mitad es ácido"), Scale.NUMBER);
    Term part = Term.number(1).plus(Term.number(10).power(inputs.given("pH", PH).minus(constant)));
    Term share = Coefficient.giving(Scale.SHARE, 1).term().over(part).named("a", SHARE.label(), SHARE.scale());
    Outcome outcome = Outcome.empty().with(SHARE.name(), share);
    Optional<Quantity> chlorine = inputs.find(CHLORINE);
    if (chlorine.isEmpty()) return outcome;
    Term acid = Coefficient.giving(Scale.CONCENTRATION, 1).of(Scale.SHARE).of(Scale.CONCENTRATION).term()
        .times(share).times(inputs.given("c", CHLORINE));
    return outcome.with(ACID.name(), acid.named("c_a", ACID.label(), ACID.scale()));
  }
}
