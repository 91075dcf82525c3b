package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.drawing.Section;
import steening.field.Kind;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Job;
import steening.job.WellName;
import steening.stage.Stage;

/** One well: what to do next and what to expect, the form for it, the section, and all that is known so far. */
final class WellPage {
  /** More numbers than these would push the form out of sight; the rest stand below it, as all do of another entry. */
  private static final int BEFORE_THE_FORM = 2;

  private WellPage() {}

  static Reply answer(Visit visit, Job job, Stage stage, EntryForm form, int status) {
    List<Finding> findings = job.findings();
    List<Finding> heavy = findings.stream().filter(f -> f.weight() == Weight.STOP).toList();
    List<Finding> light = findings.stream().filter(f -> f.weight() != Weight.STOP).toList();
    List<DomContent> work = new ArrayList<>();
    if (visit.request().values().containsKey("saved")) work.add(saved(visit, job));
    if (!heavy.isEmpty()) work.add(FindingBlock.all(heavy, visit.reader()));
    work.add(next(visit, job, stage, form));
    if (!light.isEmpty()) work.add(section(h2(visit.say(Words.FINDINGS)), FindingBlock.all(light, visit.reader())));
    DomContent drawn = rawHtml(Section.draw(job.well(), visit.reader()));
    DomContent drawing = section(h2(visit.say(Words.SECTION)), figure(drawn).withClass("section")).withClass("drawing");
    DomContent well = div(
            div(work.toArray(DomContent[]::new)).withClass("work"),
            drawing,
            SoFar.of(visit, job, stage))
        .withClass("well");
    String name = WellName.of(job.journal());
    DomContent holes = HolePage.all(visit, job, job.well());
    return Reply.page(status, Layout.page(visit, name, h1(name), holes, StageNav.of(visit, job, stage), well));
  }

  private static DomContent saved(Visit visit, Job job) {
    String id = visit.request().value("saved");
    return p(
            text(visit.say(Words.TAKEN_DOWN) + " "),
            a(visit.say(Words.CORRECT)).withHref("/well/" + job.well().id() + "/entry/" + id))
        .withClass("saved")
        .attr("role", "status");
  }

  private static DomContent next(Visit visit, Job job, Stage stage, EntryForm form) {
    List<DomContent> parts = new ArrayList<>();
    if (job.isDone()) parts.add(p(visit.say(Words.ALL_DONE)).withClass("saved"));
    parts.add(h2(visit.say(form.kind().title())));
    parts.addAll(ClockBlock.of(stage.clocks(job.well()), visit));
    List<Expectation> expected = stage.expectations(job.well());
    boolean asExpected = form.kind().name().equals(stage.nextKind(job.well()));
    int before = asExpected ? Math.min(BEFORE_THE_FORM, expected.size()) : 0;
    for (Expectation one : expected.subList(0, before)) parts.add(expectation(visit, one));
    parts.add(form.shown(visit));
    for (Expectation one : expected.subList(before, expected.size())) parts.add(expectation(visit, one));
    List<Kind> others = stage.kinds().stream().filter(k -> k != form.kind()).toList();
    if (!others.isEmpty()) {
      String address = "/well/" + job.well().id() + "/" + stage.name() + "?kind=";
      DomContent links = each(others, k -> a(visit.say(k.title())).withHref(address + k.name() + "#entry"));
      parts.add(nav(span(visit.say(Words.ALSO_HERE)).withClass("label"), links).withClass("others"));
    }
    return section(parts.toArray(DomContent[]::new)).withClass("next");
  }

  private static DomContent expectation(Visit visit, Expectation expectation) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(span(visit.say(Words.EXPECT) + ": " + visit.say(expectation.what())).withClass("what"));
    parts.add(span(expectation.figure().shownTo(visit.reader())).withClass("number"));
    expectation.band().ifPresent(b -> parts.add(span(visit.say(Words.GIVE_OR_TAKE.about(b))).withClass("band")));
    parts.add(WorkingBlock.of(expectation.working(), visit.reader()));
    return div(parts.toArray(DomContent[]::new)).withClass("expectation");
  }
}
