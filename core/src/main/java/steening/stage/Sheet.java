package steening.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.drawing.Chart;
import steening.language.Phrase;
import steening.language.Shown;
import steening.reckoning.Outcome;

/**
 * What a stage has to show, for a page and for the report alike.
 *
 * @param cautions where the work can hurt someone; for those who do it, so not in the report
 */
public record Sheet(List<Line> lines, List<Table> tables, List<Chart> charts, List<Phrase> cautions) {
  private static final int FIRST = 30;
  private static final int LAST = 60;
  private static final Phrase LEFT_OUT = Phrase.of(
      "{0} more rows lie between; the journal has them.", "Entre estos hay {0} renglones más; están en la bitácora.");

  public static final Sheet EMPTY = new Sheet(List.of(), List.of(), List.of(), List.of());

  public Sheet {
    lines = List.copyOf(lines);
    tables = List.copyOf(tables);
    charts = List.copyOf(charts);
    cautions = List.copyOf(cautions);
  }

  /** One figure or fact, with the working it can be opened to. */
  public record Line(Phrase label, Shown value, Optional<Outcome> working) {}

  /** Rows of things to show under heads. */
  public record Table(Phrase title, List<Phrase> heads, List<List<Shown>> rows) {
    public Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }

    /** The rows that a person reads: all, or where they are very many those at the beginning. */
    public List<List<Shown>> first() {
      return between() == 0 ? rows : rows.subList(0, FIRST);
    }

    /** The rows at the end, where those between the beginning and them are left out. */
    public List<List<Shown>> last() {
      return between() == 0 ? List.of() : rows.subList(rows.size() - LAST, rows.size());
    }

    /** What stands in place of the rows left out; empty where none are. */
    public Optional<Phrase> gap() {
      return between() == 0 ? Optional.empty() : Optional.of(LEFT_OUT.about(Integer.toString(between())));
    }

    private int between() {
      return Math.max(0, rows.size() - FIRST - LAST);
    }
  }

  public boolean isEmpty() {
    return lines.isEmpty() && tables.isEmpty() && charts.isEmpty() && cautions.isEmpty();
  }

  public Sheet line(Phrase label, Shown value) {
    return and(new Line(label, value, Optional.empty()));
  }

  public Sheet line(Phrase label, Shown value, Outcome working) {
    return and(new Line(label, value, Optional.of(working)));
  }

  public Sheet table(Phrase title, List<Phrase> heads, List<List<Shown>> rows) {
    if (rows.isEmpty()) return this;
    List<Table> more = new ArrayList<>(tables);
    more.add(new Table(title, heads, rows));
    return new Sheet(lines, more, charts, cautions);
  }

  public Sheet chart(Chart chart) {
    List<Chart> more = new ArrayList<>(charts);
    more.add(chart);
    return new Sheet(lines, tables, more, cautions);
  }

  /** The same with cautions. */
  public Sheet cautioning(List<Phrase> more) {
    List<Phrase> all = new ArrayList<>(cautions);
    all.addAll(more);
    return new Sheet(lines, tables, charts, all);
  }

  private Sheet and(Line line) {
    List<Line> more = new ArrayList<>(lines);
    more.add(line);
    return new Sheet(more, tables, charts, cautions);
  }
}
