package steening.stage.seal.placing;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * What stays in the tremie and the hose: V = π/4 (dᵢ² L + d_h² L_h); dᵢ, L inside and length of the tremie, d_h, L_h of
 * the hose. Source: geometry. Accuracy: rounding only; couplings that narrow the bore are not in it. Range: both full.
 */
public final class HoseVolume {
  public static final QuantityField INSIDE = QuantityField.of(
          "inside", Scale.DIAMETER, Phrase.of("inside of the tremie", "interior de la tremie"), "1.38 in", "35 mm")
      .between("0.2 in", "8 in").usually("0.6 in", "4 in");
  public static final QuantityField LENGTH = QuantityField.of(
          "length", Scale.DEPTH, Phrase.of("length of the tremie", "longitud de la tremie"), "140 ft", "43 m")
      .between("0.5 ft", "6000 ft").usually("5 ft", "600 ft");
  public static final QuantityField HOSE_INSIDE = QuantityField.of(
          "hose-inside", Scale.DIAMETER, Phrase.of("inside of the hose", "interior de la manguera"), "1 in", "25 mm")
      .between("0.2 in", "8 in").usually("0.5 in", "4 in").optional();
  public static final QuantityField HOSE_LENGTH = QuantityField.of(
          "hose-length", Scale.DEPTH, Phrase.of("length of the hose", "longitud de la manguera"), "33 ft", "10 m")
      .between("0 ft", "1000 ft").usually("0 ft", "200 ft").optional();

  static final Answer TREMIE =
      new Answer("tremie", Phrase.of("grout in the tremie", "lechada en la tremie"), Scale.LIQUID);
  static final Answer HOSE =
      new Answer("hose", Phrase.of("grout in the hose", "lechada en la manguera"), Scale.LIQUID);
  public static final Answer HELD = new Answer(
      "held", Phrase.of("grout in hose and tremie", "lechada en manguera y tremie"), Scale.LIQUID);

  public static final Reckoning RECKONING = new Reckoning(
      "hose-volume",
      "seal",
      Phrase.of("What stays in hose and tremie", "Lo que queda en manguera y tremie"),
      List.of(INSIDE, LENGTH, HOSE_INSIDE, HOSE_LENGTH),
      List.of(TREMIE, HOSE, HELD),
      Source.derived("Geometry.", "Geometría."),
      List.of(Phrase.of(
          "Both full to the end; couplings that narrow the bore are not counted.",
          "Ambas llenas hasta el final; no se cuentan coples que estrechen el paso.")),
      HoseVolume::reckon);

  private HoseVolume() {}

  private static Outcome reckon(Inputs inputs) {
    return of(
        inputs.length(INSIDE), inputs.length(LENGTH), inputs.find(HOSE_INSIDE).map(q -> (Length) q),
        inputs.find(HOSE_LENGTH).map(q -> (Length) q));
  }

  /** @throws NotReckonable where only one of the two measures of the hose is given */
  static Outcome of(Length inside, Length length, Optional<Length> hoseInside, Optional<Length> hoseLength) {
    if (hoseInside.isPresent() != hoseLength.isPresent()) {
      throw new NotReckonable(
          "The hose needs both its inside diameter and its length.",
          "De la manguera se necesitan el diámetro interior y la longitud.");
    }
    Term tremie = cylinder("d", INSIDE, inside, "L", LENGTH, length).named("T", TREMIE.label(), TREMIE.scale());
    Outcome outcome = Outcome.empty().with(TREMIE.name(), tremie);
    if (hoseInside.isEmpty()) return outcome.with(HELD.name(), tremie.named("H", HELD.label(), HELD.scale()));
    Term hose = cylinder("d₁", HOSE_INSIDE, hoseInside.get(), "L₁", HOSE_LENGTH, hoseLength.get())
        .named("M", HOSE.label(), HOSE.scale());
    return outcome.with(HOSE.name(), hose)
        .with(HELD.name(), tremie.plus(hose).named("H", HELD.label(), HELD.scale()));
  }

  private static Term cylinder(
      String across, QuantityField diameter, Length inside, String along, QuantityField stretch, Length length) {
    return Annulus.cylinder(
        Term.given(across, diameter.label(), diameter.scale(), inside),
        Term.given(along, stretch.label(), stretch.scale(), length), Scale.LIQUID);
  }
}
