package steening.stage.development;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.Shown;
import steening.well.Well;

/**
 * When development may stop, criterion by criterion, so that one sees what is met, what is not, and what was never
 * measured.
 */
final class StopRule {
  /** Whether a criterion is met. */
  enum State {
    MET(Phrase.of("met", "cumplido")),
    UNMET(Phrase.of("unmet", "sin cumplir")),
    UNKNOWN(Phrase.of("unknown", "no se sabe"));

    final Phrase word;

    State(Phrase word) {
      this.word = word;
    }

    static State of(boolean met) {
      return met ? MET : UNMET;
    }
  }

  /**
   * One of them.
   *
   * @param measured or what is missing to decide
   */
  record Criterion(Phrase name, Shown limit, Shown measured, State state, Phrase source) {}

  static final List<Phrase> HEADS = List.of(
      Phrase.of("criterion", "criterio"), Phrase.of("limit", "límite"), Phrase.of("measured", "medido"),
      Phrase.of("state", "estado"), Phrase.of("source", "fuente"));

  private StopRule() {}

  /** None before the work began. */
  static List<Criterion> of(Well well) {
    Development development = well.get(Development.PART);
    if (!development.isBegun()) return List.of();
    return List.of(
        WaterCriteria.sand(development), WaterCriteria.decay(development), WaterCriteria.turbidity(development),
        WellCriteria.pack(well), WellCriteria.capacity(well), WellCriteria.fluid(well));
  }

  static List<List<Shown>> rows(List<Criterion> criteria) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Criterion one : criteria) {
      rows.add(List.of(one.name(), one.limit(), one.measured(), one.state().word, one.source()));
    }
    return rows;
  }

  /** What they come to. */
  static Phrase said(List<Criterion> criteria) {
    long met = criteria.stream().filter(c -> c.state() == State.MET).count();
    long unmet = criteria.stream().filter(c -> c.state() == State.UNMET).count();
    if (met == criteria.size()) return Phrase.of("developed: all criteria are met", "desarrollado: todo se cumple");
    String unknown = Long.toString(criteria.size() - met - unmet);
    if (unmet > 0) {
      return Phrase.of("go on: {0} met, {1} unmet, {2} unknown", "siga: {0} cumplidos, {1} sin cumplir, {2} no se sabe",
          Long.toString(met), Long.toString(unmet), unknown);
    }
    return Phrase.of("{0} met, none unmet; {1} were not measured",
        "{0} cumplidos, ninguno sin cumplir; faltan {1} por medir",
        Long.toString(met), unknown);
  }
}
