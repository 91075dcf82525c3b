package steening.report;

/** How a report looks on paper. Tables lay it out, since the printer knows no grid. */
final class Print {
  private Print() {}

  static String of(Paper paper, String font) {
    return """
        @page { size: %s; margin: 16mm 15mm 18mm 17mm;
          @bottom-left { content: string(name); font-family: '%s'; font-size: 8pt; }
          @bottom-right { content: counter(page) " / " counter(pages); font-family: '%s'; font-size: 8pt; } }
        body { font-family: '%s'; font-size: 9.2pt; line-height: 1.35; color: #000; }
        h1 { font-size: 17pt; margin: 0; border-bottom: 2pt solid #000; padding-bottom: 2mm; }
        h2 { font-size: 11pt; margin: 5mm 0 1.5mm; page-break-after: avoid; }
        h3 { font-size: 9pt; margin: 3mm 0 0.5mm; page-break-after: avoid; }
        p { margin: 0 0 1mm; }
        .name { font-size: 12pt; font-weight: bold; margin: 2mm 0 0; -fs-page-sequence: start; \
        string-set: name content(); }
        table { border-collapse: collapse; }
        .first { text-align: center; page-break-after: always; }
        .first h2, .first p { text-align: left; }
        .stage, .item { page-break-inside: auto; }
        .facts { width: 100%%; page-break-inside: auto; }
        .facts td { padding: 0.7mm 2mm 0.7mm 0; border-bottom: 0.4pt solid #999; vertical-align: top; width: 26%%; }
        .facts td.gap { border: 0; width: 4%%; }
        .facts td.value { text-align: right; font-weight: bold; padding-right: 0; width: 22%%; }
        .reference { font-weight: normal; font-size: 7.5pt; }
        .rows { width: 100%%; margin-top: 2mm; -fs-table-paginate: paginate; }
        .rows caption { text-align: left; font-weight: bold; padding: 1mm 0; }
        .rows th { text-align: left; border-bottom: 1pt solid #000; padding: 0.6mm 2mm 0.6mm 0; font-size: 8.4pt; }
        .rows td { border-bottom: 0.3pt solid #999; padding: 0.6mm 2mm 0.6mm 0; font-size: 8.6pt; vertical-align: top; }
        .short { page-break-inside: avoid; }
        tr { page-break-inside: avoid; }
        .chart svg { width: 120mm; }
        .chart { page-break-inside: avoid; margin-top: 3mm; }
        .note { font-size: 8pt; color: #333; margin-top: 2mm; }
        .sign { width: 100%%; margin-top: 16mm; }
        .sign td { border-top: 0.8pt solid #000; padding-top: 1mm; width: 60%%; font-size: 8pt; }
        .hole { page-break-before: always; }
        .appendix { page-break-before: always; }
        .item { page-break-inside: avoid; }
        .line { font-size: 8pt; margin: 0; padding-left: 4mm; }
        .what { color: #444; }
        """
        .replace("%%", "%")
        .replaceFirst("%s", paper.size())
        .replace("%s", font);
  }
}
