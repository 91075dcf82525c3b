package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Notebook;
import steening.language.BothLanguages;

/** What is said of the ground ahead, and when: own scenarios, arithmetic checked by hand. */
class AheadTest {
  private static final DrillingStage STAGE = new DrillingStage();

  @Test
  void anEnteredForecastStandsInForTheNeighbours() {
    Notebook entered = forecast();
    Expectation top = tops(entered).get(0);
    assertThat(top.what().shownTo(Hands.US))
        .isEqualTo("top of the wanted sand, 9 times in 10 between 94.00 ft and 112.00 ft");
    assertThat(top.figure().shownTo(Hands.US)).isEqualTo("103.00 ft");
    assertThat(top.band()).as("it does not reach as far up as down").isEmpty();
    assertThat(clay(entered, "111 ft").codes("drilling")).isEmpty();
    // q = 1 / (1 + 19^(10/9)) = 0.0365; 0.8 q / (0.8 q + 0.2) = 0.1276
    Finding passed = clay(forecast(), "113 ft").finding("drilling.forecast-passed");
    assertThat(passed.weight()).isEqualTo(Weight.LOOK);
    assertThat(passed.text().shownTo(Hands.US)).endsWith("The chance that it is still below is 12.8 %.");
    assertThat(passed.next().orElseThrow().shownTo(Hands.US)).isEqualTo(
        "Call the customer before the next rod: nothing is known of a sand below."
            + " Finishing here counts on that 12.8 %.");
    BothLanguages.assertSpokenIn(passed.text());
    BothLanguages.assertSpokenIn(passed.next().orElseThrow());
  }

  @Test
  void sandWithinTheForecastEndsTheWaiting() {
    Notebook met = clay(forecast(), "100 ft")
        .write("log", "from", "100 ft", "to", "120 ft", "material", "medium-sand", "water", "yes");
    assertThat(met.codes("drilling")).isEmpty();
    assertThat(tops(met)).isEmpty();
    // a sand far above is not the wanted one
    Notebook above = forecast()
        .write("log", "from", "0 ft", "to", "20 ft", "material", "coarse-sand")
        .write("log", "from", "20 ft", "to", "113 ft", "material", "clay");
    assertThat(above.codes("drilling")).containsExactly("drilling.forecast-passed");
  }

  @Test
  void aNextSandWithinWhatWasAgreedNeedsNoCall() {
    Notebook next = forecast()
        .write("forecast", "sand", "2", "likely", "130 ft", "shallowest", "125 ft", "deepest", "136 ft", "chance",
            "70 %")
        .write("plan", plan("authorised-depth", "160 ft"));
    Finding passed = clay(next, "113 ft").finding("drilling.forecast-passed");
    assertThat(passed.weight()).isEqualTo(Weight.LOOK);
    assertThat(passed.next().orElseThrow().shownTo(Hands.US)).startsWith(
        "The next sand is expected at 130.00 ft, with a chance of 70.0 %; to 140.00 ft there are 27.00 ft to drill.");
  }

  /** Without prices a chance of less than one in ten is the end of drilling on unasked. */
  @Test
  void withoutPricesTheChanceDecides() {
    Notebook deep = forecast()
        .write("forecast", "sand", "2", "likely", "170 ft", "shallowest", "160 ft", "deepest", "181 ft", "chance",
            "70 %")
        .write("plan", plan("authorised-depth", "150 ft"));
    assertThat(clay(deep, "113 ft").finding("drilling.forecast-passed").weight()).isEqualTo(Weight.LOOK);
    // q at 115 = 1 / (1 + 19^(12/9)) = 0.0193: chance 0.072
    Finding late = deep.write("log", "from", "113 ft", "to", "115 ft", "material", "clay")
        .finding("drilling.forecast-passed");
    assertThat(late.weight()).isEqualTo(Weight.STOP);
  }

  @Test
  void theCustomerIsCalledBeforeWhatWasAgreed() {
    Notebook far = clay(new Notebook().write("plan", plan("authorised-depth", "140 ft")), "119 ft");
    assertThat(far.codes("drilling")).isEmpty();
    Notebook near = clay(new Notebook().write("plan", plan("authorised-depth", "140 ft")), "125 ft");
    Finding call = near.finding("drilling.call-customer");
    assertThat(call.weight()).isEqualTo(Weight.LOOK);
    assertThat(call.text().shownTo(Hands.US))
        .isEqualTo("Drilled to 125.00 ft and no sand yet; the customer agreed to 140.00 ft: 15.00 ft left.");
    Notebook past = clay(new Notebook().write("plan", plan("authorised-depth", "140 ft")), "145 ft");
    assertThat(past.finding("drilling.call-customer").weight()).isEqualTo(Weight.STOP);
    assertThat(past.write("plan", plan("authorised-depth", "165 ft")).codes("drilling"))
        .as("agreed anew, and a rod away again").containsExactly("drilling.call-customer");
    Notebook sand = clay(new Notebook().write("plan", plan("authorised-depth", "140 ft")), "110 ft")
        .write("log", "from", "110 ft", "to", "130 ft", "material", "medium-sand", "water", "yes");
    assertThat(sand.codes("drilling")).isEmpty();
    Notebook lowered = clay(new Notebook().write("plan", plan("authorised-depth", "140 ft")), "125 ft")
        .write("sump", "length", "2 ft");
    assertThat(lowered.codes("drilling")).doesNotContain("drilling.call-customer");
  }

  @Test
  void aPlanDeeperThanAgreedIsSeenAtTheDesk() {
    assertThat(new Notebook().write("plan", plan("authorised-depth", "120 ft")).codes("plan"))
        .contains("plan.depth-not-agreed");
    assertThat(new Notebook().write("plan", plan("authorised-depth", "128 ft")).codes("plan"))
        .doesNotContain("plan.depth-not-agreed");
  }

  /** A fine, silty sand of four feet against 10 gpm. */
  @Test
  void aThinSandIsSaidBeforeItIsCased() {
    Notebook thin = clay(new Notebook().write("plan", plan("authorised-depth", "200 ft")), "60 ft")
        .write("log", "from", "60 ft", "to", "64 ft", "material", "fine-sand", "water", "yes")
        .write("sieve", "from", "60 ft", "to", "64 ft", "openings", "0.02; 0.06; 0.12; 0.25 mm",
            "finer", "10; 30; 70; 98 %");
    Finding finding = thin.finding("drilling.sand-thin");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.text().shownTo(Hands.US)).startsWith("The sand from 60.00 ft to 64.00 ft would give about ")
        .endsWith("; 10.0 gpm are wanted.");
    double middle = finding.working().orElseThrow().quantity("yield").coherent();
    assertThat(finding.working().orElseThrow().quantity("yield-most").coherent()).isEqualTo(middle * 3);
    assertThat(finding.next().orElseThrow().shownTo(Hands.SPANISH)).startsWith("¿Ademarla, profundizar o llamar");
    assertThat(finding.working().orElseThrow().remarks()).hasSize(2);
    List<String> labels = STAGE.sheet(thin.well()).tables().stream().map(t -> t.title().shownTo(Hands.US)).toList();
    assertThat(labels).contains("What the sand gives, by each formula that holds");
    Notebook thick = clay(new Notebook().write("plan", plan("authorised-depth", "200 ft")), "60 ft")
        .write("log", "from", "60 ft", "to", "80 ft", "material", "medium-sand", "water", "yes")
        .write("sieve", "from", "60 ft", "to", "70 ft", "openings", "0.15; 0.25; 0.5; 1 mm",
            "finer", "8; 25; 70; 98 %");
    assertThat(thick.codes("drilling")).doesNotContain("drilling.sand-thin");
  }

  /** What is known comes in any order, and half of it not at all. */
  @Test
  void halfOfWhatIsKnownAnswersToo() {
    Notebook odd = new Notebook()
        .write("log", "from", "0 ft", "to", "200 ft", "material", "clay")
        .write("neighbour", "neighbour", "A", "distance", "10 ft", "elevation", "200 ft", "found", "yes",
            "top", "90 ft")
        .write("neighbour", "neighbour", "B", "distance", "100 mi", "elevation", "200 ft", "found", "yes",
            "top", "80 ft")
        .write("neighbour", "neighbour", "C", "distance", "1 mi", "found", "no", "sand", "2");
    assertThat(odd.codes("drilling")).as("no ground elevation yet").isEmpty();
    odd.write("forecast", "likely", "90 ft", "shallowest", "100 ft", "deepest", "80 ft", "chance", "50 %");
    assertThat(odd.codes("drilling")).as("a forecast that contradicts itself").isEmpty();
    odd.write("site", "address", "5 Heron Lane", "elevation", "200 ft").write("plan", plan("drilling-price", "$28/ft"));
    assertThat(odd.codes("drilling")).containsExactly("drilling.forecast-passed");
    assertThat(STAGE.sheet(odd.well()).lines()).isNotEmpty();
  }

  private static List<Expectation> tops(Notebook notebook) {
    return STAGE.expectations(notebook.well()).stream()
        .filter(e -> e.what().shownTo(Hands.US).startsWith("top of")).toList();
  }

  private static Notebook forecast() {
    return new Notebook().write(
        "forecast", "likely", "103 ft", "shallowest", "94 ft", "deepest", "112 ft", "chance", "80 %");
  }

  private static Notebook clay(Notebook notebook, String to) {
    return notebook.write("log", "from", "0 ft", "to", to, "material", "clay");
  }

  private static String[] plan(String name, String value) {
    return new String[] {
      "hole-diameter", "7 7/8 in", "hole-depth", "128 ft", "casing-outside", "4.5 in", "casing-wall", "0.214 in",
      "stick-up", "1.5 ft", "screen-top", "113 ft", "screen-bottom", "123 ft", "sump", "2 ft", "slot", "20 slot",
      "pack-top", "103 ft", "chips-top", "99 ft", "grout-top", "0 ft", "rate", "10 gpm", name, value
    };
  }
}
