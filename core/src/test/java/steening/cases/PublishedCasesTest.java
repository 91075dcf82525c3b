package steening.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import steening.job.Stages;
import steening.language.Reader;
import steening.reckoning.Reckoning;

/** The reckonings against what others have published. The sources stand in the files, row by row. */
class PublishedCasesTest {
  /** Reckonings for which no published value was found, and what holds them instead. */
  private static final Map<String, String> UNPUBLISHED = Map.ofEntries(
      Map.entry("meter-rate", "a definition; held by a scenario worked by hand"),
      Map.entry("hardness", "two weights of atoms; held by hand and by the published classes"),
      Map.entry("langelier-index", "held by a pool operators' sample problems in its own test"),
      Map.entry("share-to-remove", "a share; held by hand"),
      Map.entry("operating-point", "a graph of handbooks, solved; held by a curve worked by hand"),
      Map.entry("circulation-loss", "a volume balance of the pit; held by a scenario worked by hand"),
      Map.entry("hole-fill", "geometry; held by a scenario worked by hand"),
      Map.entry("penetration-rate", "a definition; held by a scenario worked by hand"),
      Map.entry("line-clearance", "a table of a rule; held row by row"),
      Map.entry("shut-in-head", "hydrostatics, artesian-balance turned round; held by hand"),
      Map.entry("fish-top", "arithmetic; held by a scenario worked by hand"),
      Map.entry("fish-or-redrill", "nobody publishes what a fish is worth; held by a scenario worked by hand"),
      Map.entry("sand-forecast", "Student's t is held by its tables; the rest by a scenario worked by hand"),
      Map.entry("sand-ahead", "Bayes' rule; held by a scenario worked by hand"),
      Map.entry("next-feet-cost", "a product and an expected value; held by scenarios worked by hand"),
      Map.entry("sand-yield", "the end of grain-size-conductivity by itself; held by a scenario worked by hand"),
      Map.entry("pack-tape", "geometry of pack-volume turned round; held by scenarios worked by hand"),
      Map.entry("grout-top", "geometry of grout-volume turned round; held by scenarios worked by hand"),
      Map.entry("bags-left", "nobody publishes what ground usually takes; held by hand and by 2,000 invented wells"),
      Map.entry("grout-left", "as bags-left; held by the 60 % overrun worked by hand and by 2,000 invented wells"),
      Map.entry("ground-of-earlier-wells", "statistics by the book without a worked example; held by hand"),
      Map.entry("bridge-void", "geometry of pack-volume turned round; held by a scenario worked by hand"),
      Map.entry("pack-settling", "shares that are remembered, and disagree; held by hand"),
      Map.entry("chips-fall", "a drag estimate; held by hand and by the 1 ft/s that is remembered for it"),
      Map.entry("tremie-fit", "a difference of diameters; held by scenarios worked by hand"),
      Map.entry("working-time", "nothing published was met; memory and common practice; held by hand"),
      Map.entry("grout-fall", "a share of a length; its limit is common practice; held by scenarios worked by hand"),
      Map.entry("chips-volume", "the same as pack-volume with another bag; held by scenarios worked by hand"),
      Map.entry("sand-decay", "a decay fitted by least squares; held by readings made from a known one and by hand"),
      Map.entry("mud-make-up", "a dose times a volume; held by the barrel of test mud and scenarios worked by hand"),
      Map.entry(
          "casing-storage-time",
          "a formula from a handbook without a worked example; held by scenarios worked by hand"));

  @TestFactory
  Stream<DynamicTest> everyValueIsAnsweredWithinItsTolerance() {
    return verdicts().filter(v -> v.status() != Verdict.Status.NOT_COVERED).map(verdict ->
        dynamicTest(verdict.file() + ", " + verdict.id(), () ->
            assertThat(verdict.status())
                .as("%s: published %s, reckoned %s %s; %s", verdict.reckoning(), verdict.expected(), verdict.got(),
                    verdict.unit(), verdict.reason().shownTo(Reader.US_ENGLISH))
                .isEqualTo(Verdict.Status.PASSED)));
  }

  /** What is held against nothing must be known by name. */
  @Test
  void everyReckoningIsHeldAgainstSomethingPublished() {
    Set<String> held = new TreeSet<>();
    verdicts().filter(v -> v.status() == Verdict.Status.PASSED).forEach(v -> held.add(v.reckoning()));
    List<String> bare = Stages.reckonings().stream().map(Reckoning::name).filter(name -> !held.contains(name)).toList();
    assertThat(UNPUBLISHED.keySet()).containsAll(bare);
  }

  /** A published figure that does not check is a trap, and never a value to agree with. */
  @Test
  void trapsAreNotCounted() {
    assertThat(verdicts().filter(v -> v.file().contains("C22")))
        .isNotEmpty()
        .allMatch(v -> v.status() == Verdict.Status.NOT_COVERED);
  }

  private static Stream<Verdict> verdicts() {
    CaseBook book = CaseFiles.book();
    return CaseFiles.names().stream().flatMap(name -> book.judge(name, CaseFiles.text(name)).stream());
  }
}
