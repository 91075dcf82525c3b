package steening.stage.pump;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import steening.field.Reading;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Notebook;
import steening.journal.Body;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.well.Well;

/** Own scenario of an everyday well: string to 137 ft, screen 125 to 135 ft, tested at 12 gpm down to 43.40 ft. */
class PumpFindingsTest {
  private static final PumpStage STAGE = new PumpStage();
  private static final Reader SPANISH_METRIC = new Reader(Language.SPANISH, UnitSystem.METRIC);
  private static final String[] GOOD = {
    "model", "submersible", "horsepower", "1 hp", "setting", "85 ft", "rate", "10 gpm", "cut-in", "40 psi",
    "cut-out", "60 psi", "tank", "80 gal", "precharge", "38 psi", "pipe-inside", "1.049 in", "pipe-length", "170 ft",
    "tank-rise", "6 ft"
  };

  @Test
  void findsNothingWhereAllIsWell() {
    assertThat(tested().write("pump", GOOD).codes("pump")).isEmpty();
    assertThat(new Notebook().write("pump", GOOD).codes("pump")).isEmpty();
    assertThat(tested().codes("pump")).isEmpty();
  }

  @Test
  void seesKilopascalsTakenForPsi() {
    Finding finding = tested().write("pump", with("cut-out", "60 kPa")).finding("pump.cut-out");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(english(finding))
        .isEqualTo("Cut-out 8.7 psi is not above cut-in 40.0 psi: the pump would not stop as it should.");
    assertThat(finding.cause().get().shownTo(Reader.US_ENGLISH)).isEqualTo("Typed in kPa? Did you mean 60.0 psi?");
    assertThat(finding.entries()).containsExactly("pump-15");
    assertThat(finding.text().shownTo(SPANISH_METRIC))
        .isEqualTo("La presión de paro 60 kPa no supera la de arranque 276 kPa: la bomba no pararía como debe.");
  }

  @Test
  void doesNotGuessWhereTheNumberWouldNotDoEither() {
    Finding finding = tested().write("pump", with("cut-out", "20 psi")).finding("pump.cut-out");
    assertThat(finding.cause()).isEmpty();
  }

  @Test
  void seesAnIntakeInTheScreen() {
    Finding finding = tested().write("pump", with("setting", "125 ft")).finding("pump.in-screen");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(english(finding))
        .isEqualTo("Intake at 125.00 ft, inside or below the screen, whose top is at 125.00 ft.");
    assertThat(tested().write("pump", with("setting", "124.9 ft")).codes("pump")).isEmpty();
    assertThat(tested().write("pump", with("setting", "136 ft")).codes("pump")).containsExactly("pump.in-screen");
  }

  @Test
  void seesAnIntakeBelowTheString() {
    Notebook notebook = tested().write("pump", with("setting", "137.5 ft"));
    assertThat(notebook.codes("pump")).containsExactly("pump.too-deep");
    assertThat(english(notebook.finding("pump.too-deep")))
        .isEqualTo("Intake at 137.50 ft, but the casing string ends at 137.00 ft.");
    assertThat(notebook.finding("pump.too-deep").weight()).isEqualTo(Weight.STOP);
  }

  @Test
  void seesAPumpThatWouldRunDry() {
    Finding finding = tested().write("pump", with("setting", "41.9 ft")).finding("pump.dry");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(english(finding))
        .isEqualTo(
            "Intake at 41.90 ft, above the pumping water level of the test at 41.90 ft: the pump would run dry.");
    assertThat(finding.entries()).containsExactly("pumping-level-14", "pump-15");
    assertThat(tested().write("pump", with("setting", "45 ft")).codes("pump")).containsExactly("pump.thin-cover");
    assertThat(tested().write("pump", with("setting", "47 ft")).codes("pump")).isEmpty();
  }

  @Test
  void seesAPumpThatTakesMoreThanTheTestHeld() {
    Finding finding = tested().write("pump", with("rate", "14 gpm", "horsepower", "2 hp", "tank", "120 gal"))
        .finding("pump.rate");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(english(finding)).isEqualTo("The pump gives 14.0 gpm; the well was tested at 12.0 gpm.");
    assertThat(tested().write("pump", with("rate", "12 gpm", "horsepower", "1.5 hp", "tank", "100 gal")).codes("pump"))
        .isEmpty();
  }

  /** Ten gallons a minute for two minutes are 20 gal; 20 gal of tank give 5.2 (own scenario, by hand). */
  @Test
  void seesATankThatIsTooSmall() {
    Finding finding = tested().write("pump", with("tank", "20 gal")).finding("pump.tank-small");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(english(finding))
        .isEqualTo("The tank gives 5.2 gal at a time, 20.0 gal are needed: "
            + "the pump runs 0.5 min where 2.0 min are asked for.");
    assertThat(finding.next().get().shownTo(Reader.US_ENGLISH)).contains("77.5 gal or more");
    assertThat(finding.working()).isPresent();
    assertThat(tested().write("pump", with("tank", "39 gal", "horsepower", "0.75 hp", "rate", "8 gpm")).codes("pump"))
        .isEmpty();
    assertThat(tested().write("pump", with("tank", "77.6 gal")).codes("pump")).isEmpty();
    assertThat(tested().write("pump", with("tank", "77.4 gal")).codes("pump")).containsExactly("pump.tank-small");
  }

  @Test
  void seesTooMuchAirInTheTank() {
    Finding finding = tested().write("pump", with("precharge", "45 psi")).finding("pump.precharge");
    assertThat(english(finding))
        .isEqualTo("Air in the empty tank 45.0 psi, cut-in 40.0 psi: the tank is empty before the pump starts.");
    assertThat(finding.expected().get().shownTo(Reader.US_ENGLISH)).isEqualTo("38.0 psi");
  }

  @Test
  void seesAMotorThatIsTooSmall() {
    Finding finding = tested().write("pump", with("horsepower", "0.5 hp")).finding("pump.motor-small");
    assertThat(english(finding))
        .isEqualTo("10.0 gpm against 197.06 ft of head takes about 0.91 hp; the motor has 0.50 hp.");
  }

  @Test
  void saysWhatTheBucketWillShow() {
    List<Expectation> expectations = STAGE.expectations(tested().write("pump", GOOD).well());
    assertThat(expectations).hasSize(1);
    assertThat(expectations.get(0).figure().shownTo(Reader.US_ENGLISH)).isEqualTo("20.6 gal");
    assertThat(STAGE.expectations(tested().well())).isEmpty();
    assertThat(STAGE.expectations(tested().write("pump", with("cut-out", "60 kPa")).well())).isEmpty();
  }

  @Test
  void showsThePumpWithWhatWasReckoned() {
    Well well = tested().write("pump", GOOD).well();
    Sheet sheet = STAGE.sheet(well);
    assertThat(sheet.lines()).anySatisfy(line -> {
      assertThat(line.label().shownTo(Reader.US_ENGLISH)).isEqualTo("total dynamic head");
      assertThat(line.value().shownTo(Reader.US_ENGLISH)).isEqualTo("197.06 ft");
      assertThat(line.working()).isPresent();
    });
    List<String> longRun = new ArrayList<>(List.of(GOOD));
    longRun.addAll(List.of("lift-from", "45.57 ft", "dry-allowance", "10 ft", "fittings-length", "47.7 ft"));
    assertThat(STAGE.sheet(tested().write("pump", longRun.toArray(String[]::new)).well()).lines()).anySatisfy(line -> {
      assertThat(line.label().shownTo(Reader.US_ENGLISH)).isEqualTo("total dynamic head");
      assertThat(line.value().shownTo(Reader.US_ENGLISH))
          .as("by hand 213.9 with rounded factors").isEqualTo("213.71 ft");
    });
    assertThat(sheet.lines()).anySatisfy(line -> {
      assertThat(line.label().shownTo(SPANISH_METRIC)).isEqualTo("profundidad de instalación");
      assertThat(line.value().shownTo(SPANISH_METRIC)).isEqualTo("25.91 m");
    });
    assertThat(STAGE.progress(well)).isEqualTo(Progress.DONE);
    assertThat(STAGE.progress(tested().well())).isEqualTo(Progress.NOT_BEGUN);
    assertThat(STAGE.sheet(tested().well())).isEqualTo(Sheet.EMPTY);
  }

  @Test
  void loadsNoMorePipeThanReachesTheScreen() {
    Notebook planned = new Notebook().write(
        "plan", "hole-diameter", "7 7/8 in", "hole-depth", "142 ft", "casing-outside", "4.5 in",
        "casing-wall", "0.214 in",
        "stick-up", "1.5 ft", "screen-top", "125 ft", "screen-bottom", "135 ft", "sump", "2 ft", "slot", "20 slot",
        "pack-top", "115 ft", "chips-top", "110 ft", "grout-top", "0 ft", "rate", "12 gpm");
    assertThat(STAGE.loads(planned.well()).get(0).howMany().shownTo(Reader.US_ENGLISH)).isEqualTo("125.00 ft");
    assertThat(STAGE.loads(tested().well())).isEmpty();
  }

  @Test
  void asksAboutACutOutInKilopascals() {
    Reading reading = PumpEntries.CUT_OUT.read("60 kPa", Reader.US_ENGLISH, false);
    assertThat(reading).isInstanceOf(Reading.Asked.class);
    assertThat(((Reading.Asked) reading).meanings()).contains("60 psi");
    Reading refused = PumpEntries.CUT_OUT.read("sixty", Reader.US_ENGLISH, false);
    assertThat(((Reading.Refused) refused).sentence().shownTo(Reader.US_ENGLISH))
        .isEqualTo("cut-out pressure: \"sixty\" is not understood. Example: 60 psi.");
    assertThat(PumpEntries.CUT_IN.read("40", Reader.US_ENGLISH, false)).isEqualTo(new Reading.Taken("40 psi"));
    assertThat(PumpEntries.RISE.in(Body.of("tank-rise", "-5 ft")).get().in(Unit.FOOT)).isEqualTo(-5);
  }

  private static Notebook tested() {
    Notebook notebook = new Notebook()
        .write("hole", "from", "0 ft", "to", "142 ft", "diameter", "7 7/8 in")
        .write("sump", "length", "2.00 ft")
        .write("screen", "length", "10.00 ft", "slot", "20 slot");
    for (String joint : List.of("19.98", "20.02", "20.01", "19.97", "20.03", "19.99")) {
      notebook.write("joint", "number", "1", "overall", joint + " ft");
    }
    return notebook
        .write("cut-piece", "length", "6.50 ft")
        .write("string-set", "stick-up", "1.5 ft", "outside", "4.5 in", "wall", "0.214 in")
        .write("static-level", "level", "31.0 ft", "from", "top-of-casing")
        .write("pumping-start", "rate", "12 gpm")
        .write("pumping-level", "minutes", "240 min", "level", "43.40 ft", "from", "top-of-casing");
  }

  /** The good pump with other values for some names. */
  private static String[] with(String... namesAndTexts) {
    List<String> all = new ArrayList<>(List.of(GOOD));
    for (int i = 0; i < namesAndTexts.length; i += 2) all.set(all.indexOf(namesAndTexts[i]) + 1, namesAndTexts[i + 1]);
    return all.toArray(String[]::new);
  }

  private static String english(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
