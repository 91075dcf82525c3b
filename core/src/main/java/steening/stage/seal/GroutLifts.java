package steening.stage.seal;

import java.util.ArrayList;
import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.pipe.Collapse;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.well.Plan;

/**
 * In how many lifts grout is placed so that its pressure never comes nearer to the collapse of the casing than the
 * safety wanted. What has set presses no more, so each lift counts for itself.
 *
 * <p>n = H / h rounded up; l = H / n; Q = (n − 1) q. H the column, h highest lift as in {@link Collapse}, q wait until
 * a lift has set. Waits, seen: 24 h (Minn.; Mich., 48 h with bentonite), 18 or 12 h by the type of cement (Md.), 72 or
 * 24 h (a Virginia county), 12 h rapid cement (Minn.), which does not go with plastic.
 */
final class GroutLifts {
  static final QuantityField OUTSIDE = Plan.CASING_OUTSIDE.named("outside");
  static final QuantityField WALL = Plan.CASING_WALL.named("wall");
  static final QuantityField TEMPERATURE = QuantityField.of(
          "temperature", Scale.TEMPERATURE,
          Phrase.of("temperature of the casing wall", "temperatura de la pared del ademe"), "99 °F", "37 °C")
      .between("20 °F", "300 °F").usually("32 °F", "140 °F").optional();
  static final QuantityField GROUT = density("grout", "weight of the grout", "densidad de la lechada", "15.6 lb/gal",
          "1870 kg/m3")
      .usually("8 lb/gal", "20 lb/gal");
  static final QuantityField WITHIN = density(
          "within", "weight of what is inside (0 when empty)", "densidad de lo que está adentro (0 si está vacío)",
          "8.34 lb/gal", "1000 kg/m3")
      .optional();
  static final QuantityField COLUMN = QuantityField.of(
          "column", Scale.DEPTH, Phrase.of("height of the grout", "altura de la lechada"), "110 ft", "33 m")
      .between("0.1 ft", "6000 ft").usually("1 ft", "600 ft");
  static final QuantityField SAFETY = Plan.COLLAPSE_SAFETY.named("safety");
  static final QuantityField WAIT = QuantityField.of(
          "wait", Scale.HOURS, Phrase.of("wait until a lift has set", "espera hasta que fragüe una etapa"), "24 h",
          "24 h")
      .between("1 h", "240 h").usually("12 h", "72 h").optional();

  static final Answer LIFTS = new Answer("lifts", Phrase.of("lifts", "etapas"), Scale.NUMBER);
  static final Answer EACH = new Answer("each", Phrase.of("height of each", "altura de cada una"), Scale.DEPTH);
  static final Answer WAITING =
      new Answer("waiting", Phrase.of("waiting between them, in all", "espera entre ellas, en total"), Scale.HOURS);

  static final Reckoning RECKONING = new Reckoning(
      "grout-lifts",
      SealStage.NAME,
      Phrase.of("Grout in lifts", "Lechada por etapas"),
      List.of(OUTSIDE, WALL, TEMPERATURE, GROUT, WITHIN, COLUMN, SAFETY, WAIT),
      answers(),
      Collapse.SOURCE,
      List.of(
          Phrase.of(
              "Round PVC pipe, loaded for a short time; not slotted, not driven, up to 140 °F.",
              "Tubo de PVC redondo, carga breve; sin ranuras, sin hincar, hasta 60 °C."),
          Phrase.of(
              "Cement 1.5 in thick warms the casing by 17 to 26 °F; thick cement in a washout by up to 180 °F "
                  + "(Johnson, Kurt and Dunham 1980, abstract, seen).",
              "Cemento de 38 mm calienta el ademe 9 a 14 °C; grueso, en una socavación, hasta 100 °C (Johnson, Kurt y "
                  + "Dunham 1980, resumen, leído)."),
          Phrase.of(
              "Waits differ by code: 24 h (Minn.; Mich., 48 h with bentonite), 12 to 18 h (Md.), 72 h (a Virginia "
                  + "county), seen. 24 h where none is given.",
              "La espera cambia según la norma: 24 h (Minn.; Mich., 48 h con bentonita), 12 a 18 h (Md.), 72 h (un "
                  + "condado de Virginia), leído. 24 h si no se da otra.")),
      GroutLifts::reckon);

  private static final Quantity USUAL_SAFETY = new Measure(Dimension.NUMBER, Collapse.USUAL_SAFETY);
  private static final Quantity A_DAY = Measure.of(24, Unit.HOUR);

  private GroutLifts() {}

  private static Outcome reckon(Inputs inputs) {
    Length column = inputs.length(COLUMN);
    Outcome margin = Collapse.margin(
        inputs.length(OUTSIDE), inputs.length(WALL), inputs.find(TEMPERATURE).orElse(Collapse.COOL),
        (Density) inputs.amount(GROUT), inputs.find(WITHIN).map(q -> (Density) q).orElse(Buoyancy.WATER),
        column, inputs.find(SAFETY).orElse(USUAL_SAFETY).coherent());
    return of(margin, column, inputs.find(WAIT).orElse(A_DAY));
  }

  /** With a day between two lifts. */
  static Outcome of(Outcome margin, Length column) {
    return of(margin, column, A_DAY);
  }

  private static Outcome of(Outcome margin, Length column, Quantity wait) {
    if (!margin.answers().containsKey(Collapse.HIGHEST.name())) return margin;
    Term height = Term.given("H", Phrase.of("height of the column", "altura de la columna"), Scale.DEPTH, column);
    Term lifts = height.over(margin.term(Collapse.HIGHEST.name())).roundedUp()
        .named("n", LIFTS.label(), LIFTS.scale());
    Term each = height.over(lifts).named("l", EACH.label(), EACH.scale());
    Term waiting = lifts.minus(Term.number(1)).times(Term.given("q", WAIT.label(), Scale.HOURS, wait))
        .named("Q", WAITING.label(), WAITING.scale());
    return margin.with(LIFTS.name(), lifts).with(EACH.name(), each).with(WAITING.name(), waiting);
  }

  private static List<Answer> answers() {
    List<Answer> answers = new ArrayList<>(Collapse.ANSWERS);
    answers.addAll(List.of(LIFTS, EACH, WAITING));
    return answers;
  }

  private static QuantityField density(String name, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, Scale.DENSITY, Phrase.of(english, spanish), us, metric)
        .between("0 lb/gal", "25 lb/gal");
  }
}
