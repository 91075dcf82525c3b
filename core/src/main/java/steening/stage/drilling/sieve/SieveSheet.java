package steening.stage.drilling.sieve;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.drawing.Chart;
import steening.ground.GrainSizeConductivity;
import steening.ground.SieveCurve;
import steening.ground.Sieves;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Scale;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Sieved;
import steening.well.Well;

/** What the sieved samples have to show: their sizes, their curves, and roughly what water they would give. */
public final class SieveSheet {
  private static final Phrase BLANK = Phrase.same("");
  private static final List<String> SIZES = List.of("d10", "d30", "d50", "d60", "d90", "cu", "cc");
  private static final List<String> CHOICES =
      List.of("pack-least", "pack-most", "natural-slot-forty", "natural-slot-fifty");

  private SieveSheet() {}

  public static Sheet on(Sheet sheet, Well well) {
    Sheet with = sheet;
    List<List<Shown>> sizes = new ArrayList<>();
    List<List<Shown>> choices = new ArrayList<>();
    for (Sieved.Sample sample : well.get(Sieved.PART).samples()) {
      Optional<Outcome> curve =
          Outcome.ifReckonable(() -> SieveCurve.of(sample.body()));
      if (curve.isEmpty()) continue;
      with = water(sizes(with, sample, curve.get()), sample, curve.get()).chart(chart(sample));
      sizes.add(row(sample, curve.get(), SIZES));
      choices.add(row(sample, curve.get(), CHOICES));
    }
    return with
        .table(Phrase.of("Sieve analyses", "Análisis granulométricos"), heads(SIZES), sizes)
        .table(Phrase.of("Pack and slot by sieve", "Filtro y ranura según el tamiz"), heads(CHOICES), choices);
  }

  private static Sheet sizes(Sheet sheet, Sieved.Sample sample, Outcome curve) {
    if (curve.shown("d30").isEmpty()) return sheet;
    Phrase label = Phrase.of(
        "grain that 30 % are finer than, {0} to {1}", "grano del que el 30 % es más fino, {0} a {1}",
        depth(sample.from()), depth(sample.to()));
    return sheet.line(label, curve.figure("d30"), curve);
  }

  private static Sheet water(Sheet sheet, Sieved.Sample sample, Outcome curve) {
    Optional<Outcome> reckoned = GrainSizeConductivity.of(curve, sample.to().minus(sample.from()));
    if (reckoned.isEmpty()) return sheet;
    Outcome water = reckoned.get();
    Phrase label = Phrase.of(
        "specific capacity to hope for, {0} to {1}, if it is all screened",
        "capacidad específica esperable, {0} a {1}, si se enrejilla todo", depth(sample.from()), depth(sample.to()));
    Phrase range = Phrase.of(
        "{0} to {1}", "{0} a {1}", water.figure("specific-capacity-least"), water.figure("specific-capacity-most"));
    return sheet.line(label, range, water);
  }

  private static List<Phrase> heads(List<String> names) {
    List<Phrase> heads = new ArrayList<>(List.of(Phrase.of("From", "Desde"), Phrase.of("To", "Hasta")));
    for (String name : names) heads.add(names.equals(SIZES) ? symbol(name) : label(name));
    return heads;
  }

  private static Phrase symbol(String name) {
    return Phrase.same((char) (name.charAt(0) - 'a' + 'A') + name.substring(1));
  }

  private static Phrase label(String name) {
    return SieveCurve.RECKONING.answers().stream().filter(a -> a.name().equals(name)).findFirst().orElseThrow().label();
  }

  private static List<Shown> row(Sieved.Sample sample, Outcome curve, List<String> names) {
    List<Shown> row = new ArrayList<>(List.of(depth(sample.from()), depth(sample.to())));
    for (String name : names) row.add(curve.shown(name).orElse(BLANK));
    return row;
  }

  /** The usual semi-logarithmic axes. */
  private static Chart chart(Sieved.Sample sample) {
    List<Chart.Point> points = Sieves.of(Inputs.of(sample.body())).all().stream()
        .map(s -> new Chart.Point(s.opening().in(Scale.GRAIN.us()), s.finer().in(Scale.SHARE.us()), true))
        .toList();
    return new Chart(
        Phrase.of(
            "Grain size, {0} to {1}", "Granulometría, {0} a {1}", depth(sample.from()), depth(sample.to())),
        new Chart.Axis(Phrase.of("grain size", "tamaño del grano"), Scale.GRAIN, true, false),
        new Chart.Axis(Sieves.FINER.label(), Scale.SHARE, false, false),
        points,
        Optional.of(points));
  }
}
