package steening.stage.seal.placing;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.quantity.Measure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.stage.Sheet;

/** How long rules leave cement grout alone before the next work; all seen. */
enum SetRule {
  MINNESOTA("Minn. 4725.3050", Phrase.of("neat cement", "cemento puro"), 24),
  MINNESOTA_RAPID("Minn. 4725.3050", Phrase.of("rapid-setting", "de fraguado rápido"), 12),
  MICHIGAN("Mich. R 325.1633a", Phrase.of("neat cement", "cemento puro"), 24),
  MICHIGAN_BENTONITE("Mich. R 325.1633a", Phrase.of("with bentonite added", "con bentonita"), 48),
  MARYLAND("COMAR 26.04.04", Phrase.of("type I or II", "tipo I o II"), 18),
  MARYLAND_EARLY("COMAR 26.04.04", Phrase.of("type III", "tipo III"), 12),
  VIRGINIA_COUNTY(
      Phrase.of("a Virginia county", "un condado de Virginia"), Phrase.of("neat cement", "cemento puro"), 72),
  VIRGINIA_COUNTY_EARLY(
      Phrase.of("a Virginia county", "un condado de Virginia"), Phrase.of("high early strength", "de alta resistencia"),
      24),
  EXPLORATORY("Minn. 4727.0980", Phrase.of("exploratory holes", "barrenos de exploración"), 48);

  /** Where nobody says otherwise: Minnesota's and Michigan's, and FM 5-484 has about the same. */
  static final Quantity USUAL = MINNESOTA.time();

  /** For rapid-setting cement. */
  static final Quantity RAPID = MINNESOTA_RAPID.time();

  private final Phrase rule;
  private final Phrase cement;
  private final int hours;

  SetRule(String rule, Phrase cement, int hours) {
    this(Phrase.same(rule), cement, hours);
  }

  SetRule(Phrase rule, Phrase cement, int hours) {
    this.rule = rule;
    this.cement = cement;
    this.hours = hours;
  }

  Quantity time() {
    return Measure.of(hours, Unit.HOUR);
  }

  /** All of them, since yours may be another. */
  static Sheet on(Sheet sheet) {
    List<List<Shown>> rows = new ArrayList<>();
    for (SetRule rule : values()) rows.add(List.of(rule.rule, rule.cement, new Figure(rule.time(), Scale.HOURS)));
    return sheet.table(
        Phrase.of("What rules wait for cement to set", "Lo que las normas esperan a que fragüe el cemento"),
        List.of(Phrase.of("rule", "norma"), Phrase.of("cement", "cemento"), Phrase.of("time", "tiempo")), rows);
  }
}
