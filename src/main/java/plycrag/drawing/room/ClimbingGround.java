package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.FallZone;
import plycrag.layout.standing.RunAtAngle;
import plycrag.units.Tape;
import plycrag.wall.room.Room;

/** What the picture of the climbing side shows around the wall, and the sizes of it. */
final class ClimbingGround {
  /** How far the floor goes beyond what stands there where nothing ends it (a choice), mm. */
  private static final double BEYOND = 300;

  /** From what is measured to the line that tells its size, mm on paper. */
  private static final double OFF = 6;

  private static final double TICK = 1.2;

  private final Layout layout;
  private final Room room;
  private final Axonometry view;
  private final Envelope plan = new Envelope();
  private final Envelope floor;
  private double highest;

  ClimbingGround(Layout layout, Axonometry view) {
    this.layout = layout;
    this.room = layout.wall().room();
    this.view = view;
    for (int run = 0; run < layout.runs().size(); run++) {
      double angle = ClimbersEye.angle(layout.runs().get(run));
      RunAtAngle.of(layout, run, angle).corners().forEach(this::include);
    }
    this.floor = floor();
  }

  private void include(Vector3 corner) {
    plan.expandToInclude(corner.x(), corner.y());
    highest = Math.max(highest, corner.z());
  }

  /** Under the wall, the mats and the space to fall into, up to what ends the room. */
  private Envelope floor() {
    Envelope all = new Envelope(plan);
    for (Solid mat : mats()) {
      mat.near().forEach(corner -> all.expandToInclude(corner.x(), corner.y()));
    }
    for (List<FacetLayout> run : layout.runs()) {
      FloorAxes axes = run.get(0).facet().plane().floorAxes();
      FallZone zone = FallZone.of(layout, run.stream().map(FacetLayout::facet).toList());
      Vector3 end = axes.toRoom(new Vector3(run.get(0).facet().width() / 2, zone.end(), 0));
      all.expandToInclude(end.x(), end.y());
    }
    all.expandBy(BEYOND);
    double width = layout.wall().frontWidth();
    double left = room.sides().left().map(told -> -told).orElse(all.getMinX());
    double right = room.sides().right().map(told -> width + told).orElse(all.getMaxX());
    double front = room.sides().front().orElse(all.getMaxY());
    return new Envelope(
        Math.max(left, all.getMinX()),
        Math.min(right, all.getMaxX()),
        all.getMinY(),
        Math.min(front, all.getMaxY()));
  }

  /** Mats, and what stands in the room. */
  List<Solid> solids() {
    List<Solid> solids = new ArrayList<>(mats());
    for (Room.Obstacle one : room.obstacles()) {
      double left = one.corner().left();
      double out = one.corner().out();
      double low = one.corner().low();
      Polygon area =
          Shapes.rectangle(left, out, left + one.size().width(), out + one.size().depth());
      solids.add(Solid.between(area, low, area, low + one.size().height()));
    }
    return solids;
  }

  private List<Solid> mats() {
    double thickness = room.mat().thickness().orElse(0.0);
    return new PlanMats(layout)
        .areas().stream()
            .map(area -> Solid.between(area, 0, area, thickness))
            .map(mat -> mat.mapped(at -> new Vector3(at.x(), -at.y(), at.z())))
            .toList();
  }

  private List<Vector3> corners(double z) {
    return List.of(
        new Vector3(floor.getMinX(), floor.getMinY(), z),
        new Vector3(floor.getMaxX(), floor.getMinY(), z),
        new Vector3(floor.getMaxX(), floor.getMaxY(), z),
        new Vector3(floor.getMinX(), floor.getMaxY(), z));
  }

  /** What has to be on the drawing. */
  void expand(Envelope box) {
    corners(0).forEach(corner -> box.expandToInclude(view.project(corner)));
    box.expandToInclude(view.project(feet().plus(new Vector3(0, 0, PersonOutline.HEIGHT))));
    room.ceiling()
        .at(backLeft())
        .ifPresent(
            height ->
                box.expandToInclude(view.project(backLeft().plus(new Vector3(0, 0, height)))));
  }

  private Vector3 backLeft() {
    return new Vector3(floor.getMinX(), floor.getMinY(), 0);
  }

  /** The floor's edges where nothing stands before them. */
  void drawFloor(Sketch sketch, Geometry covered) {
    List<Vector3> corners = corners(0);
    for (int at = 0; at < corners.size(); at++) {
      Coordinate from = view.project(corners.get(at));
      Coordinate to = view.project(corners.get((at + 1) % corners.size()));
      Geometry open = Shapes.without(Shapes.line(from.x, from.y, to.x, to.y), covered);
      for (LineString line : LineWork.lines(open, sketch)) {
        LineWork.draw(sketch, Layers.CONTEXT, line);
      }
    }
  }

  /** Before the wall's right, or its left where that is nearer to the viewer. */
  private Vector3 feet() {
    double quarter = plan.getWidth() / 4;
    boolean isRight = view.toViewer().x() > 0;
    double x = isRight ? plan.getMinX() + quarter : plan.getMaxX() - quarter;
    double y = Math.min(plan.getMaxY() + PersonOutline.STEP, floor.getMaxY());
    return new Vector3(x, y, room.mat().thickness().orElse(0.0));
  }

  /** A person, upright and facing the viewer. */
  void drawPerson(Sketch sketch) {
    Coordinate feet = view.project(feet());
    double upright = view.project(new Vector3(0, 0, 1)).y;
    PersonOutline.draw(sketch, (right, up) -> new Xy(feet.x + right, feet.y + up * upright));
  }

  /** How wide, deep and high it all is, and the ceiling where it is told. */
  void drawSizes(Sketch sketch) {
    Tape tape = layout.wall().tape();
    double off = sketch.paper(OFF);
    double front = floor.getMaxY() + off;
    Vector3 left = new Vector3(plan.getMinX(), front, 0);
    Vector3 right = new Vector3(plan.getMaxX(), front, 0);
    drawSize(sketch, left, right);
    Xy middle = at(left.plus(right).times(0.5)).plus(0, -sketch.paper(5));
    write(sketch, middle, tape.text(plan.getWidth()) + " wide", TextAnchor.MIDDLE);
    boolean isRight = view.toViewer().x() > 0;
    double near = isRight ? floor.getMaxX() + off : floor.getMinX() - off;
    Vector3 back = new Vector3(near, plan.getMinY(), 0);
    drawSize(sketch, back, new Vector3(near, plan.getMaxY(), 0));
    writeBeside(sketch, back, isRight, tape.text(plan.getHeight()) + " deep");
    double far = isRight ? floor.getMinX() - off : floor.getMaxX() + off;
    double farther = isRight ? far - off : far + off;
    double ceiling = room.ceiling().at(new Vector3(far, plan.getMaxY(), 0)).orElse(0.0);
    boolean isUnder = highest < ceiling; // what is lower stands further out, clear of words
    drawHeight(sketch, isUnder ? farther : far, highest, tape.text(highest) + " high");
    if (ceiling > 0) {
      drawHeight(sketch, isUnder ? far : farther, ceiling, "ceiling " + tape.text(ceiling));
    }
  }

  private void drawHeight(Sketch sketch, double x, double height, String words) {
    Vector3 top = new Vector3(x, plan.getMaxY(), height);
    drawSize(sketch, new Vector3(x, plan.getMaxY(), 0), top);
    writeBeside(sketch, top, view.toViewer().x() < 0, words);
  }

  /** A line with a tick at each end. */
  private void drawSize(Sketch sketch, Vector3 from, Vector3 to) {
    sketch.line(Layers.DIMENSIONS, at(from), at(to));
    double tick = sketch.paper(TICK);
    for (Vector3 end : List.of(from, to)) {
      sketch.line(Layers.DIMENSIONS, at(end).plus(-tick, -tick), at(end).plus(tick, tick));
    }
  }

  /** Away from the wall, on the right or on the left. */
  private void writeBeside(Sketch sketch, Vector3 end, boolean isRight, String words) {
    double side = sketch.paper(isRight ? 3 : -3);
    TextAnchor anchor = isRight ? TextAnchor.START : TextAnchor.END;
    write(sketch, at(end).plus(side, 0), words, anchor);
  }

  private static void write(Sketch sketch, Xy place, String words, TextAnchor anchor) {
    sketch.label(Layers.TEXT, place, words, Sketch.SMALL, anchor);
  }

  private Xy at(Vector3 place) {
    Coordinate projected = view.project(place);
    return new Xy(projected.x, projected.y);
  }
}
