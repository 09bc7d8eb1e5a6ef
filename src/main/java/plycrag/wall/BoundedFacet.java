package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Corner.Part;

/** A facet that has its boundary, and learns where it meets others. */
final class BoundedFacet {
  private final GivenFacet given;
  private final FacetPlane plane;

  /** How far right of where the plane's u begins its leftmost place lies, mm. */
  private final double left;

  private final Polygon boundary;
  private final List<Fold> folds = new ArrayList<>();

  /**
   * @param run its wall
   * @param level its number in it
   * @param area in (u, v) of its plane
   */
  BoundedFacet(Run run, int level, Polygon area) {
    this.given = run.given().get(level);
    this.plane = run.planes().get(level);
    this.left = area.getEnvelopeInternal().getMinX();
    this.boundary = moved(area, -left);
  }

  private static Polygon moved(Polygon area, double across) {
    List<Coordinate> corners = new ArrayList<>();
    for (Coordinate corner : area.getExteriorRing().getCoordinates()) {
      corners.add(new Coordinate(corner.x + across, corner.y));
    }
    return across == 0 ? area : Shapes.polygon(corners.subList(0, corners.size() - 1));
  }

  /** Whether an area has an edge that lies level at a height. */
  static boolean hasLevelEdge(Polygon area, double height) {
    return Shapes.outerEdges(area).stream().anyMatch(edge -> isLevelAt(edge, height));
  }

  private static boolean isLevelAt(LineString edge, double height) {
    return Math.abs(edge.getCoordinateN(0).y - height) < Tolerance.TOUCH
        && Math.abs(edge.getCoordinateN(1).y - height) < Tolerance.TOUCH;
  }

  /**
   * Both learn that this one stands on another, wherever level edges of both lie on each other; on
   * the first ones if none do, which a rule forbids.
   */
  void standOn(BoundedFacet lower) {
    List<Touching> feet = level(0);
    List<Touching> tops = lower.level(lower.given.length());
    boolean apart = true;
    for (Touching foot : feet) {
      for (Touching top : tops) {
        if (foot.shared(top) > Tolerance.TOUCH) {
          learnLevel(foot, lower, top);
          apart = false;
        }
      }
    }
    if (apart) {
      learnLevel(feet.get(0), lower, tops.get(0));
    }
  }

  private double turn(BoundedFacet lower) {
    return given.angle() - lower.given.angle();
  }

  private void learnLevel(Touching foot, BoundedFacet lower, Touching top) {
    double length = Math.max(0, foot.shared(top));
    double turn = turn(lower);
    learn(new Fold(foot.side(), turn, lower.given.name(), Fold.Place.BELOW, length));
    lower.learn(new Fold(top.side(), turn, given.name(), Fold.Place.ABOVE, length));
  }

  /** The edges that lie level at a height, with their places along the run. */
  private List<Touching> level(double height) {
    List<LineString> edges = Shapes.outerEdges(boundary);
    double from = plane.left() + left;
    return IntStream.range(0, edges.size())
        .filter(at -> isLevelAt(edges.get(at), height))
        .mapToObj(
            at -> {
              Envelope box = edges.get(at).getEnvelopeInternal();
              return new Touching(at, from + box.getMinX(), from + box.getMaxX());
            })
        .toList();
  }

  /**
   * Both learn that they meet, wherever edges of both lie on the same part of their corner.
   *
   * @param right the facet on this one's right
   * @param here the part on this one
   * @param there the same part on the other
   * @param turn by how much the faces are turned toward each other, degrees
   */
  void meet(BoundedFacet right, Part here, Part there, double turn) {
    for (Touching one : touching(here)) {
      for (Touching other : right.touching(there)) {
        double length = one.shared(other);
        if (length > Tolerance.TOUCH) {
          learn(new Fold(one.side(), turn, right.given.name(), Fold.Place.RIGHT, length));
          right.learn(new Fold(other.side(), turn, given.name(), Fold.Place.LEFT, length));
        }
      }
    }
  }

  private void learn(Fold fold) {
    folds.add(fold);
  }

  /**
   * An edge on a line at which facets meet.
   *
   * @param side the edge's number
   * @param low where it begins, mm along the line
   * @param high where it ends
   */
  private record Touching(int side, double low, double high) {
    /** Along how much of the line both lie, mm; below zero if apart. */
    double shared(Touching other) {
      return Math.min(high, other.high) - Math.max(low, other.low);
    }
  }

  private List<Touching> touching(Part part) {
    LineSegment line = new LineSegment(onBoundary(part.low()), onBoundary(part.high()));
    List<Touching> touching = new ArrayList<>();
    List<LineString> edges = Shapes.outerEdges(boundary);
    for (int side = 0; side < edges.size(); side++) {
      Coordinate from = edges.get(side).getCoordinateN(0);
      Coordinate to = edges.get(side).getCoordinateN(1);
      if (line.distancePerpendicular(from) < Tolerance.TOUCH
          && line.distancePerpendicular(to) < Tolerance.TOUCH) {
        double one = line.projectionFactor(from) * line.getLength();
        double two = line.projectionFactor(to) * line.getLength();
        touching.add(new Touching(side, Math.min(one, two), Math.max(one, two)));
      }
    }
    return touching;
  }

  private Coordinate onBoundary(Coordinate onPlane) {
    return new Coordinate(onPlane.x - left, onPlane.y);
  }

  /** The facet, once it has learned whom it meets. */
  Facet facet(List<GivenCutout> cutouts) {
    return new Facet(
        given.name(),
        given.angle(),
        boundary,
        cutouts.stream()
            .filter(cutout -> cutout.facet().equals(given.name()))
            .map(
                cutout ->
                    new Cutout(cutout.name(), FacetShapes.polygon(cutout.shape()), cutout.filled()))
            .toList(),
        folds,
        new FacetPlane(
            plane.angle(), plane.left() + left, plane.out(), plane.raise(), plane.floorAxes()),
        given.told());
  }
}
