package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.support.PlacedMember;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.room.Room.Obstacle;

/**
 * What a plan shows beside the wall itself: its support, obstacles, mats, and the space to fall
 * into.
 */
final class PlanSurroundings {
  /** Where words of a zone are tried, in parts of its breadth and of its depth. */
  private static final List<Double> PARTS = List.of(0.5, 0.75, 0.25, 0.9, 0.1);

  private final Layout layout;
  private final List<Polygon> mats;
  private final List<Envelope> words = new ArrayList<>();

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

  /** Draws it all; names are left to the marks. */
  void draw(Sketch sketch, PartMarks marks) {
    for (PlacedMember placed : layout.standing()) {
      sketch.closed(Layers.PARTS, outline(placed));
      marks.keepOffWay(outline(placed));
    }
    for (Obstacle obstacle : layout.wall().room().obstacles()) {
      List<Xy> corners = outline(obstacle);
      sketch.closed(Layers.PARTS, corners);
      Polygon area = Shapes.polygon(corners.stream().map(PlanSurroundings::coordinate).toList());
      marks.add(obstacle.name(), Shapes.edges(area));
    }
    kneeWall()
        .ifPresent(
            ends -> {
              sketch.line(Layers.PARTS, ends.get(0), ends.get(1));
              marks.add(
                  "knee wall",
                  List.of(
                      Shapes.line(
                          ends.get(0).x(), ends.get(0).y(), ends.get(1).x(), ends.get(1).y())));
            });
    layout.runs().forEach(run -> drawZone(sketch, marks, run));
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
    List<Xy> corners = ring(area);
    sketch.closed(Layers.CONTEXT, corners);
    marks.keepOffWay(corners);
    String thickness =
        layout.wall().tape().text(layout.wall().room().mat().thickness().orElseThrow());
    marks.add("mats, " + thickness, Shapes.outerEdges(area));
  }

  private void drawZone(Sketch sketch, PartMarks marks, List<FacetLayout> run) {
    List<Xy> corners = zone(run);
    sketch.closed(Layers.SETBACK, corners);
    marks.keepOffWay(corners);
    Tape tape = layout.wall().tape();
    String text = "clear to fall: " + tape.text(fall(run).clear());
    List<Shape.Label> labels =
        PARTS.stream()
            .flatMap(out -> PARTS.stream().map(along -> place(corners, along, out)))
            .map(place -> written(text, place))
            .toList();
    Shape.Label label =
        labels.stream().filter(one -> isFree(one, sketch)).findFirst().orElse(labels.get(0));
    sketch.label(label);
    words.add(Inked.box(label, sketch.scale()));
    marks.keepOff(Inked.box(label, sketch.scale()));
  }

  private static Shape.Label written(String text, Xy place) {
    return new Shape.Label(Layers.TEXT, place, text, Sketch.SMALL, TextAnchor.MIDDLE, 0);
  }

  /** Whether words are clear of those before: zones lie over each other in corners. */
  private boolean isFree(Shape.Label label, Sketch sketch) {
    Envelope box = Inked.box(label, sketch.scale());
    return words.stream().noneMatch(box::intersects);
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
    return ring(Shapes.around(corners));
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
