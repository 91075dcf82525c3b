package steening.office.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import steening.job.Stages;
import steening.office.demo.DemoFirm;

/** Every page fits a telephone 360 pixels wide, with everything unfolded, and leaves room for a thumb. */
class NarrowPagesTest {
  /** What stands out to the right of the page, unless it may be scrolled there. */
  private static final String TOO_WIDE = """
      () => [...document.querySelectorAll('body *')].filter(one => {
        for (let at = one; at !== document.body; at = at.parentElement) {
          if (['auto', 'scroll', 'hidden'].includes(getComputedStyle(at).overflowX)) return false;
        }
        return one.getBoundingClientRect().right > document.documentElement.clientWidth + 1;
      }).map(one => one.tagName + ' ' + one.className + ' ' + one.textContent.slice(0, 40))""";

  /** Links and buttons lower than WCAG 2.2 (2.5.8) allows; links within a sentence are excepted there too. */
  private static final String TOO_SMALL = """
      () => [...document.querySelectorAll('a, button, select, summary, input:not([type=hidden], [type=radio])')]
        .filter(one => !one.matches('.skip, .unseen') && one.getBoundingClientRect().width > 0)
        .filter(one => one.getBoundingClientRect().height < 24)
        .map(one => one.tagName + ' ' + one.textContent.slice(0, 40))""";

  @TempDir private Path folder;

  @Test
  void nothingStandsOutAndNothingIsTooSmall() {
    try (Crew crew = Crew.withPhone(folder.resolve("narrow.db"), DemoFirm.entries())) {
      Page page = crew.page();
      page.setViewportSize(360, 740);
      for (String path : paths()) {
        crew.open(path);
        page.evaluate("document.querySelectorAll('details').forEach(one => one.open = true)");
        assertThat(page.evaluate(TOO_WIDE)).as(path).isEqualTo(List.of());
        assertThat(page.evaluate(TOO_SMALL)).as(path).isEqualTo(List.of());
      }
    }
  }

  private static List<String> paths() {
    List<String> paths = new ArrayList<>(List.of("/", "/new", "/reckon"));
    for (String name : List.of("everyday-well", "bridged-pack")) {
      String well = "/well/" + DemoFirm.well(name).get(0).well();
      paths.addAll(List.of(well, well + "/journal", well + "/load-list", well + "/tailgate"));
      Stages.all().forEach(stage -> paths.add(well + "/" + stage.name()));
    }
    Stages.reckonings().forEach(reckoning -> paths.add("/reckon/" + reckoning.name()));
    return paths;
  }
}
