package plycrag.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plycrag.geometry.Shapes;
import plycrag.params.SheetParameters;
import plycrag.units.Tape;

/**
 * A length divided into as few pieces of stock as will fill it, whole ones first, a gap between
 * neighbours. If the last would be narrower than the least width, the last two share alike.
 *
 * @param spans in order
 */
record Course(List<Span> spans) {
  private static final double TOLERANCE = 1e-6;

  /**
   * Where one piece lies, mm.
   *
   * @param low its beginning
   * @param high its end
   */
  record Span(double low, double high) {
    double size() {
      return high - low;
    }
  }

  Course {
    spans = List.copyOf(spans);
  }

  static Course of(double low, double high, double stock, SheetParameters sheet, Tape tape) {
    double total = high - low;
    double step = stock + sheet.seamGap();
    int count = Math.max(1, (int) Math.ceil((total + sheet.seamGap() - TOLERANCE) / step));
    double[] sizes = new double[count];
    Arrays.fill(sizes, stock);
    sizes[count - 1] = total - (count - 1) * step;
    if (count > 1 && sizes[count - 1] < sheet.leastWidth()) {
      double both = sizes[count - 1] + stock;
      sizes[count - 2] = half(both, stock, sheet.leastWidth(), tape);
      sizes[count - 1] = both - sizes[count - 2];
    }
    return new Course(laid(low, sizes, sheet.seamGap()));
  }

  /** Half of two pieces: on the marking grid, unless one would be too wide or too narrow for it. */
  private static double half(double both, double stock, double least, Tape tape) {
    double marked = tape.snapUp(both / 2);
    boolean tooNarrow = both - marked < least && both / 2 >= least;
    return marked > stock || tooNarrow ? both / 2 : marked;
  }

  /** The middles of the gaps, mm. */
  List<Double> joints() {
    List<Double> joints = new ArrayList<>();
    for (int next = 1; next < spans.size(); next++) {
      joints.add((spans.get(next - 1).high() + spans.get(next).low()) / 2);
    }
    return joints;
  }

  private static List<Span> laid(double start, double[] sizes, double gap) {
    List<Span> spans = new ArrayList<>();
    double low = start;
    for (double size : sizes) {
      spans.add(new Span(Shapes.onGrid(low), Shapes.onGrid(low + size)));
      low += size + gap;
    }
    return spans;
  }
}
