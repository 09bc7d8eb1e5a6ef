package plycrag.layout.skin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.wall.Sheet;
import plycrag.wall.Sheet.Bond;
import plycrag.wall.Sheet.Lay;
import plycrag.wall.Sheet.Start;
import plycrag.wall.Wall;

/** Rows of sheets that fill a box, side by side along the sheets' long side. */
final class SheetRows {
  private final Axis along;
  private final LengthDivision rows;
  private final List<LengthDivision> courses;
  private final double gap;
  private final Bond bond;

  /**
   * @param along which way the sheets' long side runs
   * @param rows beside each other, across that way
   * @param courses the pieces of each row
   * @param gap between neighbouring pieces, mm
   * @param bond how the seams of neighbouring rows stand to each other
   */
  SheetRows(Axis along, LengthDivision rows, List<LengthDivision> courses, double gap, Bond bond) {
    this.along = along;
    this.rows = rows;
    this.courses = List.copyOf(courses);
    this.gap = gap;
    this.bond = bond;
  }

  static SheetRows of(Envelope box, SeamPlaces places, Wall wall, Lay lay, Start start) {
    Sheet sheet = wall.sheet();
    Axis along = lay == Lay.ACROSS ? Axis.ACROSS : Axis.UP;
    boolean alongFromLow = along == Axis.ACROSS ? start.isLeft() : start.isLower();
    boolean beside = along == Axis.ACROSS ? start.isLower() : start.isLeft();
    Coursed coursed = new Coursed(places, box, wall);
    LengthDivision rows = coursed.along(along.other(), sheet.width(), sheet.width(), beside);
    List<LengthDivision> courses = new ArrayList<>();
    for (int row = 0; row < rows.spans().size(); row++) {
      int fromStart = beside ? row : rows.spans().size() - 1 - row;
      boolean moved = sheet.laying().bond() == Bond.STAGGERED && fromStart % 2 == 1;
      double first = moved ? wall.tape().snap(sheet.length() / 2) : sheet.length();
      courses.add(coursed.along(along, sheet.length(), first, alongFromLow));
    }
    return new SheetRows(along, rows, courses, sheet.seams().gap(), sheet.laying().bond());
  }

  /** Makes courses across a box. */
  private record Coursed(SeamPlaces places, Envelope box, Wall wall) {
    /**
     * Pieces side by side.
     *
     * @param axis along which they follow each other
     * @param stock the size of a whole one, mm
     * @param first the size of the first one, mm
     * @param fromLow whether that is the lower or left one
     */
    LengthDivision along(Axis axis, double stock, double first, boolean fromLow) {
      Sheet sheet = wall.sheet();
      LengthDivision.Span span = new LengthDivision.Span(axis.low(box), axis.high(box));
      return places.clearest(
          axis.other(),
          first,
          size ->
              fromLow
                  ? LengthDivision.of(span, stock, size, sheet, wall.tape())
                  : LengthDivision.fromEnd(span, stock, size, sheet, wall.tape()));
    }
  }

  /** Where pieces may lie, from the floor up, left to right. */
  List<Envelope> cells() {
    List<Envelope> cells = new ArrayList<>();
    for (int row = 0; row < courses.size(); row++) {
      for (LengthDivision.Span span : courses.get(row).spans()) {
        cells.add(cell(span, rows.spans().get(row)));
      }
    }
    cells.sort(
        Comparator.comparingDouble((Envelope cell) -> cell.getMinY())
            .thenComparingDouble(Envelope::getMinX));
    return cells;
  }

  private Envelope cell(LengthDivision.Span span, LengthDivision.Span row) {
    return along == Axis.ACROSS
        ? new Envelope(span.low(), span.high(), row.low(), row.high())
        : new Envelope(row.low(), row.high(), span.low(), span.high());
  }

  /**
   * The seams, those that run up first, each kind in order.
   *
   * @param box what they run through if they run all the way
   */
  List<Seam> seams(Envelope box) {
    List<Seam> seams = new ArrayList<>();
    for (double joint : rows.joints()) {
      seams.add(new Seam(along, joint, gap, along.low(box), along.high(box)));
    }
    Axis across = along.other();
    if (bond == Bond.ALIGNED) {
      for (double joint : courses.get(0).joints()) {
        seams.add(new Seam(across, joint, gap, across.low(box), across.high(box)));
      }
    } else {
      for (int row = 0; row < courses.size(); row++) {
        LengthDivision.Span span = rows.spans().get(row);
        double low = Math.max(span.low(), across.low(box));
        double high = Math.min(span.high(), across.high(box));
        courses.get(row).joints().forEach(at -> seams.add(new Seam(across, at, gap, low, high)));
      }
    }
    seams.sort(
        Comparator.comparing((Seam seam) -> seam.axis() == Axis.ACROSS)
            .thenComparingDouble(Seam::middle)
            .thenComparingDouble(Seam::low));
    return seams;
  }
}
