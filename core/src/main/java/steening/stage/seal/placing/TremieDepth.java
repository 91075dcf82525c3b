package steening.stage.seal.placing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.quantity.Unit;

/**
 * Whether the tremie hangs as deep as it should.
 *
 * @param bottom where the grout starts
 * @param begun whether grout was pumped
 * @param topAt where the grout stood at a moment, at the highest; none where there was none, or nobody knows
 */
public record TremieDepth(
    Tremie tremie, Length bottom, boolean begun, Function<Moment, Optional<Length>> topAt) {
  /** Grouting starts at the bottom (COMAR 26.04.04.20, NR 812.20) or within so much of it (Minn. 4725.3050); seen. */
  private static final Length START_WITHIN = Length.feet(10);

  /** Marks on a tremie are read to about so much (common practice, no source). */
  private static final Length READ_TO = Length.of(0.5, Unit.FOOT);

  /** Later than anything. */
  private static final Moment LATEST = new Moment(Long.MAX_VALUE, 0);

  public Optional<Finding> finding() {
    return tremie.last().flatMap(run ->
        reach(run).or(() -> begun ? out(run).or(() -> enteredAgain(run)) : start(run)));
  }

  private Optional<Finding> reach(Tremie.Run run) {
    if (!run.end().isMoreThan(run.length().plus(READ_TO))) return Optional.empty();
    return Optional.of(of("seal.tremie-length", run, Phrase.of(
            "A tremie of {0} does not reach down to {1}.", "Una tremie de {0} no llega a {1}.",
            depth(run.length()), depth(run.end())))
        .comparing(depth(run.length()), depth(run.end()))
        .so(Phrase.of("Count its pieces again.", "Cuente otra vez sus tramos.")));
  }

  private Optional<Finding> start(Tremie.Run run) {
    if (run.end().isMoreThan(bottom.plus(READ_TO))) {
      return Optional.of(of("seal.tremie-deep", run, Phrase.of(
              "The tremie ends at {0}, deeper than where the grout starts, {1}.",
              "La tremie termina a {0}, más abajo de donde empieza la lechada, {1}.",
              depth(run.end()), depth(bottom)))
          .comparing(depth(run.end()), depth(bottom))
          .because(Phrase.of(
              "It stands in the chips or the pack, or a depth is wrong.",
              "Está dentro de los pellets o del filtro, o una profundidad está mal."))
          .so(Phrase.of(
              "Lift it clear: grout pumped there goes into the pack.",
              "Levántela: la lechada bombeada ahí se va al filtro.")));
    }
    Length above = bottom.minus(run.end());
    if (!above.isMoreThan(START_WITHIN)) return Optional.empty();
    return Optional.of(of("seal.tremie-high", run, Phrase.of(
            "The tremie ends at {0}, {1} above where the grout starts, {2}.",
            "La tremie termina a {0}, {1} arriba de donde empieza la lechada, {2}.",
            depth(run.end()), depth(above), depth(bottom)))
        .comparing(depth(run.end()), depth(bottom))
        .because(Phrase.of(
            "Grout that falls through mud mixes with it and leaves mud below.",
            "La lechada que cae por el lodo se mezcla con él y deja lodo abajo."))
        .so(Phrase.of(
            "Start at the bottom (COMAR 26.04.04.20, NR 812.20), or within {0} of it (Minn. 4725.3050).",
            "Empiece en el fondo (COMAR 26.04.04.20, NR 812.20), o a no más de {0} (Minn. 4725.3050).",
            depth(START_WITHIN))));
  }

  private boolean isOut(Tremie.Run run, Moment when) {
    return topAt.apply(when).filter(top -> run.end().isLessThan(top.minus(READ_TO))).isPresent();
  }

  private Optional<Finding> out(Tremie.Run run) {
    Optional<Length> top = topAt.apply(LATEST);
    if (top.isEmpty() || !isOut(run, LATEST)) return Optional.empty();
    return Optional.of(of("seal.tremie-out", run, Phrase.of(
            "The end of the tremie hangs at {0}, above the grout, which stands at {1} or lower.",
            "El extremo de la tremie está a {0}, arriba de la lechada, que está a {1} o más abajo.",
            depth(run.end()), depth(top.get())))
        .comparing(depth(run.end()), depth(top.get()))
        .because(Phrase.of(
            "Pulled faster than the grout rose, or lifted for a stop.",
            "Se subió más rápido que la lechada, o se levantó por una parada."))
        .so(Phrase.of(
            "Stop. Clear of the grout, pump until air and water are out of the tremie; only then lower it back in"
                + " (COMAR 26.04.04.20). It stays in grout while it pumps (Minn. 4725.3050, NR 812.20).",
            "Pare. Fuera de la lechada, bombee hasta sacar aire y agua de la tremie; solo entonces vuelva a meterla"
                + " (COMAR 26.04.04.20). Al bombear queda sumergida (Minn. 4725.3050, NR 812.20).")));
  }

  private Optional<Finding> enteredAgain(Tremie.Run run) {
    Optional<Tremie.Run> before = tremie.before().filter(b -> isOut(b, b.at()));
    if (before.isEmpty() || run.refilled()) return Optional.empty();
    return Optional.of(of("seal.tremie-again", run, Phrase.of(
            "The tremie was out of the grout, its end at {0}; now it is at {1}.",
            "La tremie estuvo fuera de la lechada, con el extremo a {0}; ahora está a {1}.",
            depth(before.get().end()), depth(run.end())))
        .comparing(depth(run.end()), depth(before.get().end()))
        .because(Phrase.of(
            "Air or water in it would be pumped into the grout.",
            "El aire o agua que contenga se bombearía dentro de la lechada."))
        .so(Phrase.of(
            "If it was full of grout before it went in, say so in its entry; if not, lift it clear and fill it first.",
            "Si estaba llena de lechada antes de entrar, dígalo en su registro; si no, levántela y llénela primero.")));
  }

  private static Finding of(String code, Tremie.Run run, Phrase text) {
    return Finding.of(code, Weight.LOOK, "seal", text).from(List.of(run.entry()));
  }

  private static Figure depth(Length length) {
    return new Figure(length, Scale.DEPTH);
  }
}
