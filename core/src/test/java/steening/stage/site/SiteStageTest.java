package steening.stage.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import steening.field.Reading;
import steening.finding.Finding;
import steening.finding.Weight;
import steening.job.Notebook;
import steening.language.Language;
import steening.language.Reader;
import steening.language.UnitSystem;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.well.Site;

class SiteStageTest {
  private static final SiteStage STAGE = new SiteStage();
  private static final Reader SPANISH_METRIC = new Reader(Language.SPANISH, UnitSystem.METRIC);

  @Test
  void findsNothingWhereEveryDistanceIsKept() {
    assertThat(measured().codes("site")).isEmpty();
    assertThat(new Notebook().codes("site")).isEmpty();
    // a hole with no site written down says nothing about the site
    assertThat(new Notebook().write("hole", "from", "0 ft", "to", "20 ft", "diameter", "7 7/8 in").codes("site"))
        .isEmpty();
  }

  /** An absorption field: 100 ft required in 10 NYCRR Appendix 5-B, Table 1 (seen). */
  @Test
  void seesASetbackThatIsShort() {
    Notebook notebook = measured()
        .write("setback", "source", "absorption-field", "distance", "94 ft", "required", "100 ft");
    Finding finding = notebook.finding("site.setback-short");
    assertThat(finding.weight()).isEqualTo(Weight.STOP);
    assertThat(english(finding)).isEqualTo("absorption field: 94.00 ft measured, 100.00 ft required.");
    assertThat(finding.text().shownTo(SPANISH_METRIC))
        .isEqualTo("campo de absorción: 28.65 m medidos, 30.48 m exigidos.");
    assertThat(finding.entries()).containsExactly("setback-5");
    assertThat(measured().write(
        "setback", "source", "fuel-tank", "distance", "150 ft", "required", "150 ft").codes("site")).isEmpty();
  }

  @Test
  void asksForTheSewageThatNobodyMeasured() {
    Notebook line = new Notebook()
        .write("setback", "source", "property-line", "distance", "41 ft", "required", "10 ft");
    assertThat(line.codes("site")).containsExactly("site.setback-blank");
    assertThat(line.finding("site.setback-blank").weight()).isEqualTo(Weight.LOOK);
    Notebook permitted = new Notebook()
        .write("site", "address", "14 Plover Lane")
        .write("permit", "number", "P", "issued", "2026-05-06", "expires", "2027-05-06");
    assertThat(permitted.codes("site")).containsExactly("site.setback-blank");
    assertThat(new Notebook().write("site", "address", "14 Plover Lane").codes("site")).isEmpty();
  }

  /** 29 CFR 1926.1408, Table A: 10 ft up to 50 kV; 20 ft where the voltage is not known (seen). */
  @Test
  void keepsTheMastFromTheWires() {
    assertThat(wires("20 ft").codes("site")).isEmpty();
    assertThat(wires("15 ft").finding("site.overhead-line").weight()).isEqualTo(Weight.LOOK);
    Finding near = wires("9.9 ft").finding("site.overhead-line");
    assertThat(near.weight()).isEqualTo(Weight.STOP);
    assertThat(english(near))
        .isEqualTo(
            "Overhead power line at 9.90 ft. Keep 10.00 ft up to 50 kV, 20.00 ft while the voltage is not known.");
  }

  @Test
  void asksForTheMinusSignOfALongitude() {
    Reading reading = SiteEntries.LONGITUDE.read("83.1", Reader.US_ENGLISH, false);
    assertThat(((Reading.Asked) reading).question().shownTo(Reader.US_ENGLISH))
        .isEqualTo("longitude: 83.1 ° is unusual. Did you mean -83.1 °?");
    assertThat(SiteEntries.LONGITUDE.read("-83.1", Reader.US_ENGLISH, false)).isInstanceOf(Reading.Taken.class);
    assertThat(SiteEntries.LATITUDE.read("95", Reader.US_ENGLISH, false)).isInstanceOf(Reading.Refused.class);
  }

  @Test
  void seesAPointOnAnotherContinent() {
    Notebook notebook =
        new Notebook().write(
            "site", "address", "14 Plover Lane", "latitude", "38.4 °", "longitude", "83.1 °", "sure", "longitude");
    Finding finding = notebook.finding("site.elsewhere");
    assertThat(english(finding))
        .isEqualTo("longitude 83.10000 ° is far from where the firm works; the address is 14 Plover Lane.");
    assertThat(finding.cause()).isPresent();
  }

  @Test
  void showsWhatWasMeasuredAndWhatWasNot() {
    Sheet sheet = STAGE.sheet(measured().write(
        "setback", "source", "other", "distance", "30 ft", "required", "0 ft").well());
    assertThat(sheet.lines()).anySatisfy(line -> {
      assertThat(line.label().shownTo(Reader.US_ENGLISH)).isEqualTo("no distance to");
      assertThat(line.value().shownTo(Reader.US_ENGLISH)).isEqualTo(
          "absorption field, seepage pit, cesspool, animal pen, manure pile, fuel tank, stream or ditch, "
              + "property line, overhead power line");
    });
    assertThat(sheet.tables().get(0).rows()).hasSize(3);
    assertThat(sheet.tables().get(0).rows().get(0).get(3).shownTo(Reader.US_ENGLISH)).isEqualTo("46.00 ft");
  }

  @Test
  void keepsWhatTheOthersNeed() {
    Site site = measured().well().get(Site.PART);
    assertThat(site.enquiry().get().caller()).isEqualTo("Orla Finch");
    assertThat(site.enquiry().get().need().shownTo(SPANISH_METRIC)).isEqualTo("casa");
    assertThat(site.place().get().county()).contains("Alder County");
    assertThat(site.place().get().neighboursSpread().get().coherent()).isEqualTo(1.6);
  }

  @Test
  void goesFromCallToSiteToDistances() {
    assertThat(STAGE.nextKind(new Notebook().well())).isEqualTo("enquiry");
    assertThat(STAGE.progress(new Notebook().well())).isEqualTo(Progress.NOT_BEGUN);
    Notebook called = new Notebook().write("enquiry", "caller", "Orla Finch", "need", "domestic");
    assertThat(STAGE.nextKind(called.well())).isEqualTo("site");
    assertThat(STAGE.progress(called.well())).isEqualTo(Progress.UNDER_WAY);
    assertThat(STAGE.nextKind(measured().well())).isEqualTo("setback");
    assertThat(STAGE.progress(measured().well())).isEqualTo(Progress.DONE);
  }

  private static Notebook measured() {
    return new Notebook()
        .write(
            "enquiry", "caller", "Orla Finch", "phone", "555-0114", "need", "domestic", "people", "4", "bedrooms", "3")
        .write("site", "address", "14 Plover Lane", "county", "Alder County", "latitude", "38.4127 °", "longitude",
            "-83.1042 °", "neighbours-specific-capacity", "0.85 gpm/ft", "neighbours-spread", "1.6")
        .write("setback", "source", "septic-tank", "distance", "96 ft", "required", "50 ft")
        .write("setback", "source", "building", "distance", "28 ft", "required", "10 ft");
  }

  private static Notebook wires(String distance) {
    return measured().write("setback", "source", "overhead-line", "distance", distance, "required", "0 ft");
  }

  private static String english(Finding finding) {
    return finding.text().shownTo(Reader.US_ENGLISH);
  }
}
