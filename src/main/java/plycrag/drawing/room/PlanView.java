package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/**
 * The wall seen from above: what stands on the floor, what leans out over it, and the corners
 * between walls. The climber stands below on the drawing.
 */
public final class PlanView {
  /** How far an angle is written off its corner, in turn, mm on paper. */
  private static final List<Double> OFF_CORNER = List.of(9.0, 6.0, 12.0, 15.0, 18.0, 22.0, 27.0);

  /** Where a facet's name is tried, in parts of its lower edge. */
  private static final List<Double> ALONG = List.of(0.25, 0.5, 0.75, 0.375, 0.625, 0.125, 0.875);

  private static final double BESIDE = 0.5;

  private final CheckedLayout checked;
  private final Tape tape;
  private final Envelope box = new Envelope();
  private final PlanSurroundings surroundings;
  private final Envelope view;
  private final TreeSet<Double> across = new TreeSet<>();
  private final TreeSet<Double> up = new TreeSet<>();
  private final Sketch sketch;
  private final List<Envelope> names = new ArrayList<>();
  private final PartMarks marks;

  private PlanView(CheckedLayout checked) {
    this.checked = checked;
    this.tape = checked.layout().wall().tape();
    for (FacetLayout facet : checked.layout().facets()) {
      ring(facet.facet()).forEach(place -> box.expandToInclude(place.x(), place.y()));
      for (Member member : facet.members()) {
        plan(facet, member).forEach(place -> box.expandToInclude(place.x(), place.y()));
      }
    }
    this.surroundings = new PlanSurroundings(checked);
    this.view = new Envelope(box);
    view.expandToInclude(surroundings.box());
    this.sketch = new Sketch(Scale.fitting(view.getWidth(), view.getHeight()));
    this.marks = new PartMarks(sketch);
  }

  /** The plan of a wall. */
  public static Drawing of(CheckedLayout checked) {
    return new PlanView(checked).drawing();
  }

  private Drawing drawing() {
    Xy corner = new Xy(box.getMinX(), box.getMinY());
    keepOffLines(corner);
    for (List<FacetLayout> run : checked.layout().runs()) {
      drawFoot(run.get(0));
      run.forEach(this::drawFace);
    }
    checked.layout().facets().forEach(this::nameCorner);
    names.forEach(marks::keepOff);
    surroundings.draw(sketch, marks);
    view.expandToInclude(marks.draw());
    Datum.outside(sketch, corner, 1);
    drawDimensions();
    List<String> notes =
        List.of(
            "PLAN, SEEN FROM ABOVE; the climber stands below. Read from the filled corner, in "
                + tape.unit().plural()
                + ".",
            "Thick: the lower edge of each wall. Tinted: the plate it stands on. Dashed: the"
                + " outline",
            "of what leans out or back above. Angles are those that the climbing faces enclose.",
            TitleLines.MATTING);
    Extent shown = new Extent(view.getMinX(), view.getMinY(), view.getMaxX(), view.getMaxY());
    return new ViewPage(shown, false).finish(checked, sketch, "Plan", notes);
  }

  /** Words keep off all lines, those that are drawn after them too. */
  private void keepOffLines(Xy corner) {
    for (List<FacetLayout> run : checked.layout().runs()) {
      feet(run.get(0)).forEach(marks::keepOffWay);
      run.forEach(facet -> marks.keepOffWay(ring(facet.facet())));
    }
    surroundings.keepOff(marks);
    Datum.taken(sketch, corner).forEach(marks::keepOff);
  }

  /** Seen from above the climber's way is down. */
  private static Xy at(FacetPlane plane, double u, double v, double w) {
    Vector3 room = plane.toRoom(new Vector3(u, v, w));
    return new Xy(room.x(), -room.y());
  }

  /** A facet's boundary. */
  private static List<Xy> ring(Facet facet) {
    List<Xy> places = new ArrayList<>();
    Coordinate[] ring = facet.boundary().getCoordinates();
    for (int at = 0; at + 1 < ring.length; at++) {
      places.add(at(facet.plane(), ring[at].x, ring[at].y, 0));
    }
    return places;
  }

  /** The underside of a member. */
  private List<Xy> plan(FacetLayout facet, Member member) {
    double thickness = checked.layout().wall().sheet().thickness();
    double deep = thickness + member.depth();
    FacetPlane plane = facet.facet().plane();
    Envelope near = member.box();
    Envelope far = member.far().getEnvelopeInternal();
    return List.of(
        at(plane, near.getMinX(), near.getMinY(), thickness),
        at(plane, near.getMaxX(), near.getMinY(), thickness),
        at(plane, far.getMaxX(), far.getMinY(), deep),
        at(plane, far.getMinX(), far.getMinY(), deep));
  }

  /** The plates at the floor. */
  private void drawFoot(FacetLayout facet) {
    for (List<Xy> corners : feet(facet)) {
      sketch.area(Layers.TINT, corners, Fill.TIMBER);
      sketch.closed(Layers.PARTS, corners);
    }
  }

  private List<List<Xy>> feet(FacetLayout facet) {
    return facet.members().stream()
        .filter(member -> member.box().getMinY() <= facet.footing().plateLow() + 1)
        .filter(member -> !member.role().isUpright())
        .map(member -> plan(facet, member))
        .toList();
  }

  private void drawFace(FacetLayout layout) {
    Facet facet = layout.facet();
    if (!facet.standsOnFacet()) {
      Envelope low = facet.boundary().getEnvelopeInternal();
      Xy left = at(facet.plane(), low.getMinX(), 0, 0);
      Xy right = at(facet.plane(), low.getMaxX(), 0, 0);
      drawLowerEdge(facet, low);
      for (Xy end : List.of(left, right)) {
        across.add(end.x() - box.getMinX());
        up.add(end.y() - box.getMinY());
      }
      name(facet, left, right);
    }
    if (facet.leans()) {
      sketch.closed(Layers.BEHIND, ring(facet));
    }
  }

  /** Openings that begin at it leave gaps, in which their names are. */
  private void drawLowerEdge(Facet facet, Envelope low) {
    Geometry edge = Shapes.line(low.getMinX(), 0, low.getMaxX(), 0);
    for (Cutout cutout : facet.cutouts()) {
      List<LineString> gap = LineWork.lines(Shapes.shared(edge, cutout.shape()), sketch);
      edge = Shapes.without(edge, cutout.shape());
      marks.add(cutout.name(), gap.stream().map(line -> onFloor(facet, line)).toList());
    }
    for (LineString part : LineWork.lines(edge, sketch)) {
      LineWork.draw(sketch, Layers.OUTLINE, onFloor(facet, part));
    }
  }

  private static LineString onFloor(Facet facet, LineString edge) {
    Xy from = at(facet.plane(), edge.getCoordinateN(0).x, 0, 0);
    Xy to = at(facet.plane(), edge.getCoordinateN(1).x, 0, 0);
    return Shapes.line(from.x(), from.y(), to.x(), to.y());
  }

  private void name(Facet facet, Xy left, Xy right) {
    Vector3 out = facet.plane().normal();
    double flat = Math.sqrt(out.x() * out.x() + out.y() * out.y());
    double off = sketch.paper(4) / Math.max(flat, 0.1);
    double turn = facet.plane().floorAxes().heading();
    double reads = turn > 90 || turn < -90 ? 180 - turn : -turn;
    List<Xy> places =
        ALONG.stream()
            .map(part -> between(left, right, part).plus(out.x() * off, -out.y() * off))
            .toList();
    Xy place =
        places.stream()
            .filter(at -> marks.isFree(written(at, facet.name(), reads)))
            .findFirst()
            .orElse(places.get(0));
    sketch.labelTurned(Layers.TEXT, place, facet.name(), reads);
    names.add(written(place, facet.name(), reads));
  }

  private static Xy between(Xy one, Xy other, double part) {
    return new Xy(one.x() + part * (other.x() - one.x()), one.y() + part * (other.y() - one.y()));
  }

  /** The angle at a corner on a facet's left, on the climber's side. */
  private void nameCorner(FacetLayout layout) {
    Facet facet = layout.facet();
    if (!facet.standsOnFacet()) {
      facet.fold(Fold.Place.LEFT).ifPresent(fold -> nameCorner(facet, fold));
    }
  }

  private void nameCorner(Facet facet, Fold fold) {
    Vector3 along =
        facet
            .plane()
            .toRoom(new Vector3(1, 0, 0))
            .minus(facet.plane().toRoom(new Vector3(0, 0, 0)));
    Vector3 out = facet.plane().normal();
    Xy corner = at(facet.plane(), 0, 0, 0);
    String angle = Decimal.of(180 - fold.turn(), 1) + "°";
    List<Xy> places =
        OFF_CORNER.stream()
            .map(sketch::paper)
            .map(
                off ->
                    corner.plus(
                        (1.7 * along.x() + 0.8 * out.x()) * off,
                        -(1.7 * along.y() + 0.8 * out.y()) * off))
            .toList();
    Xy place = places.stream().filter(at -> isClear(at, angle)).findFirst().orElse(places.get(0));
    sketch.label(Layers.TEXT, place, angle, Sketch.SMALL, TextAnchor.MIDDLE);
    names.add(written(place, angle, 0));
  }

  /** Whether words at a place are clear of the facets' names and edges. */
  private boolean isClear(Xy place, String words) {
    Envelope box = written(place, words, 0);
    box.expandBy(sketch.paper(BESIDE));
    return names.stream().noneMatch(box::intersects) && marks.isFree(box);
  }

  private Envelope written(Xy place, String words, double turn) {
    return Inked.box(
        new Shape.Label(Layers.TEXT, place, words, Sketch.SMALL, TextAnchor.MIDDLE, turn),
        sketch.scale());
  }

  private void drawDimensions() {
    across.add(box.getWidth());
    up.add(box.getHeight());
    across.removeIf(place -> place < 1);
    up.removeIf(place -> place < 1);
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    dimensions.across(
        box.getMinX(), view.getMinY(), Readings.of(across, tape, x -> x + box.getMinX()));
    dimensions.up(box.getMinY(), view.getMinX(), Readings.of(up, tape, y -> y + box.getMinY()));
  }
}
