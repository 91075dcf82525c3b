package steening.stage.seal;

import java.util.List;
import java.util.Optional;
import steening.bore.Bagged;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Density;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.quantity.Volume;
import steening.reckoning.Outcome;
import steening.well.Well;

/** Grout that came back at the surface, and whether it is the grout that was pumped, and enough of it. */
final class ReturnFindings {
  /** The hole is not smaller than the bit; bags, meter and tape together are good to this (common practice). */
  private static final double CLEARLY_LESS = 0.9;

  private ReturnFindings() {}

  static Optional<Finding> of(Well well) {
    Grouting grouting = well.get(Grouting.PART);
    Optional<Batch> last = grouting.lastBatch().filter(b -> b.returned().orElse(false));
    return last.flatMap(ReturnFindings::thin).or(() -> Sealing.of(well).flatMap(ReturnFindings::early));
  }

  /** What comes back is still mixed with mud. */
  static Optional<Finding> thin(Batch batch) {
    Optional<Density> pumped = batch.weighed()
        .or(() -> MixFindings.mixed(batch).map(o -> (Density) o.quantity(GroutMix.DENSITY.name())));
    if (batch.returnWeight().isEmpty() || pumped.isEmpty()) return Optional.empty();
    if (!GroutDilution.isLight(batch.returnWeight().get(), pumped.get(), MixFindings.BALANCE)) return Optional.empty();
    Figure back = new Figure(batch.returnWeight().get(), Scale.DENSITY);
    Figure in = new Figure(pumped.get(), Scale.DENSITY);
    return Optional.of(Finding.of("seal.thin-return", Weight.LOOK, SealStage.NAME, Phrase.of(
            "What comes back weighs {0}; {1} is pumped.", "Lo que regresa pesa {0}; se bombea a {1}.", back, in))
        .comparing(back, in)
        .because(Phrase.of("It is still mixed with mud or water.", "Aún viene mezclada con lodo o agua."))
        .so(Phrase.of(
            "Keep pumping from the bottom until both weigh the same (Minn. 4725.3050, Mich. R 325.1633a,"
                + " NR 812.20).",
            "Siga bombeando desde el fondo hasta que ambas pesen igual (Minn. 4725.3050, Mich. R 325.1633a,"
                + " NR 812.20)."))
        .from(List.of(batch.entry())));
  }

  /** It came back before the annulus can be full. */
  private static Optional<Finding> early(Sealing sealing) {
    Optional<Batch> returned = sealing.grouting().batches().stream().filter(b -> b.returned().orElse(false))
        .reduce((a, b) -> b);
    Optional<Outcome> planned = sealing.planned(Bagged.NO_OVERAGE);
    Volume in = sealing.inHole();
    if (returned.isEmpty() || planned.isEmpty()) return Optional.empty();
    if (in.cubicMetres() >= CLEARLY_LESS * planned.get().quantity("volume").coherent()) return Optional.empty();
    Figure least = planned.get().figure("liquid");
    return Optional.of(Finding.of("seal.early-return", Weight.LOOK, SealStage.NAME, Phrase.of(
            "Grout came back with {0} in the hole after {1}; the annulus takes at least {2}.",
            "La lechada regresó con {0} en el barreno tras {1}; el espacio anular lleva al menos {2}.",
            new Figure(in, Scale.LIQUID), Bagged.said(sealing.grout().bags()), least))
        .comparing(new Figure(in, Scale.LIQUID), least)
        .because(Phrase.of(
            "It ran up one side through the mud, or the tremie hung too high, or bags were not counted.",
            "Subió por un lado a través del lodo, o la tremie quedó muy alta, o no se contaron sacos."))
        .so(Phrase.of(
            "Weigh what comes back, sound on two sides of the casing, and pump on from the bottom.",
            "Pese lo que regresa, sondee a ambos lados del ademe y siga bombeando desde el fondo."))
        .shownBy(planned.get()).from(List.of(returned.get().entry())));
  }
}
