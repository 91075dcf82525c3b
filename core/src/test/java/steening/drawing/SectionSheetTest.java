package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.well.Fill;
import steening.well.Hole;
import steening.well.Material;
import steening.well.Piece;

/** What holds for every well, on every sheet, in every language. */
class SectionSheetTest {
  private static final Reader METRIC_SPANISH = new Reader(Language.SPANISH, UnitSystem.METRIC);

  static Stream<String> wells() {
    return all().keySet().stream();
  }

  private static Map<String, WellInSteps> all() {
    Map<String, WellInSteps> wells = new LinkedHashMap<>();
    wells.put("nothing", WellInSteps.nothing());
    wells.put("plan", WellInSteps.everydayPlan());
    wells.put("half drilled", WellInSteps.everydayHalfDrilled());
    wells.put("drilled", WellInSteps.everydayDrilled());
    wells.put("string set", WellInSteps.everydayStringSet());
    wells.put("finished", WellInSteps.everydayFinished());
    wells.put("bridged", WellInSteps.bridged());
    wells.put("half poured", WellInSteps.packHalfPoured());
    wells.put("flowing", WellInSteps.everydayFinished().drilled(0, 20, 12).atRest(-6));
    wells.put("half a foot", WellInSteps.nothing().drilled(0, 0.5, 9).log(0, 0.5, Material.PEAT, "", true));
    wells.put("two thousand feet", WellInSteps.nothing().drilled(0, 40, 20).drilled(40, 2000, 8)
        .log(40, 2000, Material.SHALE, "", false));
    wells.put("diameter in feet", WellInSteps.everydayFinished().drilled(0, 142, 94.5));
    wells.put("string deeper than the hole", WellInSteps.everydayStringSet().with(Hole.PART, Hole.PART.empty())
        .drilled(0, 124, 7.875));
    wells.put("no hole, pack sounded", WellInSteps.everydayStringSet().with(Hole.PART, Hole.PART.empty())
        .poured(Fill.PACK, 3, 1.5).sounded(Fill.PACK, 120).poured(Fill.PACK, 3, 1.5));
    wells.put("levels only", WellInSteps.nothing().atRest(30).pumping(80).pump(90));
    wells.put("gaps and overlaps", WellInSteps.nothing().drilled(0, 30, 8).drilled(40, 60, 8)
        .log(0, 10, Material.CLAY, "", false).log(8, 20, Material.SAND_AND_GRAVEL, "", true)
        .log(50, 60, Material.GRANITE, "", false)
        .log(30, 30, Material.SILT, "nothing of it", false));
    wells.put("40 thin strata", strata(40));
    wells.put("200 thin strata", strata(200));
    WellInSteps screens = WellInSteps.nothing().drilled(0, 200, 10);
    for (int i = 0; i < 6; i++) screens = screens.piece(Piece.Sort.SCREEN, 3).piece(Piece.Sort.JOINT, 20);
    wells.put("six screens", screens.set(2));
    return wells;
  }

  private static WellInSteps strata(int count) {
    WellInSteps well = WellInSteps.nothing().drilled(0, 2.0 * count, 9);
    Material[] materials = Material.values();
    for (int i = 0; i < count; i++) {
      well = well.log(2 * i, 2 * i + 2, materials[i % materials.length], "thin", i % 5 == 0);
    }
    return well;
  }

  private static List<Drawn> drawings(String name) {
    List<Drawn> drawings = new ArrayList<>();
    for (Style style : List.of(Style.PHONE, Style.PAGE)) {
      for (Reader reader : List.of(Reader.US_ENGLISH, METRIC_SPANISH)) {
        String svg = Section.draw(all().get(name).well(), reader, style);
        assertThat(svg).isEqualTo(Section.draw(all().get(name).well(), reader, style)).doesNotContain("NaN")
            .doesNotContain("Infinity");
        drawings.add(new Drawn(svg));
      }
    }
    return drawings;
  }

  @ParameterizedTest
  @MethodSource("wells")
  void hasNoTextOnAnotherNorBesideTheSheet(String name) {
    for (Drawn drawn : drawings(name)) {
      List<Drawn.Box> boxes = drawn.boxes();
      for (int i = 0; i < boxes.size(); i++) {
        Drawn.Box box = boxes.get(i);
        assertThat(box.left()).as(box.text()).isGreaterThanOrEqualTo(0);
        assertThat(box.right()).as(box.text()).isLessThanOrEqualTo(drawn.width());
        assertThat(box.top()).as(box.text()).isGreaterThanOrEqualTo(0);
        assertThat(box.bottom()).as(box.text()).isLessThanOrEqualTo(drawn.height());
        for (Drawn.Box other : boxes.subList(i + 1, boxes.size())) {
          assertThat(box.overlaps(other)).as(box + " on " + other).isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("wells")
  void standsOnItsOwn(String name) {
    for (Drawn drawn : drawings(name)) {
      assertThat(drawn.root().getAttribute("role")).isEqualTo("img");
      assertThat(drawn.byId(drawn.root().getAttribute("aria-labelledby")).getTagName()).isEqualTo("title");
      assertThat(drawn.byId(drawn.root().getAttribute("aria-describedby")).getTagName()).isEqualTo("desc");
      List<String> ids = drawn.all("*").stream().map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).toList();
      assertThat(new TreeSet<>(ids)).as("ids").hasSameSizeAs(ids);
      for (Element element : drawn.all("*")) {
        String fill = element.getAttribute("fill");
        if (fill.startsWith("url(#")) assertThat(ids).contains(fill.substring(5, fill.length() - 1));
        assertThat(element.getTagName()).isNotIn("script", "style", "image", "use", "a");
        assertThat(element.hasAttribute("class") || element.hasAttribute("style") || element.hasAttribute("opacity"))
            .isFalse();
        if (element.hasAttribute("font-size")) assertThat(Drawn.number(element, "font-size")).isGreaterThan(10.99);
        for (String size : List.of("width", "height", "r")) {
          if (element.hasAttribute(size)) assertThat(Drawn.number(element, size)).isGreaterThanOrEqualTo(0);
        }
      }
    }
  }

  @Test
  void growsOnAPhoneAndLeavesOutTheThinnestOnAPage() {
    Drawn phone = new Drawn(Section.draw(strata(200).well(), Reader.US_ENGLISH, Style.PHONE));
    assertThat(phone.height()).isGreaterThan(2000);
    WellInSteps thick = strata(60).log(120, 200, Material.LIMESTONE, "", false);
    Drawn page = new Drawn(Section.draw(thick.well(), Reader.US_ENGLISH, Style.PAGE));
    assertThat(page.height()).isEqualTo(Style.PAGE.height());
    int worded = page.words("log-words").size();
    assertThat(page.words("log-words")).contains("120–200 limestone").hasSizeBetween(30, 60);
    assertThat(page.words("legend")).contains(61 - worded + " thin layers without words");
  }

  @Test
  void canStandTwiceOnOnePage() {
    String one = Section.draw(WellInSteps.everydayFinished().well(), Reader.US_ENGLISH, Style.PHONE.named("one-"));
    String two = Section.draw(WellInSteps.everydayFinished().well(), Reader.US_ENGLISH, Style.PHONE.named("two-"));
    Drawn both = new Drawn("<div>" + one + two + "</div>");
    List<String> ids = both.all("*").stream().map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).toList();
    assertThat(new TreeSet<>(ids)).hasSameSizeAs(ids);
    assertThat(ids).allMatch(id -> id.startsWith("one-") || id.startsWith("two-"));
  }
}
