package steening.stage.drilling;

import java.util.List;
import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.ground.SieveWeights;
import steening.ground.Sieves;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.stage.drilling.fluid.FlowEntry;
import steening.stage.drilling.hole.MovingOver;
import steening.stage.drilling.log.LogEntries;

/** What is written down while drilling. Depths are below ground. */
public final class DrillingEntries {
  public static final QuantityField BIT =
      amount("bit", Scale.DIAMETER, "bit diameter", "diámetro de la barrena", "7 7/8 in", "200 mm")
          .between("1 in", "60 in").usually("4 in", "16 in");
  public static final QuantityField ROD =
      amount("rod", Scale.DIAMETER, "rod outside diameter", "diámetro exterior de la tubería", "2.875 in", "73 mm")
          .between("0.5 in", "12 in").usually("1.5 in", "5 in");
  public static final QuantityField PUMP_RATE =
      amount("pump-rate", Scale.FLOW, "mud pump rate", "gasto de la bomba de lodos", "110 gpm", "7 L/s")
          .between("1 gpm", "3000 gpm").usually("20 gpm", "500 gpm");
  /** A fall of the pit says how much mud is lost only where its area is known. */
  public static final QuantityField PIT_AREA =
      amount("pit-area", Scale.AREA, "mud pit, length times width", "fosa de lodos, largo por ancho", "40 ft2", "4 m2")
          .between("1 ft2", "10000 ft2").usually("8 ft2", "1000 ft2").optional();
  public static final QuantityField PIT_DEPTH =
      amount("pit-depth", Scale.DEPTH, "mud pit, depth that holds mud", "fosa de lodos, hondo útil", "4 ft", "1.2 m")
          .between("0.2 ft", "40 ft").usually("1 ft", "12 ft").optional();
  public static final QuantityField BIT_LENGTH =
      amount("bit-length", Scale.DEPTH, "bit, measured", "barrena, medida", "0.8 ft", "0.24 m")
          .between("0.1 ft", "40 ft").usually("0.3 ft", "20 ft").optional();
  public static final QuantityField SUBS =
      amount("subs", Scale.DEPTH, "subs, measured all together", "sustitutos, medidos en total", "2.5 ft", "0.76 m")
          .between("0 ft", "60 ft").usually("0 ft", "20 ft").optional();
  public static final Kind DRILLING = Kind.of(
      "drilling", Phrase.of("Rig set up", "Equipo instalado"), BIT, ROD, PUMP_RATE, PIT_AREA, PIT_DEPTH, BIT_LENGTH,
      SUBS);

  public static final CountField ROD_NUMBER = CountField.of("number", Phrase.of("rod number", "número de tubo"), 1, 999)
      .usuallyUpTo(60);
  public static final QuantityField ROD_LENGTH =
      amount("length", Scale.DEPTH, "rod length", "longitud del tubo", "20 ft", "6.1 m")
          .between("0.5 ft", "60 ft").usually("4 ft", "32 ft");
  public static final QuantityField ROD_DEPTH =
      depth("depth", "hole depth after this rod", "profundidad después de este tubo");
  public static final Kind ROD_DOWN =
      Kind.of("rod", Phrase.of("Rod drilled down", "Tubo perforado"), ROD_NUMBER, ROD_LENGTH, ROD_DEPTH)
          .carrying(ROD_LENGTH);

  public static final QuantityField HOLE_FROM = depth("from", "from", "desde");
  public static final QuantityField HOLE_TO = depth("to", "to", "hasta");
  public static final QuantityField HOLE_DIAMETER =
      amount("diameter", Scale.DIAMETER, "hole diameter", "diámetro del barreno", "7 7/8 in", "200 mm")
          .between("1 in", "60 in").usually("4 in", "16 in");
  public static final Kind HOLE =
      Kind.of("hole", Phrase.of("Hole drilled", "Barreno perforado"), HOLE_FROM, HOLE_TO, HOLE_DIAMETER);

  public static final QuantityField MUD_WEIGHT =
      amount("weight", Scale.DENSITY, "mud weight", "densidad del lodo", "8.8 lb/gal", "1055 kg/m3")
          .between("7 lb/gal", "22 lb/gal").usually("8.3 lb/gal", "12 lb/gal");
  public static final QuantityField MUD_FUNNEL =
      amount("funnel", Scale.FUNNEL, "Marsh funnel", "embudo Marsh", "38", "38")
          .between("20 s/qt", "500 s/qt").usually("26 s/qt", "100 s/qt").optional();
  public static final QuantityField MUD_SAND =
      amount("sand", Scale.SHARE, "sand content", "contenido de arena", "1 %", "1 %")
          .between("0 %", "60 %").usually("0 %", "15 %").optional();
  public static final QuantityField PIT_DROP = amount(
          "pit-drop", Scale.DIAMETER, "fall of the mud pit since the last reading",
          "descenso de la fosa desde la última lectura", "2 in", "50 mm")
      .between("-120 in", "120 in").usually("-12 in", "24 in").optional();
  public static final QuantityField PIT_RISE = amount(
          "pit-rise", Scale.DIAMETER, "rise of the mud pit since the last reading",
          "ascenso de la fosa desde la última lectura", "3 in", "75 mm")
      .between("0 in", "120 in").usually("0 in", "12 in").optional();
  public static final ChoiceField FLOWS =
      yesOrNo("flow-with-pump-off", "flow with the pump off", "fluye con la bomba parada");
  public static final QuantityField HEAD = amount(
          "head", Scale.DEPTH, "head of the aquifer above ground", "carga del acuífero sobre el terreno", "12 ft",
          "3.5 m")
      .between("0 ft", "1000 ft").usually("0 ft", "60 ft");
  public static final QuantityField MUD_HEAD =
      HEAD.labelled("head of the aquifer above ground, if known", "carga sobre el terreno, si se conoce").optional();
  public static final Kind MUD = Kind.of(
          "mud", Phrase.of("Mud checked", "Lodo revisado"), MUD_WEIGHT, MUD_FUNNEL, MUD_SAND, PIT_DROP, PIT_RISE, FLOWS,
          MUD_HEAD)
      .seldom(PIT_RISE, FLOWS, MUD_HEAD);

  public static final QuantityField BIT_DEPTH =
      depth("bit-depth", "bit depth when caught", "profundidad de la barrena al tomarlos");
  public static final QuantityField PENETRATION = amount(
          "penetration", Scale.PENETRATION, "penetration rate", "velocidad de avance", "30 ft/h", "9 m/h")
      .between("0 ft/h", "2000 ft/h").usually("1 ft/h", "300 ft/h").optional();
  public static final QuantityField CUTTINGS_SIZE = QuantityField.of(
          "size", Scale.GRAIN, Phrase.of("size of the coarsest", "tamaño de los más gruesos"), "2 mm", "2 mm")
      .between("0.05 mm", "150 mm").usually("0.1 mm", "40 mm").optional();
  public static final TextField CUTTINGS_DESCRIPTION =
      TextField.of("description", Phrase.of("what they are", "qué son"), "gray sand, fine").optional();
  public static final Kind CUTTINGS = Kind.of(
          "cuttings", Phrase.of("Cuttings caught", "Recortes tomados"), BIT_DEPTH, PENETRATION, CUTTINGS_SIZE,
          CUTTINGS_DESCRIPTION)
      .carrying(PENETRATION);

  public static final Kind SIEVE = Kind.of(
          "sieve", Phrase.of("Sample sieved", "Muestra tamizada"), HOLE_FROM, HOLE_TO, Sieves.OPENINGS, Sieves.FINER,
          SieveWeights.RETAINED, SieveWeights.PAN, SieveWeights.SAMPLE)
      .carrying(Sieves.OPENINGS)
      .seldom(SieveWeights.SAMPLE);

  public static final List<Kind> ALL =
      List.of(DRILLING, ROD_DOWN, HOLE, MUD, LogEntries.LOG, CUTTINGS, SIEVE, MovingOver.KIND, FlowEntry.KIND);

  private DrillingEntries() {}

  private static ChoiceField yesOrNo(String name, String english, String spanish) {
    return ChoiceField.of(
            name, Phrase.of(english, spanish), ChoiceField.option("yes", "yes", "sí"),
            ChoiceField.option("no", "no", "no"))
        .optional();
  }

  private static QuantityField depth(String name, String english, String spanish) {
    return amount(name, Scale.DEPTH, english, spanish, "142 ft", "43 m").between("0 ft", "6000 ft")
        .usually("0 ft", "600 ft");
  }

  private static QuantityField amount(
      String name, Scale scale, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, scale, Phrase.of(english, spanish), us, metric);
  }
}
