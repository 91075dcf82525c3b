package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.language.Phrase;
import steening.stage.Stage;

/** All wells of the firm, by the stage they are in, with what stands out. */
final class WellsPage {
  private WellsPage() {}

  static Reply answer(Visit visit) {
    List<Job> jobs = visit.shelf().wells().stream().map(visit.shelf()::job).toList();
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(Words.WELLS)));
    parts.add(a(visit.say(Words.NEW_WELL)).withHref("/new").withClass("main"));
    if (jobs.isEmpty()) parts.add(p(visit.say(Words.NO_WELLS)));
    for (Stage stage : Stages.all()) {
      List<Job> here = jobs.stream().filter(job -> job.present() == stage).toList();
      if (!here.isEmpty()) {
        parts.add(section(h2(visit.say(stage.title())), ul(each(here, job -> one(job, visit)))).withClass("wells"));
      }
    }
    return Reply.page(Layout.page(visit, visit.say(Words.WELLS), parts.toArray(DomContent[]::new)));
  }

  private static DomContent one(Job job, Visit visit) {
    String address = "/well/" + job.well().id();
    Optional<Finding> heaviest = job.findings().stream().filter(f -> f.weight() != Weight.NOTE).findFirst();
    DomContent due = heaviest
        .<DomContent>map(f -> span(strong(visit.say(f.weight().label())), text(" " + visit.say(f.text())))
            .withClass("due " + f.weight().code()))
        .orElseGet(() -> span(visit.say(Words.NEXT) + ": " + visit.say(next(job))).withClass("due"));
    return li(a(span(WellName.of(job.journal())).withClass("name"), due).withHref(address));
  }

  private static Phrase next(Job job) {
    Stage stage = job.present();
    return Stages.kind(stage.nextKind(job.well())).map(Kind::title).orElse(stage.title());
  }
}
