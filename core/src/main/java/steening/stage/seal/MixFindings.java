package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;
import steening.reckoning.Outcome;

/** Grout with too much water in it, by the recipe, the meter or the balance. */
final class MixFindings {
  /** Bentonite grout of at least 20 % solids: South Carolina R.61-71 (seen); a rule there, good practice elsewhere. */
  private static final double LEAST_SOLIDS = 0.20;

  /** The rule is printed in whole percent; 50 lb to 24 gal are 19.99 %, and meant by it. */
  private static final double AS_PRINTED = 0.0005;

  /** A water meter is read to about 5 % of a batch (common practice, no source). */
  private static final double METER = 1.05;

  /** A mud balance reads to 0.1 lb/gal (published construction tables, seen). */
  static final Density BALANCE = Density.of(0.1, Unit.POUND_PER_GALLON);

  private MixFindings() {}

  static List<Finding> of(Grouting grouting) {
    List<Finding> findings = new ArrayList<>();
    Optional<Finding> thin = grouting.batches().isEmpty()
        ? grouting.recipe().flatMap(MixFindings::thinRecipe)
        : last(grouting, MixFindings::thin);
    thin.or(() -> last(grouting, MixFindings::wet)).ifPresent(findings::add);
    last(grouting, MixFindings::light).ifPresent(findings::add);
    return findings;
  }

  /** The last batch that something is to be said of. */
  private static Optional<Finding> last(Grouting grouting, Function<Batch, Optional<Finding>> about) {
    return grouting.batches().stream().map(about).flatMap(Optional::stream).reduce((a, b) -> b);
  }

  private static Optional<Finding> thinRecipe(Recipe recipe) {
    if (recipe.material() != DryGrout.BENTONITE) return Optional.empty();
    return Outcome.ifReckonable(() -> GroutMix.of(recipe)).filter(MixFindings::isThin).map(mix -> solids(mix, Phrase.of(
        "{0} to {1} is {2} solids; {3} is asked for.", "{0} con {1} da {2} de sólidos; se pide {3}.",
        new Figure(recipe.solids(), Scale.WEIGHT), new Figure(recipe.water(), Scale.LIQUID), mix.figure("solids"),
        least()))
        .from(recipe.entries()));
  }

  private static Optional<Finding> thin(Batch batch) {
    if (batch.recipe().material() != DryGrout.BENTONITE) return Optional.empty();
    return mixed(batch).filter(MixFindings::isThin).map(mix -> solids(mix, Phrase.of(
        "{0} with {1} of water: {2} solids, {3}; {4} solids are asked for.",
        "{0} con {1} de agua: {2} de sólidos, {3}; se pide {4} de sólidos.",
        Bagged.said(batch.bags()), new Figure(batch.water(), Scale.LIQUID), mix.figure("solids"),
        mix.figure("density"), least()))
        .from(List.of(batch.entry())));
  }

  private static boolean isThin(Outcome mix) {
    return mix.quantity("solids").coherent() < LEAST_SOLIDS - AS_PRINTED;
  }

  private static Finding solids(Outcome mix, Phrase text) {
    return Finding.of("seal.solids", Weight.LOOK, SealStage.NAME, text)
        .comparing(mix.figure("solids"), least())
        .because(Phrase.of("Too much water for the bags.", "Demasiada agua para los sacos."))
        .so(Phrase.of(
            "Add dry grout or mix the next batch thicker; see what your rules ask (SC R.61-71: 20 %).",
            "Agregue material seco o mezcle más espesa la próxima; vea lo que piden sus normas (SC R.61-71: 20 %)."))
        .shownBy(mix);
  }

  private static Optional<Finding> wet(Batch batch) {
    double recipe = batch.recipe().water().cubicMetres() * batch.bags();
    if (!(batch.water().cubicMetres() > METER * recipe)) return Optional.empty();
    Figure metered = new Figure(batch.water(), Scale.LIQUID);
    Figure asked = new Figure(batch.recipe().water().times(batch.bags()), Scale.LIQUID);
    Finding finding = Finding.of("seal.water", Weight.LOOK, SealStage.NAME, Phrase.of(
            "{0} of water went into {1}; the recipe has {2}.", "Se usó {0} de agua en {1}; la receta lleva {2}.",
            metered, Bagged.said(batch.bags()), asked))
        .comparing(metered, asked)
        .so(Phrase.of(
            "Weigh the grout. Cement with more water is weaker and shrinks.",
            "Pese la lechada. El cemento con más agua es más débil y se contrae."))
        .from(List.of(batch.entry()));
    return Optional.of(mixed(batch).map(finding::shownBy).orElse(finding));
  }

  private static Optional<Finding> light(Batch batch) {
    Optional<Outcome> recipe = Outcome.ifReckonable(() -> GroutMix.of(batch.recipe()));
    if (recipe.isEmpty() || batch.weighed().isEmpty()) return Optional.empty();
    Density should = (Density) recipe.get().quantity("density");
    Density found = batch.weighed().get();
    if (!GroutDilution.isLight(found, should, BALANCE)) return Optional.empty();
    Quantity volume = new Volume(recipe.get().quantity("yield").coherent() * batch.bags());
    Optional<Outcome> diluted = Outcome.ifReckonable(() -> GroutDilution.of(should, found, Optional.of(volume)));
    Figure weighed = new Figure(found, Scale.DENSITY);
    Finding finding = Finding.of("seal.light", Weight.LOOK, SealStage.NAME, Phrase.of(
            "The balance says {0}; this mix should weigh {1}.", "La balanza dice {0}; esta mezcla debería dar {1}.",
            weighed, recipe.get().figure("density")))
        .comparing(weighed, recipe.get().figure("density"))
        .so(Phrase.of(
            "Check the balance with water (8.34 lb/gal, 1.00 kg/L), then the water for a bag.",
            "Revise la balanza con agua (1.00 kg/L, 8.34 lb/gal) y luego el agua por saco."))
        .from(List.of(batch.entry()));
    return Optional.of(diluted
        .map(o -> finding.shownBy(o).because(Phrase.of(
            "That is about {0} of water too much in {1}.", "Es cerca de {0} de agua de más en {1}.",
            o.figure("extra-water"), Bagged.said(batch.bags()))))
        .orElse(finding.because(
            Phrase.of("Grout cannot weigh less than water.", "La lechada no puede pesar menos que el agua."))));
  }

  /** The batch as it went in. */
  static Optional<Outcome> mixed(Batch batch) {
    return Outcome.ifReckonable(() ->
        GroutMix.of(batch.recipe().material(), batch.recipe().solids().times(batch.bags()), batch.water()));
  }

  private static Figure least() {
    return new Figure(new Measure(Dimension.NUMBER, LEAST_SOLIDS), Scale.SHARE);
  }
}
