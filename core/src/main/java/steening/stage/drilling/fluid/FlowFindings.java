package steening.stage.drilling.fluid;

import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Scale;
import steening.stage.drilling.DrillingStage;
import steening.well.Fill;
import steening.well.Flowing;
import steening.well.Well;

/** A flow that was measured: what it asks of the seal, said before the grout is bought. */
final class FlowFindings {
  private FlowFindings() {}

  static Optional<Finding> of(Well well) {
    Flowing flowing = well.get(Flowing.PART);
    if (flowing.rate().isEmpty() || well.get(Fill.GROUT).isBegun()) return Optional.empty();
    Figure rate = new Figure(flowing.rate().get(), Scale.FLOW);
    Figure most = new Figure(Flowing.SIMPLE_RATE, Scale.FLOW);
    return Optional.of(Finding.of(
            "drilling.flowing", flowing.isSimple() ? Weight.LOOK : Weight.STOP, DrillingStage.NAME,
            said(flowing, rate, most))
        .comparing(rate, most)
        .so(flowing.isSimple() ? simple() : beyond())
        .from(flowing.entries()));
  }

  private static Phrase said(Flowing flowing, Figure rate, Figure most) {
    Figure highest = new Figure(Flowing.SIMPLE_HEAD, Scale.DEPTH);
    if (flowing.head().isEmpty()) {
      return Phrase.of(
          "The well flows {0}; its head is not known. Simple grouting is for {1} and a head of {2} at most (Minnesota"
              + " 4725.3450).",
          "El pozo fluye {0}; no se conoce su carga. La cementación simple es hasta {1} y una carga de {2} (Minnesota"
              + " 4725.3450).",
          rate, most, highest);
    }
    return Phrase.of(
        "The well flows {0} with a head of {3}. Simple grouting is for {1} and a head of {2} at most (Minnesota"
            + " 4725.3450).",
        "El pozo fluye {0} con una carga de {3}. La cementación simple es hasta {1} y una carga de {2} (Minnesota"
            + " 4725.3450).",
        rate, most, highest, new Figure(flowing.head().get(), Scale.DEPTH));
  }

  private static Phrase simple() {
    return Phrase.of(
        "Hold it with mud of the weight needed, and seal with cement, not bentonite slurry. The local rule and the"
            + " licensed driller decide.",
        "Conténgalo con lodo de la densidad necesaria y selle con cemento, no con lechada de bentonita. Deciden la"
            + " norma"
            + " local y el perforador con licencia.");
  }

  private static Phrase beyond() {
    return Phrase.of(
        "Do not go on as usual: such a well is built another way, with a cemented outer casing. Ask the authority.",
        "No siga como siempre: un pozo así se construye de otra forma, con un ademe exterior cementado. Pregunte a la"
            + " autoridad.");
  }
}
