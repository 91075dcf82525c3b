package steening.stage.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.QuantityField;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.well.Hole;
import steening.well.Permit;
import steening.well.Site;
import steening.well.Well;

/** Distances too short or not measured, wires too near, and a place that cannot be right. */
final class SiteFindings {
  /**
   * From an overhead line of up to 50 kV, and from one whose voltage is not known: 29 CFR 1926.1408, Table A, which is
   * about cranes; rigs alone have rules of their own that begin at 10 ft too (from memory). Drilling guides ask for 20
   * ft when the mast goes up (seen).
   */
  private static final Length NEVER_NEARER = Length.feet(10);

  private static final Length VOLTAGE_UNKNOWN = Length.feet(20);

  private SiteFindings() {}

  static List<Finding> of(Well well) {
    Setbacks setbacks = well.get(Setbacks.PART);
    List<Finding> findings = new ArrayList<>();
    for (Setbacks.Setback setback : setbacks.measured()) {
      tooShort(setback).ifPresent(findings::add);
      nearWires(setback).ifPresent(findings::add);
    }
    findings.addAll(MovedSetbacks.of(well));
    blank(well, setbacks).ifPresent(findings::add);
    Optional<Site.Place> place = well.get(Site.PART).place();
    if (place.isPresent()) {
      elsewhere(place.get().latitude(), SiteEntries.LATITUDE, place.get()).ifPresent(findings::add);
      elsewhere(place.get().longitude(), SiteEntries.LONGITUDE, place.get()).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Finding> tooShort(Setbacks.Setback setback) {
    if (!setback.isShort()) return Optional.empty();
    Figure measured = distance(setback.distance());
    Figure required = distance(setback.required());
    return Optional.of(Finding.of("site.setback-short", Weight.STOP, SiteStage.NAME, Phrase.of(
            "{0}: {1} measured, {2} required.",
            "{0}: {1} medidos, {2} exigidos.",
            setback.hazard().label(), measured, required))
        .comparing(measured, required)
        .so(Phrase.of(
            "Move the well and measure every distance again, or ask the authority before drilling.",
            "Mueva el pozo y mida de nuevo todas las distancias, o consulte a la autoridad antes de perforar."))
        .from(List.of(setback.entry())));
  }

  private static Optional<Finding> nearWires(Setbacks.Setback setback) {
    boolean near = setback.hazard() == Hazard.OVERHEAD_LINE && setback.distance().isLessThan(VOLTAGE_UNKNOWN);
    if (!near) return Optional.empty();
    Weight weight = setback.distance().isLessThan(NEVER_NEARER) ? Weight.STOP : Weight.LOOK;
    return Optional.of(Finding.of("site.overhead-line", weight, SiteStage.NAME, Phrase.of(
            "Overhead power line at {0}. Keep {1} up to 50 kV, {2} while the voltage is not known.",
            "Línea eléctrica aérea a {0}. Guarde {1} hasta 50 kV, {2} si no se conoce el voltaje.",
            distance(setback.distance()), distance(NEVER_NEARER), distance(VOLTAGE_UNKNOWN)))
        .comparing(distance(setback.distance()), distance(VOLTAGE_UNKNOWN))
        .because(Phrase.of(
            "Most drillers who died by electricity died by the rig touching a line.",
            "La mayoría de los perforadores muertos por electricidad murieron al tocar el equipo una línea."))
        .so(Phrase.of(
            "Mast down until the line's owner has said the voltage or cut the power. Local law decides.",
            "Mástil abajo hasta que el dueño de la línea diga el voltaje o la desconecte. Decide la ley local."))
        .from(List.of(setback.entry())));
  }

  /** Asked once the site is known and the job goes on: a permit, a hole, or some other distance. */
  private static Optional<Finding> blank(Well well, Setbacks setbacks) {
    boolean known = well.get(Site.PART).place().isPresent();
    boolean goingOn = well.get(Permit.PART).number().isPresent() || well.get(Hole.PART).isBegun();
    boolean asked = !setbacks.measured().isEmpty() || known && goingOn;
    boolean answered = setbacks.measured().stream().anyMatch(s -> s.hazard().isSewage());
    if (!asked || answered) return Optional.empty();
    return Optional.of(Finding.of("site.setback-blank", Weight.LOOK, SiteStage.NAME, Phrase.of(
            "No distance to a septic tank, an absorption field, a seepage pit or a cesspool is written down.",
            "No hay distancia anotada a fosa séptica, campo de absorción, pozo de absorción ni pozo negro."))
        .so(Phrase.of(
            "Measure it before the rig is set up, the neighbours' too.",
            "Mídala antes de colocar el equipo, también la de los vecinos.")));
  }

  private static Optional<Finding> elsewhere(Optional<Quantity> angle, QuantityField field, Site.Place place) {
    if (angle.isEmpty() || field.isUsual(angle.get())) return Optional.empty();
    return Optional.of(Finding.of("site.elsewhere", Weight.LOOK, SiteStage.NAME, Phrase.of(
            "{0} {1} is far from where the firm works; the address is {2}.",
            "{0} {1} queda lejos de donde trabaja la empresa; la dirección es {2}.",
            field.label(), new Figure(angle.get(), field.scale()), place.address()))
        .because(Phrase.of(
            "The minus sign of a western longitude missing?", "¿Falta el signo menos de la longitud oeste?"))
        .so(Phrase.of("Look at the point on a map.", "Vea el punto en un mapa."))
        .from(List.of(place.entry())));
  }

  private static Figure distance(Length length) {
    return new Figure(length, Scale.DISTANCE);
  }
}
