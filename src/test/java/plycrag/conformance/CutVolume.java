package plycrag.conformance;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * What a program takes out of a sheet, by LinuxCNC's canonical moves: how low every cell of a grid
 * is cut. The order of cuts does not show, nor what is cut twice. A move that cuts or hurries where
 * it must not, with a standing spindle or as a rapid through wood, is counted apart.
 */
final class CutVolume {
  /** Side of a cell, mm. */
  static final double CELL = 0.25;

  /** Heights that differ by less are the same, mm. */
  private static final double DEEP = 0.1;

  /** So many steps of half a circle's 720 stand off it by a hundredth of its radius at most. */
  private static final int STEPS = 16;

  private static final Pattern EVENT =
      Pattern.compile(
          "(STRAIGHT_FEED|STRAIGHT_TRAVERSE|ARC_FEED)\\(([^)]*)\\)"
              + "|(START_SPINDLE_CLOCKWISE|STOP_SPINDLE_TURNING)");

  private final Envelope area;
  private final double top;
  private final int columns;
  private final int rows;
  private final float[] heights;
  private boolean turning;
  private boolean spoilt;

  private CutVolume(Envelope area, double top) {
    this.area = area;
    this.top = top;
    this.columns = (int) Math.ceil(area.getWidth() / CELL);
    this.rows = (int) Math.ceil(area.getHeight() / CELL);
    this.heights = new float[columns * rows];
    Arrays.fill(heights, (float) top);
  }

  /**
   * Plays the moves.
   *
   * @param moves what the interpreter told
   * @param area that is looked at; what is cut beyond it spoils the sheet
   * @param top of the sheet, Z, mm
   * @param radius of the tool, mm
   */
  static CutVolume of(String moves, Envelope area, double top, double radius) {
    CutVolume volume = new CutVolume(area, top);
    Coordinate at = null;
    Matcher event = EVENT.matcher(moves);
    while (event.find()) {
      if (event.group(1) == null) {
        volume.turning = event.group(3).startsWith("START");
      } else {
        at = volume.move(at, event.group(1), CutPath.numbers(event.group(2), 1), radius);
      }
    }
    return volume;
  }

  /** The box around all that is cut. */
  static Envelope area(String moves, double beyond) {
    Envelope area = new Envelope();
    Matcher event = EVENT.matcher(moves);
    while (event.find()) {
      if (event.group(1) != null && !event.group(1).equals("STRAIGHT_TRAVERSE")) {
        List<Double> to = CutPath.numbers(event.group(2), 1);
        area.expandToInclude(to.get(0), to.get(1));
      }
    }
    area.expandBy(beyond);
    return area;
  }

  private Coordinate move(Coordinate from, String kind, List<Double> to, double radius) {
    Coordinate end = new Coordinate(to.get(0), to.get(1), to.get(kind.startsWith("ARC") ? 5 : 2));
    if (kind.equals("STRAIGHT_TRAVERSE")) {
      spoilt |= from == null ? end.z < top : isInWood(from, end, radius - CELL);
      return end;
    }
    spoilt |= !turning || from == null;
    if (from != null) {
      Coordinate at = from;
      for (Coordinate next : kind.startsWith("ARC") ? spots(from, to) : List.of(end)) {
        cut(at, next, radius);
        at = next;
      }
    }
    return end;
  }

  /** Of an arc, each so many steps of it a place, the last among them. */
  private static List<Coordinate> spots(Coordinate from, List<Double> to) {
    List<Coordinate> all = CutPath.arc(from, to, 1);
    return IntStream.range(0, all.size())
        .filter(at -> (all.size() - 1 - at) % STEPS == 0)
        .mapToObj(all::get)
        .toList();
  }

  private void cut(Coordinate from, Coordinate to, double radius) {
    spoilt |= Math.min(from.z, to.z) < top && !area.contains(new Envelope(from, to));
    sweep(
        from,
        to,
        radius,
        (cell, z) -> {
          heights[cell] = Math.min(heights[cell], (float) z);
          return false;
        });
  }

  private boolean isInWood(Coordinate from, Coordinate to, double radius) {
    return Math.min(from.z, to.z) < top
        && (!area.contains(new Envelope(from, to))
            || sweep(from, to, radius, (cell, z) -> z < heights[cell] - DEEP));
  }

  private interface Touch {
    /** Whether that is all that is to be known. */
    boolean at(int cell, double z);
  }

  /** Every cell over which a straight move passes, with the lowest that the tool is there. */
  private boolean sweep(Coordinate from, Coordinate to, double radius, Touch touch) {
    Envelope box = new Envelope(from, to);
    box.expandBy(radius);
    Envelope inside = box.intersection(area);
    if (inside.isNull() || Math.min(from.z, to.z) >= top) {
      return false;
    }
    int right = column(inside.getMaxX());
    int high = row(inside.getMaxY());
    for (int row = row(inside.getMinY()); row <= high; row++) {
      for (int column = column(inside.getMinX()); column <= right; column++) {
        double z = lowest(from, to, radius, column, row);
        if (z < top && touch.at(row * columns + column, z)) {
          return true;
        }
      }
    }
    return false;
  }

  private int column(double x) {
    return Math.min(columns - 1, (int) ((x - area.getMinX()) / CELL));
  }

  private int row(double y) {
    return Math.min(rows - 1, (int) ((y - area.getMinY()) / CELL));
  }

  /** How low the tool is while it stands over a cell's middle; as high as can be if it never is. */
  private double lowest(Coordinate from, Coordinate to, double radius, int column, int row) {
    double dx = to.x - from.x;
    double dy = to.y - from.y;
    double x = area.getMinX() + (column + 0.5) * CELL - from.x;
    double y = area.getMinY() + (row + 0.5) * CELL - from.y;
    double square = dx * dx + dy * dy;
    double middle = square > 0 ? (x * dx + y * dy) / square : 0;
    double offX = x - middle * dx;
    double offY = y - middle * dy;
    double left = radius * radius - offX * offX - offY * offY;
    if (left < 0) {
      return Double.POSITIVE_INFINITY;
    }
    double half = square > 0 ? Math.sqrt(left / square) : 1;
    double begin = Math.max(0, middle - half);
    double end = Math.min(1, middle + half);
    return begin > end
        ? Double.POSITIVE_INFINITY
        : from.z + (to.z < from.z ? end : begin) * (to.z - from.z);
  }

  /** Whether the moves went where they must not. */
  boolean isSpoilt() {
    return spoilt;
  }

  /** Whether another leaves the same, by a cell and a tenth of a millimetre. */
  boolean leavesWhat(CutVolume other) {
    return isWithin(other) && other.isWithin(this);
  }

  private boolean isWithin(CutVolume other) {
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        float height = heights[row * columns + column];
        if (Math.abs(height - other.heights[row * columns + column]) > DEEP
            && !other.hasBeside(column, row, height)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean hasBeside(int column, int row, float height) {
    for (int up = Math.max(0, row - 1); up <= Math.min(rows - 1, row + 1); up++) {
      for (int on = Math.max(0, column - 1); on <= Math.min(columns - 1, column + 1); on++) {
        if (Math.abs(heights[up * columns + on] - height) <= DEEP) {
          return true;
        }
      }
    }
    return false;
  }
}
