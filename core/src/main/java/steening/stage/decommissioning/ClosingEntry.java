package steening.stage.decommissioning;

import java.util.Arrays;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.well.Closing;
import steening.well.Plan;
import steening.well.Plugs;
import steening.well.Well;

/** The decision to close a hole: which, why, and the state it is in. */
final class ClosingEntry {
  static final CountField HOLE = CountField.of(
          "hole", Phrase.of("which hole of this job, if there is more than one", "qué barreno, si hay más de uno"),
          1, 20)
      .usuallyUpTo(3).optional();
  static final ChoiceField WHY = ChoiceField.of(
      "why", Phrase.of("why it is closed", "por qué se cierra"),
      ChoiceField.option("given-up", "given up while drilling", "abandonado al perforar"),
      ChoiceField.option("dry", "dry or too little water", "seco o con poca agua"),
      ChoiceField.option("replaced", "replaced by another well", "reemplazado por otro pozo"),
      ChoiceField.option("unused", "no longer used", "sin uso"),
      ChoiceField.option("damaged", "damaged", "dañado"),
      ChoiceField.option("polluted", "polluted", "contaminado"),
      ChoiceField.option("other", "other", "otro"));
  static final ChoiceField CASING = ChoiceField.of(
      "casing", Phrase.of("the casing", "el ademe"),
      Arrays.stream(Closing.Casing.values()).map(c -> new ChoiceField.Option(c.code(), c.label()))
          .toArray(ChoiceField.Option[]::new));
  static final QuantityField CUT = depth("cut", "casing cut below ground by", "ademe cortado bajo el terreno", "3 ft",
      "0.92 m").usually("0 ft", "20 ft").optional();
  static final QuantityField INSIDE = Plan.CASING_OUTSIDE.named("inside")
      .labelled("inside diameter of the casing, where it stays", "diámetro interior del ademe, si queda").optional();
  static final QuantityField LEVEL = depth("level", "water at rest, below ground", "nivel estático bajo el terreno",
      "29.5 ft", "9 m").usually("0 ft", "600 ft").optional();
  static final QuantityField OBSTRUCTION = depth(
      "obstruction", "blocked below, by tools or caving", "obstruido abajo, por herramienta o derrumbe", "60 ft",
      "18.3 m").usually("0 ft", "600 ft").optional();
  static final QuantityField CHLORINE = QuantityField.of(
          "chlorine", Scale.CONCENTRATION,
          Phrase.of("chlorine in the water before it is plugged", "cloro en el agua antes de sellar"),
          "50 mg/L", "50 mg/L")
      .between("0 mg/L", "10000 mg/L").usually("0 mg/L", "500 mg/L").optional();

  static final Kind KIND = Kind.of(
      "decommissioning", Phrase.of("Hole to be closed", "Barreno por cerrar"),
      HOLE, WHY, CASING, CUT, INSIDE, LEVEL, OBSTRUCTION, CHLORINE);

  private ClosingEntry() {}

  private static QuantityField depth(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DEPTH, Phrase.of(english, spanish), us, metric).between("0 ft", "6000 ft");
  }

  static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    int number = HOLE.in(body).orElseGet(() -> Plugging.meant(well));
    if (well.hole(number).isEmpty()) return PlugEntries.noSuchHole(well, number, entry);
    Closing.Casing casing = Arrays.stream(Closing.Casing.values())
        .filter(c -> CASING.text(body).filter(c.code()::equals).isPresent()).findFirst().orElse(Closing.Casing.NONE);
    Closing closing = new Closing(
        WHY.in(body).map(ChoiceField.Option::label).orElse(WHY.label()),
        casing,
        CUT.length(body),
        INSIDE.length(body),
        LEVEL.length(body),
        OBSTRUCTION.length(body),
        CHLORINE.in(body),
        entry.happenedAt(),
        entry.id());
    return well.inHole(number, hole -> hole.with(Plugs.PART, hole.get(Plugs.PART).with(closing)));
  }
}
