package steening.stage.site;

import steening.field.ChoiceField;
import steening.field.CountField;
import steening.field.DateField;
import steening.field.Kind;
import steening.field.QuantityField;
import steening.field.TextField;
import steening.journal.Entry;
import steening.language.Phrase;
import steening.quantity.Scale;
import steening.well.Site;

/** What is taken down before anything is drilled: the call, the place, and the distances that must be kept. */
final class SiteEntries {
  static final TextField CALLER = TextField.of("caller", Phrase.of("caller", "quien llama"), "A. Ejemplo");
  static final TextField PHONE = TextField.of("phone", Phrase.of("phone", "teléfono"), "555-0100").optional();
  static final ChoiceField NEED = ChoiceField.of(
      "need",
      Phrase.of("water for", "agua para"),
      ChoiceField.option("domestic", "house", "casa"),
      ChoiceField.option("livestock", "livestock", "ganado"),
      ChoiceField.option("irrigation", "irrigation", "riego"),
      ChoiceField.option("replacement", "replacement of an old well", "reemplazo de un pozo"),
      ChoiceField.option("other", "other", "otro"));
  static final CountField PEOPLE =
      CountField.of("people", Phrase.of("people", "personas"), 0, 5000).usuallyUpTo(12).optional();
  static final CountField BEDROOMS =
      CountField.of("bedrooms", Phrase.of("bedrooms", "recámaras"), 0, 500).usuallyUpTo(8).optional();
  static final DateField WANTED = DateField.of("wanted", Phrase.of("wanted by", "para cuándo")).optional();
  static final Kind ENQUIRY =
      Kind.of("enquiry", Phrase.of("First call", "Primera llamada"), CALLER, PHONE, NEED, PEOPLE, BEDROOMS, WANTED);

  static final TextField ADDRESS = TextField.of("address", Phrase.of("address", "dirección"), "12 Well Lane");
  static final TextField COUNTY = TextField.of("county", Phrase.of("county", "condado"), "Example County").optional();
  static final QuantityField LATITUDE = QuantityField.of(
          "latitude", Scale.COORDINATE, Phrase.of("latitude", "latitud"), "38.45", "38.45")
      .between("-90", "90").usually("20", "60").optional();
  /** West of Greenwich, where the firm works, it is negative. */
  static final QuantityField LONGITUDE = QuantityField.of(
          "longitude", Scale.COORDINATE, Phrase.of("longitude", "longitud"), "-83.1", "-83.1")
      .between("-180", "180").usually("-130", "-60").optional();
  static final QuantityField ELEVATION = QuantityField.of(
          "elevation", Scale.DEPTH, Phrase.of("ground elevation", "cota del terreno"), "640 ft", "195 m")
      .between("-1500 ft", "29100 ft").usually("-300 ft", "9000 ft").optional();
  static final QuantityField NEIGHBOURS = QuantityField.of(
          "neighbours-specific-capacity", Scale.SPECIFIC_CAPACITY,
          Phrase.of(
              "specific capacity of the neighbours' wells (median)",
              "caudal específico de los pozos vecinos (mediana)"),
          "0.85 gpm/ft", "0.18 L/s/m")
      .between("0.0001 gpm/ft", "5000 gpm/ft").usually("0.01 gpm/ft", "200 gpm/ft").optional();
  static final QuantityField SPREAD = QuantityField.of(
          "neighbours-spread", Scale.NUMBER,
          Phrase.of("their spread (geometric standard deviation)", "su dispersión (desviación estándar geométrica)"),
          "1.6", "1.6")
      .between("1", "20").usually("1.05", "5").optional();
  static final Kind SITE = Kind.of(
      "site", Phrase.of("Site", "Sitio"), ADDRESS, COUNTY, LATITUDE, LONGITUDE, ELEVATION, NEIGHBOURS, SPREAD);

  static final QuantityField DISTANCE = QuantityField.of(
          "distance", Scale.DISTANCE, Phrase.of("measured distance", "distancia medida"), "112 ft", "34 m")
      .between("0 ft", "30000 ft").usually("2 ft", "2000 ft");
  static final QuantityField REQUIRED = QuantityField.of(
          "required", Scale.DISTANCE, Phrase.of("distance required here", "distancia exigida aquí"), "100 ft", "30 m")
      .between("0 ft", "30000 ft").usually("0 ft", "1000 ft");
  static final Kind SETBACK =
      Kind.of("setback", Phrase.of("Setback", "Distancia mínima"), Hazard.FIELD, DISTANCE, REQUIRED);

  private SiteEntries() {}

  static Site.Enquiry enquiry(Entry entry) {
    return new Site.Enquiry(
        CALLER.text(entry.body()).orElse(""),
        PHONE.text(entry.body()),
        NEED.in(entry.body()).map(ChoiceField.Option::label).orElse(NEED.label()),
        PEOPLE.in(entry.body()),
        BEDROOMS.in(entry.body()),
        WANTED.in(entry.body()),
        entry.id());
  }

  static Site.Place place(Entry entry) {
    return new Site.Place(
        ADDRESS.text(entry.body()).orElse(""),
        COUNTY.text(entry.body()),
        LATITUDE.in(entry.body()),
        LONGITUDE.in(entry.body()),
        ELEVATION.length(entry.body()),
        NEIGHBOURS.in(entry.body()),
        SPREAD.in(entry.body()),
        entry.id());
  }
}
