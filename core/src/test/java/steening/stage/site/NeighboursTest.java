package steening.stage.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.ground.Outlook;
import steening.job.Notebook;
import steening.stage.Sheet;
import steening.well.Neighbours;

/** Neighbours' logs as they are written down, and what becomes of them: own scenario, arithmetic checked by hand. */
class NeighboursTest {
  @Test
  void fiveLogsMakeAForecast() {
    Outlook wanted = Outlook.of(logs().well(), Outlook.WANTED).orElseThrow();
    assertThat(wanted.said().shownTo(Hands.US))
        .isEqualTo("102.73 ft, 9 times in 10 between 94.01 ft and 111.44 ft; chance that there is one 85.7 %");
    assertThat(wanted.said().shownTo(Hands.SPANISH))
        .isEqualTo("31.31 m, 9 de 10 veces entre 28.66 m y 33.97 m; probabilidad de que la haya 85.7 %");
    assertThat(wanted.entries()).hasSize(5);
    assertThat(logs().codes("site")).isEmpty();
    assertThat(line(logs(), "the same, all wells weighed alike"))
        .isEqualTo("103.80 ft, 9 times in 10 between 94.70 ft and 112.90 ft");
  }

  @Test
  void aWellThatDidNotFindItLowersTheChance() {
    Notebook missed = logs().write("neighbour", "neighbour", "F", "distance", "0.8 mi", "found", "no");
    assertThat(Outlook.of(missed.well(), 1).orElseThrow().chance().coherent()).isEqualTo(6.0 / 8);
  }

  @Test
  void ofOneSandInOneWellTheLatestHolds() {
    Notebook twice = logs().write(
        "neighbour", "neighbour", "a", "distance", "0.3 mi", "elevation", "221 ft", "found", "yes", "top", "105 ft");
    assertThat(twice.well().get(Neighbours.PART).of(1)).hasSize(5);
    Notebook deeper = twice.write(
        "neighbour", "neighbour", "A", "distance", "0.3 mi", "sand", "2", "found", "yes", "top", "150 ft");
    assertThat(deeper.well().get(Neighbours.PART).logs()).hasSize(6);
  }

  @Test
  void oneLogIsNoForecastAndAnEnteredOneStandsIn() {
    Notebook one = ground().write(
        "neighbour", "neighbour", "A", "distance", "0.3 mi", "elevation", "221 ft", "found", "yes", "top", "105 ft");
    assertThat(Outlook.of(one.well(), 1)).isEmpty();
    Notebook entered = one.write(
        "forecast", "likely", "103 ft", "shallowest", "94 ft", "deepest", "112 ft", "chance", "80 %");
    assertThat(Outlook.of(entered.well(), 1).orElseThrow().said().shownTo(Hands.US)).startsWith("103.00 ft, 9 times");
    assertThat(Outlook.of(entered.well(), 2)).isEmpty();
    assertThat(entered.codes("site")).isEmpty();
  }

  @Test
  void logsThatCannotBeReckonedWithAreNamed() {
    Notebook bare = new Notebook().write("site", "address", "5 Heron Lane").write(
        "neighbour", "neighbour", "A", "distance", "0.3 mi", "elevation", "221 ft", "found", "yes", "top", "105 ft");
    assertThat(bare.codes("site")).containsExactly("site.elevation-unknown");
    Notebook unlevelled = ground().write(
        "neighbour", "neighbour", "A", "distance", "0.3 mi", "found", "yes", "top", "105 ft");
    assertThat(unlevelled.codes("site")).containsExactly("site.neighbour-elevation-unknown");
    Notebook metres = ground().write(
        "neighbour", "neighbour", "A", "distance", "0.3 mi", "elevation", "1221 ft", "found", "yes", "top", "105 ft");
    assertThat(metres.finding("site.neighbour-elevation").text().shownTo(Hands.US))
        .isEqualTo("A: ground at 1221.00 ft, and at 218.00 ft here: 1003.00 ft apart.");
    Notebook turned = ground().write(
        "neighbour", "neighbour", "A", "distance", "0.3 mi", "elevation", "221 ft", "found", "yes", "top", "105 ft",
        "bottom", "95 ft");
    assertThat(turned.codes("site")).containsExactly("site.neighbour-upside-down");
    Notebook order = ground().write(
        "forecast", "likely", "103 ft", "shallowest", "112 ft", "deepest", "94 ft", "chance", "80 %");
    assertThat(order.codes("site")).containsExactly("site.forecast-order");
  }

  @Test
  void slipsOfTheHandAreAskedAbout() {
    assertThat(Hands.asked(NeighbourEntries.DISTANCE, "0.3 ft")).isNotEmpty();
    assertThat(Hands.taken(NeighbourEntries.DISTANCE, "0.3")).isEqualTo("0.3 mi");
    assertThat(Hands.taken(NeighbourEntries.DISTANCE, "0.5", Hands.METRIC)).isEqualTo("0.5 km");
    assertThat(Hands.taken(NeighbourEntries.DISTANCE, "1600 ft")).isEqualTo("1600 ft");
    assertThat(Hands.refused(NeighbourEntries.CHANCE, "100 %")).contains("99");
  }

  private static Notebook ground() {
    return new Notebook().write("site", "address", "5 Heron Lane", "elevation", "218 ft");
  }

  private static Notebook logs() {
    Notebook notebook = ground();
    String[][] wells = {
      {"A", "0.3 mi", "221 ft", "105 ft"}, {"B", "0.5 mi", "214 ft", "102 ft"}, {"C", "0.6 mi", "225 ft", "105 ft"},
      {"D", "0.9 mi", "209 ft", "99 ft"}, {"E", "1.2 mi", "216 ft", "103 ft"}
    };
    for (String[] well : wells) {
      notebook.write("neighbour", "neighbour", well[0], "distance", well[1], "elevation", well[2], "found", "yes",
          "top", well[3]);
    }
    return notebook;
  }

  private static String line(Notebook notebook, String label) {
    return new SiteStage().sheet(notebook.well()).lines().stream()
        .filter(line -> line.label().shownTo(Hands.US).equals(label))
        .map(Sheet.Line::value).findFirst().orElseThrow().shownTo(Hands.US);
  }
}
