package steening.json;

import com.eclipsesource.json.Json;
import com.eclipsesource.json.JsonArray;
import com.eclipsesource.json.JsonObject;
import com.eclipsesource.json.JsonValue;
import java.util.List;
import steening.finding.Expectation;
import steening.finding.Finding;
import steening.job.Holes;
import steening.job.Job;
import steening.job.Stages;
import steening.job.WellName;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.Shown;
import steening.quantity.Figure;
import steening.stage.Clock;
import steening.stage.Progress;
import steening.stage.Sheet;
import steening.stage.Stage;
import steening.well.Well;

/** A well as built with its findings: {@code {"well":{…},"findings":[…]}}. */
public final class JobJson {
  private JobJson() {}

  public static JsonObject of(Job job, Reader reader) {
    JsonObject stages = new JsonObject();
    for (Stage stage : Stages.all()) {
      stages.add(stage.name(), stage(stage, job.well(), reader).add("cautions", cautions(job, stage, reader)));
    }
    JsonObject well = new JsonObject()
        .add("id", job.well().id())
        .add("name", WellName.of(job.journal()))
        .add("stage", job.present().name())
        .add("hole", job.well().number())
        .add("entries", job.journal().size())
        .add("stages", stages)
        .add("earlierHoles", earlier(job, reader));
    JsonArray findings = new JsonArray();
    for (Finding finding : job.findings()) findings.add(finding(finding, reader));
    return new JsonObject().add("well", well).add("findings", findings);
  }

  /** The holes that were given up, each with the stages that were begun in it. */
  private static JsonArray earlier(Job job, Reader reader) {
    JsonArray holes = new JsonArray();
    for (Well hole : job.well().earlier()) {
      JsonObject stages = new JsonObject();
      for (Stage stage : Holes.stages(hole)) stages.add(stage.name(), stage(stage, hole, reader));
      JsonArray findings = new JsonArray();
      for (Finding finding : Holes.findings(hole)) findings.add(finding(finding, reader));
      holes.add(new JsonObject()
          .add("hole", hole.number())
          .add("givenUp", Holes.givenUp(hole).map(said -> say(said, reader)).orElse(""))
          .add("stages", stages)
          .add("findings", findings));
    }
    return holes;
  }

  private static JsonObject stage(Stage stage, Well well, Reader reader) {
    Sheet sheet = stage.sheet(well);
    JsonArray lines = new JsonArray();
    for (Sheet.Line line : sheet.lines()) {
      lines.add(new JsonObject().add("label", say(line.label(), reader)).add("value", shown(line.value(), reader)));
    }
    JsonArray tables = new JsonArray();
    for (Sheet.Table table : sheet.tables()) tables.add(table(table, reader));
    JsonArray expected = new JsonArray();
    for (Expectation expectation : stage.expectations(well)) expected.add(expectation(expectation, reader));
    return new JsonObject()
        .add("progress", word(stage.progress(well)))
        .add("figures", lines)
        .add("tables", tables)
        .add("expected", expected)
        .add("clocks", clocks(stage, well, reader));
  }

  /** Where the work still to do in a stage can hurt someone, as one text each. */
  private static JsonArray cautions(Job job, Stage stage, Reader reader) {
    JsonArray cautions = new JsonArray();
    for (Phrase caution : job.cautions(stage)) cautions.add(say(caution, reader));
    return cautions;
  }

  private static JsonArray clocks(Stage stage, Well well, Reader reader) {
    JsonArray clocks = new JsonArray();
    for (Clock clock : stage.clocks(well)) {
      clocks.add(new JsonObject()
          .add("what", say(clock.what(), reader))
          .add("from", clock.from().toString())
          .add("until", clock.until().toString()));
    }
    return clocks;
  }

  private static JsonObject table(Sheet.Table table, Reader reader) {
    JsonArray heads = new JsonArray();
    for (Phrase head : table.heads()) heads.add(say(head, reader));
    JsonArray rows = new JsonArray();
    for (List<Shown> row : table.rows()) {
      JsonArray cells = new JsonArray();
      for (Shown cell : row) cells.add(shown(cell, reader));
      rows.add(cells);
    }
    return new JsonObject().add("title", say(table.title(), reader)).add("heads", heads).add("rows", rows);
  }

  private static JsonObject expectation(Expectation expectation, Reader reader) {
    JsonObject json = new JsonObject()
        .add("what", say(expectation.what(), reader))
        .add("value", shown(expectation.figure(), reader));
    expectation.band().ifPresent(band -> json.add("giveOrTake", shown(band, reader)));
    return json;
  }

  private static JsonObject finding(Finding finding, Reader reader) {
    JsonArray entries = new JsonArray();
    for (String entry : finding.entries()) entries.add(entry);
    return new JsonObject()
        .add("code", finding.code())
        .add("weight", finding.weight().code())
        .add("stage", finding.stage())
        .add("measured", finding.measured().<JsonValue>map(f -> shown(f, reader)).orElse(Json.NULL))
        .add("expected", finding.expected().<JsonValue>map(f -> shown(f, reader)).orElse(Json.NULL))
        .add("text", say(finding.text(), reader))
        .add("cause", finding.cause().map(c -> say(c, reader)).orElse(""))
        .add("next", finding.next().map(n -> say(n, reader)).orElse(""))
        .add("entries", entries);
  }

  /** A figure keeps its number apart from its unit; anything else is text. */
  private static JsonValue shown(Shown shown, Reader reader) {
    if (shown instanceof Figure figure) {
      return ReckoningJson.value(figure.quantity(), figure.scale(), reader).add("text", figure.shownTo(reader));
    }
    return Json.value(shown.shownTo(reader));
  }

  private static String say(Phrase phrase, Reader reader) {
    return phrase.shownTo(reader);
  }

  private static String word(Progress progress) {
    return switch (progress) {
      case DONE -> "done";
      case UNDER_WAY -> "under way";
      case NOT_BEGUN -> "not begun";
      case NOT_NEEDED -> "not needed";
    };
  }
}
