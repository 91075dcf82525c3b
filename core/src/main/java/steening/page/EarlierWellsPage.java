package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.button;
import static j2html.TagCreator.div;
import static j2html.TagCreator.form;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.input;
import static j2html.TagCreator.label;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.job.EarlierWells;
import steening.job.Job;
import steening.job.WellName;
import steening.language.Phrase;
import steening.language.Shown;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.plan.GroundOfEarlierWells;
import steening.well.UsualGround;

/**
 * What the firm's finished wells took, and what to reckon with here because of it. The well itself never looks at other
 * wells: what the button takes down is an entry of its own.
 */
final class EarlierWellsPage {
  private static final Shown UNKNOWN = Phrase.same("–");

  private EarlierWellsPage() {}

  static Reply answer(Visit visit, Job job) {
    String name = WellName.of(job.journal());
    EarlierWells earlier =
        EarlierWells.of(job, visit.shelf().wells().stream().map(visit.shelf()::job).toList());
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(Words.EARLIER_WELLS)));
    parts.add(nav(a(name).withHref("/well/" + job.well().id())).withClass("others"));
    if (earlier.wells().isEmpty()) parts.add(p(visit.say(Words.NO_EARLIER_WELLS)));
    else parts.add(SheetBlock.of(table(earlier), visit.reader()));
    earlier.proposed().ifPresent(o -> parts.add(proposed(visit, job, earlier, o)));
    return Reply.page(Layout.page(visit, visit.say(Words.EARLIER_WELLS), parts.toArray(DomContent[]::new)));
  }

  private static Sheet table(EarlierWells earlier) {
    List<List<Shown>> rows = new ArrayList<>();
    for (EarlierWells.One one : earlier.wells()) {
      rows.add(List.of(
          Phrase.same(one.name()),
          one.distance().map(d -> (Shown) new Figure(d, Scale.FAR)).orElse(UNKNOWN),
          one.ground().map(m -> (Shown) m.label()).orElse(UNKNOWN),
          ratio(one.pack()),
          one.grout().map(EarlierWellsPage::ratio).orElse(UNKNOWN)));
    }
    return Sheet.EMPTY.table(
        Phrase.of("Placed over drilled", "Vertido entre perforado"),
        List.of(
            Phrase.of("well", "pozo"), Phrase.of("distance", "distancia"),
            Phrase.of("ground round the pack", "terreno en torno al filtro"),
            Phrase.of("pack and chips", "filtro y pellets"), Phrase.of("grout", "lechada")),
        rows);
  }

  private static Shown ratio(double ratio) {
    return Phrase.same(Decimal.fixed(ratio, 2));
  }

  private static DomContent proposed(Visit visit, Job job, EarlierWells earlier, Outcome outcome) {
    String mean = Decimal.fixed(outcome.quantity(GroundOfEarlierWells.MEAN.name()).coherent(), 2);
    String spread = Decimal.fixed(outcome.quantity(GroundOfEarlierWells.DEVIATION.name()).coherent(), 2);
    Phrase which = earlier.isOfSameGround() ? Words.WELLS_OF_SAME_GROUND : Words.ALL_EARLIER_WELLS;
    return div(
        h2(visit.say(Words.RECKON_WITH.about(mean, spread))),
        p(visit.say(which.about(Integer.toString(earlier.alike().size())))),
        WorkingBlock.of(outcome, visit.reader()),
        entry(visit, job, mean, spread, names(earlier)));
  }

  private static String names(EarlierWells earlier) {
    return String.join("; ", earlier.alike().stream().map(EarlierWells.One::name).toList());
  }

  private static DomContent entry(Visit visit, Job job, String mean, String spread, String wells) {
    List<DomContent> parts = new ArrayList<>(List.of(
        hidden(EntryForm.KIND, "usual-ground"), hidden(UsualGround.MEAN.name(), mean),
        hidden(UsualGround.SPREAD.name(), spread), hidden(UsualGround.WELLS.name(), wells)));
    if (visit.hand().isEmpty()) {
      parts.add(div(
              label(span(visit.say(Words.HAND))).withFor(EntryForm.HAND),
              input().withType("text").withName(EntryForm.HAND).withId(EntryForm.HAND).attr("autocomplete", "name"))
          .withClass("field"));
    }
    parts.add(button(visit.say(Words.TAKE_DOWN)).withClass("main"));
    return form(parts.toArray(DomContent[]::new))
        .withMethod("post").withAction("/well/" + job.well().id() + "/entries").withClass("entry");
  }

  private static DomContent hidden(String name, String value) {
    return input().withType("hidden").withName(name).withValue(value);
  }
}
