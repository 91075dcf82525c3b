package steening.job;

import java.util.Optional;
import org.pcollections.PMap;
import org.pcollections.PVector;
import org.pcollections.TreePMap;
import org.pcollections.TreePVector;
import steening.field.Kind;
import steening.finding.Finding;
import steening.journal.Entry;
import steening.well.Well;

/**
 * What the facts of a journal amount to, from the first to the {@code facts}-th. Immutable, and cheap to keep many of:
 * one shares with the next all but what the facts between them changed.
 *
 * @param unread facts that are not understood here
 * @param unusual values that nobody confirmed
 * @param latest of each kind, by its name
 */
record Fold(
    int facts, Well well, PVector<Entry> unread, PVector<Finding> unusual, PMap<String, Entry> latest) {

  static Fold nothing(String well) {
    return new Fold(0, Well.named(well), TreePVector.empty(), TreePVector.empty(), TreePMap.empty());
  }

  Fold and(Entry fact) {
    Optional<Kind> kind = Stages.kind(fact.kind());
    boolean readable = kind.isPresent()
        && fact.schema() <= kind.get().schema()
        && kind.get().faults(fact.body()).isEmpty();
    return new Fold(
        facts + 1,
        readable ? Stages.ofKind(fact.kind()).orElseThrow().fold(well, fact) : well,
        readable ? unread : unread.plus(fact),
        kind.map(k -> unusual.plusAll(JournalFindings.unusual(k, fact))).orElse(unusual),
        latest.plus(fact.kind(), fact));
  }
}
