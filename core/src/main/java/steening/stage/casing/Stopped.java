package steening.stage.casing;

import static steening.stage.casing.CasingFindings.depth;

import java.util.List;
import java.util.Optional;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.reckoning.Outcome;
import steening.reckoning.Term;
import steening.stage.Sheet;
import steening.well.CasingString;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Part;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.Stratum;
import steening.well.Well;

/**
 * The string hangs on a ledge, or floats: it went no further with so much of it still above the ground.
 *
 * @param above what stands above the ground
 * @param lowered length of the string then; a piece more, and it has moved on
 */
record Stopped(Length above, Length lowered, String entry) {
  static final Part<Optional<Stopped>> PART = Part.ofHole("stopped", Optional.empty());

  static final QuantityField ABOVE = QuantityField.of(
          "above", Scale.DEPTH, Phrase.of("pipe above the ground", "tubo sobre el terreno"), "7.9 ft", "2.4 m")
      .between("0 ft", "100 ft").usually("0.2 ft", "42 ft");
  static final Kind KIND =
      Kind.of("string-stopped", Phrase.of("String stopped going down", "La columna dejó de bajar"), ABOVE);

  /** Less than this of clay before a screen is the error of a log. Common practice, no source. */
  private static final Length TENTH = Length.of(0.1, Unit.FOOT);

  private static final String HIGH = "high";
  private static final String CUT = "cut";

  static Well fold(Well well, Entry entry) {
    Length lowered = well.get(CasingString.PART).length();
    return ABOVE.length(entry.body())
        .map(above -> well.with(PART, Optional.of(new Stopped(above, lowered, entry.id())))).orElse(well);
  }

  /** Where it hangs still; none once it is set or has moved on. */
  private static Optional<Stopped> still(Well well) {
    CasingString string = well.get(CasingString.PART);
    return well.get(PART).filter(s -> !string.isSet() && s.lowered.equals(string.length()));
  }

  static Sheet on(Sheet sheet, Well well) {
    return still(well).map(s -> sheet.line(
        Phrase.of("stopped, still above the ground", "detenida, aún sobre el terreno"), depth(s.above))).orElse(sheet);
  }

  static Optional<Finding> finding(Well well) {
    Optional<Length> target = well.get(Plan.PART).stringBottom()
        .or(() -> Optional.of(well.get(Hole.PART).depth()).filter(d -> d.isMoreThan(Length.ZERO)));
    return still(well).flatMap(s -> target.flatMap(to -> s.high(well, to)));
  }

  private Optional<Finding> high(Well well, Length target) {
    Outcome outcome = outcome(well, target);
    if (!((Length) outcome.quantity(HIGH)).isMoreThan(ToCome.AGREES)) return Optional.empty();
    List<Screen> screens = well.get(CasingString.PART).set(above).screens();
    Optional<Phrase> clay = screens.stream().flatMap(s -> against(well, s).stream()).findFirst();
    Phrase stands = Phrase.of(
        "The string stopped {0} high: it ends at {1}, and was to end at {2}.",
        "La columna se detuvo {0} arriba: termina a {1} y debía terminar a {2}.",
        outcome.figure(HIGH), outcome.figure(StringLength.BOTTOM.name()), depth(target));
    Phrase text = clay
        .or(() -> screens.stream().findFirst().map(s -> Phrase.of(
            "The screen would stand from {0} to {1}.", "La rejilla quedaría de {0} a {1}.",
            depth(s.top()), depth(s.bottom()))))
        .map(where -> Phrase.of("{0} {1}", "{0} {1}", stands, where)).orElse(stands);
    return Optional.of(Finding.of(
            "casing.stopped-high", clay.isPresent() ? Weight.STOP : Weight.LOOK, CasingStage.NAME, text)
        .comparing(outcome.figure(StringLength.BOTTOM.name()), depth(target))
        .because(Phrase.of(
            "A ledge, fill on the bottom, or a closed string that floats.",
            "Un escalón, relleno en el fondo, o una columna cerrada que flota."))
        .so(next(outcome, clay.isPresent()))
        .shownBy(outcome).from(List.of(entry)));
  }

  private static Phrase next(Outcome outcome, boolean clay) {
    Phrase work = Phrase.of(
        "Fill it with water, turn it and wash it down; no blows on plastic. If it stays, pull it and ream.",
        "Llénela de agua, gírela y lávela hacia abajo; sin golpes al plástico. Si no baja, sáquela y amplíe.");
    if (clay) return Phrase.of("{0} Do not leave it here.", "{0} No la deje aquí.", work);
    boolean cut = ((Length) outcome.quantity(CUT)).isMoreThan(Length.ZERO);
    return cut ? Phrase.of("{0} Left here, {1} is cut off.", "{0} Si queda aquí, se cortan {1}.", work,
        outcome.figure(CUT)) : work;
  }

  /** The screen against the first tight ground. */
  private static Optional<Phrase> against(Well well, Screen screen) {
    for (Stratum stratum : well.get(GroundLog.PART).between(screen.top(), screen.bottom())) {
      Length from = screen.top().max(stratum.from());
      Length to = screen.bottom().min(stratum.to());
      if (!stratum.material().isTight() || !to.minus(from).isMoreThan(TENTH)) continue;
      return Optional.of(Phrase.of(
          "The screen would stand from {0} to {1}, against {2} from {3} to {4}.",
          "La rejilla quedaría de {0} a {1}, frente a {2} de {3} a {4}.",
          depth(screen.top()), depth(screen.bottom()), stratum.material().label(), depth(from), depth(to)));
    }
    return Optional.empty();
  }

  private Outcome outcome(Well well, Length target) {
    Outcome string = StringLength.of(well.get(CasingString.PART), above);
    Length stickUp = well.get(Plan.PART).length(Plan.STICK_UP).orElse(Length.ZERO);
    Term high = Term.given("G", Phrase.of("where it was to end", "donde debía terminar"), Scale.DEPTH, target)
        .minus(string.term(StringLength.BOTTOM.name()))
        .named("h", Phrase.of("too high by", "de más arriba"), Scale.DEPTH);
    Term cut = Term.given("a", Plan.STICK_UP.label(), Scale.DEPTH, above)
        .minus(Term.given("a₀", Phrase.of("planned stick-up", "altura planeada"), Scale.DEPTH, stickUp))
        .named("k", Phrase.of("to cut off, left there", "por cortar, si queda ahí"), Scale.DEPTH);
    return string.with(HIGH, high).with(CUT, cut);
  }
}
