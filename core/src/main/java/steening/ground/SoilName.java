package steening.ground;

import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.language.UnitSystem;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * The symbol of a soil in the unified classification.
 *
 * <p>A line: PI = 0.73 (LL − 20). Source: ASTM D2487, criteria as a laboratory report reproduces them (seen); the A
 * line and the U line, PI = 0.9 (LL − 8), from memory. Range: the part of the soil that passes 3 inches; no organic soils.
 */
public final class SoilName {
  static final QuantityField PASSING_200 = share(
      "passing-200", "passing sieve No. 200 (0.075 mm)", "pasa el tamiz núm. 200 (0.075 mm)", "3 %");
  static final QuantityField PASSING_4 =
      share("passing-4", "passing sieve No. 4 (4.75 mm)", "pasa el tamiz núm. 4 (4.75 mm)", "97 %");
  static final QuantityField CU = number("cu", SieveCurve.UNIFORMITY.label(), "2.8", "1", "5000");
  static final QuantityField CC = number("cc", SieveCurve.CURVATURE.label(), "1.1", "0", "1000");
  static final QuantityField LIQUID_LIMIT =
      number("liquid-limit", Phrase.of("liquid limit LL", "límite líquido LL"), "28", "0", "500");
  static final QuantityField PLASTICITY =
      number("plasticity-index", Phrase.of("plasticity index PI", "índice de plasticidad IP"), "5", "0", "400");
  static final ChoiceField FINES = ChoiceField.of(
          "fines", Phrase.of("symbol of the fines, where judged by hand", "símbolo de los finos, si se juzgan a mano"),
          option(Fines.CL), option(Fines.ML), option(Fines.CL_ML), option(Fines.CH), option(Fines.MH))
      .optional();

  static final Answer SYMBOL = Answer.word("symbol", Phrase.of("symbol", "símbolo"));
  static final Answer NAME = Answer.word("name", Phrase.of("in words", "en palabras"));
  static final Answer A_LINE =
      new Answer("a-line", Phrase.of("A line at this liquid limit", "línea A con este límite líquido"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "soil-name",
      Grain.STAGE,
      Phrase.of("Name of a soil", "Nombre de un suelo"),
      List.of(PASSING_200, PASSING_4, CU, CC, LIQUID_LIMIT, PLASTICITY, FINES),
      List.of(SYMBOL, NAME, A_LINE),
      Source.seen(
          "ASTM D2487, criteria as a laboratory report reproduces them. A line, U line and CL-ML: from memory.",
          "ASTM D2487, criterios como los reproduce un informe de laboratorio. Líneas A y U y CL-ML: de memoria."),
      List.of(
          Phrase.of("The part that passes 3 inches.", "La parte que pasa 3 pulgadas."),
          Phrase.of(
              "No organic soils and no peat; these need the nose and an oven.",
              "Ni suelos orgánicos ni turba: estos piden el olfato y un horno."),
          Phrase.of(
              "A log at the rig names by eye; a symbol is for a sample that was sieved.",
              "El registro en el equipo nombra a ojo; el símbolo es para una muestra tamizada.")),
      SoilName::reckon);

  private SoilName() {}

  private static Outcome reckon(Inputs inputs) {
    Optional<Quantity> passing = inputs.find(PASSING_200);
    boolean hasLimits = inputs.find(LIQUID_LIMIT).isPresent() && inputs.find(PLASTICITY).isPresent();
    Outcome outcome = hasLimits ? limits(inputs) : Outcome.empty();
    Optional<Fines> fines = hasLimits
        ? Optional.of(Fines.of(
            number(inputs, LIQUID_LIMIT), number(inputs, PLASTICITY), number(outcome.quantity(A_LINE.name()))))
        : inputs.find(FINES).map(ChoiceField.Option::code).flatMap(Fines::written);
    double fine = passing.map(q -> q.in(Unit.PERCENT)).orElse(100.0);
    if (fine >= 50) {
      return named(outcome, fines.orElseThrow(
          () -> needs("the liquid limit and the plasticity index", "el límite líquido y el índice de plasticidad")));
    }
    double four = inputs.find(PASSING_4)
        .orElseThrow(() -> needs("what passes sieve No. 4", "lo que pasa el tamiz núm. 4")).in(Unit.PERCENT);
    if (four < fine) {
      throw new NotReckonable(
          "Less passes No. 4 than No. 200, which is the finer sieve.",
          "Pasa menos por el núm. 4 que por el núm. 200, que es el más fino.");
    }
    CoarseSoil soil = new CoarseSoil(
        fine, four, inputs.find(CU).map(SoilName::number), inputs.find(CC).map(SoilName::number), fines);
    return outcome.naming(SYMBOL.name(), Phrase.same(soil.symbol())).naming(NAME.name(), soil.words());
  }

  private static Outcome named(Outcome outcome, Fines fines) {
    return outcome.naming(SYMBOL.name(), Phrase.same(fines.symbol())).naming(NAME.name(), fines.alone());
  }

  private static Outcome limits(Inputs inputs) {
    Term liquid = inputs.given("LL", LIQUID_LIMIT);
    Term line = Term.number(0.73).times(liquid.minus(Term.number(20))).named("A", A_LINE.label(), A_LINE.scale());
    Outcome outcome = Outcome.empty().with(A_LINE.name(), line);
    double upper = Term.number(0.9).times(liquid.minus(Term.number(8))).in(UnitSystem.METRIC);
    if (number(inputs, PLASTICITY) <= upper) return outcome;
    return outcome.remarking(Phrase.of(
        "This lies above the U line, where no soil was found yet: check both limits.",
        "Queda arriba de la línea U, donde aún no se ha hallado ningún suelo: revise los dos límites."));
  }

  private static NotReckonable needs(String english, String spanish) {
    return new NotReckonable("The name needs {0}.", "El nombre necesita {1}.", english, spanish);
  }

  private static double number(Inputs inputs, QuantityField field) {
    return number(inputs.amount(field));
  }

  private static double number(Quantity quantity) {
    return quantity.in(Unit.ONE);
  }

  private static QuantityField share(String name, String english, String spanish, String example) {
    return QuantityField.of(name, Scale.SHARE, Phrase.of(english, spanish), example, example)
        .between("0 %", "100 %").optional();
  }

  private static QuantityField number(String name, Phrase label, String example, String least, String most) {
    return QuantityField.of(name, Scale.NUMBER, label, example, example).between(least, most).optional();
  }

  private static ChoiceField.Option option(Fines fines) {
    return new ChoiceField.Option(fines.symbol(), Phrase.of("{0}, {1}", "{0}, {1}", fines.symbol(), fines.alone()));
  }
}
