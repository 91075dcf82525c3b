package steening.office;

import java.time.Clock;
import java.time.Instant;
import java.util.function.Supplier;
import steening.journal.Moment;

/** The moment now, with the offset of the office's own clock; to the millisecond. */
public record OfficeClock(Clock clock) implements Supplier<Moment> {
  public OfficeClock() {
    this(Clock.systemDefaultZone());
  }

  @Override
  public Moment get() {
    Instant now = clock.instant();
    return new Moment(now.toEpochMilli(), clock.getZone().getRules().getOffset(now).getTotalSeconds() / 60);
  }
}
