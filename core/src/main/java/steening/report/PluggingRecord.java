package steening.report;

import static j2html.TagCreator.div;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.p;
import static j2html.TagCreator.table;
import static j2html.TagCreator.td;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.job.Holes;
import steening.job.Stages;
import steening.language.Phrase;
import steening.language.Reader;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Permit;
import steening.well.Site;
import steening.well.Well;

/** The record of a plugged hole, on a page of its own, since it goes to an authority and an owner by itself. */
final class PluggingRecord {
  private static final Phrase TITLE = Phrase.of("Record of a plugged hole", "Registro de un barreno sellado");
  private static final Phrase PERMIT = Phrase.of("Permit {0}", "Permiso {0}");
  private static final Phrase RULE = Phrase.of(
      "What is sealed, with what, and by when this record is due: the local code decides.",
      "Qué se sella, con qué, y cuándo se entrega este registro: decide la norma local.");

  private PluggingRecord() {}

  /** @param hole by itself, without the earlier ones */
  static DomContent of(Well hole, String name, Reader reader, Appendix appendix) {
    List<DomContent> parts = new ArrayList<>();
    parts.add(h1(TITLE.shownTo(reader)));
    parts.add(p(name + " · " + Holes.name(hole.number()).shownTo(reader)));
    Optional<Site.Place> place = hole.get(Site.PART).place();
    if (place.isPresent()) {
      parts.add(p(place.get().address() + place.get().county().map(county -> ", " + county).orElse("")));
    }
    hole.get(Permit.PART).number().ifPresent(number -> parts.add(p(PERMIT.about(number).shownTo(reader))));
    Holes.givenUp(hole).ifPresent(said -> parts.add(p(said.shownTo(reader))));
    for (Stage stage : Stages.all()) {
      Sheet sheet = stage.isBesideTheLine() ? Holes.sheet(stage, hole) : Sheet.EMPTY;
      if (!sheet.isEmpty()) parts.add(SheetPrint.of(sheet, reader, appendix));
    }
    parts.add(p(RULE.shownTo(reader)).withClass("note"));
    parts.add(table(tr(
            td(CompletionReport.SIGNED.shownTo(reader)), td(CompletionReport.DATE.shownTo(reader)))).withClass("sign"));
    return div(parts.toArray(DomContent[]::new)).withClass("hole");
  }
}
