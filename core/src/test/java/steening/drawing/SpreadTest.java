package steening.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpreadTest {
  @Test
  void leavesLabelsThatDoNotTouchWhereTheyAre() {
    assertThat(Spread.middles(List.of(10.0, 50.0, 90.0), List.of(20.0, 20.0, 20.0), 0, 100))
        .containsExactly(10.0, 50.0, 90.0);
  }

  @Test
  void pushesTwoThatWantOnePlaceApartEvenly() {
    assertThat(Spread.middles(List.of(50.0, 50.0), List.of(10.0, 20.0), 0, 100)).containsExactly(42.5, 57.5);
  }

  @Test
  void keepsToTheSheet() {
    assertThat(Spread.middles(List.of(1.0, 99.0), List.of(10.0, 10.0), 0, 100)).containsExactly(5.0, 95.0);
  }

  @Test
  void hangsBelowWhenThereIsNoRoom() {
    assertThat(Spread.middles(List.of(5.0, 6.0, 7.0), List.of(10.0, 10.0, 10.0), 0, 20))
        .containsExactly(5.0, 15.0, 25.0);
  }

  @Test
  void drawsNothingFromNothing() {
    assertThat(Spread.middles(List.of(), List.of(), 0, 100)).isEmpty();
  }

  /** No label touches another, and no shift of a run of touching labels brings them nearer to where they are wanted. */
  @Test
  void isTheNearestOfAllThatDoNotTouch() {
    Random chance = new Random(7);
    for (int round = 0; round < 200; round++) {
      List<Double> wanted = new ArrayList<>();
      List<Double> heights = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        wanted.add(chance.nextDouble() * 400);
        heights.add(8 + chance.nextDouble() * 20);
      }
      Collections.sort(wanted);
      List<Double> middles = Spread.middles(wanted, heights, 0, 400);
      assertThat(middles.get(0) - heights.get(0) / 2).isGreaterThan(-1e-9);
      assertThat(middles.get(11) + heights.get(11) / 2).isLessThan(400 + 1e-9);
      for (int i = 1; i < 12; i++) {
        assertThat(middles.get(i) - middles.get(i - 1)).isGreaterThan((heights.get(i) + heights.get(i - 1)) / 2 - 1e-9);
      }
      runsAreCentred(wanted, heights, middles);
    }
  }

  private static void runsAreCentred(List<Double> wanted, List<Double> heights, List<Double> middles) {
    int begin = 0;
    for (int i = 1; i <= middles.size(); i++) {
      boolean touches = i < middles.size()
          && middles.get(i) - middles.get(i - 1) < (heights.get(i) + heights.get(i - 1)) / 2 + 1e-9;
      if (touches) continue;
      double shift = 0;
      for (int j = begin; j < i; j++) shift += wanted.get(j) - middles.get(j);
      boolean atTheEdge = begin == 0 && middles.get(0) - heights.get(0) / 2 < 1e-9
          || i == middles.size() && middles.get(i - 1) + heights.get(i - 1) / 2 > 400 - 1e-9;
      if (!atTheEdge) assertThat(shift).isCloseTo(0, within(1e-6));
      begin = i;
    }
  }
}
