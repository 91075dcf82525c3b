package steening.stage.drilling.fluid;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.drilling.DrillingEntries;
import steening.well.Flowing;
import steening.well.Well;

/** A well that flows: how much comes at the surface, and how hard it pushes when it is closed. */
public final class FlowEntry {
  static final QuantityField RATE = QuantityField.of(
          "rate", Scale.FLOW, Phrase.of("flow at the surface", "flujo en la superficie"), "30 gpm", "1.9 L/s")
      .between("0.01 gpm", "10000 gpm").usually("0.5 gpm", "500 gpm");
  static final QuantityField SHUT_IN = ShutInHead.PRESSURE.optional();
  static final QuantityField HEAD = DrillingEntries.MUD_HEAD;

  public static final Kind KIND = Kind.of(
      "flow", Phrase.of("Flowing well", "Pozo surgente"), RATE, SHUT_IN, ShutInHead.GAUGE, HEAD);

  private FlowEntry() {}

  /** The head as read, or by the gauge; what was known before stays where the entry does not say. */
  public static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    Flowing before = well.get(Flowing.PART);
    Optional<Length> head = HEAD.length(body).or(() -> SHUT_IN.in(body).flatMap(p -> gauged(p, body)));
    Optional<FlowRate> rate = RATE.in(body).map(q -> (FlowRate) q);
    return well.with(Flowing.PART, new Flowing(
        rate.or(before::rate), head.or(before::head), and(before, entry)));
  }

  /** A head that a mud reading tells. */
  public static Well head(Well well, Length head, Entry entry) {
    Flowing before = well.get(Flowing.PART);
    return well.with(Flowing.PART, new Flowing(before.rate(), Optional.of(head), and(before, entry)));
  }

  private static Optional<Length> gauged(Quantity pressure, Body body) {
    return Outcome.ifReckonable(() -> ShutInHead.of(pressure, ShutInHead.GAUGE.length(body)))
        .map(o -> (Length) o.quantity(ShutInHead.HEAD.name()));
  }

  private static List<String> and(Flowing before, Entry entry) {
    return Stream.concat(before.entries().stream(), Stream.of(entry.id())).toList();
  }
}
