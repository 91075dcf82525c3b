package steening.well;

import java.util.List;
import java.util.Optional;
import steening.bore.Bore;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.language.Phrase;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Mass;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.quantity.Volume;

/** The design the crew builds to. Its fields are declared here because most stages compare themselves with it. */
public record Plan(Body body) {
  public static final Part<Plan> PART = Part.ofJob("plan", new Plan(Body.EMPTY));

  public static final QuantityField HOLE = amount(
          "hole-diameter", Scale.DIAMETER, "hole diameter", "diámetro del barreno", "7 7/8 in", "200 mm")
      .between("1 in", "60 in").usually("4 in", "16 in");
  public static final QuantityField DEPTH = amount(
          "hole-depth", Scale.DEPTH, "hole depth", "profundidad del barreno", "142 ft", "43 m")
      .between("1 ft", "6000 ft").usually("15 ft", "600 ft");
  public static final QuantityField CASING_OUTSIDE = amount(
          "casing-outside", Scale.DIAMETER,
          "casing outside diameter", "diámetro exterior del ademe", "4.5 in", "114 mm")
      .between("1 in", "36 in").usually("2 in", "13 in");
  public static final QuantityField CASING_WALL = amount(
          "casing-wall", Scale.DIAMETER, "least casing wall", "espesor mínimo del ademe", "0.214 in", "5.4 mm")
      .between("0.02 in", "3 in").usually("0.1 in", "0.7 in");
  public static final QuantityField STICK_UP = amount(
          "stick-up", Scale.DEPTH, "stick-up", "altura sobre el terreno", "1.5 ft", "0.45 m")
      .between("0 ft", "20 ft").usually("0.5 ft", "5 ft");
  public static final QuantityField SCREEN_TOP = amount(
          "screen-top", Scale.DEPTH, "top of screen", "tope de la rejilla", "125 ft", "38 m")
      .between("0 ft", "6000 ft").usually("10 ft", "600 ft");
  public static final QuantityField SCREEN_BOTTOM = amount(
          "screen-bottom", Scale.DEPTH, "bottom of screen", "fondo de la rejilla", "135 ft", "41 m")
      .between("0 ft", "6000 ft").usually("10 ft", "600 ft");
  public static final QuantityField SUMP = amount(
          "sump", Scale.DEPTH, "sump and cap", "tramo ciego inferior", "2 ft", "0.6 m")
      .between("0 ft", "100 ft").usually("0 ft", "25 ft");
  public static final QuantityField SLOT = amount(
          "slot", Scale.SLOT, "slot size", "abertura de ranura", "20 slot", "0.5 mm")
      .between("0.001 in", "1 in").usually("0.004 in", "0.125 in");
  public static final QuantityField OPEN_AREA = amount(
          "open-area", Scale.OPEN_AREA,
          "open area of the screen", "área abierta de la rejilla", "8.5 in2/ft", "180 cm2/m")
      .between("0.1 in2/ft", "400 in2/ft").usually("2 in2/ft", "100 in2/ft").optional();
  public static final QuantityField PACK_TOP = amount(
          "pack-top", Scale.DEPTH, "top of filter pack", "tope del filtro de grava", "115 ft", "35 m")
      .between("0 ft", "6000 ft").usually("5 ft", "600 ft");
  public static final QuantityField CHIPS_TOP = amount(
          "chips-top", Scale.DEPTH, "top of chip seal", "tope del sello de pellets", "110 ft", "33.5 m")
      .between("0 ft", "6000 ft").usually("5 ft", "600 ft").optional();
  public static final QuantityField GROUT_TOP = amount(
          "grout-top", Scale.DEPTH, "top of grout", "tope de la lechada", "0 ft", "0 m")
      .between("0 ft", "6000 ft").usually("0 ft", "20 ft");
  public static final QuantityField RATE = amount(
          "rate", Scale.FLOW, "rate wanted", "gasto deseado", "12 gpm", "0.8 L/s")
      .between("0.1 gpm", "5000 gpm").usually("0.5 gpm", "60 gpm");

  public static final QuantityField BAG_VOLUME = amount(
          "bag-volume", Scale.VOLUME,
          "volume of a bag of pack", "volumen de un saco de filtro", "0.50 ft3", "0.0142 m3")
      .between("0.01 ft3", "100 ft3").usually("0.3 ft3", "1.2 ft3").optional();
  public static final QuantityField CHIPS_BAG_VOLUME = amount(
          "chips-bag-volume", Scale.VOLUME,
          "volume of a bag of chips", "volumen de un saco de pellets", "0.69 ft3", "0.0195 m3")
      .between("0.01 ft3", "100 ft3").usually("0.5 ft3", "1.2 ft3").optional();
  public static final QuantityField GROUT_SOLIDS = amount(
          "grout-solids", Scale.WEIGHT, "dry grout in a bag", "lechada seca por saco", "50 lb", "22.7 kg")
      .between("1 lb", "4000 lb").usually("40 lb", "100 lb").optional();
  public static final QuantityField GROUT_WATER = amount(
          "grout-water", Scale.LIQUID, "water for a bag of grout", "agua por saco de lechada", "24 gal", "91 L")
      .between("0.5 gal", "1000 gal").usually("4 gal", "40 gal").optional();
  public static final QuantityField OVERAGE = amount(
          "overage", Scale.SHARE, "overage to load", "excedente a cargar", "25 %", "25 %")
      .between("0 %", "300 %").usually("5 %", "60 %").optional();
  public static final QuantityField PACK_ABOVE_LEAST = amount(
          "pack-above-least", Scale.DEPTH,
          "least pack above the screen", "filtro mínimo sobre la rejilla", "3 ft", "0.9 m")
      .between("0 ft", "500 ft").usually("1 ft", "20 ft").optional();
  public static final QuantityField PACK_ABOVE_MOST = amount(
          "pack-above-most", Scale.DEPTH,
          "most pack above the screen", "filtro máximo sobre la rejilla", "10 ft", "3 m")
      .between("0 ft", "500 ft").usually("2 ft", "40 ft").optional();
  public static final QuantityField COLLAPSE_SAFETY = amount(
          "collapse-safety", Scale.NUMBER, "safety against collapse", "seguridad contra el colapso", "2", "2")
      .between("1", "10").usually("1.5", "4").optional();
  public static final QuantityField PACK_TIMES_LEAST = amount(
          "pack-times-least", Scale.NUMBER,
          "D30 of the pack, least times the sand's", "D30 del filtro, veces mínimas el de la arena", "4", "4")
      .between("1", "20").usually("3", "9").optional();
  public static final QuantityField PACK_TIMES_MOST = amount(
          "pack-times-most", Scale.NUMBER,
          "D30 of the pack, most times the sand's", "D30 del filtro, veces máximas el de la arena", "6", "6")
      .between("1", "20").usually("4", "9").optional();
  public static final QuantityField SLOT_RETAINS = amount(
          "slot-retains", Scale.SHARE,
          "share of the pack the slot keeps back", "parte del filtro que retiene la ranura", "90 %", "90 %")
      .between("5 %", "100 %").usually("30 %", "100 %").optional();
  public static final QuantityField ENTRANCE_LIMIT = amount(
          "entrance-limit", Scale.ENTRANCE_VELOCITY,
          "entrance velocity not to be exceeded", "velocidad de entrada que no se debe rebasar",
          "0.1 ft/s", "0.03 m/s")
      .between("0.001 ft/s", "5 ft/s").usually("0.01 ft/s", "1.5 ft/s").optional();

  public static final QuantityField AUTHORISED = amount(
          "authorised-depth", Scale.DEPTH,
          "deepest the customer agreed to", "lo más hondo que aceptó el cliente", "140 ft", "43 m")
      .between("1 ft", "6000 ft").usually("15 ft", "1000 ft").optional();
  public static final QuantityField FOOT_PRICE = amount(
          "drilling-price", Scale.PRICE, "price of drilling", "precio de perforar", "$28/ft", "$92/m")
      .between("$0/ft", "$100000/ft").usually("$3/ft", "$500/ft").optional();
  public static final QuantityField FINISHING = amount(
          "finishing-price", Scale.MONEY,
          "price of finishing the well once drilled", "precio de terminar el pozo ya perforado", "$4200", "$4200")
      .between("$0", "$100000000").usually("$100", "$200000").optional();
  public static final QuantityField WORTH = amount(
          "well-worth", Scale.MONEY,
          "what a well is worth to the customer", "lo que vale un pozo para el cliente", "$9000", "$9000")
      .between("$0", "$100000000").usually("$500", "$500000").optional();

  /** In the order of the form: what is built, then what it takes. */
  public static final List<QuantityField> FIELDS = List.of(
      HOLE, DEPTH, CASING_OUTSIDE, CASING_WALL, STICK_UP, SCREEN_TOP, SCREEN_BOTTOM, SUMP, SLOT, OPEN_AREA,
      PACK_TOP, CHIPS_TOP, GROUT_TOP, RATE, BAG_VOLUME, CHIPS_BAG_VOLUME, GROUT_SOLIDS, GROUT_WATER, OVERAGE,
      PACK_ABOVE_LEAST, PACK_ABOVE_MOST, COLLAPSE_SAFETY, PACK_TIMES_LEAST, PACK_TIMES_MOST, SLOT_RETAINS, ENTRANCE_LIMIT, AUTHORISED,
      FOOT_PRICE, FINISHING, WORTH);

  private static QuantityField amount(
      String name, Scale scale, String english, String spanish, String us, String metric) {
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
    if (!stringBottom().get().isMoreThan(top)) return Bore.NONE;
    return Bore.straight(length(CASING_OUTSIDE).get(), top, stringBottom().get());
  }

  /** Half a cubic foot where nothing is planned: 50 lb of pack sand (common practice, no source). */
  public Volume bagVolume() {
    return BAG_VOLUME.in(body).map(q -> (Volume) q).orElse(Volume.of(0.50, Unit.CUBIC_FOOT));
  }

  /** 0.69 cubic feet where nothing is planned: 50 lb of chips (from memory). */
  public Volume chipsBagVolume() {
    return CHIPS_BAG_VOLUME.in(body).map(q -> (Volume) q).orElse(Volume.of(0.69, Unit.CUBIC_FOOT));
  }

  /** 50 lb where nothing is planned. */
  public Mass groutSolids() {
    return GROUT_SOLIDS.in(body).map(q -> (Mass) q).orElse(Mass.of(50, Unit.POUND));
  }

  /** 24 gal to the bag where nothing is planned: high-solids bentonite at 20 %. */
  public Volume groutWater() {
    return GROUT_WATER.in(body).map(q -> (Volume) q).orElse(Volume.of(24, Unit.GALLON));
  }

  /** How much more is loaded than reckoned, as a share; a quarter if not planned (common practice, no source). */
  public double overage() {
    return OVERAGE.in(body).map(Quantity::coherent).orElse(0.25);
  }

  /** Three feet where nothing is planned (common practice, no source). */
  public Length packAboveLeast() {
    return length(PACK_ABOVE_LEAST).orElse(Length.feet(3));
  }

  /** Where nothing is planned: as high as planned, and at least five feet. */
  public Length packAboveMost() {
    return length(PACK_ABOVE_MOST).orElse(plannedPackAbove().orElse(Length.ZERO).max(Length.feet(5)));
  }

  /** From the top of the screen to the top of the pack. */
  public Optional<Length> plannedPackAbove() {
    return length(SCREEN_TOP).flatMap(screen -> length(PACK_TOP).map(screen::minus));
  }

  /** By how much the pipe is to be stronger than the load; two where nothing is planned. */
  public double collapseSafety() {
    return COLLAPSE_SAFETY.in(body).map(Quantity::coherent).orElse(2.0);
  }
}
