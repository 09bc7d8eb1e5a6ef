package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Hulls;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.Tether;
import plycrag.layout.support.WallSupport;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;
import plycrag.wall.Swing;
import plycrag.wall.room.Room;

/**
 * What a section shows beside the wall itself: its support, the room, mats, the space to fall into,
 * and a person for scale.
 */
final class SideSurroundings {
  private final Layout layout;
  private final List<Facet> facets;
  private final int number;
  private final FloorAxes axes;
  private final FallZone zone;
  private final SideCeiling above;
  private final SideObstacles obstacles;

  SideSurroundings(CheckedLayout checked, List<FacetLayout> run) {
    this.layout = checked.layout();
    this.facets = run.stream().map(FacetLayout::facet).toList();
    this.number = layout.runs().indexOf(run);
    this.axes = facets.get(0).plane().floorAxes();
    this.above = new SideCeiling(layout.wall().room().ceiling(), facets);
    this.obstacles = new SideObstacles(facets, layout.wall().room().obstacles());
    this.zone = FallZone.of(layout, facets);
  }

  /** What has to be on the drawing. */
  Envelope box() {
    Envelope box = new Envelope(0, zone.end(), 0, PersonOutline.HEIGHT);
    for (Polygon area : timbers().toList()) {
      box.expandToInclude(area.getEnvelopeInternal());
    }
    tethers().forEach(ends -> ends.forEach(end -> box.expandToInclude(end.x(), end.y())));
    for (double angle : RunAtAngle.angles(layout, number)) {
      faces(angle).forEach(corner -> box.expandToInclude(corner.x(), corner.y()));
    }
    above.expand(box, zone.end());
    obstacles.expand(box);
    return box;
  }

  /** Whether the ceiling is higher at one end of the wall than at the other. */
  boolean ceilingFallsAlong() {
    return above.fallsAlong();
  }

  /** Each timber of the support as the section sees it. */
  private Stream<Polygon> timbers() {
    return layout.standing().stream().filter(this::isHere).map(this::profile);
  }

  private boolean isHere(PlacedMember placed) {
    return placed.run() == number;
  }

  private Polygon profile(PlacedMember placed) {
    Solid body = placed.body().mapped(axes::fromRoom);
    List<Coordinate> corners = new ArrayList<>();
    Stream.concat(body.near().stream(), body.far().stream())
        .forEach(corner -> corners.add(new Coordinate(corner.y(), corner.z())));
    return Hulls.around(corners);
  }

  private List<List<Xy>> tethers() {
    List<Tether> tethers = layout.support().map(WallSupport::tethers).orElse(List.of());
    double angle = facets.get(facets.size() > 1 ? 1 : 0).angle();
    return tethers.stream()
        .map(tether -> List.of(at(layout.held(tether, angle)), at(tether.anchor())))
        .toList();
  }

  private Xy at(Vector3 inRoom) {
    Vector3 inRun = axes.fromRoom(inRoom);
    return new Xy(inRun.y(), inRun.z());
  }

  /** The climbing face at an angle, from below. */
  private List<Xy> faces(double angle) {
    List<Xy> corners = new ArrayList<>();
    for (FacetAtAngle leaning : FacetAtAngle.of(layout.wall(), facets, angle)) {
      corners.add(at(leaning.at(new Vector3(0, 0, 0))));
      corners.add(at(leaning.at(new Vector3(0, leaning.facet().length(), 0))));
    }
    return corners;
  }

  /** Draws it all, what is cut across with a tint. */
  void draw(Sketch sketch) {
    drawMats(sketch);
    layout.standing().stream().filter(this::isHere).forEach(one -> drawTimber(sketch, one));
    for (List<Xy> ends : tethers()) {
      sketch.line(Layers.CENTRE, ends.get(0), ends.get(1));
    }
    drawAngles(sketch);
    above.draw(sketch, box());
    drawZone(sketch);
    Xy feet = new Xy(zone.outermost() + PersonOutline.STEP, 0);
    PersonOutline.draw(sketch, (right, up) -> feet.plus(right, up));
  }

  /** What stands in the room, named clear of all that is drawn before. */
  void drawObstacles(Sketch sketch, Extent view) {
    obstacles.draw(sketch, view);
  }

  private void drawTimber(Sketch sketch, PlacedMember placed) {
    List<Xy> corners = corners(profile(placed));
    boolean cut = placed.member().role().runsAlong();
    if (cut) {
      sketch.area(Layers.TINT, corners, Fill.TIMBER);
    }
    sketch.closed(Layers.PARTS, corners);
    if (cut && corners.size() == 4) {
      sketch.line(Layers.CONTEXT, corners.get(0), corners.get(2));
      sketch.line(Layers.CONTEXT, corners.get(1), corners.get(3));
    }
  }

  private static List<Xy> corners(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    return Stream.of(ring).limit(ring.length - 1L).map(at -> new Xy(at.x, at.y)).toList();
  }

  /** The face at the other angles that it is used at. */
  private void drawAngles(Sketch sketch) {
    for (double angle : RunAtAngle.angles(layout, number)) {
      List<Xy> corners = faces(angle);
      boolean swings = Swing.of(layout.wall(), facets).isPresent();
      if (swings && facets.get(1).angle() != angle) {
        for (int at = 2; at + 1 < corners.size(); at += 2) {
          sketch.line(Layers.BEHIND, corners.get(at), corners.get(at + 1));
        }
        Xy end = corners.get(corners.size() - 1).plus(sketch.paper(1.5), sketch.paper(1.5));
        String text = Decimal.of(angle, 2) + "°";
        sketch.label(Layers.TEXT, end, text, Sketch.SMALL, TextAnchor.START);
      }
    }
  }

  private void drawMats(Sketch sketch) {
    Room.Mat mat = layout.wall().room().mat();
    if (mat.thickness().isPresent()) {
      double end = zone.outermost() + mat.front().orElse(zone.clear());
      double high = mat.thickness().get();
      sketch.closed(
          Layers.SETBACK,
          List.of(
              new Xy(zone.foot(), 0),
              new Xy(end, 0),
              new Xy(end, high),
              new Xy(zone.foot(), high)));
    }
  }

  /** How far people fall, on the floor. */
  private void drawZone(Sketch sketch) {
    Tape tape = layout.wall().tape();
    double low = -sketch.paper(5);
    Xy from = new Xy(zone.outermost(), low);
    Xy to = new Xy(zone.end(), low);
    sketch.line(Layers.DIMENSIONS, from, to);
    for (Xy end : List.of(from, to)) {
      sketch.line(Layers.DIMENSIONS, end.plus(0, -sketch.paper(1.5)), end.plus(0, sketch.paper(4)));
    }
    sketch.label(
        Layers.TEXT,
        new Xy((from.x() + to.x()) / 2, low - sketch.paper(4)),
        "clear to fall: " + tape.text(zone.clear()),
        Sketch.SMALL,
        TextAnchor.MIDDLE);
  }
}
