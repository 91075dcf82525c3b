package steening.stage.casing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.CasingString;
import steening.well.Cure;
import steening.well.Part;
import steening.well.Plan;
import steening.well.Well;

/**
 * The clock of the cement: it runs from the last piece that was joined, or from when the string was set where no piece
 * was entered.
 *
 * @param air in which it cures, once somebody says that the joints are cemented
 */
record Cementing(Optional<Air> air, Optional<Moment> joined) {
  static final Part<Cementing> PART =
      Part.ofHole("cementing", new Cementing(Optional.empty(), Optional.empty()));

  private static final Phrase DRY =
      Phrase.of("{0}; half as long again in damp air", "{0}; la mitad más con aire húmedo");

  /** How warm, and how damp. */
  record Air(Quantity temperature, Optional<Quantity> humidity, String entry) {}

  /** The well once an entry of this stage was folded, with the clock set anew. */
  static Well after(Well well, Entry entry) {
    Cementing before = well.get(PART);
    Cementing now = switch (entry.kind()) {
      case "cemented" -> new Cementing(
          CementCure.TEMPERATURE.in(entry.body())
              .map(t -> new Air(t, CementCure.HUMIDITY.in(entry.body()), entry.id())),
          before.joined);
      case "sump", "screen", "joint", "cut-piece" -> new Cementing(before.air, Optional.of(entry.happenedAt()));
      case "string-set" -> new Cementing(before.air, before.joined.or(() -> Optional.of(entry.happenedAt())));
      default -> before;
    };
    Well with = well.with(PART, now);
    return with.with(Cure.PART, cure(with));
  }

  /** What the tables say of this string; none where no joint is cemented, or nobody knows how large the pipe is. */
  private static Optional<Outcome> outcome(Well well) {
    Optional<Air> air = well.get(PART).air;
    Optional<Length> outside = outside(well);
    if (air.isEmpty() || outside.isEmpty()) return Optional.empty();
    return Outcome.ifReckonable(() ->
        CementCure.of(NominalSize.of(outside.get()), air.get().temperature(), air.get().humidity()));
  }

  private static Optional<Cure> cure(Well well) {
    Optional<Moment> joined = well.get(PART).joined;
    Optional<Outcome> outcome = outcome(well);
    if (joined.isEmpty() || outcome.isEmpty()) return Optional.empty();
    Quantity time = outcome.get().quantity(CementCure.CURE.name());
    // Up to the next whole minute: a minute too long harms nobody.
    long minutes = (long) Math.ceil(time.in(Unit.MINUTE) - CureTable.HAIR);
    return Optional.of(new Cure(joined.get(), time, joined.get().plusMinutes(minutes)));
  }

  private static Optional<Length> outside(Well well) {
    return well.get(CasingString.PART).outside().or(() -> well.get(Plan.PART).length(Plan.CASING_OUTSIDE));
  }

  static Sheet on(Sheet sheet, Well well) {
    Optional<Cure> cure = well.get(Cure.PART);
    Optional<Outcome> outcome = outcome(well);
    if (cure.isEmpty() || outcome.isEmpty()) return sheet;
    boolean humid = well.get(PART).air.flatMap(Air::humidity).isPresent();
    List<List<Shown>> rows = new ArrayList<>();
    for (List<CureTable> tables : List.of(CureTables.SETS, CureTables.CURES)) {
      for (CureTable table : tables) {
        boolean reaches = outcome.get().answers().containsKey(table.code());
        if (reaches) rows.add(List.of(table.name(), outcome.get().figure(table.code())));
      }
    }
    return sheet
        .line(CementCure.SET.label(), outcome.get().figure(CementCure.SET.name()), outcome.get())
        .line(
            Phrase.of("no blow, air lift or grout before", "sin golpes, inyección de aire ni lechada antes de"),
            (humid ? Phrase.same("") : DRY).about(cure.get().clock()), outcome.get())
        .table(
            Phrase.of("The makers' tables; the slowest counts", "Tablas de fabricantes; cuenta la más lenta"),
            List.of(Phrase.of("Table", "Tabla"), Phrase.of("Time", "Tiempo")), rows);
  }

  /** Cemented, and no table says for how long. */
  static Optional<Finding> unreckoned(Well well) {
    Optional<Air> air = well.get(PART).air;
    if (air.isEmpty() || outside(well).isEmpty() || outcome(well).isPresent()) return Optional.empty();
    return Optional.of(Finding.of("casing.cure-unknown", Weight.LOOK, CasingStage.NAME, Phrase.of(
            "Joints cemented at {0}: no table says how long they take.",
            "Uniones cementadas a {0}: ninguna tabla dice cuánto tardan.",
            new Figure(air.get().temperature(), Scale.TEMPERATURE)))
        .so(Phrase.of(
            "Go by the label of the cement, and wait longer when it is cold.",
            "Guíese por la etiqueta del cemento, y espere más si hace frío."))
        .from(List.of(air.get().entry())));
  }
}
