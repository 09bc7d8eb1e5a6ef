package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.finding.FindingGroup;
import plycrag.finding.Place;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.standing.RunAtAngle;
import plycrag.wall.FacetAtAngle;

/**
 * The climbing side in its room, in one picture: sheets, holes, support, mats, what stands there, a
 * person, the outer sizes, and rings around what was found.
 */
public final class ClimbingView {
  /** Corners of a hole as it is drawn. */
  private static final int ROUND = 12;

  /** No hole is drawn smaller, so that it is seen, mm on paper. */
  private static final double LEAST_HOLE = 1;

  /** So much larger than on paper: mats take most of the width (a choice). */
  private static final double SCREEN = 2;

  /** What it takes there, where words are a larger part of it, mm. */
  private static final double PAGE_WIDE = 170;

  private static final double PAGE_HIGH = 95;

  private static final double RING = 2.2;

  /** More rings than this would hide what they show. */
  private static final int MOST_RINGS = 60;

  private final CheckedLayout checked;
  private final Layout layout;
  private final Axonometry view;
  private final Map<String, FacetAtAngle> facets;
  private final ClimbingGround ground;
  private final List<SeenBody> bodies = new ArrayList<>();
  private final ToIntFunction<Envelope> scale;

  private ClimbingView(CheckedLayout checked, ToIntFunction<Envelope> scale) {
    this.checked = checked;
    this.scale = scale;
    this.layout = checked.layout();
    this.view = ClimbersEye.of(layout);
    this.facets =
        ClimbersEye.facets(layout).stream()
            .collect(
                Collectors.toMap(
                    one -> one.facet().name(),
                    Function.identity(),
                    (one, other) -> one,
                    LinkedHashMap::new));
    this.ground = new ClimbingGround(layout, view);
  }

  /** The picture of a wall, whether or not it may be made. */
  public static Drawing of(CheckedLayout checked) {
    return new ClimbingView(
            checked, box -> Scale.fitting(box.getWidth() / SCREEN, box.getHeight() / SCREEN))
        .drawing();
  }

  /** The same as large as the head of a page takes it with its words, whatever scale that is. */
  public static Drawing onPage(CheckedLayout checked) {
    Drawing tried = of(checked);
    double wide = tried.extent().width() / PAGE_WIDE;
    double high = tried.extent().height() / PAGE_HIGH;
    int scale = (int) Math.ceil(Math.max(wide, high));
    return new ClimbingView(checked, box -> scale).drawing();
  }

  private Drawing drawing() {
    addBodies();
    List<Geometry> seen = HiddenLines.seen(bodies, view);
    Geometry covered = Shapes.together(bodies.stream().map(SeenBody::silhouette).toList());
    Envelope box = new Envelope(covered.getEnvelopeInternal());
    ground.expand(box);
    Sketch sketch = new Sketch(scale.applyAsInt(box));
    ground.drawFloor(sketch, covered);
    for (int at = 0; at < bodies.size(); at++) {
      for (LineString line : LineWork.lines(seen.get(at), sketch)) {
        LineWork.draw(sketch, bodies.get(at).sheet() ? Layers.OUTLINE : Layers.CONTEXT, line);
      }
    }
    facets.values().stream()
        .filter(facet -> ClimbersEye.sees(view, facet))
        .forEach(facet -> drawRound(sketch, facet));
    layout.facets().forEach(facet -> drawHoles(sketch, facet));
    ground.drawPerson(sketch);
    ground.drawSizes(sketch);
    drawRings(sketch);
    Envelope inked = Inked.box(sketch.drawing("all", new Extent(0, 0, 1, 1)));
    Extent extent = new Extent(inked.getMinX(), inked.getMinY(), inked.getMaxX(), inked.getMaxY());
    return new ViewPage(extent, false).finish(checked, sketch, "Climbing side", notes());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>(List.of("The climbing side in its room."));
    if (rings().findAny().isPresent()) {
      notes.add("Ringed: what was found, by its number.");
    }
    return notes;
  }

  private void addBodies() {
    for (int run = 0; run < layout.runs().size(); run++) {
      double angle = ClimbersEye.angle(layout.runs().get(run));
      for (RunAtAngle.Body body : RunAtAngle.of(layout, run, angle).bodies()) {
        boolean sheet = isSheet(body);
        List<Polygon> openings = sheet ? openings(body) : List.of();
        bodies.add(SeenBody.of(body.mark(), sheet, body.solid(), openings, view));
      }
    }
    ground.solids().forEach(one -> bodies.add(SeenBody.of("", false, one, List.of(), view)));
  }

  private boolean isSheet(RunAtAngle.Body body) {
    return layout.facets().stream()
        .flatMap(facet -> facet.pieces().stream())
        .anyMatch(piece -> piece.mark().equals(body.mark()));
  }

  private List<Polygon> openings(RunAtAngle.Body body) {
    return body.facet().stream()
        .flatMap(
            facet ->
                facet.facet().cutouts().stream()
                    .map(cutout -> projected(facet, cutout.shape().getExteriorRing())))
        .toList();
  }

  private Polygon projected(FacetAtAngle facet, LineString ring) {
    Coordinate[] places = ring.getCoordinates();
    return Shapes.polygon(
        Stream.of(places).limit(places.length - 1L).map(at -> on(facet, at.x, at.y)).toList());
  }

  private Coordinate on(FacetAtAngle facet, double u, double v) {
    return view.project(facet.at(new Vector3(u, v, 0)));
  }

  /** Round openings, whose edges are too short each to be told from crumbs. */
  private void drawRound(Sketch sketch, FacetAtAngle facet) {
    facet.facet().cutouts().stream()
        .map(cutout -> projected(facet, cutout.shape().getExteriorRing()))
        .filter(opening -> opening.getNumPoints() > ROUND)
        .forEach(
            opening ->
                sketch.outline(
                    Layers.OUTLINE,
                    Stream.of(opening.getCoordinates())
                        .skip(1)
                        .map(at -> new Xy(at.x, at.y))
                        .toList()));
  }

  /** The holes of a facet, where nothing stands before them. */
  private void drawHoles(Sketch sketch, FacetLayout facet) {
    FacetAtAngle leaning = facets.get(facet.facet().name());
    if (!ClimbersEye.sees(view, leaning) || facet.inserts().isEmpty()) {
      return;
    }
    Geometry open = open(facet);
    double hole = layout.wall().inserts().body().hole();
    double radius = Math.max(hole, sketch.paper(LEAST_HOLE)) / 2;
    for (Insert insert : facet.inserts()) {
      double u = insert.centre().getX();
      double v = insert.centre().getY();
      Coordinate centre = on(leaning, u, v);
      if (open.intersects(Shapes.point(centre.x, centre.y))) {
        sketch.outline(Layers.HOLES, round(leaning, u, v, radius));
      }
    }
  }

  /** What is seen of a facet's sheets. */
  private Geometry open(FacetLayout facet) {
    List<String> marks = facet.pieces().stream().map(piece -> piece.mark()).toList();
    List<SeenBody> pieces = bodies.stream().filter(one -> marks.contains(one.mark())).toList();
    return Shapes.together(pieces.stream().map(one -> one.open(bodies, view.toViewer())).toList());
  }

  private List<Xy> round(FacetAtAngle facet, double u, double v, double radius) {
    Polygon circle = Shapes.circle(u, v, 2 * radius);
    int every = Math.max(1, (circle.getNumPoints() - 1) / ROUND);
    Coordinate[] ring = circle.getCoordinates();
    return IntStream.range(0, ring.length - 1)
        .filter(at -> at % every == 0)
        .mapToObj(at -> on(facet, ring[at].x, ring[at].y))
        .map(at -> new Xy(at.x, at.y))
        .toList();
  }

  private record Ring(int number, Coordinate at) {}

  /** Equal findings have one number. */
  private Stream<Ring> rings() {
    List<FindingGroup> groups = checked.groups();
    return IntStream.range(0, groups.size())
        .boxed()
        .flatMap(
            at ->
                groups.get(at).findings().stream()
                    .flatMap(finding -> place(finding.place()).stream())
                    .map(place -> new Ring(at + 1, place)))
        .limit(MOST_RINGS);
  }

  private Optional<Coordinate> place(Place place) {
    return place instanceof Place.OnFacet on
        ? Optional.ofNullable(facets.get(on.facet())).map(facet -> on(facet, on.u(), on.v()))
        : Optional.empty();
  }

  private void drawRings(Sketch sketch) {
    double radius = sketch.paper(RING);
    rings()
        .forEach(
            ring -> {
              Xy centre = new Xy(ring.at().x, ring.at().y);
              sketch.circle(Layers.FINDINGS, centre, radius);
              String number = Integer.toString(ring.number());
              Xy beside = centre.plus(radius * 1.3, radius * 1.3);
              sketch.label(Layers.FINDINGS, beside, number, Sketch.SMALL, TextAnchor.START);
            });
  }
}
