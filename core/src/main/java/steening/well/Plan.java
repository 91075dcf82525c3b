package steening.well;

import java.util.Optional;
import steening.bore.Bore;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;

/** The design the crew builds to. Its fields are declared here because most stages compare themselves with it. */
public record Plan(Body body) {
  public static final Part<Plan> PART = new Part<>("plan", new Plan(Body.EMPTY));

  public static final QuantityField HOLE = amount("hole-diameter", Scale.DIAMETER, "hole diameter", "diámetro del barreno", "7 7/8 in", "200 mm")
      .between("1 in", "60 in").usually("4 in", "16 in");
  public static final QuantityField DEPTH = amount("hole-depth", Scale.DEPTH, "hole depth", "profundidad del barreno", "142 ft", "43 m")
      .between("1 ft", "6000 ft").usually("15 ft", "600 ft");
  public static final QuantityField CASING_OUTSIDE = amount("casing-outside", Scale.DIAMETER, "casing outside diameter", "diámetro exterior del ademe", "4.5 in", "114 mm")
      .between("1 in", "36 in").usually("2 in", "13 in");
  public static final QuantityField CASING_WALL = amount("casing-wall", Scale.DIAMETER, "least casing wall", "espesor mínimo del ademe", "0.214 in", "5.4 mm")
      .between("0.02 in", "3 in").usually("0.1 in", "0.7 in");
  public static final QuantityField STICK_UP = amount("stick-up", Scale.DEPTH, "stick-up", "altura sobre el terreno", "1.5 ft", "0.45 m")
      .between("0 ft", "20 ft").usually("0.5 ft", "5 ft");
  public static final QuantityField SCREEN_TOP = amount("screen-top", Scale.DEPTH, "top of screen", "tope de la rejilla", "125 ft", "38 m")
      .between("0 ft", "6000 ft").usually("10 ft", "600 ft");
  public static final QuantityField SCREEN_BOTTOM = amount("screen-bottom", Scale.DEPTH, "bottom of screen", "fondo de la rejilla", "135 ft", "41 m")
      .between("0 ft", "6000 ft").usually("10 ft", "600 ft");
  public static final QuantityField SUMP = amount("sump", Scale.DEPTH, "sump and cap", "tramo ciego inferior", "2 ft", "0.6 m")
      .between("0 ft", "100 ft").usually("0 ft", "25 ft");
  public static final QuantityField SLOT = amount("slot", Scale.SLOT, "slot size", "abertura de ranura", "20 slot", "0.5 mm")
      .between("0.001 in", "1 in").usually("0.004 in", "0.125 in");
  public static final QuantityField OPEN_AREA = amount("open-area", Scale.OPEN_AREA, "open area of the screen", "área abierta de la rejilla", "8.5 in2/ft", "180 cm2/m")
      .between("0.1 in2/ft", "400 in2/ft").usually("2 in2/ft", "100 in2/ft").optional();
  public static final QuantityField PACK_TOP = amount("pack-top", Scale.DEPTH, "top of filter pack", "tope del filtro de grava", "115 ft", "35 m")
      .between("0 ft", "6000 ft").usually("5 ft", "600 ft");
  public static final QuantityField CHIPS_TOP = amount("chips-top", Scale.DEPTH, "top of chip seal", "tope del sello de pellets", "110 ft", "33.5 m")
      .between("0 ft", "6000 ft").usually("5 ft", "600 ft").optional();
  public static final QuantityField GROUT_TOP = amount("grout-top", Scale.DEPTH, "top of grout", "tope de la lechada", "0 ft", "0 m")
      .between("0 ft", "6000 ft").usually("0 ft", "20 ft");
  public static final QuantityField RATE = amount("rate", Scale.FLOW, "rate wanted", "gasto deseado", "12 gpm", "0.8 L/s")
      .between("0.1 gpm", "5000 gpm").usually("0.5 gpm", "60 gpm");

  private static QuantityField amount(String name, Scale scale, String english, String spanish, String us, String metric) {
    return QuantityField.of(name, scale, Phrase.of(english, spanish), us, metric);
  }

  public boolean isMade() {
    return !body.values().isEmpty();
  }

  public Optional<Length> length(QuantityField field) {
    return field.length(body);
  }

  public Optional<Quantity> amount(QuantityField field) {
    return field.in(body);
  }

  public Optional<FlowRate> rate() {
    return RATE.in(body).map(q -> (FlowRate) q);
  }

  /** The planned hole from ground to its depth; none before the plan is made. */
  public Bore hole() {
    if (length(HOLE).isEmpty() || length(DEPTH).isEmpty()) return Bore.NONE;
    return Bore.straight(length(HOLE).get(), Length.ZERO, length(DEPTH).get());
  }

  /** Where the string is to end: screen bottom and sump. */
  public Optional<Length> stringBottom() {
    return length(SCREEN_BOTTOM).map(b -> b.plus(length(SUMP).orElse(Length.ZERO)));
  }

  /** Twice the wall less than the outside. */
  public Optional<Length> casingInside() {
    return length(CASING_OUTSIDE).map(od -> od.minus(length(CASING_WALL).orElse(Length.ZERO).times(2)));
  }

  /** The planned pipe from its top to its bottom; none before the plan is made. */
  public Bore pipe() {
    if (length(CASING_OUTSIDE).isEmpty() || stringBottom().isEmpty()) return Bore.NONE;
    Length top = Length.ZERO.minus(length(STICK_UP).orElse(Length.ZERO));
    return Bore.straight(length(CASING_OUTSIDE).get(), top, stringBottom().get());
  }
}
