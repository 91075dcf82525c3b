package steening.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import org.pcollections.PVector;
import org.pcollections.TreePMap;
import org.pcollections.TreePVector;

/**
 * The entries of one well: a set that only grows, shown in {@link Entry#ORDER}. Equal sets give equal journals, in
 * whatever order and however often the entries arrived.
 *
 * <p>Two different contents under one id should not happen, and do when a device was copied or a file edited by hand.
 * The one whose text sorts first is then the entry, everywhere alike, and the others are kept as {@link #clashes}.
 *
 * <p>An entry that simply comes after all the others is added in a time that hardly grows with the journal. One that
 * arrives late, or takes another's place, costs a look at every entry.
 */
public final class Journal {
  public static final Journal EMPTY =
      new Journal(TreePMap.empty(), TreePMap.empty(), TreePVector.empty(), Corrections.NONE);

  private final TreePMap<String, Entry> byId;
  private final TreePMap<String, Entry> clashesByText;
  private final PVector<Entry> ordered;
  private final Corrections corrections;

  private Journal(
      TreePMap<String, Entry> byId, TreePMap<String, Entry> clashesByText, PVector<Entry> ordered,
      Corrections corrections) {
    this.byId = byId;
    this.clashesByText = clashesByText;
    this.ordered = ordered;
    this.corrections = corrections;
  }

  private static Journal of(TreePMap<String, Entry> byId, TreePMap<String, Entry> clashesByText) {
    List<Entry> ordered = inOrder(byId.values());
    return new Journal(byId, clashesByText, TreePVector.from(ordered), Corrections.among(ordered, byId));
  }

  public static Journal of(Collection<Entry> entries) {
    return EMPTY.with(entries);
  }

  /** The union. */
  public Journal with(Collection<Entry> more) {
    return grown(more).journal();
  }

  /**
   * A journal that has grown.
   *
   * @param kept how many of its facts, counted from the first, stood there before
   */
  public record Growth(Journal journal, int kept) {}

  /** The union, and how much of what was worked out from the facts so far still holds. */
  public Growth grown(Collection<Entry> more) {
    Journal grown = this;
    List<Entry> others = new ArrayList<>();
    for (Entry entry : inOrder(more)) {
      if (grown.canBeFollowedBy(entry)) grown = grown.followedBy(entry);
      else if (!entry.equals(grown.entry(entry.id()))) others.add(entry);
    }
    if (others.isEmpty()) return new Growth(grown, facts().size());
    Journal united = grown.unitedWith(others);
    return new Growth(united, shared(facts(), united.facts()));
  }

  private boolean canBeFollowedBy(Entry entry) {
    return entry.replaces().isEmpty()
        && !byId.containsKey(entry.id())
        && !corrections.isClaimed(entry.id())
        && (ordered.isEmpty() || Entry.ORDER.compare(ordered.get(size() - 1), entry) < 0);
  }

  private Journal followedBy(Entry entry) {
    return new Journal(
        byId.plus(entry.id(), entry), clashesByText, ordered.plus(entry), corrections.followedBy(entry));
  }

  private Journal unitedWith(List<Entry> more) {
    TreePMap<String, Entry> union = byId;
    TreePMap<String, Entry> clashes = clashesByText;
    for (Entry entry : more) {
      Entry known = union.get(entry.id());
      if (known == null) union = union.plus(entry.id(), entry);
      if (known == null || known.equals(entry)) continue;
      String knownText = Codec.write(known);
      String text = Codec.write(entry);
      boolean first = text.compareTo(knownText) < 0;
      clashes = clashes.plus(first ? knownText : text, first ? known : entry);
      if (first) union = union.plus(entry.id(), entry);
    }
    return of(union, clashes);
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
    return corrections.claimsOn(entry);
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
    return corrections.waiting();
  }

  /** Corrections that do not know of each other, set by set: all are kept, the last holds, someone should choose. */
  public List<List<Entry>> rivals() {
    return corrections.rivals();
  }

  /**
   * The facts that hold: not replaced, not withdrawals; of rival corrections the last in order of writing. A correction
   * beats a withdrawal that does not know of it, so that nothing vanishes by accident.
   */
  public List<Entry> facts() {
    return corrections.facts();
  }

  private Journal only(Predicate<Entry> kept) {
    return of(kept(byId, kept), kept(clashesByText, kept));
  }

  private static TreePMap<String, Entry> kept(TreePMap<String, Entry> entries, Predicate<Entry> kept) {
    List<String> gone =
        entries.entrySet().stream().filter(e -> !kept.test(e.getValue())).map(e -> e.getKey()).toList();
    return entries.minusAll(gone);
  }

  private static List<Entry> inOrder(Collection<Entry> entries) {
    return entries.stream().sorted(Entry.ORDER).toList();
  }

  /** How many entries two lists begin with in common. */
  private static int shared(List<Entry> before, List<Entry> after) {
    List<Entry> shorter = before.size() < after.size() ? before : after;
    List<Entry> longer = shorter == before ? after : before;
    int shared = 0;
    var other = longer.iterator();
    for (Entry entry : shorter) {
      if (!entry.equals(other.next())) return shared;
      shared++;
    }
    return shared;
  }
}
