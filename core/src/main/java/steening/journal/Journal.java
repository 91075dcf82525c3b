package steening.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The entries of one well: a set that only grows, shown in {@link Entry#ORDER}. Equal sets give equal journals, in
 * whatever order and however often the entries arrived.
 */
public final class Journal {
  public static final Journal EMPTY = new Journal(new TreeMap<>());

  private final Map<String, Entry> byId;
  private final List<Entry> ordered;
  private final Map<String, List<Entry>> replacedBy;

  private Journal(TreeMap<String, Entry> byId) {
    this.byId = byId;
    List<Entry> all = new ArrayList<>(byId.values());
    all.sort(Entry.ORDER);
    this.ordered = List.copyOf(all);
    this.replacedBy = new HashMap<>();
    for (Entry entry : ordered) {
      for (String target : entry.replaces()) replacedBy.computeIfAbsent(target, t -> new ArrayList<>()).add(entry);
    }
  }

  public static Journal of(Collection<Entry> entries) {
    return EMPTY.with(entries);
  }

  /** The union. An id already known keeps its first content. */
  public Journal with(Collection<Entry> more) {
    TreeMap<String, Entry> union = new TreeMap<>(byId);
    for (Entry entry : more) union.putIfAbsent(entry.id(), entry);
    return new Journal(union);
  }

  /** All entries, the replaced ones among them. */
  public List<Entry> entries() {
    return ordered;
  }

  public int size() {
    return ordered.size();
  }

  public Entry entry(String id) {
    return byId.get(id);
  }

  /** The entries that claim to replace this one. */
  public List<Entry> replacementsOf(Entry entry) {
    return List.copyOf(replacedBy.getOrDefault(entry.id(), List.of()));
  }

  /** What had happened by a moment, as is known today. */
  public Journal asOf(Moment moment) {
    TreeMap<String, Entry> kept = new TreeMap<>();
    for (Entry entry : ordered) if (!entry.happenedAt().isAfter(moment)) kept.put(entry.id(), entry);
    return new Journal(kept);
  }

  /** What had been written down by a moment: what the crew believed then. */
  public Journal asKnownAt(Moment moment) {
    TreeMap<String, Entry> kept = new TreeMap<>();
    for (Entry entry : ordered) if (!entry.recordedAt().isAfter(moment)) kept.put(entry.id(), entry);
    return new Journal(kept);
  }

  /** Corrections and withdrawals whose target has not arrived: kept, shown, and waiting. */
  public List<Entry> waiting() {
    return ordered.stream().filter(e -> e.replaces().stream().anyMatch(t -> !byId.containsKey(t))).toList();
  }

  /** Sets of corrections that do not know of each other: all are kept, the last in order holds, someone should choose. */
  public List<List<Entry>> rivals() {
    return lines().values().stream().filter(heads -> heads.size() > 1).toList();
  }

  /**
   * The facts that hold: not replaced, not withdrawals; of rival corrections the last in order of writing. A correction
   * beats a withdrawal that does not know of it, so that nothing vanishes by accident.
   */
  public List<Entry> facts() {
    Set<String> losing = new HashSet<>();
    for (List<Entry> rivals : rivals()) {
      for (Entry rival : rivals.subList(0, rivals.size() - 1)) losing.add(rival.id());
    }
    return ordered.stream().filter(e -> holds(e) && !losing.contains(e.id())).toList();
  }

  private boolean holds(Entry entry) {
    return !entry.isWithdrawal() && !replacedBy.containsKey(entry.id());
  }

  /** Facts that hold, grouped by the first entry of their line of corrections, each group in order of writing. */
  private Map<String, List<Entry>> lines() {
    Map<String, List<Entry>> lines = new LinkedHashMap<>();
    for (Entry entry : ordered) {
      if (!holds(entry) || entry.replaces().isEmpty()) continue;
      for (String origin : origins(entry)) lines.computeIfAbsent(origin, o -> new ArrayList<>()).add(entry);
    }
    for (List<Entry> heads : lines.values()) {
      heads.sort((a, b) -> {
        int byWriting = Long.compare(a.recordedAt().epochMillis(), b.recordedAt().epochMillis());
        return byWriting != 0 ? byWriting : Entry.ORDER.compare(a, b);
      });
    }
    return lines;
  }

  private Set<String> origins(Entry entry) {
    Set<String> origins = new TreeSet<>();
    Set<String> seen = new HashSet<>();
    List<String> open = new ArrayList<>(entry.replaces());
    while (!open.isEmpty()) {
      String id = open.remove(open.size() - 1);
      if (!seen.add(id)) continue;
      Entry target = byId.get(id);
      if (target == null || target.replaces().isEmpty()) origins.add(id);
      else open.addAll(target.replaces());
    }
    return origins;
  }
}
