package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import steening.job.JobInSteps;
import steening.language.Reader;
import steening.stage.EverydayWell;
import steening.stage.decommissioning.LostHole;
import steening.well.Well;

/** A hole that is closed, drawn with its plugs; a casing that stays holds them. Invented wells. */
class PluggedSectionTest {
  private static Drawn drawn(Well well) {
    return new Drawn(Section.draw(well, Reader.US_ENGLISH, Style.PHONE));
  }

  /** Cement as last sounded, 36.5 to 88 ft; chips on it to 2 ft; both as wide as the hole. */
  @Test
  void plugsStandAsTheyWereSounded() {
    Drawn drawn = drawn(LostHole.plugged().job().well().earlier().get(0));
    Element hole = drawn.rect("hole");
    double foot = Drawn.number(hole, "height") / 88;
    Element cement = drawn.rect("plug-1");
    assertThat(Drawn.number(cement, "height")).isCloseTo(51.5 * foot, within(0.01));
    assertThat(Drawn.number(cement, "width")).isEqualTo(Drawn.number(hole, "width"));
    assertThat(Drawn.number(drawn.rect("plug-2"), "height")).isCloseTo(34.5 * foot, within(0.01));
    assertThat(String.join(" ", drawn.words("labels"))).contains("neat cement", "bentonite chips");
    assertThat(drawn.byId("section-words").getTextContent()).contains("Plug 36.5–88").contains("neat cement");
  }

  @Test
  void aHoleGivenUpIsNotDrawnToThePlan() {
    assertThat(drawn(LostHole.givenUp().job().well().earlier().get(0)).has("plan")).isFalse();
  }

  @Test
  void aCasingThatStaysIsCutAndHoldsThePlug() {
    JobInSteps job = EverydayWell.cased()
        .then("decommissioning", "why", "replaced", "casing", "left", "cut", "4 ft", "inside", "4.026 in")
        .then("plug", "from", "4 ft", "to", "137 ft", "material", "neat-cement", "bags", "11");
    Drawn drawn = drawn(job.job().well());
    double inch = Drawn.number(drawn.rect("hole"), "width") / 7.875;
    assertThat(Drawn.number(drawn.rect("plug-1"), "width")).isCloseTo(4.026 * inch, within(0.01));
    assertThat(String.join(" ", drawn.words("labels"))).contains("casing cut").doesNotContain("stick-up");
  }

  @Test
  void aCasingPulledOutIsGone() {
    JobInSteps job = EverydayWell.cased().then("decommissioning", "why", "replaced", "casing", "removed");
    assertThat(drawn(job.job().well()).has("casing")).isFalse();
  }
}
