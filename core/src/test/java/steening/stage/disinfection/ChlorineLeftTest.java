package steening.stage.disinfection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import steening.field.Hands;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.JobInSteps;
import steening.journal.Body;
import steening.language.Reader;
import steening.quantity.Unit;
import steening.reckoning.Inputs;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.stage.TestedWell;

/** Chlorine against pH, chlorine taken out, and chlorine written as its label writes it. */
class ChlorineLeftTest {
  /** Table of the constant at two temperatures, 7.54 at 25 °C and 7.64 at 15 °C: Morris 1966 (memory). */
  @Test
  void halfIsAcidAtTheConstant() {
    assertThat(share("7.54", "25 °C")).isCloseTo(50, within(0.5));
    assertThat(share("7.64", "15 °C")).isCloseTo(50, within(0.5));
    Outcome plain = ChlorineAndPh.RECKONING.of(Inputs.of(Body.of("ph", "8.5", "free-chlorine", "100 mg/L")));
    // W-DISI-16: 9.9 % at 25 °C, so a tenth of 100 mg/L works
    assertThat(plain.quantity("acid").in(Unit.MILLIGRAM_PER_LITRE)).isCloseTo(9.9, within(0.1));
  }

  /** Field guide, Table 7-2 (seen), as the file of disinfection rules has it. */
  @Test
  void takesTheNeutralisersOfTheFieldGuide() {
    assertThat(Neutraliser.all().stream().map(n -> n.option.code() + " " + n.perChlorine).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(
            "sodium-bisulfite 1.61", "sodium-metabisulfite 1.47", "sodium-sulfite 1.96", "sodium-thiosulfate 1.9",
            "calcium-thiosulfate 1.22", "ascorbic-acid 2.5", "sodium-ascorbate 2.8");
    assertThat(Dechlorination.RECKONING.validity().get(0).shownTo(Reader.US_ENGLISH)).contains("septic tank");
  }

  /** A label of 52,500 mg/L is one of 5.25 %, counted as weight per volume. */
  @Test
  void asksWhetherTheLabelSaidMillionths() {
    Reading bare = DisinfectionEntries.STRENGTH.read("52500", Reader.US_ENGLISH, false);
    assertThat(bare).isInstanceOf(Reading.Asked.class);
    assertThat(((Reading.Asked) bare).question().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "available chlorine on the label: 52500 % is not possible. Did you mean 52500 ppm?");
    assertThat(DisinfectionEntries.STRENGTH.read("52500 ppm", Reader.US_ENGLISH, false))
        .isInstanceOf(Reading.Taken.class);
    assertThat(DisinfectionEntries.STRENGTH.in(Body.of("strength", "52500 ppm")).orElseThrow().in(Unit.PERCENT))
        .isCloseTo(5.25, within(1e-9));
    assertThat(DisinfectionEntries.STRENGTH.read("100 ppm", Hands.SPANISH, false)).isInstanceOf(Reading.Refused.class);
  }

  /** W-DISI-16 to the digits of the constant: 9.8 % of 100 mg/L at pH 8.5. */
  @Test
  void notesAHighPhAndStopsAtALowOne() {
    assertThat(dosed("7.4").findings("disinfection")).isEmpty();
    Finding high = dosed("8.5").findings("disinfection").get(0);
    assertThat(high.code()).isEqualTo("disinfection.ph-high");
    assertThat(high.text().shownTo(Reader.US_ENGLISH)).isEqualTo(
        "At pH 8.5 only 9.8 % of the chlorine kills well: 9.8 mg/L of 100.0 mg/L. Up to pH 7.5 it is half or more.");
    Finding low = dosed("4.5").findings("disinfection").get(0);
    assertThat(low.code()).isEqualTo("disinfection.ph-low");
    assertThat(low.weight()).isEqualTo(Weight.STOP);
    assertThat(low.next().orElseThrow().shownTo(Hands.SPANISH)).contains("Aléjese");
  }

  /** By hand: 90.27 gal × 3.785 × 25 mg/L × 2.5 = 21.4 g of ascorbic acid; a tenth more is 23.5 g. */
  @Test
  void saysWhatTakesTheChlorineOutOfTheWell() {
    JobInSteps left = dosed("7.4").then("residual", "chlorine", "25 mg/L");
    Sheet sheet = new DisinfectionStage().sheet(left.job().well());
    assertThat(sheet.tables()).hasSize(1);
    assertThat(sheet.tables().get(0).rows().get(0)).extracting(s -> s.shownTo(Hands.METRIC))
        .containsExactly("ascorbic acid (vitamin C)", "21 g", "23 g");
    assertThat(sheet.cautions()).containsAll(Dechlorination.CAUTIONS);
    Sheet flushed = new DisinfectionStage().sheet(left.then("residual", "chlorine", "0 mg/L").job().well());
    assertThat(flushed.tables()).isEmpty();
  }

  private static JobInSteps dosed(String ph) {
    return TestedWell.tested().then("disinfection", "product", "bleach", "strength", "5.25 %", "amount", "22 fl oz",
        "target", "100 mg/L", "contact", "24 h", "ph", ph);
  }

  private static double share(String ph, String temperature) {
    return ChlorineAndPh.RECKONING.of(Inputs.of(Body.of("ph", ph, "temperature", temperature)))
        .quantity("acid-share").in(Unit.PERCENT);
  }
}
