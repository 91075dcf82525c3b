package steening.stage.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.BagsLeft;
import steening.bore.Filled;
import steening.bore.Settling;
import steening.drawing.Chart;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Fill;
import steening.well.OnTruck;
import steening.well.Plan;
import steening.well.Well;

/** The pack on paper: what is in, where it stands, reading by reading. */
final class PackSheet {
  private static final Shown NOTHING = Phrase.same("–");

  private PackSheet() {}

  static Sheet of(Well well) {
    Sheet sheet = planned(Sheet.EMPTY, well.get(Plan.PART));
    Fill pack = well.get(Fill.PACK);
    if (pack.isBegun()) {
      sheet = sheet
          .line(Phrase.of("bags in", "sacos vertidos"), Phrase.same(Integer.toString(pack.bags())))
          .line(Phrase.of("volume in", "volumen vertido"), new Figure(pack.volume(), Scale.VOLUME));
    }
    Optional<Pouring> pouring = Pouring.of(well);
    if (pouring.isPresent()) sheet = standing(sheet, pouring.get());
    Optional<Chart> chart = pouring.flatMap(PackChart::of);
    if (chart.isPresent()) sheet = sheet.chart(chart.get());
    sheet = sheet.cautioning(PackCautions.ALL);
    return sheet;
  }

  private static Sheet planned(Sheet sheet, Plan plan) {
    Optional<Outcome> planned = PackPlan.volume(plan);
    if (planned.isEmpty()) return sheet;
    Phrase bags = Phrase.of(
        "{0}, {1}", "{0}, {1}", planned.get().figure("volume"), Bagged.said(planned.get().quantity("bags")));
    return sheet.line(Phrase.of("planned", "planeado"), bags, planned.get());
  }

  private static Sheet standing(Sheet sheet, Pouring pouring) {
    Sheet with = sheet;
    if (pouring.pack().top().isPresent()) {
      Length top = pouring.pack().top().get();
      with =
          with.line(Phrase.of("top of the pack, sounded", "tope del filtro, sondeado"), new Figure(top, Scale.DEPTH));
      Optional<Length> above = pouring.screenTop().map(s -> s.minus(top));
      if (above.isPresent()) {
        with = with.line(Phrase.of("above the screen", "sobre la rejilla"), new Figure(above.get(), Scale.DEPTH));
      }
    }
    Optional<Outcome> settled = SettlingFindings.forecast(pouring);
    if (settled.isPresent()) {
      with = with.line(
          Phrase.of("its top once it has settled", "su tope ya asentado"),
          Phrase.of("{0} to {1}", "{0} a {1}", settled.get().figure(Settling.TOP.name()),
              settled.get().figure(Settling.TOP_MOST.name())),
          settled.get());
    }
    Optional<Outcome> lately = pouring.pack().lastTag().filter(t -> t.bags() > 0)
        .flatMap(t -> Outcome.ifReckonable(() -> pouring.lately(t).filled(t.depth()).outcome()));
    if (lately.isPresent()) {
      with = with.line(
          Phrase.of("apparent diameter, last lot", "diámetro aparente, último tramo"),
          Filled.said(lately.get()), lately.get());
    }
    Optional<Outcome> left = PackExpectations.toPlannedTop(pouring);
    if (pouring.pack().isBegun() && left.isPresent()) {
      with = with.line(
          Phrase.of("bags still needed to the planned top", "sacos que faltan hasta el tope planeado"),
          left.get().figure("bags"), left.get());
    }
    Optional<Outcome> learned =
        Bridge.evidence(pouring).isPresent() ? Optional.empty() : Standing.bagsLeft(pouring);
    if (learned.isPresent()) {
      with = with
          .line(Phrase.of("bags still needed, by what this hole took", "sacos que faltan, según llevó este barreno"),
              BagsLeft.said(learned.get()), learned.get())
          .line(Phrase.of("how sure that is", "qué tan seguro es eso"), BagsLeft.bands(learned.get()), learned.get());
      Optional<Integer> has = TruckFindings.onTruck(pouring);
      if (has.isPresent()) {
        with = with.line(
            pouring.truck().last(OnTruck.Goods.PACK).isPresent()
                ? Phrase.of("on the truck, by the last count", "en el camión, según el último conteo")
                : Phrase.of("on the truck, by the plan's load", "en el camión, según la carga del plan"),
            Bagged.said(has.get()));
      }
    }
    return with.table(
        Phrase.of("Bags and tape", "Sacos y sonda"),
        List.of(
            Phrase.of("bags", "sacos"), Phrase.of("tape", "sonda"), Phrase.of("expected", "esperada"),
            Phrase.of("difference", "diferencia"), Phrase.of("apparent diameter", "diámetro aparente")),
        rows(pouring));
  }

  private static List<List<Shown>> rows(Pouring pouring) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Fill.Tag tag : pouring.pack().tags()) rows.add(row(pouring, tag));
    if (pouring.pack().bagsSinceTag() > 0) {
      Optional<Outcome> expected = Outcome.ifReckonable(() -> pouring.with(0).expected(Optional.empty()));
      Shown tape = expected.map(o -> (Shown) o.figure(ExpectedTape.TAPE.name())).orElse(NOTHING);
      rows.add(List.of(Phrase.same(Integer.toString(pouring.pack().bags())), NOTHING, tape, NOTHING, NOTHING));
    }
    return rows;
  }

  private static List<Shown> row(Pouring pouring, Fill.Tag tag) {
    Shown bags = Phrase.same(Integer.toString(tag.bags()));
    Shown tape = new Figure(tag.depth(), Scale.DEPTH);
    if (tag.bags() == 0) return List.of(bags, tape, NOTHING, NOTHING, NOTHING);
    Optional<Outcome> compared = Outcome.ifReckonable(() -> pouring.upTo(tag).compared(tag.depth()));
    Optional<Outcome> filled = Outcome.ifReckonable(() -> pouring.lately(tag).filled(tag.depth()).outcome());
    return List.of(
        bags,
        tape,
        compared.map(o -> (Shown) o.figure(ExpectedTape.TAPE.name())).orElse(NOTHING),
        compared.map(o -> (Shown) o.figure("difference")).orElse(NOTHING),
        filled.map(o -> (Shown) Filled.said(o)).orElse(NOTHING));
  }
}
