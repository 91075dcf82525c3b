package steening.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Pushes labels apart: each stays as near to where it is wanted as the others let it, none touches another, and the
 * order is kept. Least squares by pooling neighbours that collide (isotonic regression; from memory, checked by the
 * tests).
 */
final class Spread {
  private Spread() {}

  /** A run of labels that touch, as one block. */
  private record Block(double wantedSum, int count) {
    double mean() {
      return wantedSum / count;
    }
  }

  /**
   * The middles of the labels.
   *
   * @param wanted where each middle should be, growing
   * @param heights of the labels
   * @param top least upper edge of the first
   * @param bottom greatest lower edge of the last; when they do not all fit the last ones hang below
   */
  static List<Double> middles(List<Double> wanted, List<Double> heights, double top, double bottom) {
    List<Double> offsets = new ArrayList<>();
    double filled = 0;
    for (double height : heights) {
      offsets.add(filled + height / 2);
      filled += height;
    }
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < wanted.size(); i++) {
      Block block = new Block(wanted.get(i) - offsets.get(i), 1);
      while (!blocks.isEmpty() && blocks.get(blocks.size() - 1).mean() > block.mean()) {
        Block above = blocks.remove(blocks.size() - 1);
        block = new Block(above.wantedSum() + block.wantedSum(), above.count() + block.count());
      }
      blocks.add(block);
    }
    double most = Math.max(top, bottom - filled);
    List<Double> middles = new ArrayList<>();
    for (Block block : blocks) {
      double start = Math.min(most, Math.max(top, block.mean()));
      for (int i = 0; i < block.count(); i++) middles.add(offsets.get(middles.size()) + start);
    }
    return middles;
  }
}
