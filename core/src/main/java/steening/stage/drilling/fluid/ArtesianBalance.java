package steening.stage.drilling.fluid;

import java.util.List;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.pipe.Buoyancy;
import steening.quantity.Density;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;
import steening.stage.drilling.DrillingEntries;
import steening.stage.drilling.DrillingStage;

/**
 * The mud weight that holds back an aquifer whose head stands above ground.
 *
 * <p>W = ρ (D + h) / (D − L); N = W + m; p = g ρ h. D top of the aquifer and L mud level, below ground; h head above
 * ground, ρ density of water, m margin, p pressure of the closed well at ground.
 *
 * <p>Source: hydrostatics (derived). The margin of 0.3 lb/gal is common practice, no source. Range: L less than D; mud
 * of one weight from L to D. Accuracy: that of the head.
 */
public final class ArtesianBalance {
  static final QuantityField TOP =
      DrillingEntries.ROD_DEPTH.named("aquifer-top").labelled("top of the aquifer", "techo del acuífero");
  static final QuantityField HEAD = DrillingEntries.HEAD;
  static final QuantityField LEVEL = DrillingEntries.ROD_DEPTH.named("mud-level")
      .labelled("mud level below ground", "nivel del lodo bajo el terreno").optional();
  static final QuantityField MARGIN = QuantityField.of(
          "margin", Scale.DENSITY, Phrase.of("margin over balance", "margen sobre el equilibrio"), "0.3 lb/gal",
          "36 kg/m3")
      .between("0 lb/gal", "3 lb/gal").usually("0 lb/gal", "1 lb/gal").optional();

  static final Answer BALANCE =
      new Answer("balance", Phrase.of("mud weight that balances", "densidad de lodo que equilibra"), Scale.DENSITY);
  static final Answer NEEDED =
      new Answer("with-margin", Phrase.of("mud weight with the margin", "densidad con el margen"), Scale.DENSITY);
  static final Answer SHUT_IN = new Answer(
      "shut-in", Phrase.of("shut-in pressure at ground", "presión a pozo cerrado, a nivel del terreno"),
      Scale.PRESSURE);

  public static final Reckoning RECKONING = new Reckoning(
      "artesian-balance",
      DrillingStage.NAME,
      Phrase.of("Mud against a flowing aquifer", "Lodo contra un acuífero surgente"),
      List.of(TOP, HEAD, LEVEL, MARGIN),
      List.of(BALANCE, NEEDED, SHUT_IN),
      Source.derived(
          "Hydrostatics; water 8.34 lb/gal. A margin of 0.3 lb/gal where none is given: common practice, no source.",
          "Hidrostática; agua 1 kg/L. Margen de 36 kg/m³ si no se da otro: práctica común, sin fuente."),
      List.of(
          Phrase.of(
              "Mud of one weight from its level down to the aquifer; gas-free; not while the pump is on.",
              "Lodo de una sola densidad desde su nivel hasta el acuífero; sin gas; con la bomba parada."),
          Phrase.of(
              "A flowing well needs a plan for control before it is drilled: the local code and a licensed driller"
                  + " decide.",
              "Un pozo surgente necesita un plan de control antes de perforar: deciden la norma local y un perforador"
                  + " con licencia.")),
      ArtesianBalance::reckon);

  private static final double GRAVITY = 9.80665;
  private static final Density USUAL_MARGIN = Density.of(0.3, Unit.POUND_PER_GALLON);

  /** What bentonite and drilled solids bring mud to; trade article on mud, seen. */
  private static final Density NATIVE_SOLIDS = Density.of(11, Unit.POUND_PER_GALLON);

  /** 10 psi, above which Minnesota Rules 4725.3450 allow no simple grouting; seen. */
  private static final Length SIMPLE_HEAD = Length.feet(23);

  private ArtesianBalance() {}

  /** With the hole full to the ground. */
  static Outcome of(Length top, Length head) {
    return RECKONING.of(Inputs.none().with(TOP, top).with(HEAD, head));
  }

  private static Outcome reckon(Inputs inputs) {
    if (!inputs.length(TOP).isMoreThan(inputs.find(LEVEL).map(l -> (Length) l).orElse(Length.ZERO))) {
      throw new NotReckonable(
          "The mud level must be above the top of the aquifer.", "El lodo debe estar arriba del techo del acuífero.");
    }
    Term water = Term.given("ρ", Phrase.of("density of water", "densidad del agua"), Scale.DENSITY, Buoyancy.WATER);
    Term top = inputs.given("D", TOP);
    Term head = inputs.given("h", HEAD);
    Term column = inputs.find(LEVEL).isPresent() ? top.minus(inputs.given("L", LEVEL)) : top;
    Term balance = water.times(top.plus(head)).over(column).named("W", BALANCE.label(), BALANCE.scale());
    Term needed =
        balance.plus(inputs.given("m", MARGIN, USUAL_MARGIN)).named("N", NEEDED.label(), NEEDED.scale());
    Term shutIn = Coefficient.giving(Scale.PRESSURE, GRAVITY).of(Scale.DENSITY).of(Scale.DEPTH).term()
        .times(water)
        .times(head)
        .named("p", SHUT_IN.label(), SHUT_IN.scale());
    Outcome outcome = Outcome.empty()
        .with(BALANCE.name(), balance).with(NEEDED.name(), needed).with(SHUT_IN.name(), shutIn);
    return remarked(outcome, inputs.amount(HEAD));
  }

  private static Outcome remarked(Outcome outcome, Quantity head) {
    Outcome remarked = outcome;
    if (outcome.quantity(NEEDED.name()).coherent() > NATIVE_SOLIDS.coherent()) {
      remarked = remarked.remarking(Phrase.of(
          "More than clay and drilled solids give, about {0}: barite, or rather a taller surface casing than such mud.",
          "Más de lo que dan la arcilla y los sólidos, unos {0}: barita, o mejor un ademe superficial más alto.",
          new Figure(NATIVE_SOLIDS, Scale.DENSITY)));
    }
    if (head.coherent() <= SIMPLE_HEAD.coherent()) return remarked;
    return remarked.remarking(Phrase.of(
        "A head above {0} (10 psi) is beyond simple grouting in one rule book (Minnesota 4725.3450).",
        "Una carga mayor de {0} (10 psi) no admite cementación simple en una norma (Minnesota 4725.3450).",
        new Figure(SIMPLE_HEAD, Scale.DEPTH)));
  }
}
