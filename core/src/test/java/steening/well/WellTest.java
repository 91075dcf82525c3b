package steening.well;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import steening.journal.Moment;
import steening.quantity.Length;
import steening.quantity.Unit;

/** One job, more than one hole. */
class WellTest {
  private static final Moment DAY = Moment.parse("2026-05-12T08:00:00-05:00");
  private static final Permit LEAVE = Permit.PART.empty()
      .with(new Permit.Grant("WP-1", DAY.date(), DAY.date(), Optional.empty(), "e1"));
  private static final Well FIRST = Well.named("w1").with(Permit.PART, LEAVE).with(Hole.PART, drilled(88));
  private static final Well SECOND = FIRST.movedOver();

  @Test
  void whatIsTheHolesBeginsAnewAndWhatIsTheJobsStays() {
    assertThat(SECOND.get(Hole.PART)).isEqualTo(Hole.PART.empty());
    assertThat(SECOND.get(Permit.PART)).isEqualTo(LEAVE);
    assertThat(SECOND.id()).isEqualTo("w1");
    assertThat(SECOND.number()).isEqualTo(2);
  }

  @Test
  void theEarlierHoleIsAWellInItself() {
    assertThat(SECOND.earlier()).hasSize(1);
    assertThat(SECOND.hole(1).orElseThrow().get(Hole.PART).depth()).isEqualTo(Length.feet(88));
    assertThat(SECOND.hole(2)).containsSame(SECOND);
    assertThat(SECOND.hole(0)).isEmpty();
    assertThat(SECOND.hole(3)).isEmpty();
  }

  @Test
  void somethingIsDoneInOneHoleAndNotInTheOther() {
    Well deeper = SECOND.inHole(1, w -> w.with(Hole.PART, drilled(90)));
    assertThat(deeper.hole(1).orElseThrow().get(Hole.PART).depth()).isEqualTo(Length.feet(90));
    assertThat(deeper.get(Hole.PART).isBegun()).isFalse();
    assertThat(SECOND.inHole(2, w -> w.with(Hole.PART, drilled(20))).get(Hole.PART).depth())
        .isEqualTo(Length.feet(20));
    assertThat(SECOND.inHole(7, w -> w.with(Hole.PART, drilled(20)))).isSameAs(SECOND);
  }

  @Test
  void aThirdHoleHasTwoEarlierOnes() {
    Well third = SECOND.with(Hole.PART, drilled(40)).movedOver();
    List<Length> depths = third.earlier().stream().map(w -> w.get(Hole.PART).depth()).toList();
    assertThat(depths).containsExactly(Length.feet(88), Length.feet(40));
    assertThat(third.earlier().get(1).number()).isEqualTo(2);
  }

  private static Hole drilled(int feet) {
    return Hole.PART.empty().drilled(Length.ZERO, Length.feet(feet), Length.of(7.875, Unit.INCH), DAY);
  }
}
