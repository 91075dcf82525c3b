package steening.stage.disinfection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.quantity.Unit;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.TestedWell;

/** Own scenario: the everyday well with 90.3 gal of water, dosed rightly and wrongly. */
class DisinfectionFindingsTest {
  private static final JobInSteps TESTED = TestedWell.tested();

  private static JobInSteps bleach(JobInSteps job, String strength, String amount) {
    return job.then("disinfection",
        "product", "bleach", "strength", strength, "amount", amount, "target", "100 mg/L", "contact", "24 h");
  }

  @Test
  void saysNothingOfTheRightDose() {
    JobInSteps job = bleach(TESTED, "5.25 %", "22 fl oz");
    assertThat(job.findings("disinfection")).isEmpty();
    assertThat(Reached.of(job.job().well(), job.job().well().get(Dosing.PART).last().orElseThrow()).orElseThrow()
        .quantity("concentration").in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(100, within(0.5));
    assertThat(JobInSteps.nothing().findings("disinfection")).isEmpty();
  }

  @Test
  void looksAtAStrongProductDosedAsAWeakOne() {
    Finding finding = only(bleach(TESTED, "12.5 %", "22 fl oz"), "disinfection.over-target");
    assertThat(finding.weight()).isEqualTo(Weight.LOOK);
    assertThat(finding.measured().orElseThrow().quantity().in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(238, within(0.5));
    assertThat(said(finding))
        .startsWith("22.0 fl oz at 12.5 % makes 23").endsWith("of chlorine in this well; 100.0 mg/L was wanted.");
    assertThat(finding.cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("It is the amount for a product of 5.25 %.");
    assertThat(finding.next().orElseThrow().shownTo(Reader.US_ENGLISH)).startsWith("9.2 fl oz would do.");
    assertThat(finding.working()).isPresent();
    assertThat(finding.text().shownTo(new Reader(Language.SPANISH, UnitSystem.METRIC)))
        .contains("se querían 100.0 mg/L");
  }

  @Test
  void looksAtTooWeakADose() {
    Finding finding = only(bleach(TESTED, "5.25 %", "9.2 fl oz"), "disinfection.below-target");
    assertThat(finding.cause().orElseThrow().shownTo(Reader.US_ENGLISH))
        .isEqualTo("It is the amount for a product of 12.5 %.");
    assertThat(finding.next().orElseThrow().shownTo(Reader.US_ENGLISH)).startsWith("22.0 fl oz is needed in all.");
  }

  /** 90.3 gal × 100 mg/L / 65 % = 1.85 oz. */
  @Test
  void checksADryProductByItsWeight() {
    JobInSteps job = TESTED.then("disinfection",
        "product", "calcium-hypochlorite", "strength", "65 %", "weight", "1.85 oz", "target", "100 mg/L", "contact",
        "24 h");
    assertThat(job.findings("disinfection")).isEmpty();
    JobInSteps twice = TESTED.then("disinfection",
        "product", "calcium-hypochlorite", "strength", "65 %", "weight", "3.7 oz", "target", "100 mg/L", "contact",
        "24 h");
    assertThat(only(twice, "disinfection.over-target").next().orElseThrow().shownTo(Reader.US_ENGLISH))
        .startsWith("1.9 oz would do.");
  }

  @Test
  void wantsOneAmountOfTheRightKind() {
    JobInSteps none = TESTED.then("disinfection", "product", "bleach", "strength", "5.25 %", "target", "100 mg/L",
        "contact", "24 h");
    assertThat(said(only(none, "disinfection.amount-missing")))
        .isEqualTo("Bleach is entered by its amount, and by nothing else.");
    JobInSteps both = TESTED.then("disinfection", "product", "calcium-hypochlorite", "strength", "65 %", "amount",
        "22 fl oz",
        "weight", "1.85 oz", "target", "100 mg/L", "contact", "24 h");
    assertThat(said(only(both, "disinfection.amount-missing")))
        .isEqualTo("A dry product is entered by its weight, and by nothing else.");
  }

  @Test
  void tellsTheRulesForAShortContact() {
    JobInSteps job = TESTED.then("disinfection",
        "product", "bleach", "strength", "5.25 %", "amount", "22 fl oz", "target", "100 mg/L", "contact", "4 h");
    Finding finding = only(job, "disinfection.contact-short");
    assertThat(finding.weight()).isEqualTo(Weight.NOTE);
    assertThat(said(finding))
        .startsWith("Contact of 4.0 h with 100.0 mg/L. Rules differ: Michigan R 325.1661 asks for 10 h at 100 mg/L")
        .contains("15A NCAC 18C .1002").contains("ARM 36.21.662").contains("Alberta");
  }

  @Test
  void saysWhenItCannotCheck() {
    assertThat(only(bleach(TestedWell.packed(), "5.25 %", "22 fl oz"), "disinfection.unchecked").weight())
        .isEqualTo(Weight.NOTE);
  }

  /** The steps of the journal are ten minutes apart. */
  @Test
  void looksAtChlorineThatIsGoneTooSoon() {
    JobInSteps job = bleach(TESTED, "5.25 %", "22 fl oz").then("residual", "chlorine", "0 mg/L");
    assertThat(said(only(job, "disinfection.used-up")))
        .isEqualTo("No chlorine is left after 0.2 h; it was to stay 24.0 h.");
    assertThat(bleach(TESTED, "5.25 %", "22 fl oz").then("residual", "chlorine", "60 mg/L").findings("disinfection"))
        .isEmpty();
  }

  @Test
  void expectsTheDoseForEachLabel() {
    List<Expectation> expected = TESTED.expectations("disinfection");
    assertThat(expected).hasSize(5);
    double[] ounces = {22.0, 19.3, 14.0, 9.2};
    for (int i = 0; i < ounces.length; i++) {
      assertThat(expected.get(i).figure().quantity().in(Unit.FLUID_OUNCE)).isCloseTo(ounces[i], within(0.06));
    }
    assertThat(expected.get(4).figure().quantity().in(Unit.OUNCE)).isCloseTo(1.85, within(0.01));
    assertThat(expected.get(0).working().remarks()).isEqualTo(Cautions.ALL);
    assertThat(expected.get(0).what().shownTo(Reader.US_ENGLISH))
        .isEqualTo("bleach (sodium hypochlorite) of 5.25 %, for 100.0 mg/L in casing and pack");
    assertThat(bleach(TESTED, "5.25 %", "22 fl oz").expectations("disinfection")).isEmpty();
  }

  @Test
  void showsDosesAndCautionsBeforeAndTheResultAfter() {
    Sheet before = sheet(TESTED);
    assertThat(before.tables()).extracting(t -> t.title().shownTo(Reader.US_ENGLISH))
        .containsExactly("Doses for 100.0 mg/L");
    assertThat(before.cautions()).isEqualTo(Cautions.ALL);
    assertThat(before.tables().get(0).rows().get(0).get(2).shownTo(Reader.US_ENGLISH)).as("casing alone")
        .isEqualTo("17.7 fl oz");
    JobInSteps dosed = bleach(TESTED, "5.25 %", "22 fl oz");
    assertThat(sheet(dosed).cautions()).isEqualTo(Cautions.ALL);
    Sheet done = sheet(dosed.then("residual", "chlorine", "0 mg/L"));
    assertThat(done.tables()).isEmpty();
    assertThat(done.cautions()).as("no chlorine left to be careful with").isEmpty();
    assertThat(done.lines()).anyMatch(l -> l.label().shownTo(Reader.US_ENGLISH).equals("chlorine reached in the well")
        && l.working().isPresent());
    assertThat(sheet(JobInSteps.nothing())).isEqualTo(Sheet.EMPTY.cautioning(Cautions.ALL));
  }

  @Test
  void loadsEnoughForWaterUpToTheGround() {
    assertThat(TestedWell.planned().stage("disinfection").loads(TestedWell.planned().job().well())).hasSize(3);
    assertThat(JobInSteps.nothing().stage("disinfection").loads(JobInSteps.nothing().job().well())).isEmpty();
  }

  @Test
  void knowsHowFarItIs() {
    JobInSteps dosed = bleach(TESTED, "5.25 %", "22 fl oz");
    assertThat(progress(TESTED)).isEqualTo(Progress.NOT_BEGUN);
    assertThat(progress(dosed)).isEqualTo(Progress.UNDER_WAY);
    assertThat(progress(dosed.then("residual", "chlorine", "0 mg/L"))).isEqualTo(Progress.DONE);
    assertThat(dosed.stage("disinfection").nextKind(dosed.job().well())).isEqualTo("residual");
  }

  private static Progress progress(JobInSteps job) {
    return job.stage("disinfection").progress(job.job().well());
  }

  private static Sheet sheet(JobInSteps job) {
    return job.stage("disinfection").sheet(job.job().well());
  }

  private static Finding only(JobInSteps job, String code) {
    List<Finding> findings = job.findings("disinfection");
    assertThat(findings).extracting(Finding::code).containsExactly(code);
    return findings.get(0);
  }

  private static String said(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
