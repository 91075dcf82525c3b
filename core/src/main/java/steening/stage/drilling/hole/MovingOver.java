package steening.stage.drilling.hole;

import java.util.Arrays;
import java.util.Optional;
import steening.bore.Reach;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingFold;
import steening.well.Hole;
import steening.well.MovedOver;
import steening.well.Plan;
import steening.well.Well;

/** A hole is given up and the rig moved over: what happens after that happens in the next hole. */
public final class MovingOver {
  static final QuantityField DEPTH = DrillingEntries.HOLE_TO.named("depth")
      .labelled("depth of the hole given up", "profundidad del barreno abandonado");
  static final QuantityField DISTANCE = QuantityField.of(
          "distance", Scale.DISTANCE, Phrase.of("moved over by", "distancia del cambio"), "12 ft", "3.7 m")
      .between("0.5 ft", "5000 ft").usually("3 ft", "300 ft");
  static final ChoiceField DIRECTION = ChoiceField.of(
      "direction", Phrase.of("which way", "hacia dónde"),
      Arrays.stream(MovedOver.Direction.values()).map(d -> new ChoiceField.Option(d.code(), d.label()))
          .toArray(ChoiceField.Option[]::new));
  static final ChoiceField WHY = ChoiceField.of(
      "why", Phrase.of("why the hole is given up", "por qué se abandona el barreno"),
      Arrays.stream(MovedOver.Why.values()).map(w -> new ChoiceField.Option(w.code(), w.label()))
          .toArray(ChoiceField.Option[]::new));
  public static final Kind KIND = Kind.of(
      "moved-over", Phrase.of("Hole given up, rig moved over", "Barreno abandonado, equipo recolocado"),
      DEPTH, WHY, DISTANCE, DIRECTION);

  private MovingOver() {}

  /** The next hole; as it was where the entry does not say enough. */
  public static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    Optional<MovedOver.Direction> direction = DIRECTION.text(body)
        .flatMap(code -> Arrays.stream(MovedOver.Direction.values()).filter(d -> d.code().equals(code)).findFirst());
    Optional<MovedOver.Why> why = WHY.text(body)
        .flatMap(code -> Arrays.stream(MovedOver.Why.values()).filter(w -> w.code().equals(code)).findFirst());
    Optional<Length> depth = DEPTH.length(body);
    Optional<Length> distance = DISTANCE.length(body);
    if (direction.isEmpty() || why.isEmpty() || depth.isEmpty() || distance.isEmpty()) return well;
    Optional<MovedOver> moved = Optional.of(new MovedOver(
        depth.get(), distance.get(), direction.get(), why.get(), entry.happenedAt(), entry.id()));
    return deepened(well, depth.get(), entry).with(MovedOver.AWAY, moved).movedOver().with(MovedOver.HERE, moved);
  }

  /** A hole is often lost before anybody wrote down how far it was drilled: it is then as wide as the bit. */
  private static Well deepened(Well well, Length depth, Entry entry) {
    Hole hole = well.get(Hole.PART);
    Optional<Length> bit =
        well.get(Drilling.PART).rig().map(Drilling.Rig::bit).or(() -> well.get(Plan.PART).length(Plan.HOLE));
    if (bit.isEmpty() || !depth.isMoreThan(hole.depth())) return well;
    Reach reach = new Reach(hole.depth(), depth, bit.get());
    Drilling.Stretch stretch = new Drilling.Stretch(reach, DrillingFold.depthSoFar(well), entry.id());
    return well.with(Hole.PART, hole.drilled(hole.depth(), depth, bit.get(), entry.happenedAt()))
        .with(Drilling.PART, well.get(Drilling.PART).with(stretch));
  }
}
