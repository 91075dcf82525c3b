package steening.stage.drilling.trouble;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.hole.HoleVolume;

/**
 * How much of the hole has filled up, and whether more ground came out than the bit cut.
 *
 * <p>f = z − t; V = π/4 D² f; U = k H; H = π/4 D² z; e = S / U. z hole depth, t depth at which the fill is tagged,
 * D hole
 * diameter, S cuttings shovelled out, H volume of the hole, U what the hole should give, k swell of loosened ground.
 *
 * <p>Source: geometry; swell of 1.3 where none is given, common practice, no source. Range: t not below z. Accuracy:
 * the length is the tape's; the volume is a least, since a hole that caves is wider than its bit.
 */
public final class HoleFill {
  static final QuantityField DEPTH = HoleVolume.DEPTH;
  static final QuantityField SWELL = QuantityField.of(
          "swell", Scale.NUMBER, Phrase.of("swell of loosened ground", "abundamiento del terreno"), "1.3", "1.3")
      .between("1", "3").usually("1.05", "1.8").optional();

  static final Answer FILL = new Answer("fill", Phrase.of("fill", "relleno"), Scale.DEPTH);
  static final Answer CAVED =
      new Answer("caved", Phrase.of("caved in, at least", "derrumbado, por lo menos"), Scale.VOLUME);
  static final Answer DUE =
      new Answer("cuttings", Phrase.of("cuttings that the hole gives", "recortes que da el barreno"), Scale.VOLUME);
  static final Answer RATIO = new Answer(
      "ratio", Phrase.of("shovelled out, for one of these", "sacado por cada uno de ellos"), Scale.NUMBER);

  public static final Reckoning RECKONING = new Reckoning(
      "hole-fill",
      DrillingStage.NAME,
      Phrase.of("Fill from caving", "Relleno por derrumbe"),
      List.of(DEPTH, TroubleEntries.TAGGED, DrillingEntries.HOLE_DIAMETER, TroubleEntries.SHOVELLED, SWELL),
      List.of(FILL, CAVED, DUE, RATIO),
      Source.derived(
          "Geometry. Swell of 1.3 where none is given: common practice, no source.",
          "Geometría. Abundamiento de 1.3 si no se da otro: práctica común, sin fuente."),
      List.of(Phrase.of(
          "A hole of the bit's size: one that caves is wider, so that more has come in than this.",
          "Un barreno del tamaño de la barrena: si se derrumba es más ancho, y entró más que esto.")),
      HoleFill::reckon);

  private static final Quantity USUAL_SWELL = new Measure(Dimension.NUMBER, 1.3);

  private HoleFill() {}

  static Outcome of(Length depth, Length tagged, Length bit, Optional<Quantity> shovelled) {
    Inputs inputs = Inputs.none()
        .with(DEPTH, depth).with(TroubleEntries.TAGGED, tagged).with(DrillingEntries.HOLE_DIAMETER, bit);
    return RECKONING.of(shovelled.map(s -> inputs.with(TroubleEntries.SHOVELLED, s)).orElse(inputs));
  }

  private static Outcome reckon(Inputs inputs) {
    Length depth = inputs.length(DEPTH);
    if (inputs.length(TroubleEntries.TAGGED).isMoreThan(depth)) {
      throw new NotReckonable(
          "Fill cannot be tagged below the bottom of the hole.",
          "El relleno no puede estar bajo el fondo del barreno.");
    }
    Term across = inputs.given("D", DrillingEntries.HOLE_DIAMETER);
    Term bottom = inputs.given("z", DEPTH);
    Term fill = bottom.minus(inputs.given("t", TroubleEntries.TAGGED)).named("f", FILL.label(), FILL.scale());
    Term caved = Annulus.cylinder(across, fill, Scale.VOLUME).named("V", CAVED.label(), CAVED.scale());
    Outcome outcome = Outcome.empty().with(FILL.name(), fill).with(CAVED.name(), caved);
    if (inputs.find(TroubleEntries.SHOVELLED).isEmpty() || !depth.isMoreThan(Length.ZERO)) return outcome;
    Term due = inputs.given("k", SWELL, USUAL_SWELL)
        .times(Annulus.cylinder(across, bottom, Scale.VOLUME).named("H", HoleVolume.VOLUME.label(), Scale.VOLUME))
        .named("U", DUE.label(), DUE.scale());
    Term ratio = inputs.given("S", TroubleEntries.SHOVELLED).over(due).named("e", RATIO.label(), RATIO.scale());
    return outcome.with(DUE.name(), due).with(RATIO.name(), ratio);
  }
}
