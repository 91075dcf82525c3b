package steening.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.details;
import static j2html.TagCreator.each;
import static j2html.TagCreator.li;
import static j2html.TagCreator.nav;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.span;
import static j2html.TagCreator.summary;

import j2html.tags.DomContent;
import java.util.List;
import steening.job.Job;
import steening.job.Stages;
import steening.language.Phrase;
import steening.stage.Progress;
import steening.stage.Stage;

/** The stages of the job as a way through the well, each with how far it is, in a word as well as a mark. */
final class StageNav {
  private StageNav() {}

  static DomContent of(Visit visit, Job job, Stage here) {
    List<Stage> stages = Stages.all();
    String number = Integer.toString(stages.indexOf(here) + 1);
    String place = visit.say(Words.STAGE_OF.about(number, Integer.toString(stages.size())));
    return nav(
            details(
                summary(span(visit.say(here.title())).withClass("here"), span(place).withClass("place")),
                ol(each(stages, stage -> one(visit, job, stage, stage == here)))))
        .withClass("stages");
  }

  private static DomContent one(Visit visit, Job job, Stage stage, boolean here) {
    Progress progress = stage.progress(job.well());
    Phrase word = switch (progress) {
      case DONE -> Words.DONE;
      case UNDER_WAY -> Words.UNDER_WAY;
      case NOT_BEGUN -> Words.NOT_BEGUN;
      case NOT_NEEDED -> Words.NOT_NEEDED;
    };
    String mark = switch (progress) {
      case DONE -> "●";
      case UNDER_WAY -> "◐";
      case NOT_BEGUN -> "○";
      case NOT_NEEDED -> "–";
    };
    DomContent link = a(
            span(mark).withClass("mark").attr("aria-hidden", "true"),
            span(visit.say(stage.title())),
            span(visit.say(word)).withClass("place"))
        .withHref("/well/" + job.well().id() + "/" + stage.name())
        .condAttr(here, "aria-current", "page");
    return li(link);
  }
}
