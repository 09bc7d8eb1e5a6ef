package plycrag.proof.replay;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * What the programs of one face of a sheet are to make together, as it lies on the machine.
 *
 * @param holes each made once
 * @param contours each cut all round; without any, nothing may be cut sideways but holes and marks
 * @param marks each engraved
 * @param sheet whose edges need no cut where contours lie on them
 */
public record Expected(List<Hole> holes, List<Contour> contours, List<Mark> marks, Envelope sheet) {
  /** Copies the lists and the box. */
  public Expected {
    holes = List.copyOf(holes);
    contours = List.copyOf(contours);
    marks = List.copyOf(marks);
    sheet = sheet.copy();
  }

  /** Whether a place lies on an edge of the sheet. */
  boolean isOnEdge(Coordinate place, double tolerance) {
    Envelope inner = sheet.copy();
    inner.expandBy(-tolerance);
    Envelope outer = sheet.copy();
    outer.expandBy(tolerance);
    return outer.contains(place) && !inner.contains(place);
  }

  /**
   * A hole.
   *
   * @param mark for faults
   * @param x of its centre, mm from the programs' zero
   * @param y likewise
   * @param diameter mm
   * @param bottom Z of its bottom, breakthrough counted, mm
   */
  public record Hole(String mark, double x, double y, double diameter, double bottom) {}

  /**
   * The outline of a piece or of an opening.
   *
   * @param mark for faults
   * @param area within the outline; only its outer ring counts
   * @param keeps whether the piece lies within it, else the opening
   * @param bottom Z to which the last pass goes: below the sheet, or to the skin that is left, mm
   * @param bridges what is left standing between piece and waste
   * @param keptOn on which side of the tool's way lies what is kept; empty where either will do
   */
  public record Contour(
      String mark,
      Polygon area,
      boolean keeps,
      double bottom,
      Optional<Bridges> bridges,
      Optional<Side> keptOn) {
    /** A contour that may be cut either way round. */
    public Contour(
        String mark, Polygon area, boolean keeps, double bottom, Optional<Bridges> bridges) {
      this(mark, area, keeps, bottom, bridges, Optional.empty());
    }
  }

  /** A side of a way, seen along it. */
  public enum Side {
    /** Against the clock from it. */
    LEFT,
    /** With the clock from it. */
    RIGHT
  }

  /**
   * Letters in the face of a piece.
   *
   * @param mark for faults
   * @param box around them: they reach its upper and its lower edge, and go nowhere beyond
   * @param bottom Z to which they are cut, mm
   * @param strokes that make them, in any order; empty where they are not held against any
   */
  public record Mark(String mark, Envelope box, double bottom, List<List<Coordinate>> strokes) {
    /** Copies the box and the list. */
    public Mark {
      box = box.copy();
      strokes = strokes.stream().map(List::copyOf).toList();
    }

    /** Letters that may say anything. */
    public Mark(String mark, Envelope box, double bottom) {
      this(mark, box, bottom, List.of());
    }
  }

  /**
   * Short stretches that are left standing.
   *
   * @param least how many at least, each as long and as high as told
   * @param count how many at most
   * @param length along the outline, over which the tool's centre may stay above the bottom, mm
   * @param top Z that the tool does not stay above there, mm
   * @param slope along the outline, over which it may come down after each, mm
   */
  public record Bridges(int least, int count, double length, double top, double slope) {
    /** Bridges that may all be missing. */
    public Bridges(int count, double length, double top) {
      this(0, count, length, top, 0);
    }
  }
}
