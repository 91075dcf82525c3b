package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.details;
import static j2html.TagCreator.div;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.drawing.Section;
import steening.finding.Finding;
import steening.job.Holes;
import steening.job.Job;
import steening.job.WellName;
import steening.stage.Stage;
import steening.well.Well;

/** A hole that was given up: what was found and built in it. Nothing is entered here; the journal is the job's. */
final class HolePage {
  private HolePage() {}

  static Reply answer(Visit visit, Job job, Well hole) {
    List<DomContent> work = new ArrayList<>();
    List<Finding> findings = Holes.findings(hole);
    DomContent found = section(h2(visit.say(Words.FINDINGS)), FindingBlock.all(findings, visit.reader()));
    if (!findings.isEmpty()) work.add(found);
    List<DomContent> sheets = new ArrayList<>();
    sheets.add(h2(visit.say(Words.SO_FAR)));
    for (Stage stage : Holes.stages(hole)) {
      sheets.add(details(summary(visit.say(stage.title())), SheetBlock.of(Holes.sheet(stage, hole), visit.reader()))
          .withCondOpen(true));
    }
    DomContent drawn = rawHtml(Section.draw(hole, visit.reader()));
    DomContent drawing = section(h2(visit.say(Words.SECTION)), figure(drawn).withClass("section")).withClass("drawing");
    DomContent well = div(
            div(work.toArray(DomContent[]::new)).withClass("work"),
            drawing,
            section(sheets.toArray(DomContent[]::new)).withClass("so-far"))
        .withClass("well");
    String name = WellName.of(job.journal());
    DomContent left = Holes.givenUp(hole).<DomContent>map(said -> p(visit.say(said))).orElse(text(""));
    return Reply.page(Layout.page(visit, name, h1(name), all(visit, job, hole), left, well));
  }

  /** The holes of the job, where it has more than one: the way from each to the others. */
  static DomContent all(Visit visit, Job job, Well here) {
    if (job.well().earlier().isEmpty()) return text("");
    List<DomContent> links = new ArrayList<>();
    for (int number = 1; number <= job.well().number(); number++) {
      String said = visit.say(Holes.name(number));
      String present = "/well/" + job.well().id();
      String address = number == job.well().number() ? present : present + "/hole/" + number;
      links.add(number == here.number() ? span(said).withClass("label") : a(said).withHref(address));
    }
    return nav(links.toArray(DomContent[]::new)).withClass("others");
  }
}
