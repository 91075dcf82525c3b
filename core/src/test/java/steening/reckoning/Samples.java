package steening.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import steening.field.Field;
import steening.field.Hands;
import steening.field.QuantityField;
import steening.field.Reading;
import steening.journal.Body;
import steening.language.Reader;
import steening.quantity.Notation;

/** Inputs to try a reckoning with: the examples of its own fields, so that a new one needs nothing written here. */
final class Samples {
  /**
   * Where the examples of a reckoning's fields contradict each other, inputs that do not: texts by name. A field that
   * is not named keeps its example.
   */
  private static final Map<String, Body> OWN = Map.of();

  /** For a hole of several diameters, whose workings have a line for each reach. */
  private static final String WASHED_OUT = "8 in to 20 ft; 11.2 in to 30 ft; 10 in to 120 ft; 9 in";

  private static final int VARIATIONS = 10;

  private Samples() {}

  /** What the samples come to; at least one of them must come to something. */
  static List<Outcome> outcomes(Reckoning reckoning) {
    List<Outcome> outcomes = new ArrayList<>();
    for (Reader reader : List.of(Hands.US, Hands.METRIC)) {
      for (Body sample : of(reckoning, reader)) {
        Inputs inputs = Inputs.of(taken(reckoning, sample, reader));
        Outcome.ifReckonable(() -> reckoning.of(inputs)).ifPresent(outcomes::add);
      }
    }
    assertThat(outcomes).as("samples of %s", reckoning.name()).isNotEmpty();
    return outcomes;
  }

  private static Body taken(Reckoning reckoning, Body sample, Reader reader) {
    Body taken = Body.EMPTY;
    for (Field field : reckoning.inputs()) {
      if (!field.isIn(sample)) continue;
      Reading reading = field.read(field.text(sample).orElseThrow(), reader, true);
      assertThat(reading).as("%s: %s", field.name(), sample).isInstanceOf(Reading.Taken.class);
      taken = taken.with(field.name(), ((Reading.Taken) reading).text());
    }
    return taken;
  }

  /**
   * The examples of the required fields; with each of the others alone; of all fields; of all but one of the others;
   * with a washed-out hole; each of these as it is and with every amount a little more or less.
   */
  private static List<Body> of(Reckoning reckoning, Reader reader) {
    Body least = OWN.getOrDefault(reckoning.name(), Body.EMPTY);
    for (Field field : reckoning.inputs()) if (field.isRequired()) least = with(least, field, reader);
    Body most = least;
    for (Field field : reckoning.inputs()) most = with(most, field, reader);
    Set<Body> middles = new LinkedHashSet<>(List.of(least, most));
    for (Field field : reckoning.inputs()) {
      if (field.holds().equals("bore")) middles.add(least.with(field.name(), WASHED_OUT));
      if (field.isIn(least)) continue;
      middles.add(with(least, field, reader));
      middles.add(without(most, field));
    }
    List<Body> samples = new ArrayList<>();
    for (Body middle : middles) samples.addAll(varied(reckoning, middle));
    return samples;
  }

  private static Body with(Body body, Field field, Reader reader) {
    return field.isIn(body) ? body : body.with(field.name(), field.example(reader));
  }

  private static Body without(Body body, Field field) {
    Map<String, String> rest = new TreeMap<>(body.values());
    rest.remove(field.name());
    return new Body(rest);
  }

  private static List<Body> varied(Reckoning reckoning, Body middle) {
    List<Body> samples = new ArrayList<>(List.of(middle));
    SplittableRandom random = new SplittableRandom(20260506);
    for (int i = 0; i < VARIATIONS; i++) {
      Body body = middle;
      for (Field field : reckoning.inputs()) {
        if (field instanceof QuantityField amount && field.isIn(middle)) {
          body = body.with(field.name(), nudged(amount, field.text(middle).orElseThrow(), random.nextDouble(0.9, 1.1)));
        }
      }
      samples.add(body);
    }
    return samples;
  }

  private static String nudged(QuantityField field, String text, double factor) {
    Notation.Typed typed = Notation.read(text, field.scale().us()).orElseThrow();
    BigDecimal value = new BigDecimal(typed.quantity().in(typed.unit()) * factor).setScale(4, RoundingMode.HALF_UP);
    boolean possible = field.isPossible(typed.unit().of(value));
    return possible ? value.toPlainString() + " " + typed.unit().symbol() : text;
  }
}
