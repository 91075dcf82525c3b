package steening.stage.seal.placing;

import java.util.Optional;
import steening.journal.Moment;
import steening.language.Phrase;
import steening.quantity.Figure;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.quantity.Unit;
import steening.stage.Clock;
import steening.stage.Sheet;
import steening.stage.seal.DryGrout;
import steening.well.Setting;
import steening.well.Well;

/** The clock of cement grout: from the last batch until the next work. */
public final class SetClock {
  private static final Phrase SETS = Phrase.of("the cement is left to set", "el cemento se deja fraguar");

  private SetClock() {}

  /** The well once a batch of this was pumped; bentonite takes no hours that a rule would give. */
  public static Well after(Well well, DryGrout material, Optional<Quantity> asked, Moment at, String entry) {
    if (!material.isCement()) return well;
    Quantity time = asked.orElse(material == DryGrout.RAPID_CEMENT ? SetRule.RAPID : SetRule.USUAL);
    Moment until = at.plusMinutes((long) Math.ceil(time.in(Unit.MINUTE) - 1e-6));
    return well.with(Setting.PART, Optional.of(new Setting(at, time, until, entry)));
  }

  public static Optional<Clock> of(Well well) {
    return well.get(Setting.PART).map(s -> new Clock(SETS, s.placed(), s.until(), Optional.empty()));
  }

  /** How long it is left, and what the rules met say. */
  public static Sheet on(Sheet sheet, Well well) {
    Optional<Setting> setting = well.get(Setting.PART);
    if (setting.isEmpty()) return sheet;
    return SetRule.on(sheet.line(SETS, new Figure(setting.get().time(), Scale.HOURS)));
  }
}
