package steening.well;

import java.util.ArrayList;
import java.util.List;
import steening.journal.Body;
import steening.quantity.Length;

/** The samples that were sieved, in order of time. Drilling writes them down, the screen is chosen by them. */
public record Sieved(List<Sample> samples) {
  public static final Part<Sieved> PART = Part.ofHole("sieved", new Sieved(List.of()));

  public Sieved {
    samples = List.copyOf(samples);
  }

  /**
   * One sample of the ground.
   *
   * @param body the sieves as they were typed; whether they make a curve is not known here
   */
  public record Sample(Length from, Length to, Body body, String entry) {}

  public Sieved with(Sample sample) {
    List<Sample> more = new ArrayList<>(samples);
    more.add(sample);
    return new Sieved(more);
  }
}
