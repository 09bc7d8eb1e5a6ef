package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Layer;
import plycrag.document.Xy;
import plycrag.geometry.Place;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.layout.Piece;
import plycrag.layout.PlacedMember;
import plycrag.layout.Support;
import plycrag.layout.Tether;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** The wall as it stands on its support, from one side; what is hidden is left out. */
public final class StandingView {
  /** Shorter pieces of a line come of rounding, mm on paper. */
  private static final double CRUMB = 0.2;

  private final CheckedLayout checked;
  private final Axonometry view;
  private final List<SeenBody> bodies = new ArrayList<>();
  private final Set<String> marked = new TreeSet<>();

  private StandingView(CheckedLayout checked, Axonometry view) {
    this.checked = checked;
    this.view = view;
  }

  /** From before the wall. */
  public static Drawing fromFront(CheckedLayout checked) {
    return new StandingView(checked, Axonometry.USUAL)
        .drawing(
            "Standing, from the front", "STANDING, from before the wall, its right and above.");
  }

  /** From behind it. */
  public static Drawing fromBehind(CheckedLayout checked) {
    return new StandingView(checked, Axonometry.BEHIND)
        .drawing(
            "Standing, from behind", "STANDING, SEEN FROM BEHIND, its climber's left and above.");
  }

  private Drawing drawing(String title, String note) {
    addBodies();
    List<Geometry> seen = HiddenLines.seen(bodies, view);
    Envelope box = new Envelope();
    seen.forEach(lines -> box.expandToInclude(lines.getEnvelopeInternal()));
    tethers().forEach(line -> box.expandToInclude(line.getEnvelopeInternal()));
    Sketch sketch = new Sketch(Scale.fitting(box.getWidth(), box.getHeight()));
    PartMarks marks = new PartMarks(sketch);
    for (int at = 0; at < bodies.size(); at++) {
      SeenBody body = bodies.get(at);
      List<LineString> lines = lines(seen.get(at), sketch.paper(CRUMB));
      boolean support = marked.contains(body.mark());
      Layer layer = support || body.sheet() ? Layers.OUTLINE : Layers.CONTEXT;
      lines.forEach(line -> draw(sketch, layer, line));
      if (support) {
        marks.add(body.mark(), lines);
      }
    }
    box.expandToInclude(marks.draw());
    tethers().forEach(line -> draw(sketch, Layers.CENTRE, line));
    Extent extent = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    List<String> notes = new ArrayList<>();
    notes.add(note);
    notes.add("Thick: the sheets and the support, with its marks.");
    if (!checked.layout().support().map(Support::anchors).orElse(List.of()).isEmpty()) {
      notes.add(TitleLines.FIXING);
    }
    return new ViewPage(extent, false).finish(checked, sketch, title, notes);
  }

  private void addBodies() {
    double thickness = checked.layout().wall().sheet().thickness();
    for (FacetLayout facet : checked.layout().facets()) {
      for (Piece piece : facet.pieces()) {
        Solid solid = Solid.between(piece.outline(), 0, piece.back(), thickness);
        add(piece.mark(), true, solid.mapped(facet.facet().plane()::toRoom));
      }
      for (Member member : facet.members()) {
        Solid solid = member.body(thickness).mapped(facet.facet().plane()::toRoom);
        add(member.mark(), false, solid);
      }
    }
    for (PlacedMember placed : checked.layout().standing()) {
      marked.add(placed.member().mark());
      add(placed.member().mark(), false, placed.body());
    }
  }

  /** What holds a hinged wall, as lines; nothing hides them. */
  private List<LineString> tethers() {
    List<Tether> tethers = checked.layout().support().map(Support::tethers).orElse(List.of());
    Wall wall = checked.layout().wall();
    double behind = wall.sheet().thickness() + wall.frame().depth();
    List<FacetLayout> run = checked.layout().runs().get(0);
    Facet top = run.get(run.size() - 1).facet();
    return tethers.stream()
        .map(
            tether -> {
              Place held = top.plane().toRoom(new Place(tether.u(), tether.v(), behind));
              Coordinate from = view.project(held);
              Coordinate to = view.project(tether.anchor());
              return Shapes.line(from.x, from.y, to.x, to.y);
            })
        .toList();
  }

  private void add(String mark, boolean sheet, Solid solid) {
    bodies.add(SeenBody.of(mark, sheet, solid, List.of(), view));
  }

  private static List<LineString> lines(Geometry seen, double least) {
    List<LineString> lines = new ArrayList<>();
    for (int part = 0; part < seen.getNumGeometries(); part++) {
      if (seen.getGeometryN(part) instanceof LineString line && line.getLength() > least) {
        lines.add(line);
      }
    }
    return lines;
  }

  private static void draw(Sketch sketch, Layer layer, LineString line) {
    Coordinate[] points = line.getCoordinates();
    for (int next = 1; next < points.length; next++) {
      sketch.line(layer, at(points[next - 1]), at(points[next]));
    }
  }

  private static Xy at(Coordinate place) {
    return new Xy(place.x, place.y);
  }
}
