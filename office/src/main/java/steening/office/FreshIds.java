package steening.office;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.LongSupplier;
import java.util.function.LongUnaryOperator;

/**
 * Makes UUIDs of version 7 (RFC 9562, section 5.7): 48 bits of milliseconds since 1970, 12 bits that count within the
 * millisecond (section 6.2, method 1), 62 random bits. Each id is greater than the one before, also when the clock
 * stands still or is set back. Safe for threads.
 */
public final class FreshIds {
  private static final int MOST_IN_A_MILLISECOND = 0xFFF;
  /** The count begins at random in the lower half, so that there is room to count. */
  private static final int FIRST_IN_A_MILLISECOND = 0x7FF;

  private final LongSupplier clock;
  private final LongUnaryOperator random;
  private long millisecond = Long.MIN_VALUE;
  private int count;

  public FreshIds() {
    this(System::currentTimeMillis, new SecureRandom());
  }

  private FreshIds(LongSupplier clock, SecureRandom random) {
    this(clock, mask -> random.nextLong() & mask);
  }

  /**
   * @param clock milliseconds since 1970
   * @param random from a mask to random bits within it
   */
  FreshIds(LongSupplier clock, LongUnaryOperator random) {
    this.clock = clock;
    this.random = random;
  }

  public synchronized String next() {
    long now = clock.getAsLong();
    if (now > millisecond) {
      millisecond = now;
      count = (int) random.applyAsLong(FIRST_IN_A_MILLISECOND);
    } else if (count < MOST_IN_A_MILLISECOND) {
      count++;
    } else {
      // more than the count can hold: borrow from the next millisecond rather than wait for it
      millisecond++;
      count = (int) random.applyAsLong(FIRST_IN_A_MILLISECOND);
    }
    return text(millisecond, count, random.applyAsLong(-1L));
  }

  public List<String> next(int howMany) {
    List<String> ids = new ArrayList<>(howMany);
    for (int i = 0; i < howMany; i++) ids.add(next());
    return ids;
  }

  /** The layout of section 5.7; of {@code randB} the lower 62 bits count. */
  static String text(long millisecond, int randA, long randB) {
    long high = millisecond << 16 | 0x7000L | randA;
    long low = 0x8000_0000_0000_0000L | randB & 0x3FFF_FFFF_FFFF_FFFFL;
    return new UUID(high, low).toString();
  }
}
