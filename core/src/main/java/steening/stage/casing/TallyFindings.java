package steening.stage.casing;

import static steening.stage.casing.CasingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.well.CasingString;
import steening.well.Piece;
import steening.well.Well;

/** The tally against itself and against the truck. */
final class TallyFindings {
  private TallyFindings() {}

  static List<Finding> of(Well well) {
    Tally tally = well.get(Tally.PART);
    List<Finding> findings = new ArrayList<>();
    for (int i = 1; i < tally.joints().size(); i++) {
      number(tally.joints().get(i - 1), tally.joints().get(i)).ifPresent(findings::add);
    }
    tally.setting().flatMap(setting -> truck(well, setting)).ifPresent(findings::add);
    tally.setting().flatMap(setting -> diameter(well, setting)).ifPresent(findings::add);
    late(tally).ifPresent(findings::add);
    longer(tally).ifPresent(findings::add);
    return findings;
  }

  private static Optional<Finding> number(Tally.Joint before, Tally.Joint joint) {
    if (joint.number() == before.number() + 1) return Optional.empty();
    return Optional.of(look(
            "casing.joint-number",
            Phrase.of(
                "Joint {0} follows joint {1}.", "El tubo {0} sigue al tubo {1}.",
                Integer.toString(joint.number()), Integer.toString(before.number())))
        .because(Phrase.of("A joint not entered, or entered twice.", "Un tubo sin registrar, o registrado dos veces."))
        .so(Phrase.of("Count the joints left on the truck.", "Cuente los tubos que quedan en el camión."))
        .from(List.of(before.entry(), joint.entry())));
  }

  /**
   * The rest of a joint that a piece was cut from may have been counted as left or not, so either count is accepted.
   */
  private static Optional<Finding> truck(Well well, Tally.Setting setting) {
    if (setting.loaded().isEmpty() || setting.left().isEmpty()) return Optional.empty();
    CasingString string = well.get(CasingString.PART);
    long run = setting.loaded().get() - setting.left().get();
    long joints = string.count(Piece.Sort.JOINT);
    if (run >= joints && run <= joints + string.count(Piece.Sort.CUT_PIECE)) return Optional.empty();
    return Optional.of(look(
            "casing.tally-against-truck",
            Phrase.of(
                "{0} joints loaded, {1} left: {2} were run. The tally says {3}.",
                "{0} tubos cargados, quedan {1}: se bajaron {2}. La relación dice {3}.",
                Integer.toString(setting.loaded().get()), Integer.toString(setting.left().get()), Long.toString(run),
                Long.toString(joints)))
        .because(Phrase.of("A joint not entered, or entered twice.", "Un tubo sin registrar, o registrado dos veces."))
        .so(Phrase.of(
            "Count again before anything is placed: the screen is off by a joint.",
            "Cuente otra vez antes de colocar nada: la rejilla está corrida un tubo."))
        .from(List.of(setting.entry())));
  }

  private static Optional<Finding> diameter(Well well, Tally.Setting setting) {
    if (well.get(CasingString.PART).outside().isPresent()) return Optional.empty();
    return Optional.of(look(
            "casing.diameter-unknown",
            Phrase.of(
                "The casing's diameter and wall are not known, neither with the string nor in the plan.",
                "No se conocen el diámetro y el espesor del ademe, ni con la columna ni en el plan."))
        .so(Phrase.of(
            "Enter them: no volume can be reckoned without.", "Regístrelos: sin ellos no se calcula ningún volumen."))
        .from(List.of(setting.entry())));
  }

  private static Optional<Finding> late(Tally tally) {
    if (tally.late().isEmpty()) return Optional.empty();
    return Optional.of(look(
            "casing.piece-after-set",
            Phrase.of(
                "Pieces are entered later than the string was set: {0}. They count, and lower its bottom.",
                "Hay piezas registradas después de colocar la columna: {0}. Se cuentan y bajan el fondo.",
                Integer.toString(tally.late().size())))
        .so(Phrase.of(
            "Correct the times, or withdraw what was not run.", "Corrija las horas, o retire lo que no se bajó."))
        .from(tally.late()));
  }

  private static Optional<Finding> longer(Tally tally) {
    Optional<Length> before = tally.setting().map(Tally.Setting::stickUp);
    for (Tally.Cut cut : tally.cuts()) {
      if (before.isPresent() && cut.stickUp().isMoreThan(before.get())) {
        return Optional.of(look(
                "casing.cut-longer",
                Phrase.of(
                    "After the cut {0} stand above ground; before it {1} did.",
                    "Después del corte quedan {0} sobre el terreno; antes había {1}.",
                    depth(cut.stickUp()), depth(before.get())))
            .comparing(depth(cut.stickUp()), depth(before.get()))
            .so(Phrase.of("Measure the stick-up again.", "Mida otra vez la altura sobre el terreno."))
            .from(List.of(cut.entry())));
      }
      before = Optional.of(cut.stickUp());
    }
    return Optional.empty();
  }

  private static Finding look(String code, Phrase text) {
    return Finding.of(code, Weight.LOOK, CasingStage.NAME, text);
  }
}
