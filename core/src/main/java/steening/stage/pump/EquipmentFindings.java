package steening.stage.pump;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.pump.line.OperatingPoint;
import steening.stage.pump.motor.CableDrop;
import steening.stage.pump.motor.MotorCooling;
import steening.well.PumpingTest;
import steening.well.Well;

/** Whether the pump's curve, motor and cable suit the well. */
final class EquipmentFindings {
  private EquipmentFindings() {}

  static List<Finding> of(Well well) {
    Optional<Equipment> equipment = well.get(Equipment.PART);
    if (equipment.isEmpty()) return List.of();
    return Stream.of(
            off(equipment.get(), well), overPumping(equipment.get(), well), cable(equipment.get()),
            hot(equipment.get(), well))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Finding> off(Equipment equipment, Well well) {
    return equipment.contradiction(well).map(refused -> look("pump.off-curve", refused.sentence())
        .so(Phrase.of("Read the curve again, or choose another pump.",
            "Lea otra vez la curva, o elija otra bomba."))
        .from(equipment.entries()));
  }

  /** Past the end of what the test held: the pump draws the most when it starts. */
  private static Optional<Finding> overPumping(Equipment equipment, Well well) {
    Optional<FlowRate> tested =
        well.get(PumpingTest.PART).rate().filter(r -> r.cubicMetresPerSecond() > 0);
    Optional<Outcome> operating = equipment.operating(well);
    if (tested.isEmpty() || operating.isEmpty()) return Optional.empty();
    Figure flow = operating.get().figure(OperatingPoint.FLOW_IN.name());
    if (flow.quantity().coherent() <= tested.get().cubicMetresPerSecond()) return Optional.empty();
    Figure held = new Figure(tested.get(), Scale.FLOW);
    return Optional.of(look("pump.over-pumps", Phrase.of(
            "At cut-in this pump gives {0}; the well was tested at {1}.",
            "Al arranque esta bomba da {0}; el pozo se probó con {1}.", flow, held))
        .comparing(flow, held)
        .because(Phrase.of("Its curve meets the well and the pipe there.",
            "Ahí se cruzan su curva y la del pozo con la tubería."))
        .so(Phrase.of(
            "Take a smaller pump, limit the flow, or protect it against running dry.",
            "Use una bomba menor, limite el gasto, o protéjala contra la marcha en seco."))
        .shownBy(operating.get())
        .from(equipment.entries()));
  }

  private static Optional<Finding> cable(Equipment equipment) {
    Optional<Outcome> drop = equipment.cable();
    if (drop.isEmpty()) return Optional.empty();
    Figure share = drop.get().figure(CableDrop.SHARE.name());
    if (share.quantity().coherent() <= CableDrop.LIMIT) return Optional.empty();
    Figure limit = new Figure(new Measure(Dimension.NUMBER, CableDrop.LIMIT), Scale.SHARE);
    return Optional.of(look("pump.cable-drop", Phrase.of(
            "{0} of the voltage is lost in the cable; motor makers allow {1}.",
            "Se pierde {0} de la tensión en el cable; los fabricantes de motores admiten {1}.", share, limit))
        .comparing(share, limit)
        .because(Phrase.of("The cable is too thin for its length and the current.",
            "El cable es muy delgado para su longitud y la corriente."))
        .so(Phrase.of(
            "Take a heavier cable; the maker's table and the electrical code go first.",
            "Use un cable más grueso; valen antes la tabla del fabricante y el reglamento eléctrico."))
        .shownBy(drop.get())
        .from(equipment.entries()));
  }

  private static Optional<Finding> hot(Equipment equipment, Well well) {
    Optional<Outcome> cooling = equipment.cooling(well);
    if (cooling.isEmpty()) return Optional.empty();
    Figure past = cooling.get().figure(MotorCooling.PAST.name());
    if (past.quantity().coherent() >= MotorCooling.SLOWEST.coherent()) return Optional.empty();
    Figure needed = new Figure(MotorCooling.SLOWEST, Scale.ENTRANCE_VELOCITY);
    return Optional.of(look("pump.motor-hot", Phrase.of(
            "Water passes the motor at {0}; {1} cool a 4-inch motor.",
            "El agua pasa junto al motor a {0}; un motor de 4 pulgadas se enfría con {1}.", past, needed))
        .comparing(past, needed)
        .because(Phrase.of("The casing is wide for so little water.", "El ademe es ancho para tan poca agua."))
        .so(Phrase.of(
            "Fit a sleeve of {0} inside at most; the motor maker goes first.",
            "Ponga una camisa de {0} interior a lo más; vale antes el fabricante del motor.",
            cooling.get().figure(MotorCooling.SLEEVE.name())))
        .shownBy(cooling.get())
        .from(equipment.entries()));
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, PumpStage.NAME, text);
  }
}
