package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.LengthDivision;
import plycrag.units.Tape;
import plycrag.wall.Frame;

/**
 * The rows of blocking of a facet: where an edge or a seam asks for backing and, if a greatest
 * spacing is stated, as few more, evenly between those and the plates, on the marking grid.
 *
 * @param rows from the bottom
 */
public record BlockingRows(List<Row> rows) {

  /**
   * A row of blocking.
   *
   * @param backing where it lies up the slope
   * @param left where it begins, mm
   * @param right where it ends, mm
   */
  public record Row(Backing backing, double left, double right) {
    /** Whether nothing keeps it where it is. */
    public boolean isFree() {
      return backing.fixity() == Fixity.FREE;
    }
  }

  public BlockingRows {
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
      List<Row> asked,
      LengthDivision.Span plates,
      LengthDivision.Span across,
      Frame frame,
      Tape tape) {
    List<Row> rows = new ArrayList<>(asked);
    frame
        .blockingSpacing()
        .ifPresent(
            most ->
                between(asked, plates, frame, tape, most)
                    .forEach(one -> rows.add(new Row(one, across.low(), across.high()))));
    return sorted(rows);
  }

  /**
   * Where studs may be spliced in front of them, from below, mm: between two rows that touch, which
   * back the two sides of a seam, and on the middles of the others. So no piece ends a little
   * beyond a splice, where its screws would stand at the stud's end.
   */
  List<Double> splices() {
    List<Backing> backings = rows.stream().map(Row::backing).distinct().toList();
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < backings.size(); at++) {
      boolean touches =
          at + 1 < backings.size()
              && Math.abs(backings.get(at + 1).low() - backings.get(at).high()) < Tolerance.TOUCH;
      places.add(touches ? backings.get(at).high() : backings.get(at).middle());
      at += touches ? 1 : 0;
    }
    return places;
  }

  /** The same with the free rows elsewhere. */
  BlockingRows withFree(List<Double> middles, LengthDivision.Span across, Frame frame) {
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

  private static Backing free(double middle, Frame frame) {
    return Backing.from(middle - frame.breadth() / 2, frame, Fixity.FREE);
  }

  private static List<Backing> between(
      List<Row> asked, LengthDivision.Span plates, Frame frame, Tape tape, double most) {
    List<Double> fixed = new ArrayList<>();
    fixed.add(plates.low());
    asked.stream().map(row -> row.backing().middle()).sorted().distinct().forEach(fixed::add);
    fixed.add(plates.high());
    List<Backing> rows = new ArrayList<>();
    for (int next = 1; next < fixed.size(); next++) {
      double from = fixed.get(next - 1);
      double to = fixed.get(next);
      for (double middle : new EvenSpacing(from, to, most, tape, false).middles(from, to)) {
        rows.add(free(middle, frame));
      }
    }
    return rows;
  }
}
