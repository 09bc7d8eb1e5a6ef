package plycrag.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.params.FrameParameters;
import plycrag.units.Tape;

/**
 * The rows of blocking of a facet: where an edge or a seam asks for backing and, if a greatest
 * spacing is stated, as few more, evenly between those and the plates, on the marking grid.
 *
 * @param rows from the bottom
 */
record BlockingRows(List<Row> rows) {

  /**
   * A row of blocking.
   *
   * @param backing where it lies up the slope
   * @param left where it begins, mm
   * @param right where it ends, mm
   */
  record Row(Backing backing, double left, double right) {
    /** Whether nothing keeps it where it is. */
    boolean isFree() {
      return backing.hold() == Hold.FREE;
    }
  }

  BlockingRows {
    rows = List.copyOf(rows);
  }

  /**
   * The rows of a facet.
   *
   * @param asked by edges and seams
   * @param plates the middles of the bottom plate and of the top plate, mm
   * @param across the whole width
   */
  static BlockingRows of(
      List<Row> asked, Course.Span plates, Course.Span across, FrameParameters frame, Tape tape) {
    List<Row> rows = new ArrayList<>(asked);
    frame
        .blockingSpacing()
        .ifPresent(
            most ->
                between(asked, plates, frame, tape, most)
                    .forEach(one -> rows.add(new Row(one, across.low(), across.high()))));
    return sorted(rows);
  }

  /** The same with the free rows elsewhere. */
  BlockingRows withFree(List<Double> middles, Course.Span across, FrameParameters frame) {
    List<Row> moved = new ArrayList<>(rows);
    moved.removeIf(Row::isFree);
    for (double middle : middles) {
      moved.add(new Row(free(middle, frame), across.low(), across.high()));
    }
    return sorted(moved);
  }

  private static BlockingRows sorted(List<Row> rows) {
    rows.sort(
        Comparator.comparingDouble((Row row) -> row.backing().low())
            .thenComparingDouble(Row::left));
    return new BlockingRows(rows);
  }

  private static Backing free(double middle, FrameParameters frame) {
    return Backing.from(middle - frame.breadth() / 2, frame, Hold.FREE);
  }

  private static List<Backing> between(
      List<Row> asked, Course.Span plates, FrameParameters frame, Tape tape, double most) {
    List<Double> fixed = new ArrayList<>();
    fixed.add(plates.low());
    asked.stream().map(row -> row.backing().middle()).sorted().distinct().forEach(fixed::add);
    fixed.add(plates.high());
    List<Backing> rows = new ArrayList<>();
    for (int next = 1; next < fixed.size(); next++) {
      double from = fixed.get(next - 1);
      double to = fixed.get(next);
      for (double middle : new EvenSpacing(from, to, most, tape).middles(from, to)) {
        rows.add(free(middle, frame));
      }
    }
    return rows;
  }
}
