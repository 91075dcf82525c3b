package steening.stage.seal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import steening.job.JobInSteps;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.reckoning.Outcome;
import steening.reckoning.Working;
import steening.stage.Sheet;

/** What is behind every figure of the pack and the seal, of wells in trouble and without. */
class SealWorkingsTest {
  static Stream<Outcome> outcomes() {
    JobInSteps sounded =
        EverydaySealTest.GROUTED.then("grout-tape", "reading", "2 ft", "from", "ground", "after", "next-day");
    JobInSteps cement =
        EverydaySealTest.CHIPPED.then("grout-mix", "material", "cement", "solids", "94 lb", "water", "5.2 gal")
        .then("grout-batch", "bags", "12", "water", "80 gal", "weight", "14 lb/gal", "returns", "no")
        .then("grout-tape", "reading", "80 ft", "from", "ground");
    return Stream.of(EverydaySealTest.PACKED, EverydaySealTest.CHIPPED, EverydaySealTest.GROUTED, sounded, cement)
        .flatMap(SealWorkingsTest::outcomes);
  }

  private static Stream<Outcome> outcomes(JobInSteps job) {
    return Stream.of("pack", "seal").flatMap(stage -> {
      Sheet sheet = job.stage(stage).sheet(job.job().well());
      return Stream.of(
              sheet.lines().stream().flatMap(l -> l.working().stream()),
              job.findings(stage).stream().flatMap(f -> f.working().stream()),
              job.expectations(stage).stream().map(e -> e.working()))
          .flatMap(s -> s);
    });
  }

  @ParameterizedTest
  @MethodSource("outcomes")
  void aSymbolStandsForOneThing(Outcome outcome) {
    for (UnitSystem units : UnitSystem.values()) {
      List<String> symbols = outcome.working(new Reader(Language.ENGLISH, units)).lines().stream()
          .map(Working.Line::symbol).toList();
      assertThat(symbols).doesNotHaveDuplicates();
    }
  }
}
