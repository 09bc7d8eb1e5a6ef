package plycrag.drawing.room;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Extent;
import plycrag.document.Shape;
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Hulls;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.wall.Facet;
import plycrag.wall.room.Room.Obstacle;

/**
 * What stands or hangs in the room where a section of a run shows it: a beam, a duct, a post. What
 * the middle of the run cuts is drawn as cut, with two crossing diagonals; what stands elsewhere
 * within the run's breadth as lying behind or before.
 */
final class SideObstacles {
  /** Further than anything in a room, mm. */
  private static final double FAR = 100_000;

  /** Half of what counts as the middle, mm. */
  private static final double THIN = 0.5;

  private final List<Obstacle> obstacles;
  private final FloorAxes axes;
  private final double left;
  private final double right;

  /**
   * @param run facets that stand on each other
   * @param obstacles of the room
   */
  SideObstacles(List<Facet> run, List<Obstacle> obstacles) {
    this.obstacles = obstacles;
    this.axes = run.get(0).plane().floorAxes();
    this.left = run.stream().mapToDouble(facet -> facet.plane().left()).min().orElse(0);
    this.right =
        run.stream().mapToDouble(facet -> facet.plane().left() + facet.width()).max().orElse(0);
  }

  /** Makes room for them. */
  void expand(Envelope box) {
    obstacles.stream()
        .flatMap(one -> seen(one).stream())
        .forEach(area -> box.expandToInclude(area.getEnvelopeInternal()));
  }

  /** The whole of one that lies within the run's breadth, in section. */
  private Optional<Polygon> seen(Obstacle obstacle) {
    return section(obstacle, Shapes.rectangle(left, -FAR, right, FAR));
  }

  /** What the middle of the run cuts. */
  private Optional<Polygon> cut(Obstacle obstacle) {
    double middle = (left + right) / 2;
    return section(obstacle, Shapes.rectangle(middle - THIN, -FAR, middle + THIN, FAR));
  }

  private Optional<Polygon> section(Obstacle obstacle, Polygon strip) {
    Geometry shared = Shapes.shared(plan(obstacle), strip);
    if (shared.isEmpty()) {
      return Optional.empty();
    }
    Envelope box = shared.getEnvelopeInternal();
    double low = obstacle.corner().low();
    return Optional.of(
        Shapes.rectangle(box.getMinY(), low, box.getMaxY(), low + obstacle.size().height()));
  }

  /** From above, in the axes of the run. */
  private Polygon plan(Obstacle obstacle) {
    Obstacle.Corner corner = obstacle.corner();
    Obstacle.Size size = obstacle.size();
    double far = corner.out() + size.depth();
    double end = corner.left() + size.width();
    return Hulls.around(
        Stream.of(
                new Vector3(corner.left(), corner.out(), 0),
                new Vector3(end, corner.out(), 0),
                new Vector3(end, far, 0),
                new Vector3(corner.left(), far, 0))
            .map(axes::fromRoom)
            .map(place -> new Coordinate(place.x(), place.y()))
            .toList());
  }

  /** Draws them with their names, which keep off all that is drawn before. */
  void draw(Sketch sketch, Extent extent) {
    if (obstacles.stream().allMatch(one -> seen(one).isEmpty())) {
      return;
    }
    PartMarks marks = new PartMarks(sketch);
    sketch.drawing("drawn before", extent).shapes().forEach(shape -> keepOff(shape, sketch, marks));
    for (Obstacle obstacle : obstacles) {
      Optional<Polygon> cut = cut(obstacle);
      cut.ifPresent(area -> drawCut(sketch, corners(area)));
      seen(obstacle)
          .ifPresent(
              area -> {
                if (cut.isEmpty()) {
                  sketch.closed(Layers.BEHIND, corners(area));
                }
                marks.add(obstacle.name(), Shapes.edges(cut.orElse(area)));
              });
    }
    marks.draw();
  }

  private static void drawCut(Sketch sketch, List<Xy> corners) {
    sketch.closed(Layers.PARTS, corners);
    sketch.line(Layers.CONTEXT, corners.get(0), corners.get(2));
    sketch.line(Layers.CONTEXT, corners.get(1), corners.get(3));
  }

  private static void keepOff(Shape shape, Sketch sketch, PartMarks marks) {
    if (shape instanceof Shape.Line line) {
      marks.keepOffWay(List.of(line.from(), line.to()));
    } else if (shape instanceof Shape.Path way) {
      marks.keepOffWay(way.points());
    } else if (shape instanceof Shape.Outline way) {
      marks.keepOffWay(way.vertices());
    } else if (!(shape instanceof Shape.Area)) {
      marks.keepOff(Inked.box(shape, sketch.scale()));
    }
  }

  private static List<Xy> corners(Polygon area) {
    return Stream.of(area.getExteriorRing().getCoordinates())
        .limit(4)
        .map(at -> new Xy(at.x, at.y))
        .toList();
  }
}
