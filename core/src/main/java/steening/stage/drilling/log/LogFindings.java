package steening.stage.drilling.log;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.stage.drilling.DrillingStage;
import steening.well.GroundLog;
import steening.well.Stratum;
import steening.well.Well;

/** Gaps and overlaps of the driller's log. */
public final class LogFindings {
  /** A log is kept to the tenth of a foot at best. Common practice, no source. */
  private static final Length TENTH = Length.of(0.1, Unit.FOOT);

  private LogFindings() {}

  public static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    Length end = Length.ZERO;
    String above = "";
    for (Stratum stratum : well.get(GroundLog.PART).strata()) {
      if (stratum.from().minus(end).isMoreThan(TENTH)) {
        findings.add(finding(
            "drilling.log-gap",
            Phrase.of(
                "Nothing is logged between {0} and {1}.", "No hay registro entre {0} y {1}.",
                depth(end), depth(stratum.from())),
            above, stratum.entry()));
      } else if (end.minus(stratum.from()).isMoreThan(TENTH)) {
        findings.add(finding(
            "drilling.log-overlap",
            Phrase.of(
                "Two log entries share {0} to {1}.", "Dos registros comparten de {0} a {1}.",
                depth(stratum.from()), depth(end.min(stratum.to()))),
            above, stratum.entry()));
      }
      if (stratum.to().isMoreThan(end)) {
        end = stratum.to();
        above = stratum.entry();
      }
    }
    return findings;
  }

  private static Finding finding(String code, Phrase text, String above, String entry) {
    return Finding.of(code, Weight.LOOK, DrillingStage.NAME, text)
        .so(Phrase.of(
            "Correct the log: the report prints it as it is.",
            "Corrija el registro: el informe lo imprime tal como está."))
        .from(above.isEmpty() ? List.of(entry) : List.of(above, entry));
  }
}
