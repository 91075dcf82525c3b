package steening.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Hydraulic conductivity from grain size by each formula that holds for it, and roughly what a sand that thick gives.
 *
 * <p>The formulas and their ranges stand in {@link GrainMethod} and {@link SimpleHazen}. Accuracy: a factor of five
 * between formulas is normal; the geometric mean stands in the middle of them and is no better.
 */
public final class GrainSizeConductivity {
  static final QuantityField D10 = Grain.size("d10", SieveCurve.size(10).label(), "0.18 mm");
  static final QuantityField D20 = Grain.size("d20", SieveCurve.size(20).label(), "0.24 mm").optional();
  static final QuantityField D60 = Grain.size("d60", SieveCurve.size(60).label(), "0.42 mm").optional();

  static final Answer POROSITY = new Answer("porosity", Grains.POROSITY, Scale.NUMBER);
  static final Answer MIDDLE = conductivity(
      "conductivity", "hydraulic conductivity K, geometric mean", "conductividad hidráulica K, media geométrica");
  static final Answer LEAST = conductivity("least", "K, the least of them", "K, el menor de ellos");
  static final Answer MOST = conductivity("most", "K, the largest of them", "K, el mayor de ellos");

  public static final Reckoning RECKONING = new Reckoning(
      "grain-size-conductivity",
      Grain.STAGE,
      Phrase.of("Conductivity from grain size", "Conductividad según el tamaño de grano"),
      List.of(D10, D20, D60, Water.TEMPERATURE, SimpleHazen.FACTOR, SandYield.THICKNESS, SandYield.AQUIFER),
      answers(),
      Source.memory(
          "Vukovic and Soro 1992 as in Odong 2007; specific capacity: Driscoll 1986. "
              + "× / ÷ 3: common practice, no source.",
          "Vukovic y Soro 1992 según Odong 2007; capacidad específica: Driscoll 1986. "
              + "× / ÷ 3: práctica común, sin fuente."),
      validity(),
      GrainSizeConductivity::reckon);

  private GrainSizeConductivity() {}

  /** From a sieve curve and the thickness of the sand; nothing where the curve does not reach D10 and D60. */
  public static Optional<Outcome> of(Outcome curve, Length thickness) {
    if (curve.shown(D10.name()).isEmpty() || curve.shown(D60.name()).isEmpty()) return Optional.empty();
    Inputs inputs = Inputs.none().with(SandYield.THICKNESS, thickness);
    for (QuantityField size : List.of(D10, D20, D60)) {
      if (curve.shown(size.name()).isPresent()) inputs = inputs.with(size, curve.quantity(size.name()));
    }
    Inputs given = inputs;
    return Outcome.ifReckonable(() -> RECKONING.of(given));
  }

  /** What one formula says, and what it holds for. */
  public record ByMethod(Phrase title, Phrase domain, Quantity conductivity) {}

  /** Each formula that held in an outcome. */
  public static List<ByMethod> byMethod(Outcome outcome) {
    List<ByMethod> all = new ArrayList<>();
    for (GrainMethod method : GrainMethod.values()) {
      if (outcome.shown(method.answer).isEmpty()) continue;
      all.add(new ByMethod(method.title, method.domain, outcome.quantity(method.answer)));
    }
    return all;
  }

  private static Answer conductivity(String name, String english, String spanish) {
    return new Answer(name, Phrase.of(english, spanish), Scale.CONDUCTIVITY);
  }

  private static List<Answer> answers() {
    List<Answer> answers = new ArrayList<>(List.of(SieveCurve.UNIFORMITY, POROSITY));
    for (GrainMethod method : GrainMethod.values()) {
      answers.add(new Answer(method.answer, method.title, Scale.CONDUCTIVITY));
    }
    answers.addAll(List.of(SimpleHazen.CONDUCTIVITY, MIDDLE, LEAST, MOST));
    answers.addAll(SandYield.ANSWERS);
    return answers;
  }

  private static List<Phrase> validity() {
    List<Phrase> limits = new ArrayList<>();
    for (GrainMethod method : GrainMethod.values()) {
      limits.add(Phrase.of("{0} holds for {1}.", "{0} vale para {1}.", method.title, method.domain));
    }
    limits.add(Phrase.of(
        "A factor of five between formulas is normal; the specific capacity is no better than × or ÷ 3.",
        "Entre fórmulas un factor de cinco es normal; la capacidad específica no es mejor que × o ÷ 3."));
    limits.add(Phrase.of(
        "A sample washed up the hole has lost fines and makes K too large.",
        "Una muestra lavada por el barreno perdió finos y da K demasiado grande."));
    return limits;
  }

  private static Outcome reckon(Inputs inputs) {
    Term effective = inputs.given("D₁₀", D10);
    Optional<Quantity> sixty = inputs.find(D60);
    List<Term> found = new ArrayList<>();
    Outcome outcome = sixty.isPresent() ? byMethods(inputs, effective, found) : Outcome.empty();
    boolean wanted = sixty.isEmpty() || inputs.find(SimpleHazen.FACTOR).isPresent();
    Optional<Term> simple = wanted ? SimpleHazen.of(inputs, effective) : Optional.empty();
    if (simple.isPresent()) {
      outcome = outcome.with(SimpleHazen.CONDUCTIVITY.name(), simple.get());
      found.add(simple.get());
    } else if (wanted) outcome = outcome.remarking(SimpleHazen.LEFT_OUT);
    if (found.isEmpty()) {
      throw new NotReckonable(
          "Without D60 only the simple form of Hazen is left, and it holds for D10 0.1 to 3 mm.",
          "Sin D60 solo queda la forma simple de Hazen, que vale para D10 de 0.1 a 3 mm.");
    }
    return spread(outcome, found, inputs);
  }

  private static Outcome byMethods(Inputs inputs, Term effective, List<Term> found) {
    Optional<Term> twenty = inputs.find(D20).map(q -> inputs.given("D₂₀", D20));
    Grains grains = Grains.of(effective, twenty, inputs.given("D₆₀", D60), Water.viscosity(inputs));
    Outcome outcome = Outcome.empty()
        .with(SieveCurve.UNIFORMITY.name(), grains.uniformity()).with(POROSITY.name(), grains.n());
    for (GrainMethod method : GrainMethod.values()) {
      Optional<Term> conductivity = method.of(grains);
      if (conductivity.isPresent()) {
        found.add(conductivity.get());
        outcome = outcome.with(method.answer, conductivity.get());
      } else {
        outcome = outcome.remarking(Phrase.of(
            "{0} is left out; it holds for {1}.", "{0} queda fuera; vale para {1}.", method.title, method.domain));
      }
    }
    return outcome;
  }

  private static Outcome spread(Outcome outcome, List<Term> found, Inputs inputs) {
    Term product = found.get(0);
    Term least = found.get(0);
    Term most = found.get(0);
    for (Term term : found.subList(1, found.size())) {
      product = product.times(term);
      least = least.least(term);
      most = most.most(term);
    }
    Term mean = product.power(Term.number(1).over(found.size())).named("K", MIDDLE.label(), MIDDLE.scale());
    Outcome with = outcome
        .with(MIDDLE.name(), mean)
        .with(LEAST.name(), least.named("K₁", LEAST.label(), LEAST.scale()))
        .with(MOST.name(), most.named("K₂", MOST.label(), MOST.scale()));
    return SandYield.added(with, mean, inputs);
  }
}
