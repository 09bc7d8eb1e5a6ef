package plycrag.solve.scatter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/** Scatters centres over an area. The package's page tells how. */
public final class Scatter {
  /** Darts thrown for each cell left, at each size: most of what is free gets a random centre. */
  private static final int DARTS = 2;

  private final Geometry area;
  private final Spread spread;
  private final PointOnGeometryLocator locator;
  private final Centres centres;
  private final SplittableRandom random;

  private Scatter(Geometry area, Spread spread) {
    this.area = area;
    this.spread = spread;
    locator = new IndexedPointInAreaLocator(area);
    random = new SplittableRandom(spread.seed());
    centres = new Centres(spread.fade(), area.getEnvelopeInternal());
  }

  /**
   * Centres from the bottom up, in each row from the left.
   *
   * @param area where they may lie, its boundary included: polygons with or without holes
   */
  public static List<Point> over(Geometry area, Spread spread) {
    return area.isEmpty() ? List.of() : new Scatter(area, spread).centres();
  }

  private List<Point> centres() {
    List<GridSquare> cells = firstCells();
    while (!cells.isEmpty()) {
      throwDarts(cells);
      cells = cells.get(0).size() == 1 ? List.of() : quarters(cells);
    }
    return centres.all().stream()
        .sorted(Comparator.comparingDouble(Coordinate::getY).thenComparingDouble(Coordinate::getX))
        .map(place -> Shapes.point(place.x, place.y))
        .toList();
  }

  /** One cell around the whole area, quartered until the cells are smaller than the distance. */
  private List<GridSquare> firstCells() {
    Envelope box = area.getEnvelopeInternal();
    int column = (int) Math.floor(box.getMinX() / spread.step());
    int row = (int) Math.floor(box.getMinY() / spread.step());
    double extent = Math.max(box.getWidth(), box.getHeight()) / spread.step();
    int size = Math.max(1, Integer.highestOneBit((int) extent + 1) * 2);
    List<GridSquare> cells = List.of(new GridSquare(column, row, size, Region.of(area)));
    double most = spread.fade().least() / spread.step() / 2;
    while (!cells.isEmpty() && cells.get(0).size() > Math.max(1, most)) {
      cells = quarters(cells);
    }
    return cells;
  }

  /** The quarters of cells in which a centre may still find room. */
  private List<GridSquare> quarters(List<GridSquare> cells) {
    List<GridSquare> quarters = new ArrayList<>();
    for (GridSquare cell : cells) {
      int half = cell.size() / 2;
      for (int quarter = 0; quarter < 4; quarter++) {
        int column = cell.column() + quarter % 2 * half;
        int row = cell.row() + quarter / 2 * half;
        Region region = cell.region().within(box(column, row, half));
        GridSquare one = new GridSquare(column, row, half, region);
        if (mayHaveRoom(one)) {
          quarters.add(one);
        }
      }
    }
    return quarters;
  }

  private boolean mayHaveRoom(GridSquare cell) {
    Envelope box = box(cell.column(), cell.row(), cell.size());
    boolean isOutside = cell.region().isUniform() && !isInside(place(cell.column(), cell.row()));
    return !isOutside && !isBesideMirror(box) && !centres.cover(box);
  }

  private Envelope box(int column, int row, int size) {
    double step = spread.step();
    Envelope box =
        new Envelope(
            column * step, (column + size - 1) * step, row * step, (row + size - 1) * step);
    box.expandBy(Tolerance.GRID);
    return box;
  }

  /** Whether a box is right of the mirror, or so near to it that its places crowd their images. */
  private boolean isBesideMirror(Envelope box) {
    if (spread.mirror().isEmpty()) {
      return false;
    }
    double mirror = spread.mirror().getAsDouble();
    double own = Math.min(spread.fade().at(box.getMinY()), spread.fade().at(box.getMaxY()));
    boolean isShort = 2 * (mirror - box.getMinX()) < own - Tolerance.GRID;
    return box.getMinX() > mirror + Tolerance.GRID
        || (box.getMaxX() < mirror - Tolerance.GRID && isShort);
  }

  /** Random places of random cells; of cells that are single places each one, in random order. */
  private void throwDarts(List<GridSquare> cells) {
    if (cells.get(0).size() == 1) {
      shuffled(cells).forEach(cell -> offer(place(cell.column(), cell.row())));
      return;
    }
    for (long dart = (long) DARTS * cells.size(); dart > 0; dart--) {
      GridSquare cell = cells.get(random.nextInt(cells.size()));
      int column = cell.column() + random.nextInt(cell.size());
      offer(place(column, cell.row() + random.nextInt(cell.size())));
    }
  }

  private List<GridSquare> shuffled(List<GridSquare> cells) {
    List<GridSquare> shuffled = new ArrayList<>(cells);
    for (int at = shuffled.size() - 1; at > 0; at--) {
      Collections.swap(shuffled, at, random.nextInt(at + 1));
    }
    return shuffled;
  }

  private Coordinate place(int column, int row) {
    return new Coordinate(
        Shapes.onGrid(column * spread.step()), Shapes.onGrid(row * spread.step()));
  }

  /** Takes a place, and its image if there is a mirror, if there is room for both. */
  private void offer(Coordinate place) {
    if (!hasRoom(place)) {
      return;
    }
    if (spread.mirror().isEmpty()) {
      centres.add(place);
      return;
    }
    double across = Shapes.onGrid(2 * spread.mirror().getAsDouble() - place.x);
    Coordinate image = new Coordinate(across, place.y);
    if (image.equals2D(place)) {
      centres.add(place);
    } else if (hasRoom(image) && across - place.x >= spread.fade().at(place.y)) {
      centres.add(place);
      centres.add(image);
    }
  }

  private boolean hasRoom(Coordinate place) {
    return isInside(place) && !centres.crowd(place);
  }

  private boolean isInside(Coordinate place) {
    return locator.locate(place) != Location.EXTERIOR;
  }
}
