package steening.stage.decommissioning;

import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.mix.Mixture;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.well.DepthFrom;
import steening.well.Fill;
import steening.well.Plug;
import steening.well.PlugMaterial;
import steening.well.Plugs;
import steening.well.Sounding;
import steening.well.Well;

/** Plugs as they go in, lot by lot, and the tape on them. */
final class PlugEntries {
  static final CountField BAGS = CountField.of("bags", Phrase.of("bags or sacks", "sacos"), 1, 2000).usuallyUpTo(80);
  static final QuantityField WATER = QuantityField.of(
          "water", Scale.LIQUID, Phrase.of("water mixed in, in all", "agua de mezcla, en total"), "130 gal", "492 L")
      .between("0.5 gal", "100000 gal").usually("4 gal", "2000 gal").optional();
  static final ChoiceField BY = ChoiceField.of(
          "by", Phrase.of("put in", "colocado"),
          ChoiceField.option("tremie", "through a tremie from the bottom", "por tremie desde el fondo"),
          ChoiceField.option("poured", "poured from the top", "vertido desde arriba"))
      .optional();
  static final QuantityField MINUTES = QuantityField.of(
          "minutes", Scale.MINUTES, Phrase.of("minutes it took", "minutos que tomó"), "140 min", "140 min")
      .between("0.1 min", "10000 min").usually("1 min", "1500 min").optional();
  static final Kind PLUG = Kind.of(
          "plug", Phrase.of("Plug put in", "Tapón colocado"),
          ClosingEntry.HOLE, PlugVolume.FROM, PlugVolume.TO, PlugVolume.MATERIAL, BAGS, PlugVolume.BAG, WATER, BY,
          MINUTES)
      .carrying(ClosingEntry.HOLE, PlugVolume.FROM, PlugVolume.TO, PlugVolume.MATERIAL, PlugVolume.BAG, BY);

  static final Kind TAPE = Kind.of(
          "plug-tape", Phrase.of("Tape on the plug", "Sonda sobre el tapón"),
          ClosingEntry.HOLE, Sounding.READING, DepthFrom.FIELD)
      .carrying(ClosingEntry.HOLE, DepthFrom.FIELD);

  private PlugEntries() {}

  static Well plug(Well well, Entry entry) {
    Body body = entry.body();
    int number = ClosingEntry.HOLE.in(body).orElseGet(() -> Plugging.meant(well));
    Optional<Length> from = PlugVolume.FROM.length(body);
    Optional<Length> to = PlugVolume.TO.length(body);
    Optional<PlugMaterial> material = PlugVolume.MATERIAL.text(body).flatMap(PlugMaterial::of);
    Optional<Integer> bags = BAGS.in(body);
    if (from.isEmpty() || to.isEmpty() || material.isEmpty() || bags.isEmpty()) return well;
    if (well.hole(number).isEmpty()) return noSuchHole(well, number, entry);
    if (!to.get().isMoreThan(from.get())) {
      Plugs.Misfit upsideDown = new Plugs.Misfit(from.get(), to.get(), number, entry.id());
      return well.inHole(number, hole -> hole.with(Plugs.PART, hole.get(Plugs.PART).with(upsideDown)));
    }
    Volume volume = bag(material.get(), bags.get(), body).times(bags.get());
    Fill.Pour pour = new Fill.Pour(bags.get(), volume, entry.happenedAt(), entry.id());
    Plug.Way way = new Plug.Way(
        bags.get(), WATER.in(body).map(w -> (Volume) w), BY.text(body).map("tremie"::equals), MINUTES.in(body),
        entry.id());
    return well.inHole(number, hole -> hole.with(
        Plugs.PART, put(hole.get(Plugs.PART), from.get(), to.get(), material.get(), pour, way)));
  }

  /** A lot on the same bottom and of the same material goes on with the plug that was begun there. */
  private static Plugs put(
      Plugs plugs, Length from, Length to, PlugMaterial material, Fill.Pour pour, Plug.Way way) {
    for (int i = 0; i < plugs.plugs().size(); i++) {
      Plug begun = plugs.plugs().get(i);
      if (begun.material() == material && begun.to().equals(to)) return plugs.with(i, begun.with(from, pour, way));
    }
    Plug fresh = new Plug(from, to, material, Fill.NOTHING, List.of());
    return plugs.with(plugs.plugs().size(), fresh.with(from, pour, way));
  }

  /** What one bag filled: as measured, by its water, or as usual; nothing where none of these is known. */
  private static Volume bag(PlugMaterial material, int bags, Body body) {
    Optional<Quantity> measured = PlugVolume.BAG.in(body);
    if (measured.isPresent()) return (Volume) measured.get();
    Optional<Volume> water = WATER.in(body).map(w -> (Volume) w);
    Optional<Outcome> reckoned = Outcome.ifReckonable(() -> Outcome.empty().with("bag",
        Filler.isMixed(material) && water.isPresent()
            ? Filler.mixed(material, Filler.usualSolids(material), water.get().times(1.0 / bags))
                .term(Mixture.YIELD_VOLUME.name())
            : Filler.bag(material)));
    return reckoned.map(o -> (Volume) o.quantity("bag")).orElse(Volume.NONE);
  }

  static Well tape(Well well, Entry entry) {
    int number = ClosingEntry.HOLE.in(entry.body()).orElseGet(() -> lastPlugged(well));
    Optional<Well> hole = well.hole(number);
    if (hole.isEmpty()) return noSuchHole(well, number, entry);
    Optional<Sounding> sounding = Sounding.in(entry, hole.get());
    Plugs plugs = hole.get().get(Plugs.PART);
    if (sounding.isEmpty() || plugs.plugs().isEmpty()) return well;
    int last = plugs.plugs().size() - 1;
    Plugs sounded = plugs.with(last, plugs.plugs().get(last).with(sounding.get()));
    return well.inHole(number, h -> h.with(Plugs.PART, sounded));
  }

  /** A tape comes after a plug: it is on the first hole with bags not sounded yet, though it may be full by then. */
  private static int lastPlugged(Well well) {
    for (int number = 1; number <= well.number(); number++) {
      List<Plug> plugs = well.hole(number).map(h -> h.get(Plugs.PART).plugs()).orElse(List.of());
      if (plugs.stream().anyMatch(p -> p.fill().bagsSinceTag() > 0)) return number;
    }
    return Plugging.meant(well);
  }

  /** Kept with the present hole, and asked about. */
  static Well noSuchHole(Well well, int number, Entry entry) {
    Plugs.Misfit misfit = new Plugs.Misfit(Length.ZERO, Length.feet(1), number, entry.id());
    return well.with(Plugs.PART, well.get(Plugs.PART).with(misfit));
  }
}
