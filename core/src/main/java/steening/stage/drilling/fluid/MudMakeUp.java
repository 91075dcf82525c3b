package steening.stage.drilling.fluid;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Mass;
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
import steening.stage.drilling.DrillingStage;

/**
 * Bentonite and soda ash for a volume of new mud.
 *
 * <p>B = c V; K = k V; M = m V; S = B / s rounded up; A = a V. V water, c dose of bentonite, k and m the least and most
 * that practice gives for the ground, a dose of soda ash, s one sack.
 *
 * <p>Source: doses for high-yield bentonite and soda ash are makers' practice, from memory (30 and 50 %); a maker's
 * manual for a blend with polymer (seen) says 15 lb to 100 gal, up to 45 in sand and gravel, up to 50 in rock. The
 * label of the product decides.
 */
public final class MudMakeUp {
  static final QuantityField VOLUME = QuantityField.of(
          "volume", Scale.LIQUID, Phrase.of("water to mix", "agua por mezclar"), "500 gal", "1900 L")
      .between("1 gal", "1000000 gal").usually("20 gal", "20000 gal");
  static final ChoiceField GROUND = ChoiceField.of(
          "ground", Phrase.of("ground", "terreno"),
          ChoiceField.option("normal", "normal", "normal"),
          ChoiceField.option("loose", "loose sand", "arena suelta"),
          ChoiceField.option("gravel", "gravel, or mud is lost", "grava, o se pierde lodo"))
      .optional();
  static final QuantityField DOSE = PitVolume.DOSE;
  static final QuantityField SODA_ASH_DOSE = QuantityField.of(
          "soda-ash-dose", Scale.DENSITY,
          Phrase.of("soda ash to a volume of water", "carbonato de sodio por volumen de agua"), "0.0075 lb/gal",
          "0.9 kg/m3")
      .between("0 lb/gal", "0.2 lb/gal").usually("0 lb/gal", "0.02 lb/gal").optional();
  static final QuantityField SACK = QuantityField.of(
          "sack", Scale.WEIGHT, Phrase.of("weight of a sack", "peso del saco"), "50 lb", "22.7 kg")
      .between("1 lb", "4000 lb").usually("40 lb", "110 lb").optional();

  static final Answer BENTONITE = new Answer("bentonite", Phrase.of("bentonite", "bentonita"), Scale.WEIGHT);
  static final Answer LEAST = new Answer(
      "bentonite-least", Phrase.of("bentonite, least for this ground", "bentonita, mínima para este terreno"),
      Scale.WEIGHT);
  static final Answer MOST = new Answer(
      "bentonite-most", Phrase.of("bentonite, most for this ground", "bentonita, máxima para este terreno"),
      Scale.WEIGHT);
  static final Answer SACKS =
      new Answer("sacks", Phrase.of("sacks of bentonite", "sacos de bentonita"), Scale.NUMBER);
  static final Answer SODA_ASH =
      new Answer("soda-ash", Phrase.of("soda ash", "carbonato de sodio"), Scale.WEIGHT);

  public static final Reckoning RECKONING = new Reckoning(
      "mud-make-up",
      DrillingStage.NAME,
      Phrase.of("Mixing mud", "Preparar lodo"),
      List.of(VOLUME, GROUND, DOSE, SODA_ASH_DOSE, SACK),
      List.of(BENTONITE, SACKS, LEAST, MOST, SODA_ASH),
      Source.memory(
          "Makers' practice for high-yield bentonite, lb to 100 gal: 15 to 25 normal, 25 to 40 loose sand, 35 to 50"
              + " gravel or losses. Soda ash 0.5 to 1, hard water 1 to 2.",
          "Práctica de fabricantes, bentonita de alto rendimiento, kg/m³: 18 a 30 normal, 30 a 48 arena suelta, 42 a 60"
              + " grava o pérdidas. Carbonato de sodio 0.6 a 1.2; agua dura 1.2 a 2.4."),
      List.of(
          Phrase.of(
              "Sources differ: a maker's manual for a blend with polymer (seen) says 15 lb to 100 gal, up to 45 in sand"
                  + " and gravel, up to 50 in rock. The label decides.",
              "Las fuentes difieren: el manual de un fabricante para una mezcla con polímero (leído) dice 18 kg/m³,"
                  + " hasta 54 en arena y grava, hasta 60 en roca. Decide la etiqueta."),
          Phrase.of(
              "Soda ash first, to a pH of 8.5 to 9.5 (test sheet, seen); then bentonite, slowly, and time to yield."
                  + " Goggles, gloves and a dust mask; read both labels.",
              "Primero el carbonato, hasta pH 8.5 a 9.5 (hoja de ensayo, leída); luego la bentonita, despacio, y tiempo"
                  + " para hidratar. Lentes, guantes y mascarilla; lea ambas etiquetas.")),
      MudMakeUp::reckon);

  private static final Quantity USUAL_SODA_ASH = Density.of(0.0075, Unit.POUND_PER_GALLON);
  private static final Quantity USUAL_SACK = Mass.of(50, Unit.POUND);

  private MudMakeUp() {}

  /** Least and most bentonite in one ground. */
  private record Practice(Density least, Density most) {
    static Practice in(String ground) {
      return switch (ground) {
        case "loose" -> pounds(0.25, 0.40);
        case "gravel" -> pounds(0.35, 0.50);
        default -> pounds(0.15, 0.25);
      };
    }

    private static Practice pounds(double least, double most) {
      return new Practice(Density.of(least, Unit.POUND_PER_GALLON), Density.of(most, Unit.POUND_PER_GALLON));
    }

    Density middle() {
      return new Density((least.coherent() + most.coherent()) / 2);
    }
  }

  private static Outcome reckon(Inputs inputs) {
    Practice practice = Practice.in(inputs.find(GROUND).map(ChoiceField.Option::code).orElse("normal"));
    Term bentonite = weight(inputs, inputs.given("c", DOSE, practice.middle()), "B", BENTONITE);
    Term sacks = bentonite.over(inputs.given("s", SACK, USUAL_SACK)).roundedUp()
        .named("S", SACKS.label(), SACKS.scale());
    Term least = Term.given("k", Phrase.of("least dose", "dosis mínima"), Scale.DENSITY, practice.least());
    Term most = Term.given("m", Phrase.of("most dose", "dosis máxima"), Scale.DENSITY, practice.most());
    Term ash = inputs.given("a", SODA_ASH_DOSE, USUAL_SODA_ASH);
    return Outcome.empty()
        .with(BENTONITE.name(), bentonite)
        .with(SACKS.name(), sacks)
        .with(LEAST.name(), weight(inputs, least, "K", LEAST))
        .with(MOST.name(), weight(inputs, most, "M", MOST))
        .with(SODA_ASH.name(), weight(inputs, ash, "A", SODA_ASH));
  }

  private static Term weight(Inputs inputs, Term dose, String symbol, Answer answer) {
    return Coefficient.giving(Scale.WEIGHT, 1).of(Scale.DENSITY).of(Scale.LIQUID).term()
        .times(dose)
        .times(inputs.given("V", VOLUME))
        .named(symbol, answer.label(), answer.scale());
  }
}
