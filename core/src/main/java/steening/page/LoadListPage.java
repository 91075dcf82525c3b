package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.stage.Load;
import steening.stage.Stage;

/** What has to be on the truck, stage by stage. */
final class LoadListPage {
  private LoadListPage() {}

  static Reply answer(Visit visit, Job job) {
    String name = WellName.of(job.journal());
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(Words.LOAD_LIST)));
    parts.add(nav(a(name).withHref("/well/" + job.well().id())).withClass("others"));
    boolean empty = true;
    for (Stage stage : Stages.all()) {
      List<Load> loads = stage.loads(job.well());
      if (loads.isEmpty()) continue;
      empty = false;
      parts.add(h2(visit.say(stage.title())));
      List<DomContent> lines = new ArrayList<>();
      for (Load load : loads) lines.add(line(visit, load));
      parts.add(dl(lines.toArray(DomContent[]::new)).withClass("facts"));
    }
    if (empty) parts.add(p(visit.say(Words.PLAN_FIRST)));
    return Reply.page(Layout.page(visit, visit.say(Words.LOAD_LIST), parts.toArray(DomContent[]::new)));
  }

  private static DomContent line(Visit visit, Load load) {
    List<DomContent> value = new ArrayList<>();
    value.add(span(load.howMany().shownTo(visit.reader())).withClass("value"));
    load.working().ifPresent(outcome -> value.add(WorkingBlock.of(outcome, visit.reader())));
    return div(dt(visit.say(load.what())), dd(value.toArray(DomContent[]::new)));
  }
}
