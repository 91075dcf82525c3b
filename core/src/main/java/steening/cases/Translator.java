package steening.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import steening.language.Phrase;

/**
 * How one file, or several alike, become cases.
 *
 * @param files names of files, without folders
 * @param rows the path of the rows in a JSON text; a table has but one place for them
 * @param id a template for the ids of the cases
 * @param expected the path under which a row keeps what is expected, if it does: what no translation asks for there is
 *     said to be not covered
 * @param lists to look texts up in, by name
 * @param translations all that fit a row are used
 * @param reason why the whole file is not covered
 */
record Translator(
    List<String> files,
    String rows,
    String id,
    String expected,
    Map<String, Map<String, String>> lists,
    List<Translation> translations,
    Optional<Phrase> reason) {
  private static final Phrase UNKNOWN =
      Phrase.of("nothing here says what such a row is", "nada dice aquí qué es este renglón");
  private static final Phrase EMPTY =
      Phrase.of("the row has none of the answers", "el renglón no tiene ninguna respuesta");

  boolean isFor(String file) {
    return files.contains(file);
  }

  List<Verdict> judge(String file, String text) {
    if (reason.isPresent()) return List.of(Verdict.notCovered(CaseBook.name(file), file, "", reason.get()));
    List<Row> found = file.endsWith(".csv") ? CsvRow.rows(text) : JsonRow.rows(CaseBook.parsed(text), rows);
    List<Verdict> verdicts = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) verdicts.addAll(judge(file, found.get(i), i + 1));
    return verdicts;
  }

  private List<Verdict> judge(String file, Row row, int number) {
    String name = new Template(id).fill(row, lists).orElse("row " + number);
    List<Verdict> verdicts = new ArrayList<>();
    Watched watched = new Watched(row, new TreeSet<>());
    boolean fitted = false;
    for (Translation translation : translations) {
      if (!translation.fits(row, lists)) continue;
      fitted = true;
      if (translation.reckoning().isEmpty()) verdicts.add(Verdict.notCovered(name, file, "", translation.reason()));
      else translation.of(name, watched, lists).ifPresent(c -> verdicts.addAll(Trial.of(c, file)));
    }
    if (verdicts.isEmpty()) verdicts.add(Verdict.notCovered(name, file, "", fitted ? EMPTY : UNKNOWN));
    boolean reckoned = !watched.asked.isEmpty();
    if (reckoned && !expected.isEmpty()) verdicts.addAll(unasked(name, file, watched));
    return verdicts;
  }

  private List<Verdict> unasked(String name, String file, Watched row) {
    List<Verdict> verdicts = new ArrayList<>();
    for (String answer : row.names(expected)) {
      String path = expected + "." + answer;
      if (row.asked.stream().noneMatch(asked -> asked.equals(path) || asked.startsWith(path + "."))) {
        Phrase nobody = Phrase.of("no reckoning answers {0}", "ningún cálculo responde {0}", answer);
        verdicts.add(Verdict.notCovered(name + " " + answer, file, "", nobody));
      }
    }
    return verdicts;
  }

  /** A row that remembers what it was asked for. */
  private record Watched(Row row, Set<String> asked) implements Row {
    @Override
    public Optional<String> text(String name) {
      asked.add(name);
      return row.text(name);
    }

    @Override
    public List<String> names(String name) {
      return row.names(name);
    }
  }
}
