package steening.stage.casing.choice;

import java.util.List;
import java.util.Optional;
import steening.ground.SieveCurve;
import steening.ground.Sieves;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.well.Grade;
import steening.well.Well;

/**
 * The pack that is to lie against the screen: by the sieve analysis that came with it, else by the grade on its bag,
 * whose two sieves are then taken for its finest and its coarsest grain.
 *
 * @param sieved whether it was sieved, or only the grade is known
 */
record PackKnown(Inputs sieves, boolean sieved, Shown name, List<String> entries) {
  /** What was poured governs, unless it is the pack that was chosen; none where neither grade nor sieves are known. */
  static Optional<PackKnown> of(Well well) {
    Optional<PackChosen> chosen = well.get(PackChosen.PART);
    Optional<PackKnown> poured = well.get(Grade.PART)
        .filter(g -> chosen.flatMap(PackChosen::grade).filter(g::equals).isEmpty())
        .flatMap(g -> byGrade(g, List.of()));
    return poured.or(() -> chosen.flatMap(PackKnown::of));
  }

  private static Optional<PackKnown> of(PackChosen chosen) {
    List<String> entries = List.of(chosen.entry());
    if (!chosen.isSieved()) return chosen.grade().flatMap(grade -> byGrade(grade, entries));
    Shown name = chosen.grade().map(g -> Phrase.same(g.text())).orElse(Phrase.of("as sieved", "según el tamiz"));
    return Optional.of(new PackKnown(Inputs.of(chosen.body()), true, name, entries));
  }

  private static Optional<PackKnown> byGrade(Grade grade, List<String> entries) {
    Optional<Length> finest = grade.finest();
    Optional<Length> coarsest = grade.coarsest();
    if (finest.isEmpty() || coarsest.isEmpty() || !finest.get().isLessThan(coarsest.get())) return Optional.empty();
    List<Quantity> finer = List.of(new Measure(Dimension.NUMBER, 0), new Measure(Dimension.NUMBER, 1));
    Inputs sieves = Inputs.none()
        .with(Sieves.OPENINGS, List.of(finest.get(), coarsest.get())).with(Sieves.FINER, finer);
    return Optional.of(new PackKnown(sieves, false, Phrase.same(grade.text()), entries));
  }

  /** The least and the most that its D30 can be: one size where it was sieved, else the two sieves of its grade. */
  List<Quantity> d30() {
    if (!sieved) return sieves.value(Sieves.OPENINGS);
    return curve().filter(c -> c.shown("d30").isPresent())
        .map(c -> List.of(c.quantity("d30"), c.quantity("d30"))).orElse(List.of());
  }

  /** Its sizes; none where its sieves make no curve. */
  Optional<Outcome> curve() {
    return Outcome.ifReckonable(() -> SieveCurve.RECKONING.of(sieves));
  }
}
