package steening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which package may see which. Reading down, a package sees only some of those above it, so nothing points back. To let
 * a package see more, write it here, where everyone sees that the house changed.
 */
final class Arrows {
  /** First the package, then what it may see; every package may see itself. A room is a package below stage. */
  private static final List<String> INSIDE = List.of(
      "number    :",
      "aquifer   : number",
      "fit       : number",
      "language  : number",
      "quantity  : number language",
      "journal   : number language",
      "field     : number language quantity journal",
      "reckoning : number aquifer language quantity journal field",
      "bore      : number language quantity journal field reckoning",
      "pipe      : number language quantity journal field reckoning bore",
      "mix       : number language quantity journal field reckoning bore pipe",
      "well      : number language quantity journal field bore",
      "ground    : number language quantity journal field reckoning bore well",
      "finding   : number language quantity reckoning",
      "drawing   : number language quantity journal field reckoning bore well",
      "stage     : number language quantity journal field reckoning bore ground pipe mix well finding drawing",
      "room      : number aquifer fit language quantity journal field reckoning bore ground pipe mix well finding drawing stage",
      "job       : number language quantity journal field reckoning bore ground pipe well finding drawing stage room",
      "json      : number language quantity journal field reckoning bore pipe well finding stage room job",
      "page      : number language quantity journal field reckoning bore pipe well finding drawing stage room job json",
      "report    : number language quantity journal field reckoning bore pipe well finding drawing stage room job",
      "cases     : number language quantity journal field reckoning bore stage room job json");

  /** Who may use which package of others, or which single class; those of Java that are not here are closed. */
  private static final List<String> OUTSIDE = List.of(
      "java.lang              : everyone",
      "java.lang.annotation   : everyone",
      "java.math              : everyone",
      "java.time              : everyone",
      "java.time.temporal     : everyone",
      "java.util              : everyone",
      "java.util.function     : everyone",
      "java.util.regex        : everyone",
      "java.util.stream       : everyone",
      "org.hipparchus.util    : number",
      "org.pcollections       : journal well room job",
      "com.eclipsesource.json : journal json page cases",
      "j2html                 : page report",
      "j2html.attributes      : page report",
      "j2html.rendering       : page report",
      "j2html.tags            : page report",
      "j2html.tags.attributes : page report",
      "j2html.tags.specialized: page report",
      // j2html declares it even where it writes to memory
      "java.io.IOException    : report");

  private static final String HOUSE = "steening.";
  private static final String ROOMS = "steening.stage.";
  private static final Map<String, Set<String>> MAY_SEE = table(INSIDE);
  private static final Map<String, Set<String>> USERS = table(OUTSIDE);

  private Arrows() {}

  static boolean knows(String packageName) {
    return MAY_SEE.containsKey(place(packageName));
  }

  /** Whether a class of one package may use a class, by its whole name, of another. */
  static boolean allows(String from, String to, String type) {
    if (from.equals(to)) return true;
    if (to.startsWith(HOUSE)) {
      boolean siblings = place(from).equals("room") && place(to).equals("room");
      return !siblings && MAY_SEE.getOrDefault(place(from), Set.of()).contains(place(to)) || below(to, from);
    }
    Set<String> users = USERS.getOrDefault(to, USERS.getOrDefault(type, Set.of()));
    return users.contains("everyone") || users.contains(place(from));
  }

  /** A package may be divided; its parts and it see each other. The rooms are no parts of stage in this sense. */
  private static boolean below(String to, String from) {
    if (place(to).equals("room") && place(from).equals("room")) return room(to).equals(room(from));
    return place(to).equals(place(from));
  }

  private static String place(String packageName) {
    if (packageName.startsWith(ROOMS)) return "room";
    String rest = packageName.startsWith(HOUSE) ? packageName.substring(HOUSE.length()) : packageName;
    return rest.split("\\.")[0];
  }

  private static String room(String packageName) {
    return packageName.substring(ROOMS.length()).split("\\.")[0];
  }

  private static Map<String, Set<String>> table(List<String> lines) {
    Map<String, Set<String>> table = new LinkedHashMap<>();
    for (String line : lines) {
      String[] sides = line.split(":");
      List<String> right = new ArrayList<>();
      if (sides.length > 1) right.addAll(Arrays.asList(sides[1].trim().split(" +")));
      table.put(sides[0].trim(), Set.copyOf(right));
    }
    return table;
  }
}
