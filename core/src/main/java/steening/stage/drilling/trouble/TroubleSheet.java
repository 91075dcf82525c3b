package steening.stage.drilling.trouble;

import static steening.stage.drilling.DrillingFindings.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.language.Phrase;
import steening.language.Shown;
import steening.reckoning.Outcome;
import steening.stage.Sheet;
import steening.well.Losses;
import steening.well.Well;

/** Mud lost, fill and lost tools, for page and report. */
public final class TroubleSheet {
  private static final Phrase BLANK = Phrase.same("");

  private TroubleSheet() {}

  public static Sheet on(Sheet sheet, Well well) {
    return TroubleFold.isQuiet(well) ? sheet : fills(losses(fish(sheet, well), well), well);
  }

  private static Sheet losses(Sheet sheet, Well well) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Losses.Zone zone : well.get(Losses.PART).zones()) {
      Optional<Outcome> rate = LossFindings.rate(well, zone);
      rows.add(List.of(
          depth(zone.from()), depth(zone.to()),
          rate.<Shown>map(r -> r.figure("loss-rate")).orElse(BLANK),
          rate.<Shown>map(r -> r.figure("share")).orElse(BLANK),
          TroubleEntries.TRIED.options().stream().filter(o -> o.code().equals(zone.tried())).findFirst()
              .<Shown>map(o -> o.label()).orElse(BLANK),
          zone.cameBack().<Shown>map(b -> b ? Phrase.of("yes", "sí") : Phrase.same("no")).orElse(BLANK)));
    }
    return sheet.table(
        Phrase.of("Lost circulation", "Pérdida de circulación"),
        List.of(
            Phrase.of("From", "Desde"), Phrase.of("To", "Hasta"), Phrase.of("Loss", "Pérdida"),
            Phrase.of("Of the pump rate", "Del gasto de la bomba"), Phrase.of("Tried", "Se probó"),
            Phrase.of("Came back", "Volvió")),
        rows);
  }

  private static Sheet fills(Sheet sheet, Well well) {
    List<List<Shown>> rows = new ArrayList<>();
    for (Troubles.Fill fill : well.get(Troubles.PART).fills()) {
      rows.add(List.of(depth(fill.hole()), depth(fill.tagged()), depth(fill.height())));
    }
    return sheet.table(
        Phrase.of("Fill in the hole", "Relleno en el barreno"),
        List.of(
            Phrase.of("Hole at", "Barreno a"), Phrase.of("Tagged at", "Tocado a"), Phrase.of("Fill", "Relleno")),
        rows);
  }

  private static Sheet fish(Sheet sheet, Well well) {
    return well.get(Troubles.PART).fish()
        .flatMap(f -> Outcome.ifReckonable(() -> FishTop.of(f.hole(), f.lengths(), f.felt())))
        .map(o -> sheet.line(FishTop.TOP.label(), o.figure(FishTop.TOP.name()), o))
        .orElse(sheet);
  }
}
