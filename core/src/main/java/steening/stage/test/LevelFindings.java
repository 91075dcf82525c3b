package steening.stage.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.quantity.Unit;
import steening.stage.test.LevelReadings.LevelReading;
import steening.stage.test.LevelReadings.Sort;
import steening.well.Well;

/** Whether the levels can be what they are said to be: points they were read from, their order, above and below. */
final class LevelFindings {
  /** Two tapes do not differ by more while the water stands still (common practice, no source). */
  private static final Length STILL = Length.of(0.1, Unit.FOOT);

  private LevelFindings() {}

  static List<Finding> of(Well well) {
    List<Finding> findings = new ArrayList<>();
    LevelReadings readings = well.get(LevelReadings.PART);
    Run run = Run.of(well);
    adrift(readings).ifPresent(findings::add);
    restarted(readings).ifPresent(findings::add);
    for (Sort sort : List.of(Sort.PUMPING, Sort.RECOVERY)) order(readings.of(sort)).ifPresent(findings::add);
    mixed(run).ifPresent(findings::add);
    above(run).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> adrift(LevelReadings readings) {
    List<String> entries = readings.all().stream().filter(r -> r.depth().isEmpty()).map(LevelReading::entry).toList();
    if (entries.isEmpty()) return Optional.empty();
    return Optional.of(look(
            "test.datum-unknown",
            Phrase.of(
                "Levels read from the top of casing before the stick-up was known: {0}. They are kept aside.",
                "Niveles leídos desde la boca del ademe antes de conocerse su altura: {0}. Quedan aparte.",
                Integer.toString(entries.size())))
        .so(Phrase.of(
            "Enter the stick-up, at an hour before these readings.",
            "Registre la altura sobre el terreno, con hora anterior a estas lecturas."))
        .from(entries));
  }

  private static Optional<Finding> restarted(LevelReadings readings) {
    if (readings.starts().size() < 2) return Optional.empty();
    return Optional.of(Finding.of(
            "test.restarted", Weight.NOTE, TestStage.NAME,
            Phrase.of(
                "The pump was started {0} times. Only the levels after the last start count.",
                "La bomba arrancó {0} veces. Solo cuentan los niveles después del último arranque.",
                Integer.toString(readings.starts().size())))
        .so(Phrase.of(
            "Steps at different rates are not reckoned here; let the level come to rest before each start.",
            "Los escalones a distintos gastos no se calculan aquí; deje reposar el nivel antes de cada arranque."))
        .from(readings.starts()));
  }

  private static Optional<Finding> order(List<LevelReading> readings) {
    for (int i = 1; i < readings.size(); i++) {
      LevelReading before = readings.get(i - 1);
      LevelReading after = readings.get(i);
      if (after.minutes() > before.minutes()) continue;
      return Optional.of(look(
              "test.time-order",
              Phrase.of(
                  "A level at {0} was taken down after the one at {1}.", "Un nivel a {0} se anotó después del de {1}.",
                  Window.minutes(after.minutes()), Window.minutes(before.minutes())))
          .because(Phrase.of("A slip in the minutes, or one level taken down twice.",
              "Un error en los minutos, o un nivel anotado dos veces."))
          .so(Phrase.of("Correct the minutes, or withdraw one of the two.",
              "Corrija los minutos, o retire uno de los dos."))
          .from(List.of(before.entry(), after.entry())));
    }
    return Optional.empty();
  }

  private static Optional<Finding> mixed(Run run) {
    if (run.rest().isEmpty()) return Optional.empty();
    LevelReading rest = run.rest().get();
    List<Run.Drawdown> all = new ArrayList<>(run.pumping());
    all.addAll(run.recovery());
    Optional<Run.Drawdown> other =
        all.stream().filter(d -> d.reading().from() != rest.from()).reduce((first, second) -> second);
    if (other.isEmpty()) return Optional.empty();
    LevelReading reading = other.get().reading();
    Length so = other.get().size();
    Length otherwise = reading.tape().minus(rest.tape());
    if (so.equals(otherwise)) return Optional.empty();
    Length apart = so.max(otherwise).minus(so.min(otherwise));
    return Optional.of(look(
            "test.mixed-datums",
            Phrase.of(
                "The static level was read {0}, this one {1}: the drawdown is {2} or {3},"
                    + " differing by the stick-up {4}.",
                "El nivel estático se leyó {0}, este {1}: el abatimiento es {2} o {3},"
                    + " y difieren en la altura sobre el terreno {4}.",
                TestWords.from(rest.from()), TestWords.from(reading.from()), TestWords.depth(so),
                TestWords.depth(otherwise),
                TestWords.depth(apart)))
        .comparing(TestWords.depth(so), TestWords.depth(otherwise))
        .because(Phrase.of("Perhaps both were read from one point.", "Quizá ambos se leyeron desde el mismo punto."))
        .so(Phrase.of(
            "{0} is used. Correct the point of the reading that is wrong.",
            "Se usa {0}. Corrija el punto de la lectura equivocada.",
            TestWords.depth(so)))
        .from(List.of(rest.entry(), reading.entry())));
  }

  private static Optional<Finding> above(Run run) {
    List<Run.Drawdown> above =
        run.pumping().stream().filter(d -> d.size().isLessThan(Length.ZERO.minus(STILL))).toList();
    if (above.isEmpty()) return Optional.empty();
    LevelReading rest = run.rest().orElseThrow();
    LevelReading pumping = above.get(above.size() - 1).reading();
    Finding finding = Finding.of(
            "test.level-above-static", Weight.STOP, TestStage.NAME,
            Phrase.of(
                "The pumping level, {0} below ground, stands above the static level, {1}: that cannot be.",
                "El nivel dinámico, {0} bajo el terreno, está por encima del estático, {1}: no puede ser.",
                TestWords.depth(pumping.depth().orElseThrow()), TestWords.depth(rest.depth().orElseThrow())))
        .comparing(TestWords.depth(pumping.depth().get()), TestWords.depth(rest.depth().get()))
        .from(List.of(pumping.entry(), rest.entry()));
    return Optional.of(offered(finding, rest, pumping));
  }

  /** The level whose unit was probably meant otherwise: the one that then lies where it must. */
  private static Finding offered(Finding finding, LevelReading rest, LevelReading pumping) {
    Optional<Length> risen = inOtherUnit(rest).filter(d -> d.isLessThan(pumping.depth().orElseThrow()));
    LevelReading slip = risen.isPresent() ? rest : pumping;
    Optional<Length> sunk = inOtherUnit(pumping).filter(d -> d.isMoreThan(rest.depth().orElseThrow()));
    if (risen.isEmpty() && sunk.isEmpty()) {
      return finding.so(Phrase.of("Read both again.", "Lea ambos otra vez."));
    }
    String typed = TestWords.typed(slip.tape(), slip.unit(), slip.unit());
    String meant = TestWords.typed(slip.tape(), slip.unit(), other(slip.unit()));
    return finding
        .because(Phrase.of("A unit may have been mistaken: {0} was typed.",
            "Quizá se equivocó la unidad: se escribió {0}.", typed))
        .so(Phrase.of("Did you mean {0}? If so, correct that entry.",
            "¿Quiso decir {0}? Entonces corrija ese registro.", meant));
  }

  private static Optional<Length> inOtherUnit(LevelReading reading) {
    if (reading.unit() != Unit.FOOT && reading.unit() != Unit.METRE) return Optional.empty();
    Length stickUp = reading.tape().minus(reading.depth().orElseThrow());
    return Optional.of(Length.of(reading.tape().in(reading.unit()), other(reading.unit())).minus(stickUp));
  }

  private static Unit other(Unit unit) {
    return unit == Unit.FOOT ? Unit.METRE : Unit.FOOT;
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, TestStage.NAME, text);
  }
}
