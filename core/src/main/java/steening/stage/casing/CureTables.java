package steening.stage.casing;

import java.util.List;
import steening.language.Phrase;

/**
 * The published tables for PVC, all read: a plastics technical manual, a product application guide, and a set-up and
 * cure chart, each of a manufacturer. They are guide figures, and they differ; minutes here, whatever unit they print.
 */
final class CureTables {
  /** No pipe is larger than the last column. */
  private static final double LARGEST = 24;

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;

  /** Until a joint may be handled with care. */
  static final List<CureTable> SETS = List.of(
      CureTable.of(
              "set-manual", Phrase.of("set, technical manual", "fraguado, manual técnico"),
              1.25, 3.0, 8.0, 16.0)
          .upTo(40, 3 * HOUR, 6 * HOUR, 12 * HOUR, 24 * HOUR)
          .upTo(60, HOUR, 2 * HOUR, 4 * HOUR, 8 * HOUR)
          .upTo(100, 15, 30, HOUR, 2 * HOUR),
      CureTable.of(
              "set-guide", Phrase.of("set, application guide", "fraguado, guía de aplicación"),
              1.25, 2.0, 8.0, 15.0, LARGEST)
          .upTo(40, 10, 15, 12 * HOUR, 24 * HOUR, 48 * HOUR)
          .upTo(60, 5, 10, 2 * HOUR, 8 * HOUR, 16 * HOUR)
          .upTo(100, 2, 5, 30, 2 * HOUR, 4 * HOUR));

  /** Until it may be put under pressure: up to 160 or 180 psi; from 10 in on, up to 100 psi. */
  static final List<CureTable> CURES = List.of(
      CureTable.of(
              "cure-manual", Phrase.of("cure, technical manual", "curado, manual técnico"),
              1.25, 3.0, 8.0, 16.0)
          .upTo(40, 8 * HOUR, 16 * HOUR, 48 * HOUR, 8 * DAY)
          .upTo(60, 2 * HOUR, 4 * HOUR, 12 * HOUR, 48 * HOUR)
          .upTo(100, HOUR, 2 * HOUR, 6 * HOUR, 24 * HOUR),
      CureTable.of(
              "cure-guide", Phrase.of("cure, application guide", "curado, guía de aplicación"),
              1.25, 2.0, 8.0, 15.0, LARGEST)
          .upTo(40, 30, HOUR, 72 * HOUR, 8 * DAY, 14 * DAY)
          .upTo(60, 20, 45, 4 * HOUR, 4 * DAY, 6 * DAY)
          .upTo(100, 15, 30, 90, 2 * DAY, 3 * DAY),
      CureTable.of(
              "cure-chart", Phrase.of("cure, cure chart", "curado, tabla de curado"),
              1.25, 3.0, 5.0, 8.0, 16.0, LARGEST)
          .upTo(20, 8 * HOUR, 16 * HOUR, 48 * HOUR, 4 * DAY, 10 * DAY, 14 * DAY)
          .upTo(40, 6 * HOUR, 12 * HOUR, 36 * HOUR, 3 * DAY, 8 * DAY, 12 * DAY)
          .upTo(60, 2 * HOUR, 4 * HOUR, 12 * HOUR, 16 * HOUR, 48 * HOUR, 72 * HOUR)
          .upTo(100, HOUR, 2 * HOUR, 6 * HOUR, 8 * HOUR, 24 * HOUR, 36 * HOUR));

  private CureTables() {}
}
