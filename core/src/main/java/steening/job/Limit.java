package steening.job;

import steening.language.Reader;
import steening.language.Shown;

/** A limit of a rule: as the rule prints it, and in metric units to the nearest round figure on the safe side. */
record Limit(String us, String metric) implements Shown {
  @Override
  public String shownTo(Reader reader) {
    return reader.metric() ? metric : us;
  }
}
