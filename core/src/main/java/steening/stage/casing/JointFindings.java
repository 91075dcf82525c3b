package steening.stage.casing;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Outcome;
import steening.well.CasingString;
import steening.well.OnTruck;
import steening.well.Well;

/** Whether the joints that were counted on the truck reach; nothing is said where nobody counted, or the string is set. */
final class JointFindings {
  private JointFindings() {}

  static Optional<Finding> of(Well well) {
    OnTruck truck = well.get(OnTruck.PART);
    Optional<Integer> has = truck.now(OnTruck.Goods.JOINTS, OnTruck.Goods.JOINTS.used(well));
    Optional<ToCome> toCome = ToCome.of(well).filter(c -> !c.isComplete());
    if (has.isEmpty() || toCome.isEmpty() || well.get(CasingString.PART).isSet()) return Optional.empty();
    // A cut piece costs a joint.
    boolean cut = toCome.get().casing().isMoreThan(toCome.get().joint().times(toCome.get().joints()));
    long needed = toCome.get().joints() + (cut ? 1 : 0);
    if (needed <= has.get()) return Optional.empty();
    Length casing = toCome.get().casing();
    Outcome working = toCome.get().outcome();
    return Optional.of(Finding.of("casing.truck", Weight.LOOK, CasingStage.NAME, Phrase.of(
            "{0} of casing are still to come, {1} joints; by the last count {2} are on the truck.",
            "Faltan {0} de ademe, {1} tubos; según el último conteo hay {2} en el camión.",
            CasingFindings.depth(casing), Long.toString(needed), Integer.toString(has.get())))
        .so(Phrase.of(
            "Send for joints before the hole stands open for them.",
            "Pida tubos antes de que el barreno espere abierto por ellos."))
        .shownBy(working).from(List.of(truck.last(OnTruck.Goods.JOINTS).orElseThrow().entry())));
  }
}
