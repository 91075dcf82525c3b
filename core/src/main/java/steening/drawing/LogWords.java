package steening.drawing;

import java.util.ArrayList;
import java.util.List;
import steening.language.Reader;
import steening.quantity.Length;
import steening.well.Stratum;

/**
 * The words beside the log: each interval with its material and, where there is room, the driller's own words.
 *
 * @param strata the intervals that have words
 * @param labels one for each of them
 * @param leftOut how many intervals, the thinnest, are without words because they would not fit
 */
record LogWords(List<Stratum> strata, List<Label> labels, int leftOut) {
  private static final double WIDE_ENOUGH = 110;
  private static final int OWN_WORDS_LINES = 2;

  LogWords {
    strata = List.copyOf(strata);
    labels = List.copyOf(labels);
  }

  /** With the driller's own words if all of it fits into a frame, else without. */
  static LogWords of(AsBuilt well, Reader reader, Frame frame) {
    List<Stratum> strata = well.log().strata();
    LogWords full = of(strata, reader, frame, frame.style().words() >= WIDE_ENOUGH);
    return full.height() <= frame.depthRoom() ? full : of(strata, reader, frame, false);
  }

  private static LogWords of(List<Stratum> strata, Reader reader, Frame frame, boolean ownWords) {
    double width = frame.style().words();
    List<Label> labels = new ArrayList<>();
    for (Stratum stratum : strata) {
      String range = Depths.range(stratum.from(), stratum.to(), reader);
      String material = stratum.material().label().shownTo(reader);
      Length middle = Depths.middle(stratum.from(), stratum.to());
      Label label = Label.of(middle, frame.left(), range, material, Ink.INK, width);
      boolean aside = ownWords && !stratum.looks().isEmpty();
      labels.add(aside ? label.aside(shortened(stratum.looks().shownTo(reader), width), width) : label);
    }
    return new LogWords(strata, labels, 0);
  }

  double height() {
    return Label.heights(labels);
  }

  /** Those that fit one under the other; the thinnest go first. */
  LogWords within(double room) {
    List<Stratum> fewer = new ArrayList<>(strata);
    List<Label> left = new ArrayList<>(labels);
    while (Label.heights(left) > room && !left.isEmpty()) {
      int thinnest = thinnest(fewer);
      fewer.remove(thinnest);
      left.remove(thinnest);
    }
    return new LogWords(fewer, left, leftOut + strata.size() - fewer.size());
  }

  void draw(Svg svg, Frame frame) {
    List<Label> inOrder = new ArrayList<>(labels);
    inOrder.sort((a, b) -> a.at().compareTo(b.at()));
    LabelColumn.left(svg, frame).draw("log-words", inOrder);
  }

  private static String shortened(String words, double width) {
    List<String> lines = Lettering.wrap(words, width);
    if (lines.size() <= OWN_WORDS_LINES) return words;
    String last = Lettering.cut(lines.get(OWN_WORDS_LINES - 1) + "…", width);
    return String.join(" ", lines.subList(0, OWN_WORDS_LINES - 1)) + " " + last;
  }

  private static int thinnest(List<Stratum> strata) {
    int thinnest = 0;
    for (int i = 1; i < strata.size(); i++) {
      Length here = strata.get(i).to().minus(strata.get(i).from());
      if (!here.isMoreThan(strata.get(thinnest).to().minus(strata.get(thinnest).from()))) thinnest = i;
    }
    return thinnest;
  }
}
