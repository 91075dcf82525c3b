package steening.stage.pump.motor;

import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.reckoning.Answer;
import steening.reckoning.Coefficient;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.reckoning.Reckoning;
import steening.reckoning.Source;
import steening.reckoning.Term;

/**
 * Voltage lost in the cable of a single-phase motor, one size or two in series.
 *
 * <p>Z = 2 (L R + l r), U = I Z, share U/V: L and l lengths one way, R and r resistances, I running current, V voltage.
 * Source: an electrical trade article on submersible pump cable (seen); resistances NEC chapter 9, Table 8 (memory);
 * 5 %
 * is the motor makers' limit, 3 % and 5 % are notes of the NEC (memory). Range: single phase, cable at 75 °C. Accuracy:
 * within 15 % of printed cable tables, which rest on the maker's own current and power factor.
 */
public final class CableDrop {
  public static final QuantityField VOLTAGE = QuantityField.of(
          "voltage", Scale.VOLTAGE, Phrase.of("voltage of the motor", "tensión del motor"), "230 V", "230 V")
      .between("12 V", "600 V").usually("110 V", "240 V");
  public static final QuantityField CURRENT = QuantityField.of(
          "current", Scale.CURRENT, Phrase.of("running current", "corriente de marcha"), "8.0 A", "8.0 A")
      .between("0.1 A", "500 A").usually("2 A", "40 A");

  public static final Answer DROP = new Answer(
      "drop", Phrase.of("voltage lost in the cable", "caída de tensión en el cable"), Scale.VOLTAGE);
  public static final Answer SHARE = new Answer(
      "drop-share", Phrase.of("voltage lost in the cable, share", "tensión perdida en el cable, parte"), Scale.SHARE);

  /** The motor makers' limit (memory). */
  public static final double LIMIT = 0.05;

  public static final Reckoning RECKONING = new Reckoning(
      "cable-drop",
      "pump",
      Phrase.of("Voltage lost in the pump cable", "Caída de tensión en el cable de la bomba"),
      List.of(VOLTAGE, CURRENT, Cable.FIRST_SIZE, Cable.FIRST, Cable.SECOND_SIZE, Cable.SECOND),
      List.of(DROP, SHARE),
      Source.memory(
          "Ohm's law, both ways. Resistances: NEC chapter 9, Table 8, stranded copper at 75 °C, memory.",
          "Ley de Ohm, ida y vuelta. Resistencias: NEC capítulo 9, tabla 8, cobre cableado a 75 °C, de memoria."),
      List.of(
          Phrase.of(
              "Single phase, running. Motor makers allow 5 % (memory); starting takes several times the current.",
              "Monofásico, en marcha. Los fabricantes admiten 5 % (de memoria); el arranque pide varias veces más."),
          Phrase.of(
              "The maker's cable table, the electrical code and a licensed electrician go first.",
              "Valen antes la tabla del fabricante, el reglamento eléctrico y un electricista autorizado.")),
      CableDrop::reckon);

  private CableDrop() {}

  private static Outcome reckon(Inputs inputs) {
    Optional<WireSize> second = Cable.second(inputs);
    Term resistance = resistance("R", WireSize.in(inputs, Cable.FIRST_SIZE).orElseThrow());
    Term way = inputs.given("L", Cable.FIRST).times(resistance);
    if (second.isPresent()) way = way.plus(inputs.given("l", Cable.SECOND).times(resistance("r", second.get())));
    Term drop = Coefficient.giving(Scale.VOLTAGE, 2).of(Scale.CURRENT).of(Scale.DEPTH).of(Scale.WIRE).term()
        .times(inputs.given("I", CURRENT)).times(way)
        .named("U", DROP.label(), DROP.scale());
    Term share = Coefficient.giving(Scale.SHARE, 1).term().times(drop).over(inputs.given("V", VOLTAGE))
        .named("k", SHARE.label(), SHARE.scale());
    Outcome outcome = Outcome.empty().with(DROP.name(), drop).with(SHARE.name(), share);
    if (share.quantity().coherent() <= LIMIT) return outcome;
    return outcome.remarking(Phrase.of(
        "{0} of the voltage is lost in the cable; 5 % is the motor makers' limit. Take a heavier cable.",
        "Se pierde {0} de la tensión en el cable; el límite de los fabricantes es 5 %. Use un cable más grueso.",
        new Figure(share.quantity(), Scale.SHARE)));
  }

  private static Term resistance(String symbol, WireSize size) {
    return Term.given(symbol, Phrase.of("resistance of {0}", "resistencia de {0}", size.label()), Scale.WIRE,
        size.resistance());
  }
}
