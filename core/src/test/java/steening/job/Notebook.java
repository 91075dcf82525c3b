package steening.job;

import java.util.ArrayList;
import java.util.List;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.language.Reader;
import steening.stage.Stage;
import steening.well.Well;

/** A well's journal as a test writes it, at the hours it says. The bodies are checked as those of a form are. */
public final class Notebook {
  private final List<Entry> entries = new ArrayList<>();
  private Moment now = Moment.parse("2026-05-12T08:00:00-05:00");

  /** What follows happened from this hour on, a minute apart. */
  public Notebook at(String moment) {
    now = Moment.parse(moment);
    return this;
  }

  /** Names and texts in turn. The id of an entry is its kind and its place in the notebook, from 1. */
  public Notebook write(String kind, String... namesAndTexts) {
    Kind declared = Stages.kind(kind).orElseThrow(() -> new AssertionError("no kind " + kind));
    Body body = Body.of(namesAndTexts);
    List<Phrase> faults = declared.faults(body);
    if (!faults.isEmpty()) throw new AssertionError(kind + ": " + faults.get(0).shownTo(Reader.US_ENGLISH));
    int place = entries.size() + 1;
    entries.add(new Entry(kind + "-" + place, "w1", "d1", place, "crew", now, now, kind, 1, body, List.of()));
    now = now.plusMinutes(1);
    return this;
  }

  public Well well() {
    return Job.of("w1", Journal.of(entries)).well();
  }

  public List<Finding> findings(String stage) {
    return stage(stage).findings(well());
  }

  public List<String> codes(String stage) {
    return findings(stage).stream().map(Finding::code).toList();
  }

  /** The one finding with this code. */
  public Finding finding(String code) {
    List<Finding> found = findings(code.split("\\.")[0]).stream().filter(f -> f.code().equals(code)).toList();
    if (found.size() != 1) throw new AssertionError(code + " was found " + found.size() + " times");
    return found.get(0);
  }

  private static Stage stage(String name) {
    return Stages.named(name).orElseThrow();
  }
}
