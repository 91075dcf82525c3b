package steening.stage.seal;

import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Filled;
import steening.bore.Overbreak;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.seal.placing.HoseVolume;
import steening.stage.seal.placing.Tremie;
import steening.well.Fill;
import steening.well.Plan;
import steening.well.Well;
import steening.well.WellAnnulus;

/**
 * The seal of a well as it goes in: chips on the pack, grout on the chips.
 *
 * @param packTop where the chips start: as sounded, else as planned
 * @param bottom where the grout starts: the top of the chips, or of the pack where there are none
 * @param top where the grout should end
 * @param ground what the ground round the grout takes, before any grout is in
 */
record Sealing(
    Annulus annulus, Plan plan, Fill chips, Fill grout, Grouting grouting, Tremie tremie, Recipe recipe,
    Length packTop, Length bottom, Length top, Overbreak ground) {
  private static final Phrase POURED = Phrase.of("chips poured", "pellets vertidos");

  /** None while it is not known where the grout would start. */
  static Optional<Sealing> of(Well well) {
    Plan plan = well.get(Plan.PART);
    Annulus annulus = WellAnnulus.of(well);
    Optional<Length> packTop = well.get(Fill.PACK).top().or(() -> plan.length(Plan.PACK_TOP));
    if (packTop.isEmpty() || annulus.hole().isEmpty()) return Optional.empty();
    Length top = plan.length(Plan.GROUT_TOP).orElse(Length.ZERO);
    Fill chips = well.get(Fill.CHIPS);
    return Optional.of(new Sealing(
        annulus, plan, chips, well.get(Fill.GROUT), well.get(Grouting.PART), well.get(Tremie.PART),
        Grouting.recipe(well), packTop.get(), bottom(annulus, plan, chips, packTop.get()), top,
        GroutForecast.before(well)));
  }

  private static Length bottom(Annulus annulus, Plan plan, Fill chips, Length packTop) {
    Optional<Length> sounded = chips.top();
    if (sounded.isPresent()) return sounded.get();
    Optional<Length> planned = plan.length(Plan.CHIPS_TOP).filter(t -> t.isLessThan(packTop));
    if (!chips.isBegun()) return planned.orElse(packTop);
    return chipsTop(annulus, packTop, chips.volume()).map(o -> (Length) o.quantity(GroutTop.TOP.name()))
        .or(() -> planned).orElse(packTop);
  }

  /** Where the chips that are in should stand. */
  Optional<Outcome> chipsTop() {
    return chipsTop(annulus, packTop, chips.volume());
  }

  static Optional<Outcome> chipsTop(Annulus annulus, Length packTop, Volume volume) {
    Phrase label = Phrase.of("expected top of the chips", "tope esperado de los pellets");
    return Outcome.ifReckonable(() -> Outcome.empty().with(
        GroutTop.TOP.name(), annulus.top("z", label, packTop, Term.given("V", POURED, Scale.VOLUME, volume))));
  }

  /** What the annulus takes from where the grout starts to where it should end. */
  Optional<Outcome> planned(Quantity overage) {
    return Outcome.ifReckonable(() -> GroutVolume.of(annulus, top, bottom, recipe, overage));
  }

  /** Where the grout that was pumped should stand, less what is in the hose. */
  Optional<Outcome> expectedTop(Volume pumped) {
    return Outcome.ifReckonable(() -> GroutTop.of(annulus, bottom, pumped));
  }

  /** That place as a person would find it: grout that comes back runs off. */
  Figure seen(Outcome expectedTop) {
    return new Figure(((Length) expectedTop.quantity(GroutTop.TOP.name())).max(top), Scale.DEPTH);
  }

  /** What hose and tremie hold now: as somebody said with the last tape, else as they are long and wide. */
  Optional<Term> held() {
    Optional<Volume> said = grout.lastTag().filter(t -> t.bags() == grout.bags())
        .flatMap(t -> grouting.beside(t.entry())).map(Grouting.Look::inHose);
    Optional<Term> measured = tremie.held().map(o -> o.term(HoseVolume.HELD.name()));
    if (said.isPresent() && measured.filter(m -> m.quantity().equals(said.get())).isEmpty()) {
      return said.filter(v -> v.cubicMetres() > 0)
          .map(v -> Term.given("H", HoseVolume.HELD.label(), Scale.LIQUID, v));
    }
    return measured;
  }

  /** What has got into the hole by now. */
  Volume inHole() {
    Volume held = held().map(h -> (Volume) h.quantity()).orElse(Volume.NONE);
    Volume in = grout.volume().minus(held);
    return in.cubicMetres() > 0 ? in : Volume.NONE;
  }

  /** What had got into the hole when a tape was read. */
  Volume inHole(Fill.Tag tag) {
    Volume inHose = grouting.beside(tag.entry()).map(Grouting.Look::inHose).orElse(Volume.NONE);
    return tag.poured().minus(inHose);
  }

  /** What the grout below a tape tells of the hole. */
  Optional<Outcome> filled(Fill.Tag tag) {
    Term volume = Term.given("V", Phrase.of("grout in the hole", "lechada en el barreno"), Scale.VOLUME, inHole(tag));
    return Outcome.ifReckonable(() -> new Filled(annulus, tag.depth(), bottom, volume).outcome());
  }

  /** The last tape that was read on the day itself. */
  Optional<Fill.Tag> lastTagOfTheDay() {
    return grout.tags().stream().filter(t -> t.bags() > 0 && !isNextDay(t)).reduce((a, b) -> b);
  }

  boolean isNextDay(Fill.Tag tag) {
    return grouting.beside(tag.entry()).filter(Grouting.Look::nextDay).isPresent();
  }

  /** Whether a tape finds the grout below where it should end. */
  boolean isDeep(Fill.Tag tag) {
    return tag.depth().isMoreThan(top.plus(Grouted.READ_TO));
  }

  /** Whether as much is in as the hole should take. */
  boolean isPlanUsed() {
    return planned(Bagged.NO_OVERAGE)
        .filter(o -> grout.volume().cubicMetres() >= o.quantity("volume").coherent()).isPresent();
  }
}
