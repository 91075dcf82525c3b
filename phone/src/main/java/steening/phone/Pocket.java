package steening.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import steening.journal.Entry;
import steening.journal.Journal;
import steening.page.Shelf;

/** The journals a phone carries. */
record Pocket(Map<String, List<Entry>> byWell) implements Shelf {
  static Pocket of(List<Entry> entries) {
    Map<String, List<Entry>> byWell = new TreeMap<>();
    for (Entry entry : entries) byWell.computeIfAbsent(entry.well(), well -> new ArrayList<>()).add(entry);
    return new Pocket(byWell);
  }

  @Override
  public List<String> wells() {
    return List.copyOf(byWell.keySet());
  }

  @Override
  public Journal journal(String well) {
    return Journal.of(byWell.getOrDefault(well, List.of()));
  }
}
