package steening.stage.drilling.fluid;

import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.stage.drilling.Drilling;
import steening.stage.drilling.DrillingStage;
import steening.well.CasingString;
import steening.well.Hole;
import steening.well.Plan;
import steening.well.Well;

/**
 * The funnel as last read, against the 32 to 45 s/qt that suit sand. Practice of drilling manuals, from memory: 32 to
 * 38 aimed at, 35 to 45 for sand, 45 to 80 for coarse sand and gravel; clean water runs in 26 (course sheet, seen).
 */
final class FunnelFindings {
  private static final Quantity THIN = Measure.of(32, Unit.FUNNEL_SECOND);
  private static final Quantity THICK = Measure.of(45, Unit.FUNNEL_SECOND);

  private FunnelFindings() {}

  /** Thin mud matters while there is hole to drill; thick mud matters most when the screen is next. */
  static Optional<Finding> of(Well well, Drilling.Mud mud) {
    Measure funnel = mud.funnel().orElseThrow();
    boolean drilled = isDrilled(well);
    if (funnel.coherent() > THICK.coherent()) return Optional.of(thick(mud, funnel, drilled));
    return !drilled && funnel.coherent() < THIN.coherent() ? Optional.of(thin(mud, funnel)) : Optional.empty();
  }

  /** As deep as planned, or with something lowered: the screen comes next. */
  static boolean isDrilled(Well well) {
    Length depth = well.get(Drilling.PART).rodDepth().max(well.get(Hole.PART).depth());
    boolean lowered = !well.get(CasingString.PART).pieces().isEmpty();
    return lowered || well.get(Plan.PART).length(Plan.DEPTH).map(d -> !depth.isLessThan(d)).orElse(false);
  }

  private static Finding thick(Drilling.Mud mud, Measure funnel, boolean drilled) {
    Figure measured = new Figure(funnel, Scale.FUNNEL);
    Figure most = new Figure(THICK, Scale.FUNNEL);
    return Finding.of(
            "drilling.mud-thick", drilled ? Weight.LOOK : Weight.NOTE, DrillingStage.NAME,
            Phrase.of(
                "The funnel reads {0}; up to {1} is usual in sand (from memory).",
                "El embudo marca {0}; en arena lo usual es hasta {1} (de memoria).", measured, most))
        .comparing(measured, most)
        .because(Phrase.of(
            "Thick mud goes into the sand and seals it; coarse sand and gravel may ask for it while they are drilled.",
            "El lodo espeso entra en la arena y la sella; la arena gruesa y la grava pueden pedirlo al perforarlas."))
        .so(Phrase.of(
            "Thin before setting the screen, unless the well may flow; then check weight first.",
            "Adelgace antes de colocar el cedazo, salvo que el pozo pueda ser surgente; entonces revise la densidad."))
        .from(List.of(mud.entry()));
  }

  private static Finding thin(Drilling.Mud mud, Measure funnel) {
    Figure measured = new Figure(funnel, Scale.FUNNEL);
    Figure least = new Figure(THIN, Scale.FUNNEL);
    return Finding.of(
            "drilling.mud-thin", Weight.LOOK, DrillingStage.NAME,
            Phrase.of(
                "The funnel reads {0}; at least {1} is usual while drilling (from memory).",
                "El embudo marca {0}; al perforar lo usual es {1} o más (de memoria).", measured, least))
        .comparing(measured, least)
        .because(Phrase.of(
            "Water comes in, or there is too little bentonite: cuttings settle and loose sand caves.",
            "Entra agua o falta bentonita: los recortes se asientan y la arena suelta se derrumba."))
        .so(Phrase.of(
            "Look whether the pit rises; then thicken before the next rod.",
            "Vea si sube la fosa; luego espese antes del siguiente tubo."))
        .from(List.of(mud.entry()));
  }
}
