package steening.stage.decommissioning;

import static steening.stage.decommissioning.DecommissioningFindings.depth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bagged;
import steening.bore.Bore;
import steening.journal.Dates;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Closing;
import steening.well.Fill;
import steening.well.MovedOver;
import steening.well.Plug;
import steening.well.Well;

/** The record of every hole that is closed or has to be, and the rules it is held against. */
final class DecommissioningSheet {
  /** Days after plugging: 30 in Minn. R. 4725.1851, 16 TAC 76.70 and North Carolina (seen). */
  private static final int DUE = 30;

  private static final Phrase NOTHING = Phrase.same("");

  private DecommissioningSheet() {}

  static Sheet of(Well well) {
    Sheet sheet = Sheet.EMPTY;
    List<Plugging> all = Plugging.all(well);
    for (Plugging plugging : all) sheet = plugs(hole(sheet, plugging), plugging);
    if (all.isEmpty()) return sheet;
    List<List<Shown>> rules = new ArrayList<>();
    for (SealingRules rule : SealingRules.all()) rules.add(List.of(rule.what(), rule.source()));
    return sheet
        .table(
            Phrase.of("What rules say; your local code decides", "Lo que dicen las normas; decide su norma local"),
            List.of(Phrase.of("Rule", "Norma"), Phrase.of("Where", "Dónde")), rules)
        .cautioning(PluggingCautions.ALL);
  }

  private static Sheet hole(Sheet sheet, Plugging plugging) {
    Phrase number = Phrase.of("hole {0}", "barreno {0}", plugging.number());
    Sheet with = sheet;
    Optional<MovedOver> away = plugging.hole().get(MovedOver.AWAY);
    Optional<Closing> closing = plugging.plugs().closing();
    if (away.isPresent()) {
      with = with.line(
          Phrase.of("{0}, given up", "{0}, abandonado", number),
          Phrase.of("{0}, {1}", "{0}, {1}", Dates.format(away.get().at().date()), away.get().why().label()));
    }
    if (closing.isPresent()) with = closing(with, number, closing.get());
    Optional<Outcome> volume = Outcome.ifReckonable(() -> Outcome.empty().with("volume",
        new Annulus(plugging.bore(), Bore.NONE).volume("V", number, Length.ZERO, plugging.bottom())));
    if (volume.isPresent()) {
      with = with.line(
          Phrase.of("{0}, volume to {1}", "{0}, volumen hasta {1}", number, depth(plugging.bottom())),
          volume.get().figure("volume"), volume.get());
    }
    Optional<Moment> last = plugging.plugs().plugs().stream().flatMap(p -> p.fill().pours().stream())
        .map(Fill.Pour::at).reduce((a, b) -> b.isAfter(a) ? b : a);
    if (last.isPresent() && plugging.isDone()) {
      LocalDate closed = last.get().date();
      with = with
          .line(Phrase.of("{0}, plugged on", "{0}, sellado el", number), Phrase.same(Dates.format(closed)))
          .line(
              Phrase.of(
                  "{0}, record due in Minnesota, Texas, North Carolina",
                  "{0}, registro a entregar en Minnesota, Texas, Carolina del Norte", number),
              Phrase.same(Dates.format(closed.plusDays(DUE))));
    }
    return with;
  }

  private static Sheet closing(Sheet sheet, Phrase number, Closing closing) {
    Sheet with = sheet
        .line(Phrase.of("{0}, closed because", "{0}, cerrado por", number), closing.why())
        .line(Phrase.of("{0}, casing", "{0}, ademe", number), closing.pipe().label());
    with = length(with, Phrase.of("{0}, casing cut below ground", "{0}, ademe cortado", number), closing.cut());
    with = length(with, Phrase.of("{0}, water at rest", "{0}, nivel estático", number), closing.level());
    with = length(with, Phrase.of("{0}, blocked below", "{0}, obstruido abajo", number), closing.obstruction());
    Optional<Quantity> chlorine = closing.chlorine();
    if (chlorine.isEmpty()) return with;
    return with.line(
        Phrase.of("{0}, chlorine", "{0}, cloro", number), new Figure(chlorine.get(), Scale.CONCENTRATION));
  }

  private static Sheet length(Sheet sheet, Phrase label, Optional<Length> length) {
    return length.isEmpty() ? sheet : sheet.line(label, depth(length.get()));
  }

  private static Sheet plugs(Sheet sheet, Plugging plugging) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Plug plug : plugging.plugs().upward()) rows.add(row(plugging, plug));
    return sheet.table(
        Phrase.of("Plugs of hole {0}, from the bottom up", "Tapones del barreno {0}, desde el fondo",
            plugging.number()),
        List.of(
            Phrase.of("Stretch", "Tramo"), Phrase.of("Material", "Material"),
            Phrase.of("Bags", "Sacos"), Phrase.of("Takes", "Lleva"), Phrase.of("Volume", "Volumen"),
            Phrase.of("Water", "Agua"), Phrase.of("Expected top", "Tope esperado"), Phrase.of("Tape", "Sonda")),
        rows);
  }

  private static List<Shown> row(Plugging plugging, Plug plug) {
    Fill fill = plug.fill();
    Volume water = plug.ways().stream().flatMap(w -> w.water().stream()).reduce(Volume.NONE, Volume::plus);
    return List.of(
        Phrase.of("{0} to {1}", "{0} a {1}", depth(plug.from()), depth(plug.to())),
        plug.material().label(),
        Phrase.same(Integer.toString(fill.bags())),
        plugging.needed(plug).map(o -> (Shown) Bagged.about(o.quantity(PlugVolume.EXACT.name())))
            .orElse(NOTHING),
        new Figure(fill.volume(), Scale.VOLUME),
        water.cubicMetres() > 0 ? new Figure(water, Scale.LIQUID) : NOTHING,
        plugging.expectedTop(plug, fill.volume())
            .map(o -> (Shown) depth(((Length) o.quantity(Plugging.TOP)).max(Length.ZERO))).orElse(NOTHING),
        fill.top().map(t -> (Shown) depth(t)).orElse(NOTHING));
  }
}
