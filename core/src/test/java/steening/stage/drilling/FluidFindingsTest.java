package steening.stage.drilling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import steening.field.Field;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.stage.EverydayWell;
import steening.stage.Sheet;

/** Own scenarios; the numbers in the sentences are checked by hand. */
class FluidFindingsTest {
  private static final Reader US = Reader.US_ENGLISH;
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  /** By hand: 8.34 × (63 + 12) / 63 = 9.93; the sand above that gives water too, but does not touch it. */
  @Test
  void flowWithThePumpOffStopsAndSaysTheWeightNeeded() {
    Finding kick = flowing("12 ft", "8.8 lb/gal").finding("drilling.kick").orElseThrow();
    assertThat(kick.weight()).isEqualTo(Weight.STOP);
    assertThat(kick.text().shownTo(US)).isEqualTo("Flow with the pump off: the mud weighs 8.80 lb/gal; 9.93 lb/gal"
        + " balances the head, 10.23 lb/gal with a margin.");
    assertThat(kick.next().orElseThrow().shownTo(US)).startsWith("Keep pumping mud and do not trip. Weight up to"
        + " 10.23 lb/gal at least").contains("local rule");
    assertThat(kick.text().shownTo(METRIC_SPANISH)).startsWith("Fluye con la bomba parada: el lodo pesa 1054 kg/m³");
    assertThat(kick.measured()).isPresent();
    assertThat(kick.expected().orElseThrow().shownTo(US)).isEqualTo("10.23 lb/gal");
    assertThat(kick.working().orElseThrow().figure("balance").shownTo(US)).isEqualTo("9.93 lb/gal");
  }

  @Test
  void theStopGoesWhenTheWellStandsStill() {
    JobInSteps kicked = flowing("12 ft", "8.8 lb/gal");
    assertThat(codes(kicked.then("mud", "weight", "10.2 lb/gal"))).contains("drilling.kick");
    assertThat(codes(kicked.then("mud", "weight", "10.2 lb/gal", "flow-with-pump-off", "no")))
        .containsExactly("drilling.up-hole-velocity");
    assertThat(codes(kicked.then("mud", "weight", "10.4 lb/gal", "flow-with-pump-off", "no")))
        .containsExactly("drilling.up-hole-velocity", "drilling.mud-heavy");
    Finding light = kicked.then("mud", "weight", "9.5 lb/gal", "flow-with-pump-off", "no")
        .finding("drilling.mud-light").orElseThrow();
    assertThat(light.text().shownTo(US)).isEqualTo("The mud weighs 9.50 lb/gal; 9.93 lb/gal balances the head that was"
        + " entered, 10.23 lb/gal with a margin.");
  }

  @Test
  void heavyMudThatFlowsAllTheSameMeansAHigherHead() {
    Finding kick = flowing("12 ft", "10.5 lb/gal").finding("drilling.kick").orElseThrow();
    assertThat(kick.cause().orElseThrow().shownTo(US)).startsWith("The head is more than was entered");
    assertThat(kick.next().orElseThrow().shownTo(US)).contains("Weight up to 10.50 lb/gal at least");
  }

  @Test
  void withoutAHeadItIsStillAStop() {
    JobInSteps job = ground().then("mud", "weight", "8.8 lb/gal", "flow-with-pump-off", "yes");
    Finding kick = job.finding("drilling.kick").orElseThrow();
    assertThat(kick.weight()).isEqualTo(Weight.STOP);
    assertThat(kick.text().shownTo(US)).isEqualTo("Flow with the pump off: mud of 8.80 lb/gal does not hold the"
        + " aquifer. Its head or its depth is not known.");
    assertThat(codes(EverydayWell.setUp().then("mud", "weight", "9 lb/gal", "flow-with-pump-off", "yes", "head",
        "12 ft"))).contains("drilling.kick");
  }

  /** By hand: 8.34 × (57 + 12) / 57 = 10.10 with the bottom of the hole for an aquifer nobody has logged. */
  @Test
  void withoutAnAquiferInTheLogTheBottomOfTheHoleIsTaken() {
    JobInSteps job = EverydayWell.setUp().then("log", "from", "0 ft", "to", "57 ft", "material", "clay")
        .then("mud", "weight", "8.8 lb/gal", "flow-with-pump-off", "yes", "head", "12 ft");
    assertThat(job.finding("drilling.kick").orElseThrow().text().shownTo(US)).contains("10.10 lb/gal balances");
    assertThat(codes(job.then("mud", "weight", "8.8 lb/gal", "flow-with-pump-off", "no")))
        .containsExactly("drilling.up-hole-velocity");
  }

  /** By hand: 50 ft² by 3 in are 12.5 ft³ or 93.5 gal, in ten minutes. */
  @Test
  void aPitThatRisesByItselfIsAKickUntilSomebodyLooks() {
    JobInSteps before = ground().then("mud", "weight", "8.8 lb/gal");
    Finding kick =
        before.then("mud", "weight", "8.7 lb/gal", "pit-rise", "3 in").finding("drilling.kick").orElseThrow();
    assertThat(kick.text().shownTo(US)).startsWith("The mud pit rose 3 in: mud of 8.70 lb/gal does not hold");
    assertThat(kick.working().orElseThrow().quantity("gained").in(Unit.GALLON)).isBetween(93.4, 93.6);
    assertThat(kick.working().orElseThrow().figure("gain-rate").shownTo(US)).isEqualTo("9.4 gpm");
    assertThat(codes(before.then("mud", "weight", "8.7 lb/gal", "pit-drop", "-3 in"))).contains("drilling.kick");
    assertThat(codes(before.then("mud", "weight", "8.7 lb/gal", "pit-rise", "2 in")))
        .containsExactly("drilling.up-hole-velocity");
    JobInSteps still = before.then("mud", "weight", "8.7 lb/gal", "pit-rise", "3 in", "flow-with-pump-off", "no");
    assertThat(codes(still)).containsExactly("drilling.up-hole-velocity", "drilling.pit-rise");
    assertThat(still.finding("drilling.pit-rise").orElseThrow().weight()).isEqualTo(Weight.LOOK);
  }

  @Test
  void aPitCannotFallAndRise() {
    JobInSteps job = ground().then("mud", "weight", "8.8 lb/gal", "pit-drop", "1 in", "pit-rise", "1 in");
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity", "drilling.pit-both-ways");
  }

  /**
   * By hand: between 57 and 63 ft the hole, and a rod, explain 2.11 in over 50 ft²; 14 in fell: 370.6 gal in 20 minutes
   * are 18.5 gpm, 16.8 % of 110.
   */
  @Test
  void aLossIsSaidByTheMinuteAndAgainstThePump() {
    JobInSteps job = ground57().then("mud", "weight", "8.8 lb/gal", "pit-drop", "4 in")
        .then("log", "from", "57 ft", "to", "63 ft", "material", "gravel")
        .then("mud", "weight", "8.8 lb/gal", "pit-drop", "14 in");
    Finding lost = job.finding("drilling.lost-circulation").orElseThrow();
    assertThat(lost.cause().orElseThrow().shownTo(US)).isEqualTo("Mud is going into the ground: at least 18.5 gpm over"
        + " 20.0 min, which is 16.8 % of the pump rate, with the hole at 57.00 ft to 63.00 ft.");
    assertThat(lost.working().orElseThrow().figure("loss-rate").shownTo(US)).isEqualTo("18.5 gpm");
    Finding first = ground57().then("mud", "weight", "8.8 lb/gal", "pit-drop", "14 in")
        .finding("drilling.lost-circulation").orElseThrow();
    assertThat(first.cause().orElseThrow().shownTo(US)).isEqualTo("Mud is going into the ground.");
  }

  @ParameterizedTest
  @CsvSource({"31 s/qt, drilling.mud-thin, LOOK", "32 s/qt, , ", "45 s/qt, , ", "46 s/qt, drilling.mud-thick, NOTE"})
  void theFunnelWhileDrilling(String funnel, String code, Weight weight) {
    List<Finding> found = funnel(ground(), funnel);
    assertThat(found).extracting(Finding::code).isEqualTo(code == null ? List.of() : List.of(code));
    assertThat(found).allMatch(f -> f.weight() == weight && f.text().shownTo(US).contains("from memory"));
  }

  /** Thinned on purpose before the screen is set: silent. Thick then: it seals the sand. */
  @ParameterizedTest
  @CsvSource({"28 s/qt, ", "38 s/qt, ", "46 s/qt, drilling.mud-thick"})
  void theFunnelBeforeTheScreen(String funnel, String code) {
    List<Finding> found = funnel(EverydayWell.drilled(), funnel);
    assertThat(found).extracting(Finding::code).isEqualTo(code == null ? List.of() : List.of(code));
    assertThat(found).allSatisfy(f -> {
      assertThat(f.weight()).isEqualTo(Weight.LOOK);
      assertThat(f.next().orElseThrow().shownTo(US)).startsWith("Thin before setting the screen");
    });
  }

  /**
   * By hand: 131 ft at 50.16 ft/min are 2.61 min; at 80 ft/h the bit goes on 3.48 ft. The second had no rate told: its
   * rod went down 20 ft in 10 min, 120 ft/h, in 2.71 min 5.42 ft.
   */
  @Test
  void cuttingsComeFromHigherUpThanTheBit() {
    JobInSteps job = EverydayWell.drilled()
        .then("cuttings", "bit-depth", "131 ft", "penetration", "80 ft/h", "description", "coarse sand")
        .then("cuttings", "bit-depth", "136 ft");
    Sheet sheet = job.stage("drilling").sheet(job.job().well());
    Sheet.Table table = sheet.tables().stream().filter(t -> t.title().shownTo(US).equals("Cuttings")).findFirst()
        .orElseThrow();
    assertThat(table.rows().get(0)).extracting(c -> c.shownTo(US))
        .containsExactly("131.00 ft", "80 ft/h", "2.6 min", "127.52 ft", "coarse sand");
    assertThat(table.rows().get(0).get(3).shownTo(METRIC_SPANISH)).isEqualTo("38.87 m");
    assertThat(table.rows().get(1)).extracting(c -> c.shownTo(US))
        .containsExactly("136.00 ft", "120 ft/h", "2.7 min", "130.58 ft", "");
    JobInSteps last = EverydayWell.drilled().then("cuttings", "bit-depth", "131 ft", "penetration", "80 ft/h");
    assertThat(last.stage("drilling").sheet(last.job().well()).lines())
        .anySatisfy(line -> {
          assertThat(line.label().shownTo(US)).isEqualTo("cuttings caught with the bit at 131.00 ft come from");
          assertThat(line.value().shownTo(US)).isEqualTo("127.52 ft");
          assertThat(line.working()).isPresent();
        });
    assertThat(codes(job)).containsExactly("drilling.up-hole-velocity");
  }

  /** By hand: 138 ft at 50.16 ft/min are 2.75 min; at 80 ft/h 3.67 ft. */
  @Test
  void aBoundaryLoggedWhereTheBitWasIsNoted() {
    JobInSteps job = EverydayWell.drilled().then("cuttings", "bit-depth", "138 ft", "penetration", "80 ft/h");
    Finding note = job.finding("drilling.log-not-corrected").orElseThrow();
    assertThat(note.weight()).isEqualTo(Weight.NOTE);
    assertThat(note.text().shownTo(US))
        .isEqualTo("The log changes at 138.00 ft, where the bit was; the cuttings caught then come from 134.33 ft.");
    // by hand: at 20 ft/h the bit goes on 0.92 ft, which is not worth a word
    assertThat(codes(EverydayWell.drilled().then("cuttings", "bit-depth", "138 ft", "penetration", "20 ft/h")))
        .containsExactly("drilling.up-hole-velocity");
  }

  @Test
  void cuttingsFromBelowTheHoleAreLookedAt() {
    assertThat(codes(EverydayWell.drilled().then("cuttings", "bit-depth", "162 ft")))
        .containsExactly("drilling.up-hole-velocity");
    Finding deep = EverydayWell.drilled().then("cuttings", "bit-depth", "142 m")
        .finding("drilling.cuttings-below-hole").orElseThrow();
    assertThat(deep.text().shownTo(US))
        .isEqualTo("Cuttings are entered with the bit at 465.88 ft, but the hole is 142.00 ft deep.");
  }

  /** Cuttings and mud of a rig that nobody entered: kept, shown, silent. */
  @Test
  void withoutARig() {
    JobInSteps job = JobInSteps.nothing().then("cuttings", "bit-depth", "40 ft", "penetration", "80 ft/h")
        .then("mud", "weight", "8.8 lb/gal", "pit-drop", "14 in", "head", "0 ft");
    assertThat(codes(job)).isEmpty();
    assertThat(job.job().unread()).isEmpty();
    assertThat(job.stage("drilling").sheet(job.job().well()).tables()).hasSize(2);
  }

  @Test
  void whatCannotBeIsSaidInASentence() {
    Map<Field, Reading> mud = DrillingEntries.MUD.read(
        Map.of("weight", "8.8", "head", "-12 ft", "pit-rise", "-3 in", "flow-with-pump-off", "a little"), US);
    assertThat(mud.get(DrillingEntries.MUD_HEAD)).isNotInstanceOf(Reading.Taken.class);
    assertThat(mud.get(DrillingEntries.PIT_RISE)).isNotInstanceOf(Reading.Taken.class);
    assertThat(mud.get(DrillingEntries.FLOWS)).isInstanceOfSatisfying(
        Reading.Refused.class, r -> assertThat(r.sentence().shownTo(US)).contains("yes, no"));
    assertThat(DrillingEntries.FLOWS.read("sí", METRIC_SPANISH, false))
        .isInstanceOfSatisfying(Reading.Taken.class, taken -> assertThat(taken.text()).isEqualTo("yes"));
    assertThat(DrillingEntries.BIT_DEPTH.read("-5 ft", US, false)).isNotInstanceOf(Reading.Taken.class);
    assertThat(DrillingEntries.PENETRATION.read("3000 ft/h", US, false)).isNotInstanceOf(Reading.Taken.class);
    assertThat(DrillingEntries.PIT_RISE.read("3 ft", US, false))
        .isInstanceOfSatisfying(Reading.Asked.class, asked -> assertThat(asked.meanings()).contains("3 in"));
  }

  private static JobInSteps ground57() {
    return EverydayWell.planned()
        .then("drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "110 gpm", "pit-area", "50 ft2")
        .then("log", "from", "0 ft", "to", "57 ft", "material", "clay");
  }

  private static JobInSteps ground() {
    return EverydayWell.planned()
        .then("drilling", "bit", "7 7/8 in", "rod", "2.875 in", "pump-rate", "110 gpm", "pit-area", "50 ft2")
        .then("log", "from", "0 ft", "to", "20 ft", "material", "coarse-sand", "water", "yes")
        .then("log", "from", "20 ft", "to", "63 ft", "material", "clay")
        .then("log", "from", "63 ft", "to", "64 ft", "material", "fine-sand", "water", "yes")
        .then("log", "from", "64 ft", "to", "66 ft", "material", "coarse-sand", "water", "yes");
  }

  private static JobInSteps flowing(String head, String weight) {
    return ground().then("mud", "weight", weight, "flow-with-pump-off", "yes", "head", head);
  }

  private static List<Finding> funnel(JobInSteps job, String funnel) {
    return job.then("mud", "weight", "8.8 lb/gal", "funnel", funnel).findings("drilling").stream()
        .filter(f -> !f.code().equals("drilling.up-hole-velocity")).toList();
  }

  private static List<String> codes(JobInSteps job) {
    return job.findings("drilling").stream().map(Finding::code).toList();
  }
}
