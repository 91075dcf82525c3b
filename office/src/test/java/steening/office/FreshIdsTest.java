package steening.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;
import steening.journal.Ids;

class FreshIdsTest {
  /** RFC 9562, appendix A.6: the example value of version 7 and its fields. */
  @Test
  void writesTheExampleOfTheStandard() {
    assertThat(FreshIds.text(0x017F22E279B0L, 0xCC3, 0x18C4DC0C0C07398FL))
        .isEqualTo("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
  }

  @Test
  void everyIdIsOfVersionSevenAndOfThisMoment() {
    long before = System.currentTimeMillis();
    String id = new FreshIds().next();
    assertThat(Ids.isUuid(id)).isTrue();
    assertThat(UUID.fromString(id).version()).isEqualTo(7);
    assertThat(UUID.fromString(id).variant()).isEqualTo(2);
    assertThat(UUID.fromString(id).getMostSignificantBits() >>> 16).isBetween(before, System.currentTimeMillis());
  }

  @Test
  void idsRiseWhateverTheClockDoes() {
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      long[] clock = {1_700_000_000_000L};
      FreshIds ids = new FreshIds(() -> clock[0] += random.nextInt(4) - 2, mask -> random.nextLong() & mask);
      List<String> made = new ArrayList<>(ids.next(500));
      assertThat(made).as("seed " + seed).isSorted().doesNotHaveDuplicates();
    }
  }

  @Test
  void idsRiseWhenOneMillisecondMustHoldMoreThanItCan() {
    FreshIds ids = new FreshIds(() -> 1_700_000_000_000L, mask -> mask);
    assertThat(ids.next(10_000)).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void threadsNeverGetTheSame() throws InterruptedException {
    FreshIds ids = new FreshIds();
    ConcurrentLinkedQueue<String> made = new ConcurrentLinkedQueue<>();
    List<Thread> threads = new ArrayList<>();
    for (int i = 0; i < 4; i++) threads.add(new Thread(() -> made.addAll(ids.next(2_000))));
    threads.forEach(Thread::start);
    for (Thread thread : threads) thread.join();
    assertThat(new HashSet<>(made)).hasSize(8_000);
  }
}
