package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Fill;

/**
 * The top of the grout between two looks at it on one day, with nothing pumped between.
 *
 * @param fall how far it fell, and what that is of the column
 */
record Falling(Length before, Length after, Quantity minutes, Outcome fall, List<String> entries) {
  private static final double AN_HOUR = 60;

  /** From the first tape after the pump stopped, or from where the grout came back, to the last tape. */
  static Optional<Falling> of(Sealing sealing) {
    Optional<Fill.Tag> last = sealing.grout().lastTag()
        .filter(t -> t.bags() > 0 && t.bags() == sealing.grout().bags() && !sealing.isNextDay(t));
    Optional<Stood> stood = last.flatMap(t -> stood(sealing, t));
    if (stood.isEmpty()) return Optional.empty();
    double passed = last.get().at().minutesSince(stood.get().at());
    boolean hour = sealing.grouting().beside(last.get().entry()).filter(Grouting.Look::anHourAfter).isPresent();
    Quantity minutes = Measure.of(hour ? Math.max(passed, AN_HOUR) : passed, Unit.MINUTE);
    Length before = stood.get().depth();
    Length after = last.get().depth();
    return Outcome.ifReckonable(() -> GroutFall.of(sealing.bottom(), before, after, minutes))
        .map(o -> new Falling(before, after, minutes, o, List.of(stood.get().entry(), last.get().entry())));
  }

  /** A look at the top, or a return that showed it. */
  private record Stood(Length depth, Moment at, String entry) {}

  private static Optional<Stood> stood(Sealing sealing, Fill.Tag last) {
    Optional<Fill.Tag> first = sealing.grout().tags().stream()
        .filter(t -> t.bags() == last.bags() && !t.entry().equals(last.entry())).findFirst();
    if (first.isPresent()) return first.map(t -> new Stood(t.depth(), t.at(), t.entry()));
    return sealing.grouting().lastBatch().filter(b -> b.returned().orElse(false))
        .map(b -> new Stood(sealing.top(), b.at(), b.entry()));
  }

  /** It falls so fast that it is going somewhere. */
  Optional<Finding> loss() {
    boolean clear = after.minus(before).isMoreThan(Grouted.READ_TO);
    if (!clear || !GroutFall.isLoss(fall)) return Optional.empty();
    Figure found = new Figure(after, Scale.DEPTH);
    Figure was = new Figure(before, Scale.DEPTH);
    return Optional.of(Finding.of("seal.falling", Weight.STOP, SealStage.NAME, Phrase.of(
            "With the pump off the top fell {0} in {1}, from {2} to {3}: where is it going?",
            "Con la bomba parada el tope bajó {0} en {1}, de {2} a {3}: ¿a dónde se va?",
            fall.figure(GroutFall.FALL.name()), new Figure(minutes, Scale.MINUTES), was, found))
        .comparing(found, was)
        .because(Phrase.of(
            "{0} of the column in an hour; more than 5 % is a loss: into a washed zone, or through thin chips or a"
                + " bridged pack into the screen.",
            "{0} de la columna en una hora; más de 5 % es pérdida: a una zona socavada, o por pellets delgados o un"
                + " filtro con puente hacia la rejilla.",
            fall.figure(GroutFall.HOURLY.name())))
        .so(Phrase.of(
            "Pump nothing more. Sound inside the casing for grout; see the log for where mud was lost. Then wait for"
                + " this grout to set, sound it, and go on thicker or with chips from there.",
            "No bombee más. Sondee dentro del ademe por si hay lechada; vea en el registro dónde se perdió lodo. Luego"
                + " espere a que fragüe, sondee y siga más espesa o con pellets desde ahí."))
        .shownBy(fall).from(entries));
  }

  Sheet on(Sheet sheet) {
    Phrase verdict = GroutFall.isLoss(fall) && after.minus(before).isMoreThan(Grouted.READ_TO)
        ? Phrase.of("a loss", "pérdida") : Phrase.of("no loss", "sin pérdida");
    return sheet.line(
        Phrase.of("fall with the pump off", "bajada con la bomba parada"),
        Phrase.of(
            "{0} in {1}, {2} of the column in an hour: {3}", "{0} en {1}, {2} de la columna en una hora: {3}",
            fall.figure(GroutFall.FALL.name()), new Figure(minutes, Scale.MINUTES),
            fall.figure(GroutFall.HOURLY.name()), verdict),
        fall);
  }
}
