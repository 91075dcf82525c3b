package steening.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The entries of one well: a set that only grows, shown in {@link Entry#ORDER}. Equal sets give equal journals, in
 * whatever order and however often the entries arrived.
 *
 * <p>Two different contents under one id should not happen, and do when a device was copied or a file edited by hand.
 * The one whose text sorts first is then the entry, everywhere alike, and the others are kept as {@link #clashes}.
 */
public final class Journal {
  public static final Journal EMPTY = new Journal(new TreeMap<>(), new TreeMap<>());

  private final TreeMap<String, Entry> byId;
  private final TreeMap<String, Entry> clashesByText;
  private final List<Entry> ordered;
  private Corrections corrections;

  private Journal(TreeMap<String, Entry> byId, TreeMap<String, Entry> clashesByText) {
    this.byId = byId;
    this.clashesByText = clashesByText;
    List<Entry> all = new ArrayList<>(byId.values());
    all.sort(Entry.ORDER);
    this.ordered = List.copyOf(all);
  }

  public static Journal of(Collection<Entry> entries) {
    return EMPTY.with(entries);
  }

  /** The union. */
  public Journal with(Collection<Entry> more) {
    TreeMap<String, Entry> union = new TreeMap<>(byId);
    TreeMap<String, Entry> clashes = new TreeMap<>(clashesByText);
    for (Entry entry : more) {
      Entry known = union.putIfAbsent(entry.id(), entry);
      if (known == null || known.equals(entry)) continue;
      String knownText = Codec.write(known);
      String text = Codec.write(entry);
      boolean first = text.compareTo(knownText) < 0;
      clashes.put(first ? knownText : text, first ? known : entry);
      if (first) union.put(entry.id(), entry);
    }
    return new Journal(union, clashes);
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

  /** Other contents that came under an id already taken, in order of their texts: no facts, but not forgotten. */
  public List<Entry> clashes() {
    return List.copyOf(clashesByText.values());
  }

  /** The entries that claim to replace this one. */
  public List<Entry> replacementsOf(Entry entry) {
    return corrections().claimsOn(entry);
  }

  /** What had happened by a moment, as is known today. */
  public Journal asOf(Moment moment) {
    return only(entry -> !entry.happenedAt().isAfter(moment));
  }

  /** What had been written down by a moment: what the crew believed then. */
  public Journal asKnownAt(Moment moment) {
    return only(entry -> !entry.recordedAt().isAfter(moment));
  }

  /** Corrections and withdrawals whose target has not arrived: kept, shown, and waiting. */
  public List<Entry> waiting() {
    return ordered.stream().filter(e -> e.replaces().stream().anyMatch(t -> !byId.containsKey(t))).toList();
  }

  /** Corrections that do not know of each other, set by set: all are kept, the last holds, someone should choose. */
  public List<List<Entry>> rivals() {
    return corrections().rivals();
  }

  /**
   * The facts that hold: not replaced, not withdrawals; of rival corrections the last in order of writing. A correction
   * beats a withdrawal that does not know of it, so that nothing vanishes by accident.
   */
  public List<Entry> facts() {
    return corrections().facts();
  }

  // worked out when first asked for; two threads that ask at once work out the same
  private Corrections corrections() {
    Corrections known = corrections;
    if (known == null) {
      known = Corrections.among(ordered, byId);
      corrections = known;
    }
    return known;
  }

  private Journal only(Predicate<Entry> kept) {
    return new Journal(kept(byId, kept), kept(clashesByText, kept));
  }

  private static TreeMap<String, Entry> kept(Map<String, Entry> entries, Predicate<Entry> kept) {
    TreeMap<String, Entry> result = new TreeMap<>();
    for (Map.Entry<String, Entry> one : entries.entrySet()) {
      if (kept.test(one.getValue())) result.put(one.getKey(), one.getValue());
    }
    return result;
  }
}
