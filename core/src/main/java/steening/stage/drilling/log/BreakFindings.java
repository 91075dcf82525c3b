package steening.stage.drilling.log;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Dimension;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.GroundLog;
import steening.well.Stratum;
import steening.well.Well;

/** A rod that went down much faster than the others where the log shows neither sand nor a change. */
public final class BreakFindings {
  /** Faster than most rods by this is softer ground. Common practice, no source. */
  private static final double FASTER = 2;

  /** A few rods must tell what is usual. Common practice, no source. */
  private static final int ENOUGH = 4;

  /** Less than this drilled tells nothing. Common practice, no source. */
  private static final Length WORTH_TIMING = Length.feet(5);

  private BreakFindings() {}

  /** One rod's stretch and rate. */
  private record Timed(Drilling.Rod before, Drilling.Rod rod, Outcome outcome) {
    double rate() {
      return outcome.quantity(Penetration.RATE.name()).coherent();
    }
  }

  public static List<Finding> of(Well well) {
    List<Timed> timed = timed(well.get(Drilling.PART).rods());
    List<Finding> findings = new ArrayList<>();
    if (timed.size() < ENOUGH) return findings;
    List<Double> rates = timed.stream().map(Timed::rate).sorted().toList();
    double usual = rates.get((rates.size() - 1) / 2);
    GroundLog log = well.get(GroundLog.PART);
    for (Timed one : timed) {
      if (one.rate() > FASTER * usual && isPlain(log, one)) findings.add(finding(one, usual));
    }
    return findings;
  }

  private static List<Timed> timed(List<Drilling.Rod> rods) {
    List<Timed> timed = new ArrayList<>();
    for (int i = 1; i < rods.size(); i++) {
      Drilling.Rod before = rods.get(i - 1);
      Drilling.Rod rod = rods.get(i);
      if (rod.depth().minus(before.depth()).isLessThan(WORTH_TIMING)) continue;
      Optional<Outcome> rate = Penetration.between(before, rod);
      rate.ifPresent(r -> timed.add(new Timed(before, rod, r)));
    }
    return timed;
  }

  /** Logged already, and as one sort of ground that holds no screen. */
  private static boolean isPlain(GroundLog log, Timed one) {
    List<Stratum> strata = log.between(one.before().depth(), one.rod().depth());
    boolean logged = !log.bottom().isLessThan(one.rod().depth());
    return logged && strata.size() == 1 && !strata.get(0).material().givesWater() && !strata.get(0).waterBearing();
  }

  private static Finding finding(Timed one, double usual) {
    Figure rate = one.outcome().figure(Penetration.RATE.name());
    Figure most = new Figure(new Measure(Dimension.VELOCITY, usual), Scale.PENETRATION);
    return Finding.of(
            "drilling.penetration-break", Weight.NOTE, DrillingStage.NAME,
            Phrase.of(
                "From {0} to {1} the bit went at {2}, elsewhere at about {3}; the log shows no change there.",
                "De {0} a {1} la barrena avanzó a {2}, en lo demás a unos {3}; el registro no muestra cambio.",
                depth(one.before().depth()), depth(one.rod().depth()), rate, most))
        .comparing(rate, most)
        .because(Phrase.of(
            "Softer ground: a thin sand may have been missed, its cuttings smeared.",
            "Terreno más blando: pudo pasarse una arena delgada, con los recortes mezclados."))
        .so(Phrase.of(
            "Look at the cuttings of that stretch again, with their lag, or log it as it is.",
            "Vea otra vez los recortes de ese tramo, con su retardo, o regístrelo como está."))
        .shownBy(one.outcome())
        .from(List.of(one.before().entry(), one.rod().entry()));
  }
}
