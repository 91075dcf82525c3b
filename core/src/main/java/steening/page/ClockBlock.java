package steening.page;

import static j2html.TagCreator.div;
import static j2html.TagCreator.span;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import steening.journal.Dates;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.stage.Clock;

/** What runs out, sets or is due: until when, and how long that is from now. One that is long past is not shown. */
final class ClockBlock {
  private static final double A_DAY = 24 * 60;
  private static final double LONG = 180;

  private ClockBlock() {}

  static List<DomContent> of(List<Clock> clocks, Visit visit) {
    List<DomContent> shown = new ArrayList<>();
    for (Clock clock : clocks) {
      double left = clock.until().minutesSince(visit.now());
      if (left > -A_DAY) shown.add(one(clock, left, visit));
    }
    return shown;
  }

  private static DomContent one(Clock clock, double left, Visit visit) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(span(visit.say(clock.what())).withClass("what"));
    parts.add(span(until(clock.until(), clock.from())).withClass("number"));
    parts.add(span(visit.say(apart(left))).withClass("band"));
    clock.working().ifPresent(outcome -> parts.add(WorkingBlock.of(outcome, visit.reader())));
    return div(parts.toArray(DomContent[]::new)).withClass("expectation");
  }

  /** With the date, where that is another day than it began. */
  private static String until(Moment until, Moment from) {
    boolean sameDay = until.date().equals(from.date());
    return (sameDay ? "" : Dates.format(until.date()) + " ") + until.clock();
  }

  private static Phrase apart(double minutes) {
    double size = Math.floor(Math.abs(minutes));
    Figure figure = new Figure(Measure.of(size, Unit.MINUTE), size > LONG ? Scale.HOURS : Scale.MINUTES);
    return (minutes < 0 ? Words.PAST : Words.LEFT).about(figure);
  }
}
