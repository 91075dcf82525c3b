package steening.stage.drilling.fluid;

import java.util.List;
import steening.bore.Bore;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Dimension;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingStage;
import steening.stage.drilling.hole.HoleVolume;

/**
 * How large the mud pit must be, and what mud and bentonite that makes.
 *
 * <p>P = k G; M = G + P; B = c M. G hole volume, k pit factor, c bentonite to a volume of water.
 *
 * <p>Source: pit at least twice the hole, trade article quoting a handbook (seen: 7 7/8 in and 400 ft, "at least 2,000
 * gallons"); two to three times, and 15 to 25 lb of bentonite to 100 gal, from memory (30 %). The label of the product
 * and the ground decide.
 */
public final class PitVolume {
  static final QuantityField FACTOR = QuantityField.of(
          "pit-factor", Scale.NUMBER,
          Phrase.of("pit volume as a multiple of the hole's", "volumen de la fosa entre el del barreno"), "2", "2")
      .between("0.1", "20").usually("1", "5").optional();
  static final QuantityField DOSE = QuantityField.of(
          "bentonite-dose", Scale.DENSITY, Phrase.of("bentonite to a volume of water", "bentonita por volumen de agua"),
          "0.2 lb/gal", "24 kg/m3")
      .between("0 lb/gal", "2 lb/gal").usually("0.05 lb/gal", "0.6 lb/gal").optional();

  static final Answer HOLE = new Answer("hole", HoleVolume.LIQUID.label(), Scale.LIQUID);
  public static final Answer PIT =
      new Answer("pit", Phrase.of("mud pit, at least", "fosa de lodos, por lo menos"), Scale.LIQUID);
  static final Answer MUD = new Answer("mud", Phrase.of("mud in hole and pit", "lodo en barreno y fosa"), Scale.LIQUID);
  static final Answer BENTONITE =
      new Answer("bentonite", Phrase.of("bentonite for the mud", "bentonita para el lodo"), Scale.WEIGHT);

  public static final Reckoning RECKONING = new Reckoning(
      "pit-volume",
      DrillingStage.NAME,
      Phrase.of("Mud pit volume", "Volumen de la fosa de lodos"),
      List.of(HoleVolume.HOLE, HoleVolume.DEPTH, FACTOR, DOSE),
      List.of(HOLE, PIT, MUD, BENTONITE),
      Source.seen(
          "Pit at least twice the hole: trade article quoting a handbook. Bentonite 15 to 25 lb to 100 gal: memory.",
          "Fosa, dos veces el barreno o más: artículo que cita un manual. Bentonita 15 a 25 lb/100 gal: de memoria."),
      List.of(Phrase.of("Losses into the ground come on top.", "Las pérdidas en el terreno van aparte.")),
      PitVolume::reckon);

  private static final Quantity TWICE = new Measure(Dimension.NUMBER, 2);
  private static final Quantity USUAL_DOSE = Density.of(0.2, Unit.POUND_PER_GALLON);

  private PitVolume() {}

  public static Outcome of(Bore hole, Length depth) {
    return RECKONING.of(Inputs.none().with(HoleVolume.HOLE, hole).with(HoleVolume.DEPTH, depth));
  }

  private static Outcome reckon(Inputs inputs) {
    Term hole = HoleVolume.liquid(
        HoleVolume.volume(inputs.value(HoleVolume.HOLE), Length.ZERO, inputs.length(HoleVolume.DEPTH)));
    Term pit = hole.times(inputs.given("k", FACTOR, TWICE)).named("P", PIT.label(), PIT.scale());
    Term mud = hole.plus(pit).named("M", MUD.label(), MUD.scale());
    Term bentonite = Coefficient.giving(Scale.WEIGHT, 1).of(Scale.DENSITY).of(Scale.LIQUID).term()
        .times(inputs.given("c", DOSE, USUAL_DOSE))
        .times(mud)
        .named("B", BENTONITE.label(), BENTONITE.scale());
    return Outcome.empty()
        .with(HOLE.name(), hole).with(PIT.name(), pit).with(MUD.name(), mud).with(BENTONITE.name(), bentonite);
  }
}
