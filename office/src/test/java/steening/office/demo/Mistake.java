package steening.office.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import steening.journal.Entry;
import steening.office.EntryChanges;

/**
 * One slip of a tired hand in the everyday well. Slips, and what an expert sees in them, are our own scenario; its
 * figures were worked out by hand apart from this program.
 *
 * @param name what went wrong
 * @param kind the entry it is made in
 * @param which of several such entries: the first, the last, or each
 * @param field what was typed wrong
 * @param typed what was typed
 * @param offers what the form must offer instead; empty where the form cannot know
 * @param finding what must stand out once it is taken down as typed; empty where it cannot be taken down so
 * @param figures what that finding must say
 */
public record Mistake(
    String name, String kind, Which which, String field, String typed, List<String> offers, String finding,
    List<String> figures) {

  /** Where the slip is made. */
  public enum Which { FIRST, LAST, EACH }

  public static final List<Mistake> ALL = List.of(
      first("hole in feet for inches", "plan", "hole-diameter", "7.875 ft").offering("7.875 in"),
      first("screen in inches for feet", "screen", "length", "10 in").offering("10 ft")
          .finding("casing.bottom-off-plan", "129.33 ft", "138.50 ft"),
      first("slot in inches for thousandths", "screen", "slot", "20 in").offering("20 slot"),
      first("static level in metres for feet", "static-level", "level", "31 m")
          .finding("test.level-above-static", "31 m", "31 ft"),
      first("rate in gallons for litres", "pumping-start", "rate", "45 gpm")
          .finding("test.specific-capacity-unlikely", "3.63", "0.85", "3.1", "45 L/min", "11.9 gpm", "0.96 gpm/ft"),
      first("depth with its digits turned round", "hole", "to", "124 ft")
          .finding("casing.string-deeper-than-hole", "137.00 ft", "124.00 ft"),
      first("depth with its digits turned round, against the log", "hole", "to", "124 ft")
          .finding("drilling.hole-shallower-than-log", "124.00 ft", "142.00 ft"),
      at(Which.LAST, "level and static level from two points", "pumping-level", "from", "ground")
          .finding("test.mixed-datums", "13.90 ft", "12.40 ft", "1.50 ft"),
      at(Which.EACH, "bags of kilograms for pounds", "pack-bags", "weight", "50 kg").offering("50 lb")
          .finding("pack.bag-size", "0.50 ft³", "13.4"),
      // 238 and 9.2 by hand, with the well's water rounded to 90.3 gal
      first("bleach stronger than it was taken for", "disinfection", "strength", "12.5 %")
          .finding("disinfection.over-target", "237.4 mg/L", "100.0 mg/L", "9.3 fl oz"),
      first("cut-out in kilopascals for pounds", "pump", "cut-out", "60 kPa").offering("60 psi")
          .finding("pump.cut-out", "8.7 psi", "40.0 psi", "60.0 psi"),
      first("day and month turned round", "completion", "date", "03/06/2026").offering("2026-03-06", "2026-06-03"),
      first("completed before anything was drilled", "completion", "date", "2026-03-06")
          .finding("handover.completed-too-early", "2026-03-06", "2026-05-18"),
      first("longitude without its sign", "site", "longitude", "83.1").offering("-83.1 °")
          .finding("site.elsewhere", "83.1"),
      first("depth of a metric project in feet", "hole", "to", "142 m")
          .finding("drilling.metres-for-feet", "465.88 ft", "142.00 ft", "3.28"),
      first("a bag too many digits", "pack-bags", "bags", "113").offering("113")
          .finding("pack.count", "124 bags", "above the ground", "11 instead of 113"));

  /** Whether the form must ask before it takes this down. */
  public boolean isAsked() {
    return !offers.isEmpty();
  }

  /** Whether it can be taken down at all. */
  public boolean isFound() {
    return !finding.isEmpty();
  }

  /** Which of these entries the slip is made in. */
  public Predicate<Entry> hits(List<Entry> entries) {
    List<Entry> alike = entries.stream().filter(e -> e.kind().equals(kind)).toList();
    List<Entry> hit = new ArrayList<>(alike);
    if (which == Which.FIRST) hit = alike.subList(0, 1);
    if (which == Which.LAST) hit = alike.subList(alike.size() - 1, alike.size());
    return hit::contains;
  }

  /** The same journal with the slip in it. */
  public List<Entry> in(List<Entry> entries) {
    Predicate<Entry> hit = hits(entries);
    return entries.stream().map(e -> hit.test(e) ? EntryChanges.with(e, field, typed) : e).toList();
  }

  @Override
  public String toString() {
    return name;
  }

  private static Mistake first(String name, String kind, String field, String typed) {
    return at(Which.FIRST, name, kind, field, typed);
  }

  private static Mistake at(Which which, String name, String kind, String field, String typed) {
    return new Mistake(name, kind, which, field, typed, List.of(), "", List.of());
  }

  private Mistake offering(String... meanings) {
    return new Mistake(name, kind, which, field, typed, List.of(meanings), finding, figures);
  }

  private Mistake finding(String code, String... said) {
    return new Mistake(name, kind, which, field, typed, offers, code, List.of(said));
  }
}
