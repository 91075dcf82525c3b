package steening.stage.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.field.Field;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.journal.Dates;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.stage.Sheet;
import steening.well.Site;
import steening.well.Well;

/** Who, where, and the distances beside what is required. */
final class SiteSheet {
  private SiteSheet() {}

  static Sheet of(Well well) {
    Site site = well.get(Site.PART);
    Sheet sheet = Sheet.EMPTY;
    if (site.enquiry().isPresent()) sheet = enquiry(sheet, site.enquiry().get());
    if (site.place().isPresent()) sheet = place(sheet, site.place().get());
    Setbacks setbacks = well.get(Setbacks.PART);
    if (setbacks.measured().isEmpty()) return sheet;
    List<Phrase> blanks = new ArrayList<>();
    for (Hazard hazard : Hazard.values()) {
      if (hazard != Hazard.OTHER && !setbacks.isMeasured(hazard)) blanks.add(hazard.label());
    }
    if (!blanks.isEmpty()) sheet = sheet.line(Phrase.of("no distance to", "sin distancia a"), list(blanks));
    return sheet.table(
        Phrase.of("Setbacks", "Distancias mínimas"),
        List.of(
            Hazard.FIELD.label(),
            SiteEntries.DISTANCE.label(),
            SiteEntries.REQUIRED.label(),
            Phrase.of("to spare", "margen"),
            Kind.REMARK.label()),
        setbacks.measured().stream().map(SiteSheet::row).toList());
  }

  private static Sheet enquiry(Sheet sheet, Site.Enquiry enquiry) {
    Sheet more = text(sheet, SiteEntries.CALLER, Optional.of(enquiry.caller()));
    more = text(more, SiteEntries.PHONE, enquiry.phone()).line(SiteEntries.NEED.label(), enquiry.need());
    more = text(more, SiteEntries.PEOPLE, enquiry.people().map(n -> Integer.toString(n)));
    more = text(more, SiteEntries.BEDROOMS, enquiry.bedrooms().map(n -> Integer.toString(n)));
    return text(more, SiteEntries.WANTED, enquiry.wanted().map(Dates::format));
  }

  private static Sheet place(Sheet sheet, Site.Place place) {
    Sheet more =
        text(text(sheet, SiteEntries.ADDRESS, Optional.of(place.address())), SiteEntries.COUNTY, place.county());
    more = amount(amount(more, SiteEntries.LATITUDE, place.latitude()), SiteEntries.LONGITUDE, place.longitude());
    more = amount(more, SiteEntries.ELEVATION, place.elevation());
    more = amount(more, SiteEntries.NEIGHBOURS, place.neighboursSpecificCapacity());
    return amount(more, SiteEntries.SPREAD, place.neighboursSpread());
  }

  private static Sheet text(Sheet sheet, Field field, Optional<String> text) {
    return text.isEmpty() ? sheet : sheet.line(field.label(), Phrase.same(text.get()));
  }

  private static Sheet amount(Sheet sheet, QuantityField field, Optional<? extends Quantity> quantity) {
    return quantity.isEmpty() ? sheet : sheet.line(field.label(), new Figure(quantity.get(), field.scale()));
  }

  private static List<Shown> row(Setbacks.Setback setback) {
    return List.of(
        setback.hazard().label(),
        distance(setback.distance()),
        distance(setback.required()),
        distance(setback.distance().minus(setback.required())),
        Phrase.same(setback.remark()));
  }

  private static Figure distance(Length length) {
    return new Figure(length, Scale.DISTANCE);
  }

  private static Phrase list(List<Phrase> phrases) {
    Phrase list = phrases.get(0);
    for (Phrase phrase : phrases.subList(1, phrases.size())) list = Phrase.of("{0}, {1}", "{0}, {1}", list, phrase);
    return list;
  }
}
