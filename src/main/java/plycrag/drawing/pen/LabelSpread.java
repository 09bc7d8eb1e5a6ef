package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves labels along a line just far enough apart to be read, keeping their order: the places with
 * the least sum of squared moves (isotonic regression by pooling neighbours).
 */
public final class LabelSpread {
  /** The least distance between neighbouring labels on paper, mm. */
  public static final double STEP = 3.8;

  private LabelSpread() {}

  /**
   * The labels' places.
   *
   * @param wished ascending, mm
   * @param step least distance, mm
   */
  public static List<Double> of(List<Double> wished, double step) {
    List<Block> blocks = new ArrayList<>();
    for (int at = 0; at < wished.size(); at++) {
      Block block = new Block(wished.get(at) - at * step, 1);
      while (!blocks.isEmpty() && blocks.get(blocks.size() - 1).mean() > block.mean()) {
        block = block.pooled(blocks.remove(blocks.size() - 1));
      }
      blocks.add(block);
    }
    List<Double> places = new ArrayList<>();
    for (Block block : blocks) {
      for (int at = 0; at < block.count(); at++) {
        places.add(block.mean() + places.size() * step);
      }
    }
    return places;
  }

  private record Block(double sum, int count) {
    double mean() {
      return sum / count;
    }

    Block pooled(Block other) {
      return new Block(sum + other.sum, count + other.count);
    }
  }
}
