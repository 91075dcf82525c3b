package steening.stage.drilling;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import steening.bore.Reach;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.drilling.ahead.AheadSheet;
import steening.stage.drilling.fluid.FluidSheet;
import steening.stage.drilling.fluid.PitVolume;
import steening.stage.drilling.fluid.UpHoleVelocity;
import steening.stage.drilling.hole.HoleVolume;
import steening.stage.drilling.log.CuttingsLag;
import steening.stage.drilling.sieve.SieveSheet;
import steening.stage.drilling.trouble.TroubleSheet;
import steening.well.GroundLog;
import steening.well.Hole;
import steening.well.Stratum;
import steening.well.Well;

/** What drilling has to show. */
final class DrillingSheet {
  private static final Phrase LOG = Phrase.of("Driller's log", "Registro de perforación");
  private static final Phrase BLANK = Phrase.same("");
  private static final Phrase FROM = Phrase.of("From", "Desde");
  private static final Phrase TO = Phrase.of("To", "Hasta");
  private static final Phrase DEPTH = Phrase.of("Depth", "Profundidad");

  private DrillingSheet() {}

  static Sheet of(Well well) {
    Drilling drilling = well.get(Drilling.PART);
    Hole hole = well.get(Hole.PART);
    Length deepest = hole.depth().max(drilling.rodDepth());
    Sheet sheet = volumes(circulation(AheadSheet.on(Sheet.EMPTY, well), drilling, deepest), hole);
    Sheet logged = log(FluidSheet.on(rods(hole(sheet, hole), drilling), drilling), well.get(GroundLog.PART), LOG);
    Sheet sieved = TroubleSheet.on(AheadSheet.withYield(SieveSheet.on(logged, well), well), well);
    for (Well earlier : well.earlier()) {
      Phrase title = Phrase.of(
          "Driller's log of hole {0}", "Registro de perforación del barreno {0}", Integer.toString(earlier.number()));
      sieved = log(sieved, earlier.get(GroundLog.PART), title);
    }
    return sieved;
  }

  private static Sheet circulation(Sheet sheet, Drilling drilling, Length deepest) {
    if (drilling.rig().isEmpty()) return sheet;
    Drilling.Rig rig = drilling.rig().get();
    try {
      Outcome velocity = UpHoleVelocity.of(rig);
      Sheet with = sheet.line(UpHoleVelocity.VELOCITY.label(), velocity.figure("velocity"), velocity);
      if (!deepest.isMoreThan(Length.ZERO)) return with;
      Outcome lag = CuttingsLag.of(rig, deepest);
      Phrase label =
          Phrase.of("lag time of the cuttings from {0}", "tiempo de retardo de los recortes desde {0}", depth(deepest));
      return with.line(label, lag.figure("lag"), lag);
    } catch (NotReckonable rodsAsWideAsTheHole) {
      return sheet;
    }
  }

  private static Sheet volumes(Sheet sheet, Hole hole) {
    if (!hole.isBegun()) return sheet;
    Sheet with = sheet.line(Phrase.of("hole depth", "profundidad del barreno"), depth(hole.depth()));
    try {
      Outcome volume = HoleVolume.of(hole.bore(), hole.depth());
      Outcome pit = PitVolume.of(hole.bore(), hole.depth());
      return with
          .line(HoleVolume.VOLUME.label(), volume.figure("volume"), volume)
          .line(HoleVolume.LIQUID.label(), volume.figure("liquid"), volume)
          .line(PitVolume.PIT.label(), pit.figure("pit"), pit);
    } catch (NotReckonable diameterNotKnownEverywhere) {
      return with;
    }
  }

  private static Sheet hole(Sheet sheet, Hole hole) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Reach reach : hole.bore().reaches()) {
      rows.add(List.of(depth(reach.from()), depth(reach.to()), new Figure(reach.diameter(), Scale.DIAMETER)));
    }
    return sheet.table(
        Phrase.of("Hole", "Barreno"), List.of(FROM, TO, Phrase.of("Diameter", "Diámetro")), rows);
  }

  private static Sheet rods(Sheet sheet, Drilling drilling) {
    List<List<Shown>> rows = new ArrayList<>();
    Drilling.Rod before = null;
    for (Drilling.Rod rod : drilling.rods()) {
      Shown expected = before == null ? BLANK : depth(before.depth().plus(rod.length()));
      rows.add(List.of(Phrase.same(Integer.toString(rod.number())), depth(rod.length()), depth(rod.depth()), expected));
      before = rod;
    }
    return sheet.table(
        Phrase.of("Rods", "Tubería de perforación"),
        List.of(
            Phrase.of("Rod", "Tubo"),
            Phrase.of("Length", "Longitud"),
            DEPTH,
            Phrase.of("Expected, if all the way down", "Esperada, si bajó entero")),
        rows);
  }

  private static Sheet log(Sheet sheet, GroundLog log, Phrase title) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Stratum stratum : log.strata()) {
      rows.add(List.of(
          depth(stratum.from()),
          depth(stratum.to()),
          stratum.material().label(),
          Phrase.same(stratum.material().symbols()),
          stratum.waterBearing() ? Phrase.of("yes", "sí") : BLANK,
          stratum.looks()));
    }
    return sheet.table(
        title,
        List.of(
            FROM,
            TO,
            Phrase.of("Material", "Material"),
            Phrase.of("USCS, by the word", "SUCS, por la palabra"),
            Phrase.of("Water", "Agua"),
            Phrase.of("As it looked", "Cómo se veía")),
        rows);
  }
}
