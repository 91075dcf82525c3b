package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.details;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.section;
import static j2html.TagCreator.summary;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.job.Job;
import steening.job.Stages;
import steening.stage.Sheet;
import steening.stage.Stage;

/** What every stage has to show, the present one open, and the way to journal and papers. */
final class SoFar {
  private SoFar() {}

  static DomContent of(Visit visit, Job job, Stage present) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(h2(visit.say(Words.SO_FAR)));
    for (Stage stage : Stages.all()) {
      Sheet sheet = job.sheet(stage);
      if (!sheet.isEmpty()) {
        parts.add(details(summary(visit.say(stage.title())), SheetBlock.of(sheet, visit.reader()))
            .withCondOpen(stage == present));
      }
    }
    String address = "/well/" + job.well().id();
    parts.add(nav(
            a(visit.say(Words.JOURNAL)).withHref(address + "/journal"),
            a(visit.say(Words.LOAD_LIST)).withHref(address + "/load-list"),
            a(visit.say(Words.EARLIER_WELLS)).withHref(address + "/earlier-wells"),
            a(visit.say(Words.TAILGATE)).withHref(address + "/tailgate"),
            a(visit.say(Words.REPORT)).withHref(address + "/report.pdf"))
        .withClass("others"));
    return section(parts.toArray(DomContent[]::new)).withClass("so-far");
  }
}
