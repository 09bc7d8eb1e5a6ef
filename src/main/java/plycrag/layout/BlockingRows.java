package plycrag.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.layout.Framing.Backing;
import plycrag.params.FrameParameters;
import plycrag.units.Tape;

/**
 * The rows of blocking of a facet: where an edge or a seam asks for backing and, if a greatest
 * spacing is stated, as few more, evenly between those and the plates, on the marking grid.
 *
 * @param rows from the bottom
 */
record BlockingRows(List<Backing> rows) {
  BlockingRows {
    rows = List.copyOf(rows);
  }

  /**
   * The rows of a facet.
   *
   * @param asked by edges and seams
   * @param plates the middles of the bottom plate and of the top plate, mm
   */
  static BlockingRows of(
      List<Backing> asked, Course.Span plates, FrameParameters frame, Tape tape) {
    List<Backing> rows = new ArrayList<>(asked);
    frame
        .blockingSpacing()
        .ifPresent(most -> rows.addAll(between(asked, plates, frame, tape, most)));
    rows.sort(Comparator.comparingDouble(Backing::low));
    return new BlockingRows(rows);
  }

  private static List<Backing> between(
      List<Backing> asked, Course.Span plates, FrameParameters frame, Tape tape, double most) {
    List<Double> fixed = new ArrayList<>();
    fixed.add(plates.low());
    asked.stream().map(row -> (row.low() + row.high()) / 2).sorted().forEach(fixed::add);
    fixed.add(plates.high());
    List<Backing> rows = new ArrayList<>();
    for (int next = 1; next < fixed.size(); next++) {
      double from = fixed.get(next - 1);
      double to = fixed.get(next);
      for (double middle : new EvenSpacing(from, to, most, tape).middles(from, to)) {
        double low = middle - frame.breadth() / 2;
        rows.add(new Backing(low, low + frame.breadth(), frame.depth(), Hold.FREE));
      }
    }
    return rows;
  }
}
