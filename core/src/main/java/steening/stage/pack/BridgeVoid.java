package steening.stage.pack;

import java.util.List;
import java.util.Optional;
import steening.bore.Annulus;
import steening.bore.Bore;
import steening.bore.BoreField;
import steening.field.CountField;
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
import steening.well.Plan;

/**
 * How long plug and void under a bridge are, if the plug holds all that went in since the reading before; how much of
 * the screen the void leaves bare; and where the tape should be once it is broken.
 *
 * <p>U = V₀ − n b; zu = z₁ − U / A; plug zu − zf, void z₁ − zu; after z₁ − n b / A. V₀ what the stretch holds from the
 * reading before, z₁, up to the reading found, zf; n bags of volume b, A volume per length. Source: geometry. Range: a
 * hole of the drilled size; in a wider one the void is larger. Accuracy: the plug may hold less than all, so the void
 * may be shorter and higher.
 */
public final class BridgeVoid {
  public static final BoreField HOLE = PackVolume.HOLE;
  public static final QuantityField CASING = PackVolume.CASING;
  public static final QuantityField STRING_BOTTOM = PackVolume.STRING_BOTTOM;
  public static final QuantityField BEFORE = Plan.SCREEN_BOTTOM.named("before")
      .labelled("tape before these bags, below ground", "lectura antes de estos sacos, bajo el terreno");
  public static final QuantityField FOUND = PackLeft.FOUND;
  public static final CountField BAGS = PackBags.BAGS;
  public static final QuantityField BAG_VOLUME = PackVolume.BAG_VOLUME;
  public static final QuantityField SCREEN_TOP = Plan.SCREEN_TOP.optional();
  public static final QuantityField SCREEN_BOTTOM = Plan.SCREEN_BOTTOM.optional();

  static final Answer PLUG = new Answer("plug", Phrase.of("length of the plug", "largo del tapón"), Scale.DEPTH);
  static final Answer VOLUME = new Answer("void-volume", Phrase.of("void", "hueco"), Scale.VOLUME);
  static final Answer HEIGHT = new Answer("void", Phrase.of("height of the void", "alto del hueco"), Scale.DEPTH);
  static final Answer TOP = new Answer("void-top", Phrase.of("top of the void", "tope del hueco"), Scale.DEPTH);
  static final Answer BARE =
      new Answer("bare", Phrase.of("screen without sand", "rejilla sin arena"), Scale.DEPTH);
  static final Answer AFTER = new Answer(
      "after", Phrase.of("tape once it is broken, below ground", "lectura una vez roto, bajo el terreno"),
      Scale.DEPTH);

  public static final Reckoning RECKONING = new Reckoning(
      "bridge-void",
      PackStage.NAME,
      Phrase.of("Void under a bridge", "Hueco bajo un puente"),
      List.of(HOLE, CASING, STRING_BOTTOM, BEFORE, FOUND, BAGS, BAG_VOLUME, SCREEN_TOP, SCREEN_BOTTOM),
      List.of(PLUG, VOLUME, HEIGHT, TOP, BARE, AFTER),
      Source.derived("Geometry.", "Geometría."),
      List.of(
          Phrase.of("A hole of the drilled size.", "Un barreno del diámetro perforado."),
          Phrase.of(
              "The plug holds all that went in since the reading before; holding less, the void is shorter and higher.",
              "El tapón sostiene todo lo vertido desde la lectura anterior; si menos, el hueco es más corto y más"
                  + " alto."),
          Phrase.of(
              "Without a bag volume, half a cubic foot: 50 lb; good to 5 %.",
              "Sin volumen de saco, 0.0142 m³: 22.7 kg; bueno al 5 %.")),
      BridgeVoid::reckon);

  private BridgeVoid() {}

  private static Outcome reckon(Inputs inputs) {
    Length before = inputs.length(BEFORE);
    Length stringBottom = inputs.find(STRING_BOTTOM).map(q -> (Length) q).orElse(before);
    Annulus annulus =
        new Annulus(inputs.value(HOLE), Bore.straight(inputs.length(CASING), Length.ZERO, stringBottom));
    Term put = ExpectedTape.poured(inputs.given("n", BAGS), inputs.given("b", BAG_VOLUME, PackVolume.BAG));
    return of(
        annulus, before, inputs.length(FOUND), put, inputs.find(SCREEN_TOP).map(q -> (Length) q),
        inputs.find(SCREEN_BOTTOM).map(q -> (Length) q));
  }

  /**
   * The same for a well at hand.
   *
   * @throws NotReckonable where what went in fills the stretch
   */
  static Outcome of(
      Annulus annulus, Length before, Length found, Term put, Optional<Length> screenTop,
      Optional<Length> screenBottom) {
    Term holds = annulus.volume(
        "V₀", Phrase.of("what the stretch holds by the drilled size", "lo que cabe en el tramo según lo perforado"),
        found, before);
    Term hollow = holds.minus(put).named("U", VOLUME.label(), VOLUME.scale());
    if (!(hollow.quantity().coherent() > 0)) {
      throw new NotReckonable(
          "The bags fill the stretch: there is no void.", "Los sacos llenan el tramo: no hay hueco.");
    }
    Term lower = Term.given("z₁", BEFORE.label(), Scale.DEPTH, before);
    Term top = annulus.top("zu", "′", TOP.label(), before, hollow);
    Outcome outcome = Outcome.empty()
        .with(VOLUME.name(), hollow)
        .with(TOP.name(), top)
        .with(HEIGHT.name(), lower.minus(top).named("hu", HEIGHT.label(), Scale.DEPTH))
        .with(PLUG.name(), top.minus(Term.given("zf", FOUND.label(), Scale.DEPTH, found))
            .named("hp", PLUG.label(), Scale.DEPTH))
        .with(AFTER.name(), annulus.top("z", "″", AFTER.label(), before, put));
    if (screenTop.isEmpty() || screenBottom.isEmpty()) return outcome;
    Term end = lower.least(Term.given("sb", SCREEN_BOTTOM.label(), Scale.DEPTH, screenBottom.get()));
    Term begin = top.most(Term.given("st", SCREEN_TOP.label(), Scale.DEPTH, screenTop.get()));
    return outcome.with(
        BARE.name(), end.minus(begin).most(Term.number(0)).named("hb", BARE.label(), Scale.DEPTH));
  }
}
