package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import steening.bore.Reach;
import steening.language.Phrase;
import steening.language.Reader;
import steening.quantity.Figure;
import steening.quantity.Length;
import steening.quantity.Scale;
import steening.well.Levels;
import steening.well.Plan;
import steening.well.Screen;
import steening.well.Stratum;

/** The drawing in words, for those who listen to it. */
final class Spoken {
  private static final Phrase TITLE = Phrase.of("Section of the well", "Sección del pozo");
  private static final Phrase NOTHING = Phrase.of("Nothing is planned or built yet.", "Aún no hay plan ni obra.");
  private static final Phrase PLAN = Phrase.of(
      "Plan: hole to {0}, screen {1}.", "Plan: barreno hasta {0}, rejilla {1}.");
  private static final Phrase HOLE = Phrase.of("Hole {0}, {1}.", "Barreno de {0}, {1}.");
  private static final Phrase CASING = Phrase.of(
      "Casing {0} to {1}, stick-up {2}.", "Ademe de {0} hasta {1}, sobre el terreno {2}.");
  private static final Phrase HANGING = Phrase.of("String hanging, {0} lowered.", "Columna colgada, {0} bajados.");
  private static final Phrase SCREEN = Phrase.of("Screen {0}.", "Rejilla {0}.");
  private static final Phrase PACK = Phrase.of("Filter pack {0}.", "Filtro de grava {0}.");
  private static final Phrase CHIPS = Phrase.of("Chip seal {0}.", "Sello de pellets {0}.");
  private static final Phrase GROUT = Phrase.of("Grout {0}.", "Lechada {0}.");
  private static final Phrase PLUG = Phrase.of("Plug {0}, {1}.", "Tapón {0}, {1}.");
  private static final Phrase AT_REST = Phrase.of("Static water level {0}.", "Nivel estático {0}.");
  private static final Phrase PUMPING = Phrase.of("Pumping water level {0}.", "Nivel de bombeo {0}.");
  private static final Phrase INTAKE = Phrase.of("Pump intake {0}.", "Toma de la bomba {0}.");
  private static final Phrase LOG = Phrase.of("Log: {0}.", "Registro: {0}.");

  private final AsBuilt well;
  private final Reader reader;
  private final List<String> sentences = new ArrayList<>();

  Spoken(AsBuilt well, Reader reader) {
    this.well = well;
    this.reader = reader;
  }

  void write(Svg svg, Style style) {
    svg.open("title").with("id", style.prefix() + "section-title").text(TITLE.shownTo(reader)).close();
    svg.open("desc").with("id", style.prefix() + "section-words").text(words()).close();
  }

  private String words() {
    planned();
    for (Reach reach : well.hole().reaches()) say(HOLE, diameter(reach), range(reach.from(), reach.to()));
    for (Reach pipe : well.pipe().reaches()) {
      say(CASING, diameter(pipe), depth(pipe.to()), depth(well.string().stickUp().orElse(Length.ZERO)));
    }
    for (Reach hanging : well.hanging().reaches()) say(HANGING, depth(hanging.to()));
    for (Screen screen : well.string().screens()) say(SCREEN, range(screen.top(), screen.bottom()));
    for (FillReach fill : well.fills()) fill(fill);
    for (PlugReach plug : well.plugs()) say(PLUG, range(plug.top(), plug.bottom()), plug.label().shownTo(reader));
    well.levels().atRest().map(Levels.Level::depth).ifPresent(at -> say(AT_REST, depth(at)));
    well.levels().pumping().map(Levels.Level::depth).ifPresent(at -> say(PUMPING, depth(at)));
    well.intake().ifPresent(at -> say(INTAKE, depth(at)));
    List<String> log = new ArrayList<>();
    for (Stratum stratum : well.log().strata()) log.add(GroundColumn.words(stratum, reader));
    if (!log.isEmpty()) say(LOG, String.join("; ", log));
    if (sentences.isEmpty()) say(NOTHING);
    return String.join(" ", sentences);
  }

  private void fill(FillReach fill) {
    String range = range(fill.top(), fill.bottom());
    String how = fill.sounded() ? "" : ", " + PartLabels.EXPECTED.shownTo(reader);
    say(phrase(fill.filling()), range + how);
  }

  private void planned() {
    Plan plan = well.plan();
    Optional<Length> depth = plan.length(Plan.DEPTH);
    Optional<Length> top = plan.length(Plan.SCREEN_TOP);
    Optional<Length> bottom = plan.length(Plan.SCREEN_BOTTOM);
    if (depth.isEmpty() || top.isEmpty() || bottom.isEmpty()) return;
    say(PLAN, depth(depth.get()), range(top.get(), bottom.get()));
  }

  private static Phrase phrase(Filling filling) {
    return switch (filling) {
      case PACK -> PACK;
      case CHIPS -> CHIPS;
      case GROUT -> GROUT;
    };
  }

  private void say(Phrase phrase, Object... about) {
    sentences.add(phrase.about(about).shownTo(reader));
  }

  private String depth(Length depth) {
    return Depths.withUnit(depth, reader);
  }

  private String range(Length from, Length to) {
    return Depths.range(from, to, reader) + " " + Depths.unit(reader);
  }

  private String diameter(Reach reach) {
    return new Figure(reach.diameter(), Scale.DIAMETER).shownTo(reader);
  }
}
