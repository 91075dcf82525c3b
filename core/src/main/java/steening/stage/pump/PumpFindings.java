package steening.stage.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.Levels;
import steening.well.PumpSet;
import steening.well.PumpingTest;
import steening.well.Well;

/** Where the pump does not suit the well it stands in. */
final class PumpFindings {
  /** Water to keep over the intake (common practice, no source). */
  private static final Length COVER = Length.feet(5);

  private PumpFindings() {}

  static List<Finding> of(Well well) {
    Optional<PumpSet> set = well.get(PumpSet.PART);
    if (set.isEmpty()) return List.of();
    PumpSet pump = set.get();
    List<Finding> findings = new ArrayList<>(TankFindings.of(pump));
    Stream.of(depth(pump, well), cover(pump, well), rate(pump, well), motor(pump, well))
        .flatMap(Optional::stream)
        .forEach(findings::add);
    findings.addAll(EquipmentFindings.of(well));
    return findings;
  }

  private static Optional<Finding> depth(PumpSet pump, Well well) {
    CasingString string = well.get(CasingString.PART);
    if (string.bottom().isPresent() && pump.setting().isMoreThan(string.bottom().get())) {
      Figure bottom = depth(string.bottom().get());
      return Optional.of(finding(pump, "pump.too-deep", Weight.STOP, Phrase.of(
              "Intake at {0}, but the casing string ends at {1}.",
              "Toma a {0}, pero la columna de ademe termina a {1}.",
              depth(pump.setting()), bottom))
          .comparing(depth(pump.setting()), bottom)
          .so(Phrase.of("Count the drop pipe again.", "Cuente otra vez la columna de bombeo.")));
    }
    Optional<Length> screen = string.screenTop();
    if (screen.isEmpty() || pump.setting().isLessThan(screen.get())) return Optional.empty();
    return Optional.of(finding(pump, "pump.in-screen", Weight.LOOK, Phrase.of(
            "Intake at {0}, inside or below the screen, whose top is at {1}.",
            "Toma a {0}, dentro o debajo de la rejilla, cuyo tope está a {1}.",
            depth(pump.setting()), depth(screen.get())))
        .comparing(depth(pump.setting()), depth(screen.get()))
        .because(Phrase.of(
            "There the pump draws sand, and water may not pass along the motor to cool it.",
            "Ahí la bomba arrastra arena y el agua puede no pasar por el motor para enfriarlo."))
        .so(Phrase.of(
            "Raise the pump above the screen, or fit a flow sleeve.",
            "Suba la bomba sobre la rejilla o ponga una camisa de enfriamiento.")));
  }

  private static Optional<Finding> cover(PumpSet pump, Well well) {
    Optional<Levels.Level> level = well.get(Levels.PART).pumping();
    if (level.isEmpty()) return Optional.empty();
    Length water = pump.setting().minus(level.get().depth());
    if (!water.isLessThan(COVER)) return Optional.empty();
    Figure pumping = depth(level.get().depth());
    List<String> entries = List.of(level.get().entry(), pump.entry());
    if (!water.isMoreThan(Length.ZERO)) {
      return Optional.of(finding(pump, "pump.dry", Weight.STOP, Phrase.of(
              "Intake at {0}, above the pumping water level of the test at {1}: the pump would run dry.",
              "Toma a {0}, arriba del nivel dinámico de la prueba a {1}: la bomba marcharía en seco.",
              depth(pump.setting()), pumping))
          .comparing(depth(pump.setting()), pumping)
          .so(Phrase.of("Set it deeper, or pump less.", "Instálela más abajo o bombee menos."))
          .from(entries));
    }
    return Optional.of(finding(pump, "pump.thin-cover", Weight.LOOK, Phrase.of(
            "{0} of water over the intake while pumping; {1} are usual.",
            "{0} de agua sobre la toma al bombear; lo usual son {1}.", depth(water), depth(COVER)))
        .comparing(depth(water), depth(COVER))
        .because(Phrase.of(
            "The level of the test; months of pumping and a dry year take it deeper.",
            "Es el nivel de la prueba; meses de bombeo y un año seco lo bajan más."))
        .so(Phrase.of("Set it deeper, or stop the pump by level.", "Instálela más abajo o ponga paro por nivel."))
        .from(entries));
  }

  private static Optional<Finding> rate(PumpSet pump, Well well) {
    Optional<FlowRate> held = well.get(PumpingTest.PART).rate();
    boolean tested = held.isPresent() && held.get().cubicMetresPerSecond() > 0;
    if (!tested || pump.rate().cubicMetresPerSecond() <= held.get().cubicMetresPerSecond()) return Optional.empty();
    Figure wanted = new Figure(pump.rate(), Scale.FLOW);
    Figure test = new Figure(held.get(), Scale.FLOW);
    return Optional.of(finding(pump, "pump.rate", Weight.LOOK, Phrase.of(
            "The pump gives {0}; the well was tested at {1}.",
            "La bomba da {0}; el pozo se probó con {1}.",
            wanted, test))
        .comparing(wanted, test)
        .so(Phrase.of(
            "Limit the flow, or protect the pump against running dry; at cut-in it gives more still.",
            "Limite el gasto o proteja la bomba contra la marcha en seco; a la presión de arranque da aún más.")));
  }

  /** Where the pipe is not given its friction is left out: the motor then needs more still. */
  private static Optional<Finding> motor(PumpSet pump, Well well) {
    Optional<Outcome> head = PumpFigures.head(well);
    if (head.isEmpty()) return Optional.empty();
    Quantity needed = head.get().quantity(PumpHead.MOTOR_POWER.name());
    if (needed.coherent() <= pump.power().coherent()) return Optional.empty();
    Figure motor = new Figure(pump.power(), Scale.POWER);
    Figure power = new Figure(needed, Scale.POWER);
    return Optional.of(finding(pump, "pump.motor-small", Weight.LOOK, Phrase.of(
            "{0} against {1} of head takes about {2}; the motor has {3}.",
            "{0} contra {1} de carga pide cerca de {2}; el motor tiene {3}.",
            new Figure(pump.rate(), Scale.FLOW), head.get().figure(PumpHead.HEAD.name()), power, motor))
        .comparing(motor, power)
        .so(Phrase.of("Look at the maker's curve for this head.", "Vea la curva del fabricante para esta carga."))
        .shownBy(head.get()));
  }

  private static Finding finding(PumpSet pump, String code, Weight weight, Phrase text) {
    return Finding.of(code, weight, PumpStage.NAME, text).from(List.of(pump.entry()));
  }

  private static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }
}
