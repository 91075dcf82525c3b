package steening.well;

import java.util.ArrayList;
import java.util.List;
import steening.language.Phrase;
import steening.language.Reader;
import steening.language.Shown;

/**
 * How an interval of ground looked: colour, moisture, grain, as far as they were said, and the driller's own words.
 *
 * @param said in the order they are read
 * @param words in no language but the driller's; may be empty
 */
public record Looks(List<Phrase> said, String words) implements Shown {
  public Looks {
    said = List.copyOf(said);
  }

  @Override
  public String shownTo(Reader reader) {
    List<String> all = new ArrayList<>();
    for (Phrase phrase : said) all.add(phrase.shownTo(reader));
    if (!words.isBlank()) all.add(words.trim());
    return String.join(", ", all);
  }

  public boolean isEmpty() {
    return said.isEmpty() && words.isBlank();
  }
}
