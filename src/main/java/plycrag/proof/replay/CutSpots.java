package plycrag.proof.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** Where tools have been, in spots along their ways, found again by cells of a grid. */
final class CutSpots {
  /** Side of a cell, mm. */
  private static final double CELL = 4;

  /** Apart along a way, in radii: between two of them the edge stays whole to a hundredth. */
  private static final double APART = 0.25;

  private final Map<Cell, List<Spot>> cells = new HashMap<>();
  private double way;
  private double due;
  private double sinceLast;
  private double widest;

  private record Cell(long column, long row) {}

  /**
   * A place of a tool's middle.
   *
   * @param way how far all tools had gone then, mm
   */
  private record Spot(double x, double y, double z, double radius, double way) {}

  /** How far all tools have gone, mm. */
  double way() {
    return way;
  }

  /**
   * Whether a way of a length must be looked at: short ones are gathered until they make a step.
   */
  boolean isDue(double length, double step) {
    due += length;
    if (due < step) {
      return false;
    }
    due = 0;
    return true;
  }

  /** The tool is lifted: what follows is looked at from its beginning. */
  void restart() {
    due = 0;
    sinceLast = Double.POSITIVE_INFINITY;
    way += CELL;
  }

  Coordinate between(CutMove cut, double part) {
    Coordinate from = cut.from().coordinate();
    Coordinate to = cut.to().coordinate();
    return new Coordinate(from.x + part * (to.x - from.x), from.y + part * (to.y - from.y));
  }

  /** Takes a cut over. */
  void add(CutMove cut, double radius) {
    double length = cut.from().coordinate().distance(cut.to().coordinate());
    double apart = APART * radius;
    widest = Math.max(widest, radius);
    if (length >= apart || cut.isPlunge()) {
      int parts = Math.max(1, (int) Math.ceil(length / apart));
      for (int part = 0; part <= parts; part++) {
        add(cut, (double) part / parts, length, radius);
      }
      sinceLast = 0;
    } else {
      sinceLast += length;
      if (sinceLast >= apart) {
        add(cut, 1, length, radius);
        sinceLast = 0;
      }
    }
    way += length;
  }

  private void add(CutMove cut, double part, double length, double radius) {
    Coordinate at = between(cut, part);
    double z = cut.from().z() + part * (cut.to().z() - cut.from().z());
    Spot spot = new Spot(at.x, at.y, z, radius, way + part * length);
    cells.computeIfAbsent(cell(at.x, at.y), unseen -> new ArrayList<>()).add(spot);
  }

  private static Cell cell(double x, double y) {
    return new Cell((long) Math.floor(x / CELL), (long) Math.floor(y / CELL));
  }

  /** Whether a place was cut down to a height before a tool had gone so far. */
  boolean cover(Coordinate place, double height, double before) {
    Cell low = cell(place.x - widest, place.y - widest);
    Cell high = cell(place.x + widest, place.y + widest);
    for (long column = low.column(); column <= high.column(); column++) {
      for (long row = low.row(); row <= high.row(); row++) {
        for (Spot spot : cells.getOrDefault(new Cell(column, row), List.of())) {
          if (spot.z() <= height && spot.way() <= before && isWithin(spot, place)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean isWithin(Spot spot, Coordinate place) {
    double dx = spot.x() - place.x;
    double dy = spot.y() - place.y;
    return dx * dx + dy * dy <= spot.radius() * spot.radius();
  }
}
