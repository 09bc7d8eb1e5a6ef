package plycrag.layout.skin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;
import plycrag.wall.Sheet;

/**
 * A length divided into as few pieces of stock as will fill it, whole ones first but for the very
 * first where that is stated, a gap between neighbours. If the last would be narrower than the
 * least width, the last two share alike.
 *
 * @param spans in order
 */
public record LengthDivision(List<Span> spans) {
  /**
   * Where one piece lies, mm.
   *
   * @param low its beginning
   * @param high its end
   */
  public record Span(double low, double high) {
    double size() {
      return high - low;
    }
  }

  public LengthDivision {
    spans = List.copyOf(spans);
  }

  /**
   * The pieces between two places.
   *
   * @param stock the size of a whole one, mm
   * @param first the size of the first one, mm
   */
  static LengthDivision of(Span between, double stock, double first, Sheet sheet, Tape tape) {
    double rest = between.size() - first - sheet.seams().gap();
    if (Tolerance.atMost(between.size(), stock)) {
      return new LengthDivision(
          laid(between.low(), new double[] {between.size()}, sheet.seams().gap()));
    }
    double step = stock + sheet.seams().gap();
    int count =
        1 + Math.max(1, (int) Math.ceil((rest + sheet.seams().gap() - Tolerance.RECKONING) / step));
    double[] sizes = new double[count];
    Arrays.fill(sizes, stock);
    sizes[0] = first;
    sizes[count - 1] = rest - (count - 2) * step;
    if (sizes[count - 1] < sheet.seams().leastWidth()) {
      double both = sizes[count - 1] + sizes[count - 2];
      sizes[count - 2] = half(both, stock, sheet.seams().leastWidth(), tape);
      sizes[count - 1] = both - sizes[count - 2];
    }
    return new LengthDivision(laid(between.low(), sizes, sheet.seams().gap()));
  }

  /** The same from the other end. */
  static LengthDivision fromEnd(Span between, double stock, double first, Sheet sheet, Tape tape) {
    LengthDivision turned =
        of(new Span(-between.high(), -between.low()), stock, first, sheet, tape);
    List<Span> spans = new ArrayList<>();
    for (Span span : turned.spans()) {
      spans.add(0, new Span(-span.high() + 0.0, -span.low() + 0.0));
    }
    return new LengthDivision(spans);
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
