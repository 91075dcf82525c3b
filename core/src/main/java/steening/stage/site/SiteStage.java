package steening.stage.site;

import java.util.ArrayList;
import java.util.List;
import steening.field.Kind;
import steening.finding.Finding;
import steening.ground.SandForecast;
import steening.journal.Body;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Length;
import steening.reckoning.Reckoning;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Site;
import steening.well.Well;

/** The first call and the visit to the site. */
public final class SiteStage implements Stage {
  static final String NAME = "site";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Phrase title() {
    return Phrase.of("Site", "Sitio");
  }

  @Override
  public List<Kind> kinds() {
    return List.of(
        SiteEntries.ENQUIRY, SiteEntries.SITE, NeighbourEntries.NEIGHBOUR, NeighbourEntries.FORECAST,
        SiteEntries.SETBACK);
  }

  @Override
  public List<Reckoning> reckonings() {
    return List.of(SandForecast.RECKONING);
  }

  @Override
  public Well fold(Well well, Entry entry) {
    Site site = well.get(Site.PART);
    String kind = entry.kind();
    if (kind.equals(SiteEntries.ENQUIRY.name())) return well.with(Site.PART, site.asked(SiteEntries.enquiry(entry)));
    if (kind.equals(SiteEntries.SITE.name())) return well.with(Site.PART, site.at(SiteEntries.place(entry)));
    if (kind.equals(NeighbourEntries.NEIGHBOUR.name()) || kind.equals(NeighbourEntries.FORECAST.name())) {
      return NeighbourEntries.fold(well, entry);
    }
    Body body = entry.body();
    Setbacks.Setback setback = new Setbacks.Setback(
        Hazard.of(Hazard.FIELD.text(body).orElse("")),
        SiteEntries.DISTANCE.length(body).orElse(Length.ZERO),
        SiteEntries.REQUIRED.length(body).orElse(Length.ZERO),
        well.number(),
        Kind.REMARK.text(body).orElse(""),
        entry.id());
    return well.with(Setbacks.PART, well.get(Setbacks.PART).with(setback));
  }

  @Override
  public List<Finding> findings(Well well) {
    List<Finding> findings = new ArrayList<>(SiteFindings.of(well));
    findings.addAll(NeighbourFindings.of(well));
    return findings;
  }

  @Override
  public Progress progress(Well well) {
    Site site = well.get(Site.PART);
    boolean measured = !well.get(Setbacks.PART).measured().isEmpty();
    if (site.place().isPresent() && measured) return Progress.DONE;
    boolean begun = site.enquiry().isPresent() || site.place().isPresent() || measured;
    return begun ? Progress.UNDER_WAY : Progress.NOT_BEGUN;
  }

  @Override
  public String nextKind(Well well) {
    Site site = well.get(Site.PART);
    if (site.place().isPresent()) return SiteEntries.SETBACK.name();
    return site.enquiry().isPresent() ? SiteEntries.SITE.name() : SiteEntries.ENQUIRY.name();
  }

  @Override
  public Sheet sheet(Well well) {
    return NeighbourSheet.on(SiteSheet.of(well), well);
  }
}
