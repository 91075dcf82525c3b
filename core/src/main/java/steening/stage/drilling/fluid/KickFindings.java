package steening.stage.drilling.fluid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.Well;

/** Water that comes in: the well flows with the pump off, or the pit rises. As last looked at. */
final class KickFindings {
  private static final Phrase CONTROL = Phrase.of(
      "A flowing well needs control: follow the local rule, and have the licensed driller decide.",
      "Un pozo surgente necesita control: siga la norma local; decide el perforador con licencia.");

  private KickFindings() {}

  static List<Finding> of(Well well) {
    Drilling drilling = well.get(Drilling.PART);
    List<Drilling.Mud> muds = drilling.muds();
    Optional<Drilling.Mud> before = Optional.empty();
    Optional<Finding> kick = Optional.empty();
    for (Drilling.Mud mud : muds) {
      if (mud.flows().isPresent() || rose(mud)) kick = judged(well, before, mud);
      before = Optional.of(mud);
    }
    List<Finding> findings = new ArrayList<>(kick.stream().toList());
    boolean flowing = kick.isPresent() && kick.get().weight() == Weight.STOP;
    if (!flowing && !muds.isEmpty()) light(well, muds.get(muds.size() - 1)).ifPresent(findings::add);
    return findings;
  }

  private static boolean rose(Drilling.Mud mud) {
    return mud.rise().isMoreThan(PitFindings.READS);
  }

  private static Optional<Finding> judged(Well well, Optional<Drilling.Mud> before, Drilling.Mud mud) {
    boolean still = mud.flows().isPresent() && !mud.flows().get();
    if (still) return rose(mud) ? Optional.of(risen(well, before, mud)) : Optional.empty();
    Optional<Outcome> balance = FlowingHead.balanceAtLeast(well, mud);
    Finding kick = balance.map(b -> known(b, mud)).orElseGet(() -> unknown(mud));
    return Optional.of(gain(well, before, mud, balance.orElse(Outcome.empty())).map(kick::shownBy).orElse(kick));
  }

  private static Finding known(Outcome balance, Drilling.Mud mud) {
    Figure weight = weight(mud);
    Figure needed = balance.figure("with-margin");
    Figure least = balance.figure("balance");
    boolean enough = mud.weight().coherent() >= balance.quantity("with-margin").coherent();
    Phrase cause = enough
        ? Phrase.of(
            "The head is more than was entered, or the mud in the hole is lighter than that in the pit.",
            "La carga es mayor que la registrada, o el lodo en el barreno pesa menos que el de la fosa.")
        : Phrase.of("A kick: the aquifer pushes harder than the mud.", "El acuífero empuja más que el lodo.");
    return stop(
            mud,
            Phrase.of(
                "{0}: the mud weighs {1}; {2} balances the head, {3} with a margin.",
                "{0}: el lodo pesa {1}; {2} equilibra la carga, {3} con margen.", sign(mud), weight, least, needed))
        .comparing(weight, needed)
        .because(cause)
        .so(Phrase.of(
            "Keep pumping mud and do not trip. Weight up to {0} at least, then look again with the pump off. {1}",
            "Siga bombeando lodo y no saque la tubería. Densifique hasta {0} o más y revise con la bomba parada. {1}",
            enough ? weight : needed, CONTROL))
        .shownBy(balance);
  }

  private static Finding unknown(Drilling.Mud mud) {
    return stop(
            mud,
            Phrase.of(
                "{0}: mud of {1} does not hold the aquifer. Its head or its depth is not known.",
                "{0}: el lodo de {1} no contiene el acuífero. No se conoce su carga o su profundidad.",
                sign(mud), weight(mud)))
        .because(Phrase.of("A kick: the aquifer pushes harder than the mud.", "El acuífero empuja más que el lodo."))
        .so(Phrase.of(
            "Keep pumping mud, weight it up, and do not trip. Enter head and log to know the weight needed. {0}",
            "Siga bombeando lodo, densifíquelo y no saque la tubería. Registre carga y terreno para saber cuánto. {0}",
            CONTROL));
  }

  private static Finding stop(Drilling.Mud mud, Phrase text) {
    return Finding.of("drilling.kick", Weight.STOP, DrillingStage.NAME, text).from(List.of(mud.entry()));
  }

  private static Phrase sign(Drilling.Mud mud) {
    if (mud.flows().isPresent()) return Phrase.of("Flow with the pump off", "Fluye con la bomba parada");
    return Phrase.of("The mud pit rose {0}", "La fosa subió {0}", new Figure(mud.rise(), Scale.DIAMETER));
  }

  private static Finding risen(Well well, Optional<Drilling.Mud> before, Drilling.Mud mud) {
    Finding finding = Finding.of(
            "drilling.pit-rise", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The mud pit rose {0}, without flow when the pump is off.",
                "La fosa subió {0}, sin flujo con la bomba parada.", new Figure(mud.rise(), Scale.DIAMETER)))
        .because(Phrase.of(
            "Water or mud was added, rods went in, or the ground gives water slowly.",
            "Se agregó agua o lodo, bajó tubería, o el terreno da agua despacio."))
        .so(Phrase.of(
            "Say what was added. If nothing was, look again with the pump off for ten minutes.",
            "Anote qué se agregó. Si nada, revise otra vez con la bomba parada diez minutos."))
        .from(List.of(mud.entry()));
    return gain(well, before, mud, Outcome.empty()).map(finding::shownBy).orElse(finding);
  }

  /** The rise in gallons, and by the minute, where the pit's area and the times are known. */
  private static Optional<Outcome> gain(
      Well well, Optional<Drilling.Mud> before, Drilling.Mud mud, Outcome working) {
    if (!mud.rise().isMoreThan(Length.ZERO)) return Optional.empty();
    return well.get(Drilling.PART).rig().flatMap(Drilling.Rig::pitArea).map(area -> {
      Outcome gained = PitFall.gained(working, mud.rise(), area);
      return PitFindings.minutes(before, mud).map(m -> PitFall.gainRate(gained, m)).orElse(gained);
    });
  }

  private static Optional<Finding> light(Well well, Drilling.Mud mud) {
    return FlowingHead.balance(well, mud)
        .filter(b -> mud.weight().coherent() < b.quantity("balance").coherent())
        .map(b -> Finding.of(
                "drilling.mud-light", Weight.LOOK, DrillingStage.NAME,
                Phrase.of(
                    "The mud weighs {0}; {1} balances the head that was entered, {2} with a margin.",
                    "El lodo pesa {0}; {1} equilibra la carga registrada, {2} con margen.",
                    weight(mud), b.figure("balance"), b.figure("with-margin")))
            .comparing(weight(mud), b.figure("with-margin"))
            .because(Phrase.of("The well will flow when the pump stops.", "El pozo fluirá al parar la bomba."))
            .so(Phrase.of("Weight up before you trip. {0}", "Densifique antes de sacar la tubería. {0}", CONTROL))
            .shownBy(b)
            .from(List.of(mud.entry())));
  }

  private static Figure weight(Drilling.Mud mud) {
    return new Figure(mud.weight(), Scale.DENSITY);
  }
}
