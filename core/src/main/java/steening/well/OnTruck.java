package steening.well;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import steening.field.CountField;
import steening.journal.Entry;
import steening.language.Phrase;

/** What was counted on the truck, each time somebody counted. Bags are whole ones, of whatever size is in use. */
public record OnTruck(List<Count> counts) {
  /** Of the hole, since what went into it is taken off. */
  public static final Part<OnTruck> PART = Part.ofHole("on-truck", new OnTruck(List.of()));

  public OnTruck {
    counts = List.copyOf(counts);
  }

  /** Goods that run out at the rig. */
  public enum Goods {
    PACK("pack", "bags of pack on the truck", "sacos de filtro en el camión"),
    CHIPS("chips", "bags of chips on the truck", "sacos de pellets en el camión"),
    GROUT("grout", "bags of grout on the truck", "sacos de lechada en el camión"),
    JOINTS("joints", "joints of casing on the truck", "tubos de ademe en el camión");

    private final CountField field;

    Goods(String name, String english, String spanish) {
      field = CountField.of(name, Phrase.of(english, spanish), 0, 5000).usuallyUpTo(80).optional();
    }

    public CountField field() {
      return field;
    }

    /** How many of them went into the well so far. */
    public int used(Well well) {
      return switch (this) {
        case PACK -> well.get(Fill.PACK).bags();
        case CHIPS -> well.get(Fill.CHIPS).bags();
        case GROUT -> well.get(Fill.GROUT).bags();
        case JOINTS -> joints(well.get(CasingString.PART));
      };
    }

    private static int joints(CasingString string) {
      return (int) (string.count(Piece.Sort.JOINT) + string.count(Piece.Sort.CUT_PIECE));
    }
  }

  /**
   * One count.
   *
   * @param left how many were there, of the goods that were counted
   * @param used how many of each had gone into the well by then
   */
  public record Count(Map<Goods, Integer> left, Map<Goods, Integer> used, String entry) {}

  /** The same goods counted twice. */
  public record Twice(Count first, Count last, Goods goods) {
    /** Gone from the truck in between. */
    public int gone() {
      return first.left().get(goods) - last.left().get(goods);
    }

    /** Gone into the well in between, by the entries. */
    public int entered() {
      return last.used().get(goods) - first.used().get(goods);
    }
  }

  public static Well fold(Well well, Entry entry) {
    Map<Goods, Integer> left = new EnumMap<>(Goods.class);
    Map<Goods, Integer> used = new EnumMap<>(Goods.class);
    for (Goods goods : Goods.values()) {
      goods.field().in(entry.body()).ifPresent(n -> left.put(goods, n));
      used.put(goods, goods.used(well));
    }
    if (left.isEmpty()) return well;
    List<Count> more = new ArrayList<>(well.get(PART).counts());
    more.add(new Count(left, used, entry.id()));
    return well.with(PART, new OnTruck(more));
  }

  /** What was counted last, less what went into the well since; none where nobody counted. */
  public Optional<Integer> now(Goods goods, int used) {
    return last(goods).map(c -> Math.max(0, c.left().get(goods) - (used - c.used().get(goods))));
  }

  public Optional<Count> last(Goods goods) {
    return counts.stream().filter(c -> c.left().containsKey(goods)).reduce((a, b) -> b);
  }

  /** The first and the last count of the same goods; none where they were counted once. */
  public Optional<Twice> twice(Goods goods) {
    List<Count> of = counts.stream().filter(c -> c.left().containsKey(goods)).toList();
    return of.size() < 2 ? Optional.empty() : Optional.of(new Twice(of.get(0), of.get(of.size() - 1), goods));
  }
}
