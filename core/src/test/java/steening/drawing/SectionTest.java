package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.well.Hole;
import steening.well.Material;
import steening.well.Piece;

class SectionTest {
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void isToScale() {
    for (Style style : List.of(Style.PHONE, Style.PAGE)) {
      Drawn drawn = new Drawn(Section.draw(WellInSteps.everydayFinished().well(), METRIC_SPANISH, style));
      Element hole = drawn.rect("hole");
      double surface = Drawn.number(hole, "y");
      double foot = Drawn.number(hole, "height") / 142;
      Element screen = drawn.rect("screen-1");
      assertThat(Drawn.number(screen, "y")).isCloseTo(surface + 125 * foot, within(0.01));
      assertThat(Drawn.number(screen, "height")).isCloseTo(10 * foot, within(0.01));
      Element grout = drawn.rect("grout");
      assertThat(Drawn.number(grout, "y")).isCloseTo(surface, within(0.01));
      assertThat(Drawn.number(grout, "height")).isCloseTo(109.4 * foot, within(0.01));
      Element sand = drawn.rect("stratum-6");
      assertThat(Drawn.number(sand, "y")).isCloseTo(surface + 118 * foot, within(0.01));
      assertThat(Drawn.number(sand, "height")).isCloseTo(20 * foot, within(0.01));
      double inch = Drawn.number(hole, "width") / 7.875;
      assertThat(Drawn.number(screen, "width")).isCloseTo(4.5 * inch, within(0.01));
      Element forty = drawn.all("text").stream().filter(t -> t.getTextContent().equals("40")).findFirst().orElseThrow();
      double tick = Drawn.number(forty, "y") - Lettering.BASE;
      assertThat(tick).isCloseTo(surface + 40 / 0.3048 * foot, within(0.01));
      String scales = drawn.words("legend").get(0);
      double times = Double.parseDouble(scales.replaceAll(".*(?:width|ancho) × ([0-9.]+).*", "$1"));
      assertThat(inch * 12 / foot).isCloseTo(times, within(times * 0.001));
    }
  }

  /** What hangs in the hole, from the ground down, instead of the planned string; nothing of it once it is set. */
  @Test
  void drawsTheStringWhileItHangs() {
    WellInSteps lowered = WellInSteps.everydayDrilled().piece(Piece.Sort.SUMP, 2).piece(Piece.Sort.SCREEN, 10)
        .piece(Piece.Sort.JOINT, 20);
    assertThat(parts(lowered)).contains("hanging", "plan-staff").doesNotContain("plan-casing", "casing");
    Drawn drawn = new Drawn(Section.draw(lowered.well(), METRIC_SPANISH));
    double foot = Drawn.number(drawn.rect("hole"), "height") / 142;
    assertThat(Drawn.number(drawn.rect("hanging"), "height")).isCloseTo(32 * foot, within(0.01));
    assertThat(Section.draw(lowered.well(), METRIC_SPANISH)).contains("Columna colgada, 9.75 m bajados.");
    assertThat(parts(lowered.set(1.5))).doesNotContain("hanging");
  }

  @Test
  void growsAsEntriesArrive() {
    assertThat(parts(WellInSteps.nothing())).contains("ground", "depths")
        .doesNotContain("plan", "casing", "pack", "grout", "stratum-1", "labels");
    assertThat(parts(WellInSteps.everydayPlan())).contains("plan", "plan-casing")
        .doesNotContain("hole-walls", "casing", "pack", "plan-staff");
    assertThat(parts(WellInSteps.everydayHalfDrilled()))
        .contains("hole-walls", "stratum-4", "plan", "plan-casing", "plan-staff").doesNotContain("casing");
    assertThat(parts(WellInSteps.everydayStringSet())).contains("casing", "screen-1", "cap")
        .doesNotContain("plan-casing", "pack", "static-level");
    assertThat(parts(WellInSteps.bridged())).contains("pack").doesNotContain("chips", "grout");
    assertThat(parts(WellInSteps.everydayFinished()))
        .contains("stratum-7", "casing", "screen-1", "pack", "chips", "grout", "static-level", "pumping-level",
            "pump", "plan-staff");
  }

  private static List<String> parts(WellInSteps well) {
    Drawn drawn = new Drawn(Section.draw(well.well(), Reader.US_ENGLISH));
    return drawn.all("*").stream().map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).toList();
  }

  @Test
  void saysWhatIsBuiltAndWhatIsOnlyPlanned() {
    Drawn finished = page(WellInSteps.everydayFinished());
    assertThat(finished.words("labels")).containsExactly(
        "1.5 stick-up", "0 grout top", "29.5 static level", "41.9 pumping level", "85 pump intake",
        "109.4 chips top", "plan 110", "115.2 pack top", "plan 115",
        "125–135 screen", "137 bottom cap", "142 hole bottom");
    Drawn half = page(WellInSteps.everydayHalfDrilled());
    assertThat(half.words("labels")).contains("70 hole bottom", "142 hole bottom");
    assertThat(planned(half)).contains("142 hole bottom", "125–135 screen").doesNotContain("70 hole bottom");
    Drawn poured = page(WellInSteps.packHalfPoured());
    // 84.6 ft less 1.5 ft3 over 0.2278 ft3/ft: 78.0 ft (worked by hand).
    assertThat(poured.words("labels")).containsSubsequence("74 pack top", "78 pack top", "expected, not sounded");
    assertThat(planned(poured)).contains("74 pack top").doesNotContain("78 pack top");
  }

  private static Drawn page(WellInSteps well) {
    return new Drawn(Section.draw(well.well(), Reader.US_ENGLISH, Style.PAGE));
  }

  private static List<String> planned(Drawn drawn) {
    return drawn.all("text").stream().filter(t -> t.getAttribute("font-style").equals("italic"))
        .map(Element::getTextContent).toList();
  }

  @Test
  void speaksBothLanguagesAndUnits() {
    String spanish = Section.draw(WellInSteps.everydayFinished().well(), METRIC_SPANISH, Style.PAGE);
    assertThat(new Drawn(spanish).words("labels"))
        .contains("8.99 nivel estático", "38.1–41.15 rejilla", "35.11 tope del filtro", "0 tope de la lechada");
    assertThat(new Drawn(spanish).words("log-words")).contains("35.97–42.06 arena", "gruesa");
    assertThat(new Drawn(spanish).all("title").get(0).getTextContent()).isEqualTo("Sección del pozo");
    assertThat(new Drawn(spanish).all("desc").get(0).getTextContent())
        .contains("Rejilla 38.1–41.15 m.", "Nivel estático 8.99 m.", "arena gruesa, clean, medium to coarse, da agua");
    String english = page(WellInSteps.everydayFinished()).all("desc").get(0).getTextContent();
    assertThat(english).contains("Plan: hole to 142 ft, screen 125–135 ft.", "Hole 7 7/8 in, 0–142 ft.",
        "Casing 4 1/2 in to 137 ft, stick-up 1.5 ft.", "Filter pack 115.2–142 ft.", "Grout 0–109.4 ft.",
        "Pump intake 85 ft.");
  }

  @Test
  void carriesTheDrillersWordsUnharmed() {
    String words = "A <b>\"&'";
    Drawn drawn = page(WellInSteps.nothing().drilled(0, 50, 8).log(0, 50, Material.CLAY, words, false));
    assertThat(drawn.words("log-words")).containsExactly("0–50 clay", words);
    assertThat(drawn.byId("stratum-1").getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("0–50 ft: clay, " + words);
  }
}
