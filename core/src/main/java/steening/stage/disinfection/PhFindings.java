package steening.stage.disinfection;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;

/** Whether the chlorine can work at the pH that was read after mixing. */
final class PhFindings {
  /** Above it half of the chlorine works or less. */
  private static final Quantity HALF = Measure.of(7.5, Unit.ONE);

  /** Below it chlorine gas comes out: a manual on well disinfection (memory). */
  private static final Quantity GAS = Measure.of(5, Unit.ONE);

  private PhFindings() {}

  static Optional<Finding> of(Dosing.Dose dose) {
    if (dose.ph().isEmpty()) return Optional.empty();
    double ph = dose.ph().get().coherent();
    if (ph < GAS.coherent()) return Optional.of(gas(dose));
    return ph <= HALF.coherent() ? Optional.empty() : share(dose).map(outcome -> high(dose, outcome));
  }

  private static Optional<Outcome> share(Dosing.Dose dose) {
    return Outcome.ifReckonable(() -> ChlorineAndPh.RECKONING.of(Inputs.none()
        .with(ChlorineAndPh.PH, dose.ph().orElseThrow()).with(ChlorineAndPh.CHLORINE, dose.target())));
  }

  private static Finding high(Dosing.Dose dose, Outcome outcome) {
    Figure read = new Figure(dose.ph().orElseThrow(), Scale.NUMBER);
    return Finding.of("disinfection.ph-high", Weight.NOTE, DisinfectionStage.NAME, Phrase.of(
            "At pH {0} only {1} of the chlorine kills well: {2} of {3}. Up to pH {4} it is half or more.",
            "A pH {0} solo el {1} del cloro mata bien: {2} de {3}. Hasta pH {4} es la mitad o más.",
            read, outcome.figure(ChlorineAndPh.SHARE.name()), outcome.figure(ChlorineAndPh.ACID.name()),
            new Figure(dose.target(), Scale.CONCENTRATION), new Figure(HALF, Scale.NUMBER)))
        .comparing(read, new Figure(HALF, Scale.NUMBER))
        .shownBy(outcome)
        .because(Phrase.of(
            "Hard or alkaline water, or too strong a dose: chlorine products raise the pH themselves.",
            "Agua alcalina, o dosis muy fuerte: los productos de cloro suben el pH por sí mismos."))
        .so(Phrase.of(
            "More chlorine does not help. Let it stand longer; a product made to lower the pH only as its label says.",
            "Más cloro no ayuda. Déjelo más tiempo; un producto para bajar el pH, solo según su etiqueta."))
        .from(List.of(dose.entry()));
  }

  private static Finding gas(Dosing.Dose dose) {
    Figure read = new Figure(dose.ph().orElseThrow(), Scale.NUMBER);
    Figure least = new Figure(GAS, Scale.NUMBER);
    return Finding.of("disinfection.ph-low", Weight.STOP, DisinfectionStage.NAME, Phrase.of(
            "pH {0} with chlorine in the well: below {1} poison gas comes out.",
            "pH {0} con cloro en el pozo: bajo {1} sale gas venenoso.", read, least))
        .comparing(read, least)
        .because(Phrase.of("Acid is still in the well, or went in with the chlorine.",
            "Queda ácido en el pozo, o entró junto con el cloro."))
        .so(Phrase.of(
            "Away from the casing and upwind, nobody leans over it. Call who is trained in acids before anything else.",
            "Aléjese del ademe, contra el viento; nadie se asoma. Llame antes que nada a quien conoce los ácidos."))
        .from(List.of(dose.entry()));
  }
}
