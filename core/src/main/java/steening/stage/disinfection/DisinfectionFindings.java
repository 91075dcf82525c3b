package steening.stage.disinfection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.well.Residual;
import steening.well.Well;

/** Whether the last dose makes what was wanted, and stays long enough. */
final class DisinfectionFindings {
  /** Published tables give up to a third more than the exact amount; half as much again is a slip (C14, seen). */
  private static final double FAR_OVER = 1.5;
  private static final double BELOW = 0.9;

  /** An amount this close to another product's dose was probably worked out for that product. */
  private static final double ALIKE = 0.06;

  private DisinfectionFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Optional<Dosing.Dose> last = well.get(Dosing.PART).last();
    if (last.isEmpty()) return findings;
    Dosing.Dose dose = last.get();
    measured(dose).ifPresent(findings::add);
    concentration(well, dose).ifPresent(findings::add);
    unchecked(well, dose).ifPresent(findings::add);
    contact(dose).ifPresent(findings::add);
    PhFindings.of(dose).ifPresent(findings::add);
    usedUp(well, dose).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> measured(Dosing.Dose dose) {
    if (dose.measured().isPresent()) return Optional.empty();
    return Optional.of(found(
            "disinfection.amount-missing", Weight.LOOK,
            dose.isDry()
                ? Phrase.of(
                    "A dry product is entered by its weight, and by nothing else.",
                    "Un producto seco se registra por su peso, y por nada más.")
                : Phrase.of(
                    "Bleach is entered by its amount, and by nothing else.",
                    "El blanqueador se registra por su volumen, y por nada más."),
            dose)
        .so(Phrase.of("Correct the entry.", "Corrija el registro.")));
  }

  private static Optional<Finding> concentration(Well well, Dosing.Dose dose) {
    Optional<Outcome> reached = Reached.of(well, dose);
    if (reached.isEmpty()) return Optional.empty();
    Quantity made = reached.get().quantity(Reached.CONCENTRATION);
    double ratio = made.coherent() / dose.target().coherent();
    if (ratio >= BELOW && ratio <= FAR_OVER) return Optional.empty();
    boolean over = ratio > 1;
    Finding finding = found(
            over ? "disinfection.over-target" : "disinfection.below-target", Weight.LOOK,
            Phrase.of(
                "{0} at {1} makes {2} of chlorine in this well; {3} was wanted.",
                "{0} al {1} hacen {2} de cloro en este pozo; se querían {3}.",
                dose.shown(), Products.label(dose.strength()), concentration(made), concentration(dose.target())),
            dose)
        .comparing(concentration(made), concentration(dose.target()))
        .shownBy(reached.get());
    Optional<Quantity> other = meantFor(dose, ratio);
    if (other.isPresent()) {
      finding = finding.because(Phrase.of(
          "It is the amount for a product of {0}.", "Es la cantidad para un producto al {0}.",
          Products.label(other.get())));
    }
    return Optional.of(right(finding, well, dose, over));
  }

  /** The strength on another label that this amount would be right for. */
  private static Optional<Quantity> meantFor(Dosing.Dose dose, double ratio) {
    if (dose.isDry()) return Optional.empty();
    return Products.BLEACH.stream()
        .filter(p -> Math.abs(ratio * p.coherent() / dose.strength().coherent() - 1) < ALIKE)
        .findFirst();
  }

  private static Finding right(Finding finding, Well well, Dosing.Dose dose, boolean over) {
    WaterInWell water = WaterInWell.of(well);
    Optional<Figure> right = dose.isDry()
        ? water.dry(dose.strength(), dose.target()).map(o -> o.figure(DryChlorineDose.DOSE.name()))
        : water.bleach(dose.strength(), dose.target()).map(o -> o.figure(DisinfectionDose.DOSE.name()));
    if (right.isEmpty()) return finding;
    return finding.so(over
        ? Phrase.of(
            "{0} would do. Check the label; too strong a dose attacks pump and pipe and must be flushed longer.",
            "Bastan {0}. Revise la etiqueta; una dosis muy fuerte ataca bomba y tubería y hay que purgar más tiempo.",
            right.get())
        : Phrase.of("{0} is needed in all. Check the label and add the rest.",
            "Hacen falta {0} en total. Revise la etiqueta y añada lo que falta.", right.get()));
  }

  private static Optional<Finding> unchecked(Well well, Dosing.Dose dose) {
    if (dose.measured().isEmpty() || Reached.of(well, dose).isPresent()) return Optional.empty();
    return Optional.of(found(
            "disinfection.unchecked", Weight.NOTE,
            Phrase.of(
                "The dose is not checked: the water in the well is not known.",
                "La dosis no se revisó: no se conoce el agua del pozo."),
            dose)
        .so(Phrase.of("Enter the static water level and the casing.", "Registre el nivel estático y el ademe.")));
  }

  private static Optional<Finding> contact(Dosing.Dose dose) {
    double hours = dose.contact().in(Unit.HOUR);
    double asked = ContactRule.hours(dose.target().in(Unit.MILLIGRAM_PER_LITRE));
    if (hours >= asked) return Optional.empty();
    Figure least = hours(asked);
    return Optional.of(found(
            "disinfection.contact-short", Weight.NOTE,
            Phrase.of(
                "Contact of {0} with {1}. {2}", "Contacto de {0} con {1}. {2}",
                hours(hours), concentration(dose.target()), ContactRule.DIFFERING),
            dose)
        .comparing(hours(hours), least)
        .so(Phrase.of("See what the local code asks for.", "Vea qué pide el reglamento local.")));
  }

  private static Optional<Finding> usedUp(Well well, Dosing.Dose dose) {
    Optional<Residual.Reading> reading = well.get(Residual.PART).standing().filter(Residual.Reading::isZero);
    if (reading.isEmpty()) return Optional.empty();
    double after = reading.get().at().minutesSince(dose.at()) / 60;
    if (after < 0 || after >= dose.contact().in(Unit.HOUR)) return Optional.empty();
    return Optional.of(found(
            "disinfection.used-up", Weight.LOOK,
            Phrase.of(
                "No chlorine is left after {0}; it was to stay {1}.",
                "No queda cloro después de {0}; debía quedar {1}.",
                hours(after), hours(dose.contact().in(Unit.HOUR))),
            dose)
        .because(Phrase.of(
            "Iron, mud or slime used it up, or it was pumped out.",
            "Lo consumieron hierro, lodo o limo biológico, o se bombeó fuera."))
        .so(Phrase.of("Clean the well further and dose again.", "Limpie más el pozo y dosifique otra vez."))
        .from(List.of(dose.entry(), reading.get().entry())));
  }

  private static Finding found(String code, Weight weight, Phrase text, Dosing.Dose dose) {
    return Finding.of(code, weight, DisinfectionStage.NAME, text).from(List.of(dose.entry()));
  }

  private static Figure concentration(Quantity quantity) {
    return new Figure(quantity, Scale.CONCENTRATION);
  }

  private static Figure hours(double hours) {
    return new Figure(new Measure(Dimension.TIME, Unit.HOUR.toCoherent(hours)), Scale.HOURS);
  }
}
