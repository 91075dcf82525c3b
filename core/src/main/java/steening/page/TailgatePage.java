package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.li;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.p;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import steening.job.Cautions;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.stage.Stage;

/** The cautions of all that is still to be done at one well, to be read aloud before the work. */
final class TailgatePage {
  private TailgatePage() {}

  static Reply answer(Visit visit, Job job) {
    String name = WellName.of(job.journal());
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(visit.say(Words.TAILGATE)));
    parts.add(nav(a(name).withHref("/well/" + job.well().id())).withClass("others"));
    // The way back is not printed, but whose sheet it is must be.
    parts.add(p(name).withClass("well-name"));
    if (job.isDone()) parts.add(p(visit.say(Words.ALL_DONE)));
    else parts.add(p(visit.say(Words.TALK_FIRST) + " " + visit.say(Cautions.DEFER)));
    Set<String> said = new LinkedHashSet<>();
    for (Stage stage : Stages.all()) {
      List<String> fresh = job.cautions(stage).stream().map(visit::say).filter(said::add).toList();
      if (fresh.isEmpty()) continue;
      parts.add(h2(visit.say(stage.title())));
      parts.add(ul(each(fresh, caution -> li(caution))).withClass("cautions"));
    }
    return Reply.page(Layout.page(
        visit, visit.say(Words.TAILGATE), div(parts.toArray(DomContent[]::new)).withClass("tailgate")));
  }
}
