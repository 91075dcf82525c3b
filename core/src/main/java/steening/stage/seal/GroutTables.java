package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.bore.Filled;
import steening.language.Phrase;
import steening.language.Shown;
import steening.number.Decimal;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Sheet;
import steening.well.Fill;

/** The grout's batches and tape readings, row by row. */
final class GroutTables {
  private static final Shown NOTHING = Phrase.same("–");
  static final Phrase OVER = Phrase.of("put in over reckoned", "vertido entre calculado");
  static final Phrase APPARENT = Phrase.of("apparent diameter", "diámetro aparente");

  private GroutTables() {}

  /** What was pumped in all, and each batch. */
  static Sheet batches(Sheet sheet, Grouting grouting, Fill grout) {
    if (grouting.batches().isEmpty()) return sheet;
    List<List<Shown>> rows = new ArrayList<>();
    Volume water = Volume.NONE;
    for (Batch batch : grouting.batches()) {
      rows.add(row(batch));
      water = water.plus(batch.water());
    }
    return sheet
        .line(Phrase.of("grout pumped", "lechada bombeada"), Phrase.of(
            "{0}, {1} of water, {2}", "{0}, {1} de agua, {2}", Bagged.said(grout.bags()),
            new Figure(water, Scale.LIQUID), new Figure(grout.volume(), Scale.LIQUID)))
        .table(
            Phrase.of("Batches", "Mezclas"),
            List.of(
                Phrase.of("bags", "sacos"), Phrase.of("water", "agua"), Phrase.of("water a bag", "agua por saco"),
                Phrase.of("solids", "sólidos"), Phrase.of("weighed", "pesada"), Phrase.of("came back", "regresó")),
            rows);
  }

  /** What hose and tremie hold, and what got into the annulus. */
  static Sheet gallons(Sheet sheet, Sealing sealing) {
    Optional<Term> held = sealing.held();
    if (held.isEmpty()) return sheet;
    Term in = Liquids.asLiquid(Standing.inHole(sealing))
        .named("G", Phrase.of("grout in the annulus", "lechada en el espacio anular"), Scale.LIQUID);
    Outcome outcome = Outcome.empty().with("held", held.get()).with("in", in);
    return sheet
        .line(held.get().label(), outcome.figure("held"), outcome)
        .line(in.label(), outcome.figure("in"), outcome);
  }

  private static List<Shown> row(Batch batch) {
    return List.of(
        Phrase.same(Integer.toString(batch.bags())),
        new Figure(batch.water(), Scale.LIQUID),
        new Figure(batch.water().times(1.0 / batch.bags()), Scale.LIQUID),
        MixFindings.mixed(batch).map(o -> (Shown) o.figure("solids")).orElse(NOTHING),
        batch.weighed().map(w -> (Shown) new Figure(w, Scale.DENSITY)).orElse(NOTHING),
        cameBack(batch));
  }

  /** With its weight, where that was taken. */
  private static Shown cameBack(Batch batch) {
    if (batch.returned().isEmpty()) return NOTHING;
    if (!batch.returned().get()) return Phrase.same("no");
    Phrase yes = Phrase.of("yes", "sí");
    return batch.returnWeight()
        .map(w -> (Shown) Phrase.of("{0}, {1}", "{0}, {1}", yes, new Figure(w, Scale.DENSITY))).orElse(yes);
  }

  /** Tape beside expectation. */
  static Sheet readings(Sheet sheet, Sealing sealing) {
    return sheet.table(
        Phrase.of("Tape on the grout", "Sonda sobre la lechada"),
        List.of(
            Phrase.of("bags", "sacos"), Phrase.of("tape", "sonda"), Phrase.of("expected", "esperada"), OVER, APPARENT),
        sealing.grout().tags().stream().map(t -> row(sealing, t)).toList());
  }

  private static List<Shown> row(Sealing sealing, Fill.Tag tag) {
    Optional<Outcome> filled = tag.bags() > 0 ? sealing.filled(tag) : Optional.empty();
    return List.of(
        Phrase.same(Integer.toString(tag.bags())),
        new Figure(tag.depth(), Scale.DEPTH),
        sealing.expectedTop(sealing.inHole(tag)).map(o -> (Shown) sealing.seen(o)).orElse(NOTHING),
        filled.map(o -> (Shown) ratio(o)).orElse(NOTHING),
        filled.map(o -> (Shown) Filled.said(o)).orElse(NOTHING));
  }

  /** To a hundredth: the tape gives no more. */
  static Phrase ratio(Outcome filled) {
    return Phrase.same(Decimal.fixed(filled.quantity("ratio").coherent(), 2));
  }
}
