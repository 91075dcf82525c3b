package steening.stage.casing;

import java.util.List;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.stage.casing.choice.PackChosen;
import steening.well.Plan;

/** What is written down while the string is measured and lowered, the lowest piece first. */
final class CasingEntries {
  static final QuantityField SUMP_LENGTH =
      amount("length", Scale.DEPTH, "length of sump and cap", "longitud del tramo ciego inferior", "2 ft", "0.6 m")
          .between("0.1 ft", "100 ft").usually("0.2 ft", "25 ft");
  static final Kind SUMP = Kind.of("sump", Phrase.of("Sump and cap", "Tramo ciego inferior y tapón"), SUMP_LENGTH);

  static final QuantityField SCREEN_LENGTH =
      amount("length", Scale.DEPTH, "screen length", "longitud de la rejilla", "10 ft", "3 m")
          .between("0.2 ft", "400 ft").usually("2 ft", "60 ft");
  static final QuantityField SCREEN_SLOT = Plan.SLOT;
  static final QuantityField SCREEN_OPEN_AREA = Plan.OPEN_AREA;
  static final Kind SCREEN =
      Kind.of("screen", Phrase.of("Screen", "Rejilla"), SCREEN_LENGTH, SCREEN_SLOT, SCREEN_OPEN_AREA);

  static final CountField JOINT_NUMBER = CountField.of("number", Phrase.of("joint number", "número de tubo"), 1, 999)
      .usuallyUpTo(60);
  static final QuantityField JOINT_OVERALL =
      amount("overall", Scale.DEPTH, "overall length", "longitud total", "19.98 ft", "6.09 m")
          .between("1.6 ft", "45 ft").usually("4 ft", "22 ft");
  /** Less than any joint, so that no joint adds less than nothing. */
  static final QuantityField JOINT_BELL =
      amount(
              "bell", Scale.DEPTH, "bell depth that the next spigot fills",
              "profundidad de campana que llena la espiga", "0.33 ft", "0.1 m")
          .between("0 ft", "1.5 ft").usually("0 ft", "0.8 ft").optional();
  static final Kind JOINT =
      Kind.of("joint", Phrase.of("Joint of casing", "Tubo de ademe"), JOINT_NUMBER, JOINT_OVERALL, JOINT_BELL)
          .carrying(JOINT_BELL);

  static final QuantityField CUT_PIECE_LENGTH =
      amount("length", Scale.DEPTH, "length of the cut piece", "longitud del tramo cortado", "6.50 ft", "2 m")
          .between("0.1 ft", "45 ft").usually("0.3 ft", "22 ft");
  static final QuantityField CUT_FROM = JOINT_OVERALL.named("cut-from")
      .labelled("joint it was cut from, overall", "tubo del que se cortó, longitud total").optional();
  static final Kind CUT_PIECE = Kind.of(
      "cut-piece", Phrase.of("Cut piece", "Tramo cortado"), CUT_PIECE_LENGTH, CUT_FROM);

  static final QuantityField CENTRALISER_DEPTH =
      amount("depth", Scale.DEPTH, "depth of the centraliser", "profundidad del centralizador", "122 ft", "37 m")
          .between("0 ft", "6000 ft").usually("2 ft", "1000 ft");
  static final Kind CENTRALISER =
      Kind.of("centraliser", Phrase.of("Centraliser", "Centralizador"), CENTRALISER_DEPTH);

  /** Said once for a string whose joints are cemented; screwed joints need no time. */
  static final Kind CEMENTED = Kind.of(
      "cemented", Phrase.of("Joints cemented", "Uniones cementadas con solvente"), CementCure.TEMPERATURE,
      CementCure.HUMIDITY);

  static final QuantityField SET_STICK_UP = Plan.STICK_UP;
  static final CountField LOADED =
      CountField.of("loaded", Phrase.of("joints loaded on the truck", "tubos cargados en el camión"), 0, 999)
          .usuallyUpTo(60).optional();
  static final CountField LEFT = CountField.of("left", Phrase.of("joints left", "tubos que quedan"), 0, 999)
      .usuallyUpTo(60).optional();
  static final QuantityField OUTSIDE = Plan.CASING_OUTSIDE.named("outside").optional();
  static final QuantityField WALL = Plan.CASING_WALL.named("wall").optional();
  static final Kind STRING_SET =
      Kind.of("string-set", Phrase.of("String set", "Columna colocada"), SET_STICK_UP, LOADED, LEFT, OUTSIDE, WALL);

  static final QuantityField CUT_STICK_UP =
      Plan.STICK_UP.labelled("stick-up after the cut", "altura sobre el terreno después del corte");
  static final Kind CASING_CUT = Kind.of("casing-cut", Phrase.of("Casing cut", "Ademe cortado"), CUT_STICK_UP);

  static final List<Kind> ALL =
      List.of(SUMP, SCREEN, JOINT, CUT_PIECE, CENTRALISER, CEMENTED, Stopped.KIND, STRING_SET, CASING_CUT,
          PackChosen.KIND);

  private CasingEntries() {}

  private static QuantityField amount(
      String name, Scale scale, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, scale, Phrase.of(english, spanish), us, metric);
  }
}
