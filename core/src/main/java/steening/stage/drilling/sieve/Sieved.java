package steening.stage.drilling.sieve;

import java.util.ArrayList;
import java.util.List;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.well.Part;

/** The samples that were sieved, in order of time. */
public record Sieved(List<Sample> samples) {
  public static final Part<Sieved> PART = Part.ofHole("sieved", new Sieved(List.of()));

  public Sieved {
    samples = List.copyOf(samples);
  }

  /** One sample, as it was typed; whether its two series belong together is not known here. */
  public record Sample(Length from, Length to, List<Quantity> openings, List<Quantity> finer, String entry) {
    public Sample {
      openings = List.copyOf(openings);
      finer = List.copyOf(finer);
    }
  }

  public Sieved with(Sample sample) {
    List<Sample> more = new ArrayList<>(samples);
    more.add(sample);
    return new Sieved(more);
  }
}
