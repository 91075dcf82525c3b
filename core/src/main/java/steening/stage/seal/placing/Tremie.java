package steening.stage.seal.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.ChoiceField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Body;
import steening.journal.Entry;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.reckoning.Outcome;
import steening.well.Part;
import steening.well.Well;

/** The pipe that the grout goes down through, as it was run and as it was moved since, in order of time. */
public record Tremie(List<Run> runs) {
  public static final Part<Tremie> PART = Part.ofHole("tremie", new Tremie(List.of()));

  static final QuantityField END = QuantityField.of(
          "end", Scale.DEPTH, Phrase.of("depth of its end", "profundidad de su extremo"), "136 ft", "41.5 m")
      .between("0 ft", "6000 ft").usually("0 ft", "600 ft");
  static final ChoiceField REFILLED = ChoiceField.of(
          "refilled", Phrase.of("full of grout before it went in", "llena de lechada antes de entrar"),
          ChoiceField.option("yes", "yes", "sí"), ChoiceField.option("no", "no", "no"))
      .optional();

  public static final Kind KIND = Kind.of(
          "tremie", Phrase.of("Tremie", "Tubería tremie"), TremieFit.OUTSIDE, HoseVolume.INSIDE, HoseVolume.LENGTH, END,
          HoseVolume.HOSE_INSIDE, HoseVolume.HOSE_LENGTH, TremieFit.BELL, REFILLED)
      .carrying(TremieFit.OUTSIDE, HoseVolume.INSIDE, HoseVolume.HOSE_INSIDE, HoseVolume.HOSE_LENGTH, TremieFit.BELL);

  public Tremie {
    runs = List.copyOf(runs);
  }

  /**
   * As it hangs from a moment on.
   *
   * @param end of it, below ground
   * @param bell outside diameter of the casing at a bell, where it was measured
   * @param refilled whether air and water had been pushed out of it before it went into grout
   */
  public record Run(
      Length outside, Length inside, Length length, Length end, Optional<Length> hoseInside,
      Optional<Length> hoseLength, Optional<Length> bell, boolean refilled, Moment at, String entry) {
    /** What stays in it and the hose when both are full. */
    public Optional<Outcome> held() {
      return Outcome.ifReckonable(() -> HoseVolume.of(inside, length, hoseInside, hoseLength));
    }
  }

  public static Well fold(Well well, Entry entry) {
    Body body = entry.body();
    for (QuantityField field : List.of(TremieFit.OUTSIDE, HoseVolume.INSIDE, HoseVolume.LENGTH, END)) {
      if (!field.isIn(body)) return well;
    }
    List<Run> more = new ArrayList<>(well.get(PART).runs());
    more.add(new Run(
        TremieFit.OUTSIDE.length(body).orElseThrow(), HoseVolume.INSIDE.length(body).orElseThrow(),
        HoseVolume.LENGTH.length(body).orElseThrow(), END.length(body).orElseThrow(),
        HoseVolume.HOSE_INSIDE.length(body), HoseVolume.HOSE_LENGTH.length(body), TremieFit.BELL.length(body),
        REFILLED.text(body).filter("yes"::equals).isPresent(), entry.happenedAt(), entry.id()));
    return well.with(PART, new Tremie(more));
  }

  public Optional<Run> last() {
    return runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(runs.size() - 1));
  }

  /** The one before the last. */
  public Optional<Run> before() {
    return runs.size() < 2 ? Optional.empty() : Optional.of(runs.get(runs.size() - 2));
  }

  /** What stays in hose and tremie as they are now. */
  public Optional<Outcome> held() {
    return last().flatMap(Run::held);
  }
}
