package steening.stage.drilling.trouble;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.SeriesField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.stage.drilling.DrillingEntries;

/** What is written down when drilling goes wrong. Depths are below ground; money is in the firm's own. */
public final class TroubleEntries {
  static final QuantityField LOST_FROM = DrillingEntries.HOLE_FROM;
  static final QuantityField LOST_TO = DrillingEntries.HOLE_TO;
  static final QuantityField LOSS_RATE = QuantityField.of(
          "rate", Scale.FLOW, Phrase.of("loss by the minute", "pérdida por minuto"), "46 gpm", "2.9 L/s")
      .between("0.1 gpm", "3000 gpm").usually("1 gpm", "300 gpm").optional();
  static final QuantityField LOSS_SHARE = QuantityField.of(
          "share", Scale.SHARE, Phrase.of("share of the returns lost", "parte del retorno perdida"), "50 %", "50 %")
      .between("1 %", "100 %").usually("5 %", "100 %").optional();
  static final ChoiceField TRIED = ChoiceField.of(
          "tried", Phrase.of("tried so far, the last of", "lo último que se probó"),
          ChoiceField.option("nothing", "nothing yet", "nada todavía"),
          ChoiceField.option("slower", "slower pump, lighter mud", "bomba más lenta, lodo más ligero"),
          ChoiceField.option("thicker", "thicker mud", "lodo más espeso"),
          ChoiceField.option("plugging", "material that plugs", "material obturante"),
          ChoiceField.option("waiting", "left to stand", "dejarlo reposar"),
          ChoiceField.option("cemented", "cemented or cased off", "cementado o ademado"))
      .optional();
  static final ChoiceField CAME_BACK = yesOrNo("came-back", "the mud came back", "el lodo volvió").optional();
  static final Kind CIRCULATION_LOST = Kind.of(
      "circulation-lost", Phrase.of("Circulation lost", "Circulación perdida"), LOST_FROM, LOST_TO, LOSS_RATE,
      LOSS_SHARE, TRIED, CAME_BACK);

  static final QuantityField TAGGED = DrillingEntries.HOLE_TO.named("tagged")
      .labelled("fill tagged at", "relleno tocado a");
  static final QuantityField SHOVELLED = QuantityField.of(
          "shovelled", Scale.VOLUME,
          Phrase.of("cuttings shovelled out, in all so far", "recortes sacados, en total hasta ahora"), "60 ft3",
          "1.7 m3")
      .between("0.1 ft3", "20000 ft3").usually("1 ft3", "1000 ft3").optional();
  static final Kind FILL =
      Kind.of("fill", Phrase.of("Fill in the hole", "Relleno en el barreno"), TAGGED, SHOVELLED);

  static final SeriesField LENGTHS = SeriesField.of(
      QuantityField.of(
              "lengths", Scale.DEPTH, Phrase.of("lengths left in the hole", "longitudes que quedaron"), "20 ft", "6 m")
          .between("0.1 ft", "6000 ft").usually("0.5 ft", "200 ft"),
      1, "20 20 20 12.2 ft", "6.1 6.1 6.1 3.7 m");
  static final QuantityField FELT =
      DrillingEntries.HOLE_TO.named("felt-at").labelled("top felt at", "tope tocado a").optional();
  static final CountField RODS_OUT =
      CountField.of("rods-out", Phrase.of("rods that came out", "tubos que salieron"), 0, 999).optional();
  static final Kind TOOLS_LOST = Kind.of(
      "tools-lost", Phrase.of("Tools lost in the hole", "Herramienta perdida en el barreno"), LENGTHS, FELT, RODS_OUT);

  static final QuantityField FISHED = QuantityField.of(
          "hours", Scale.HOURS, Phrase.of("hours of this try", "horas de este intento"), "1.5 h", "1.5 h")
      .between("0.1 h", "200 h").usually("0.25 h", "16 h");
  static final ChoiceField CAUGHT = yesOrNo("caught", "caught and out", "atrapado y fuera");
  static final Kind FISHING =
      Kind.of("fishing", Phrase.of("One try at fishing", "Un intento de pesca"), FISHED, CAUGHT);

  static final QuantityField HOUR_COST =
      money("hour-cost", "an hour of fishing costs", "una hora de pesca cuesta", "250");
  static final QuantityField CAVE_RISK = QuantityField.of(
          "cave-risk", Scale.SHARE,
          Phrase.of("chance that the hole caves, by the hour", "riesgo de derrumbe, por hora"), "2 %", "2 %")
      .between("0 %", "100 %").usually("0 %", "30 %").optional();
  static final QuantityField HOLE_VALUE = money("hole-value", "the hole so far is worth", "el barreno vale", "3000");
  static final QuantityField FISH_VALUE = money("fish-value", "the fish is worth", "lo perdido vale", "400");
  static final QuantityField REDRILL = money("redrill", "to drill again costs", "perforar de nuevo cuesta", "1500");
  static final QuantityField SEALING =
      money("sealing", "to seal the lost hole costs", "sellar lo perdido cuesta", "300");
  static final Kind FISHING_COSTS = Kind.of(
      "fishing-costs", Phrase.of("What fishing costs", "Lo que cuesta pescar"), HOUR_COST, CAVE_RISK, HOLE_VALUE,
      FISH_VALUE, REDRILL, SEALING);

  public static final List<Kind> ALL = List.of(CIRCULATION_LOST, FILL, TOOLS_LOST, FISHING, FISHING_COSTS);

  private TroubleEntries() {}

  private static ChoiceField yesOrNo(String name, String english, String spanish) {
    return ChoiceField.of(
        name, Phrase.of(english, spanish), ChoiceField.option("yes", "yes", "sí"), ChoiceField.option("no", "no",
        "no"));
  }

  private static QuantityField money(String name, String english, String spanish, String example) {
    return QuantityField.of(name, Scale.NUMBER, Phrase.of(english, spanish), example, example)
        .between("0", "10000000").usually("10", "200000");
  }
}
