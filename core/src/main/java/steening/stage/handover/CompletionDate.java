package steening.stage.handover;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.well.Completion;
import steening.well.Hole;
import steening.well.Permit;
import steening.well.Well;

/** The day of completion beside the other days of the job. Nothing here knows what day it is now. */
final class CompletionDate {
  private CompletionDate() {}

  /** Something of the job that cannot come after its completion. */
  private record Event(LocalDate day, Phrase what) {}

  /** One at most: a day that is wrong says nothing about the days since. */
  static List<Finding> findings(Completion completion, Well well) {
    return tooEarly(completion, well)
        .or(() -> tooLate(completion, well))
        .or(() -> typedLate(completion))
        .map(List::of).orElse(List.of());
  }

  private static Optional<Finding> tooEarly(Completion completion, Well well) {
    Optional<Event> latest = latestBefore(well);
    if (latest.isEmpty() || !completion.date().isBefore(latest.get().day())) return Optional.empty();
    Finding finding = stop("handover.completed-too-early", completion, Phrase.of(
        "Completed on {0}, but {1} on {2}.", "Terminado el {0}, pero {1} el {2}.",
        text(completion.date()), latest.get().what(), text(latest.get().day())));
    return Optional.of(turned(completion.date())
        .filter(t -> !t.isBefore(latest.get().day()) && !t.isAfter(completion.written().date()))
        .map(t -> meant(finding, t))
        .orElse(finding));
  }

  private static Optional<Finding> tooLate(Completion completion, Well well) {
    LocalDate written = completion.written().date();
    if (!completion.date().isAfter(written)) return Optional.empty();
    Finding finding = stop("handover.completed-too-late", completion, Phrase.of(
        "Completed on {0}, but that was written on {1}.", "Terminado el {0}, pero eso se escribió el {1}.",
        text(completion.date()), text(written)));
    return Optional.of(turned(completion.date())
        .filter(t -> !t.isAfter(written) && latestBefore(well).map(e -> !t.isBefore(e.day())).orElse(true))
        .map(t -> meant(finding, t))
        .orElse(finding));
  }

  private static Optional<Finding> typedLate(Completion completion) {
    long days = completion.written().date().toEpochDay() - completion.date().toEpochDay();
    if (days <= DueDates.SHORTEST) return Optional.empty();
    Figure since = new Figure(Measure.of(days, Unit.DAY), Scale.DAYS);
    Figure due = new Figure(Measure.of(DueDates.SHORTEST, Unit.DAY), Scale.DAYS);
    return Optional.of(Finding.of("handover.report-late", Weight.NOTE, HandoverStage.NAME, Phrase.of(
            "Written down {0} after completion. A report is due in {1} in some states, in 45, 60 or 90 in others.",
            "Anotado {0} después de terminar. El informe vence en {1} en unos estados, en 45, 60 o 90 en otros.",
            since, due))
        .comparing(since, due)
        .so(Phrase.of("Look up the rule here and file the report.", "Consulte la norma local y entregue el informe."))
        .from(List.of(completion.entry())));
  }

  /** The latest of the days that must come first. */
  private static Optional<Event> latestBefore(Well well) {
    List<Event> events = new ArrayList<>();
    Permit permit = well.get(Permit.PART);
    if (!permit.grants().isEmpty()) {
      events.add(new Event(
          permit.grants().get(0).issued(), Phrase.of("the permit was issued", "el permiso se expidió")));
    }
    if (!permit.tickets().isEmpty()) {
      events.add(new Event(
          permit.tickets().get(0).requested(),
          Phrase.of("the locate ticket was requested", "la localización de servicios se pidió")));
    }
    well.get(Hole.PART).begun().ifPresent(begun ->
        events.add(new Event(begun.date(), Phrase.of("drilling began", "la perforación empezó"))));
    return events.stream().reduce((a, b) -> b.day().isBefore(a.day()) ? a : b);
  }

  /** Month and day in each other's place, where that is another day. */
  private static Optional<LocalDate> turned(LocalDate day) {
    if (day.getDayOfMonth() == day.getMonthValue()) return Optional.empty();
    try {
      return Optional.of(LocalDate.of(day.getYear(), day.getDayOfMonth(), day.getMonthValue()));
    } catch (DateTimeException noSuchMonth) {
      return Optional.empty();
    }
  }

  private static Finding meant(Finding finding, LocalDate day) {
    return finding.because(Phrase.of(
        "Month and day turned round? Did you mean {0}?", "¿Día y mes invertidos? ¿Quiso decir {0}?", text(day)));
  }

  private static Finding stop(String code, Completion completion, Phrase text) {
    return Finding.of(code, Weight.STOP, HandoverStage.NAME, text)
        .so(Phrase.of("Correct the day before the report is signed.", "Corrija la fecha antes de firmar el informe."))
        .from(List.of(completion.entry()));
  }

  private static String text(LocalDate day) {
    return Dates.format(day);
  }
}
