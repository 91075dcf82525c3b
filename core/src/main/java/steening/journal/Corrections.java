package steening.journal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.pcollections.PVector;
import org.pcollections.TreePVector;

/** Which entries replace which, and what holds in the end. Clocks decide only between those that links leave equal. */
record Corrections(
    Map<String, List<Entry>> claims, List<List<Entry>> rivals, List<Entry> waiting, PVector<Entry> facts) {
  static final Corrections NONE = new Corrections(Map.of(), List.of(), List.of(), TreePVector.empty());

  private static final Comparator<Entry> BY_WRITING =
      Comparator.comparingLong((Entry e) -> e.recordedAt().epochMillis()).thenComparing(Entry.ORDER);

  static Corrections among(List<Entry> ordered, Map<String, Entry> byId) {
    Map<String, List<Entry>> claims = new LinkedHashMap<>();
    Set<String> replaced = new LinkedHashSet<>();
    for (Entry entry : ordered) {
      for (String target : entry.replaces()) {
        claims.computeIfAbsent(target, t -> new ArrayList<>()).add(entry);
        // entries that replace each other in a circle can only be forged: such a link takes nothing away
        if (!leadsTo(target, entry.id(), byId)) replaced.add(target);
      }
    }
    List<Entry> holding = ordered.stream().filter(e -> !e.isWithdrawal() && !replaced.contains(e.id())).toList();
    List<List<Entry>> rivals = lines(holding, byId).values().stream().filter(line -> line.size() > 1).toList();
    Set<String> losing = new LinkedHashSet<>();
    for (List<Entry> line : rivals) for (Entry rival : line.subList(0, line.size() - 1)) losing.add(rival.id());
    List<Entry> facts = holding.stream().filter(e -> !losing.contains(e.id())).toList();
    return new Corrections(claims, rivals, waiting(ordered, byId), TreePVector.from(facts));
  }

  /** The same with one more entry that has nothing to do with any before it and comes after all of them. */
  Corrections followedBy(Entry entry) {
    return entry.isWithdrawal() ? this : new Corrections(claims, rivals, waiting, facts.plus(entry));
  }

  boolean isClaimed(String id) {
    return claims.containsKey(id);
  }

  List<Entry> claimsOn(Entry entry) {
    return List.copyOf(claims.getOrDefault(entry.id(), List.of()));
  }

  private static List<Entry> waiting(List<Entry> ordered, Map<String, Entry> byId) {
    return ordered.stream().filter(e -> e.replaces().stream().anyMatch(t -> !byId.containsKey(t))).toList();
  }

  /** What holds, grouped by the first entry of its line of corrections, each group in order of writing. */
  private static Map<String, List<Entry>> lines(List<Entry> holding, Map<String, Entry> byId) {
    Map<String, List<Entry>> lines = new LinkedHashMap<>();
    for (Entry entry : holding) {
      if (entry.replaces().isEmpty()) continue;
      for (String origin : origins(entry, byId)) lines.computeIfAbsent(origin, o -> new ArrayList<>()).add(entry);
    }
    for (List<Entry> line : lines.values()) line.sort(BY_WRITING);
    return lines;
  }

  private static Set<String> origins(Entry entry, Map<String, Entry> byId) {
    Set<String> origins = new TreeSet<>();
    TreeSet<String> before = before(entry.replaces(), byId);
    for (String id : before) if (!byId.containsKey(id) || byId.get(id).replaces().isEmpty()) origins.add(id);
    // a circle has no first entry; any one of it will do, if it is the same everywhere
    return origins.isEmpty() ? Set.of(before.first()) : origins;
  }

  private static boolean leadsTo(String from, String id, Map<String, Entry> byId) {
    return from.equals(id) || byId.containsKey(from) && before(byId.get(from).replaces(), byId).contains(id);
  }

  /** These ids and all that they replace, however far back. */
  private static TreeSet<String> before(List<String> ids, Map<String, Entry> byId) {
    TreeSet<String> before = new TreeSet<>();
    List<String> open = new ArrayList<>(ids);
    while (!open.isEmpty()) {
      String id = open.remove(open.size() - 1);
      if (before.add(id) && byId.containsKey(id)) open.addAll(byId.get(id).replaces());
    }
    return before;
  }
}
