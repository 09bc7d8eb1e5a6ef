package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Hulls;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.Facet;
import plycrag.wall.room.Room.Obstacle;

/**
 * What a plan shows beside the wall itself: its support, obstacles, mats, and the space to fall
 * into.
 */
final class PlanSurroundings {
  /** Where words of a zone are tried, in parts of its breadth and of its depth. */
  private static final List<Double> PARTS = List.of(0.5, 0.75, 0.25, 0.9, 0.1);

  private static final double BESIDE = 0.5;

  private final Layout layout;
  private final List<Polygon> mats;

  PlanSurroundings(CheckedLayout checked) {
    this.layout = checked.layout();
    this.mats = new PlanMats(layout).areas();
  }

  /** What has to be on the drawing beside the wall. */
  Envelope box() {
    Envelope box = new Envelope();
    List<Xy> places = new ArrayList<>();
    layout.runs().forEach(run -> places.addAll(zone(run)));
    layout.standing().forEach(placed -> places.addAll(outline(placed)));
    layout.wall().room().obstacles().forEach(one -> places.addAll(outline(one)));
    kneeWall().ifPresent(places::addAll);
    places.forEach(place -> box.expandToInclude(place.x(), place.y()));
    mats.forEach(area -> box.expandToInclude(area.getEnvelopeInternal()));
    return box;
  }

  /** Tells the marks of all lines that {@link #draw} draws; those of obstacles have marks. */
  void keepOff(PartMarks marks) {
    layout.standing().forEach(placed -> marks.keepOffWay(outline(placed)));
    layout.runs().forEach(run -> marks.keepOffWay(zone(run)));
    mats.forEach(area -> marks.keepOffWay(ring(area)));
    for (Obstacle obstacle : layout.wall().room().obstacles()) {
      marks.add(obstacle.name(), edges(outline(obstacle)));
    }
    kneeWall()
        .ifPresent(
            ends ->
                marks.add(
                    "knee wall",
                    List.of(
                        Shapes.line(
                            ends.get(0).x(), ends.get(0).y(), ends.get(1).x(), ends.get(1).y()))));
  }

  /** Draws it all; names of areas are left to the marks. */
  void draw(Sketch sketch, PartMarks marks) {
    layout.standing().forEach(placed -> sketch.closed(Layers.PARTS, outline(placed)));
    for (Obstacle obstacle : layout.wall().room().obstacles()) {
      sketch.closed(Layers.PARTS, outline(obstacle));
    }
    kneeWall().ifPresent(ends -> sketch.line(Layers.PARTS, ends.get(0), ends.get(1)));
    layout.runs().forEach(run -> sketch.closed(Layers.SETBACK, zone(run)));
    layout.runs().forEach(run -> nameZone(sketch, marks, run));
    mats.forEach(area -> drawMats(sketch, marks, area));
  }

  /** The face of the low wall that rafters stand on, as long as the first wall is wide. */
  private Optional<List<Xy>> kneeWall() {
    double width = layout.wall().frontWidth();
    return layout
        .wall()
        .room()
        .ceiling()
        .kneeWall()
        .map(wall -> List.of(new Xy(0, wall.behind()), new Xy(width, wall.behind())));
  }

  private void drawMats(Sketch sketch, PartMarks marks, Polygon area) {
    sketch.closed(Layers.CONTEXT, ring(area));
    String thickness =
        layout.wall().tape().text(layout.wall().room().mat().thickness().orElseThrow());
    marks.add("mats, " + thickness, Shapes.outerEdges(area));
  }

  /**
   * In the zone where no line goes through the words, level or upright: in corners zones lie over
   * each other and walls over zones. Beside it, with whose it is, where there is no such place.
   */
  private void nameZone(Sketch sketch, PartMarks marks, List<FacetLayout> run) {
    List<Xy> zone = zone(run);
    String clear = layout.wall().tape().text(fall(run).clear());
    Optional<Shape.Label> label =
        labels("clear to fall: " + clear, zone).stream()
            .filter(one -> marks.isFree(around(one, sketch)))
            .findFirst();
    if (label.isEmpty()) {
      String whose = run.get(0).facet().name();
      marks.add("clear to fall from " + whose + ": " + clear, edges(zone));
      return;
    }
    sketch.label(label.get());
    marks.keepOff(around(label.get(), sketch));
  }

  private static Envelope around(Shape.Label label, Sketch sketch) {
    Envelope box = Inked.box(label, sketch.scale());
    box.expandBy(sketch.paper(BESIDE));
    return box;
  }

  private static List<LineString> edges(List<Xy> corners) {
    return Shapes.edges(
        Shapes.polygon(corners.stream().map(PlanSurroundings::coordinate).toList()));
  }

  private static List<Shape.Label> labels(String text, List<Xy> zone) {
    List<Shape.Label> labels = new ArrayList<>();
    for (double turn : new double[] {0, 90}) {
      for (double out : PARTS) {
        PARTS.forEach(along -> labels.add(written(text, place(zone, along, out), turn)));
      }
    }
    return labels;
  }

  private static Shape.Label written(String text, Xy place, double turn) {
    return new Shape.Label(Layers.TEXT, place, text, Sketch.SMALL, TextAnchor.MIDDLE, turn);
  }

  /** A place in a zone, part of the way along it and from the face to its end. */
  private static Xy place(List<Xy> corners, double along, double out) {
    return between(
        between(corners.get(0), corners.get(1), along),
        between(corners.get(3), corners.get(2), along),
        out);
  }

  private static Xy between(Xy one, Xy other, double part) {
    return new Xy(one.x() + part * (other.x() - one.x()), one.y() + part * (other.y() - one.y()));
  }

  private FallZone fall(List<FacetLayout> run) {
    return FallZone.of(layout, run.stream().map(FacetLayout::facet).toList());
  }

  /** The floor in front of a run's outermost edge, as wide as the run. */
  private List<Xy> zone(List<FacetLayout> run) {
    FallZone zone = fall(run);
    FloorAxes axes = run.get(0).facet().plane().floorAxes();
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    for (FacetLayout layout : run) {
      Facet facet = layout.facet();
      left = Math.min(left, facet.plane().left());
      right = Math.max(right, facet.plane().left() + facet.width());
    }
    return Stream.of(
            new Vector3(left, zone.outermost(), 0),
            new Vector3(right, zone.outermost(), 0),
            new Vector3(right, zone.end(), 0),
            new Vector3(left, zone.end(), 0))
        .map(axes::toRoom)
        .map(PlanSurroundings::at)
        .toList();
  }

  /** Seen from above the climber's way is down. */
  private static Xy at(Vector3 room) {
    return new Xy(room.x(), -room.y());
  }

  private static Coordinate coordinate(Xy place) {
    return new Coordinate(place.x(), place.y());
  }

  private static List<Xy> outline(PlacedMember placed) {
    List<Coordinate> corners = new ArrayList<>();
    Stream.concat(placed.body().near().stream(), placed.body().far().stream())
        .map(PlanSurroundings::at)
        .forEach(corner -> corners.add(coordinate(corner)));
    return ring(Hulls.around(corners));
  }

  private static List<Xy> ring(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    return Stream.of(ring).limit(ring.length - 1L).map(at -> new Xy(at.x, at.y)).toList();
  }

  private static List<Xy> outline(Obstacle obstacle) {
    double right = obstacle.corner().left() + obstacle.size().width();
    double far = obstacle.corner().out() + obstacle.size().depth();
    return List.of(
        new Xy(obstacle.corner().left(), -far),
        new Xy(right, -far),
        new Xy(right, -obstacle.corner().out()),
        new Xy(obstacle.corner().left(), -obstacle.corner().out()));
  }
}
