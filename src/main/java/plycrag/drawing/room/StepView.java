package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.Shape;
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.standing.BuildStep;
import plycrag.layout.standing.BuildStep.Work;

/**
 * One step of building, without a scale: what stands already in grey lines, what is added in the
 * accent colour and with its marks. Frames and support are seen from behind, where they are worked
 * on, and sheets from before the wall; from each side always from the same place.
 */
public final class StepView {
  /** What a picture takes of a page, mm. */
  private static final double WIDTH = 100;

  private static final double HEIGHT = 68;

  /** More marks than this are looked up in the list beside the picture. */
  private static final int MOST_MARKS = 24;

  /** Of a way square to a side: above this it looks up. */
  private static final double UP = 0.6;

  /** The cosine of 70°: at less a face is seen too much from its side. */
  private static final double SEEN = 0.34;

  private static final double RING = 0.9;
  private static final double AROUND = 2;
  private static final int CORNERS = 10;

  private final Layout layout;
  private final BuildStep step;
  private final Axonometry view;
  private final List<StepBodies.Seen> parts;
  private final List<SeenBody> bodies;
  private final List<Shape> shapes = new ArrayList<>();

  private StepView(Layout layout, BuildStep step, List<StepBodies.Seen> parts) {
    this.layout = layout;
    this.step = step;
    this.parts = parts;
    this.view = view();
    this.bodies =
        parts.stream()
            .map(one -> SeenBody.of(one.mark(), one.isSheet(), one.solid(), List.of(), view))
            .toList();
  }

  /**
   * The picture of a step; none of one in which nothing is set.
   *
   * @param number of the step, from 0
   * @param title what is done in it
   */
  public static Optional<Drawing> of(
      CheckedLayout checked, List<BuildStep> steps, int number, String title) {
    Layout layout = checked.layout();
    List<StepBodies.Seen> parts = StepBodies.of(layout, steps, number);
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new StepView(layout, steps.get(number), parts).drawing(title));
  }

  private Axonometry view() {
    return switch (step.work()) {
      case BUILD_FLAT -> Axonometry.USUAL;
      case SHEETS -> facing();
      default -> Axonometry.BEHIND;
    };
  }

  /**
   * From before the wall and its right, or from its left where the facet is not seen from there.
   */
  private Axonometry facing() {
    return facets().allMatch(facet -> out(facet).dot(Axonometry.USUAL.toViewer()) > SEEN)
        ? Axonometry.USUAL
        : Axonometry.FROM_LEFT;
  }

  private Stream<FacetLayout> facets() {
    return layout.facets().stream().filter(one -> one.facet().name().equals(step.facet()));
  }

  /** Out of a facet's front, of length one. */
  private static Vector3 out(FacetLayout facet) {
    FacetPlane plane = facet.facet().plane();
    return plane.toRoom(new Vector3(0, 0, 0)).minus(plane.toRoom(new Vector3(0, 0, 1)));
  }

  private Drawing drawing(String title) {
    Envelope box = new Envelope();
    bodies.forEach(body -> box.expandToInclude(body.silhouette().getEnvelopeInternal()));
    double fit = Math.max(box.getWidth() / WIDTH, box.getHeight() / HEIGHT);
    Sketch sketch = new Sketch(Math.max(1, (int) Math.ceil(fit)));
    BackToFront.of(bodies, view).forEach(this::paint);
    PartMarks marks = new PartMarks(sketch);
    if (step.work() == Work.SHEETS) {
      facets().forEach(facet -> ringHoles(sketch, facet, marks));
    }
    mark(marks);
    shapes.addAll(sketch.drawing(title, new Extent(0, 0, 1, 1)).shapes());
    Drawing loose = new Drawing(title, sketch.scale(), new Extent(0, 0, 1, 1), shapes);
    Envelope inked = Inked.box(loose);
    inked.expandBy(sketch.paper(AROUND));
    Extent extent = new Extent(inked.getMinX(), inked.getMinY(), inked.getMaxX(), inked.getMaxY());
    return new Drawing(title, sketch.scale(), extent, shapes);
  }

  private void paint(int at) {
    StepBodies.Seen part = parts.get(at);
    Layer layer = part.isAdded() ? Layers.ADDED : Layers.CONTEXT;
    for (SeenBody.Face face : bodies.get(at).faces()) {
      if (part.isSheet()) {
        shapes.add(new Shape.Area(layer, corners(face.area()), Fill.PAPER));
      } else {
        Fill fill = part.isAdded() ? tint(face.way()) : Fill.PAPER;
        shapes.add(new Shape.Outline(layer, corners(face.area()), fill));
      }
    }
    if (part.isSheet()) {
      rim(part.mark(), layer);
    }
  }

  /** The edges of a piece, whose body is of parts around openings; the last part's are seen. */
  private void rim(String mark, Layer layer) {
    for (FacetLayout facet : layout.facets()) {
      boolean isFront = out(facet).dot(view.toViewer()) > 0;
      double depth = isFront ? 0 : layout.wall().sheet().thickness();
      facet.pieces().stream()
          .filter(piece -> piece.mark().equals(mark))
          .map(piece -> isFront ? piece.outline() : piece.back())
          .flatMap(face -> Shapes.rings(face).stream())
          .forEach(ring -> shapes.add(new Shape.Outline(layer, at(facet, ring, depth), Fill.NONE)));
    }
  }

  private List<Xy> at(FacetLayout facet, LineString ring, double depth) {
    return Stream.of(ring.getCoordinates())
        .skip(1)
        .map(place -> facet.facet().plane().toRoom(new Vector3(place.x, place.y, depth)))
        .map(view::project)
        .map(place -> new Xy(place.x, place.y))
        .toList();
  }

  private static Fill tint(Vector3 way) {
    boolean isUp = way.z() > UP * way.length();
    return isUp || Math.abs(way.y()) > Math.abs(way.x()) ? Fill.ADDED : Fill.ADDED_SHADE;
  }

  private static List<Xy> corners(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    return Stream.of(ring).skip(1).map(at -> new Xy(at.x, at.y)).toList();
  }

  /** Inserts in sheets that are added, where they are seen. */
  private void ringHoles(Sketch sketch, FacetLayout facet, PartMarks marks) {
    Geometry open =
        Shapes.together(
            facet.pieces().stream()
                .flatMap(piece -> bodies.stream().filter(body -> body.mark().equals(piece.mark())))
                .map(body -> body.open(bodies, view.toViewer()))
                .toList());
    double radius = Math.max(layout.wall().inserts().body().hole(), sketch.paper(RING)) / 2;
    for (Insert insert : facet.inserts()) {
      Coordinate centre = on(facet, insert.centre().getX(), insert.centre().getY());
      if (open.intersects(Shapes.point(centre.x, centre.y))) {
        List<Xy> round = round(facet, insert.centre(), radius);
        shapes.add(new Shape.Outline(Layers.HOLES, round, Fill.NONE));
        marks.keepOffWay(round);
      }
    }
  }

  private List<Xy> round(FacetLayout facet, Point centre, double radius) {
    Coordinate[] ring =
        Shapes.circle(centre.getX(), centre.getY(), 2 * radius).getExteriorRing().getCoordinates();
    int every = Math.max(1, (ring.length - 1) / CORNERS);
    List<Xy> round = new ArrayList<>();
    for (int at = 0; at < ring.length - 1; at += every) {
      Coordinate on = on(facet, ring[at].x, ring[at].y);
      round.add(new Xy(on.x, on.y));
    }
    return round;
  }

  private Coordinate on(FacetLayout facet, double u, double v) {
    return view.project(facet.facet().plane().toRoom(new Vector3(u, v, 0)));
  }

  /** What is added, on its own face where there is room. */
  private void mark(PartMarks marks) {
    List<Integer> added = new ArrayList<>();
    for (int at = 0; at < parts.size(); at++) {
      if (parts.get(at).isAdded() && !parts.get(at).mark().isEmpty()) {
        added.add(at);
      }
    }
    if (added.size() > MOST_MARKS) {
      return;
    }
    for (int at = 0; at < bodies.size(); at++) {
      if (step.work() != Work.SHEETS || parts.get(at).isAdded()) {
        marks.keepOff(bodies.get(at).edges());
      }
    }
    for (int at : added) {
      SeenBody body = bodies.get(at);
      Geometry open = body.open(bodies, view.toViewer());
      for (Polygon area : Shapes.areas(open)) {
        marks.add(body.mark(), Shapes.edges(area));
      }
      marks.face(body.mark(), open);
    }
    marks.draw();
  }
}
