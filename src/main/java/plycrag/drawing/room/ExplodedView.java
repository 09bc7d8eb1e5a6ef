package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Layer;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Piece;
import plycrag.layout.support.PlacedMember;

/**
 * The whole wall in parts: sheets drawn off their frames, frames off each other, each part with its
 * mark; what is hidden is left out.
 */
public final class ExplodedView {
  /** At a smaller scale timber is too thin to tell apart; the page is larger instead. */
  private static final int SMALLEST_SCALE = 20;

  private final CheckedLayout checked;
  private final Axonometry view;
  private final Explosion explosion;
  private final List<SeenBody> bodies = new ArrayList<>();

  private ExplodedView(CheckedLayout checked, Axonometry view) {
    this.checked = checked;
    this.view = view;
    this.explosion = Explosion.of(checked);
  }

  /** From before the wall: the sheets, and what of the frame they leave to be seen. */
  public static Drawing of(CheckedLayout checked) {
    return new ExplodedView(checked, Axonometry.USUAL)
        .drawing("All parts", "EXPLODED, from before the wall, its right and above.");
  }

  /** From behind: the frame, before the sheets. */
  public static Drawing fromBehind(CheckedLayout checked) {
    return new ExplodedView(checked, Axonometry.BEHIND)
        .drawing(
            "All parts, from behind", "EXPLODED, SEEN FROM BEHIND, its climber's left and above.");
  }

  private Drawing drawing(String title, String from) {
    for (List<FacetLayout> run : checked.layout().runs()) {
      for (int level = 0; level < run.size(); level++) {
        add(run.get(level), level);
      }
    }
    for (PlacedMember placed : checked.layout().standing()) {
      bodies.add(SeenBody.of(placed.member().mark(), false, placed.body(), List.of(), view));
    }
    List<Geometry> seen = HiddenLines.seen(bodies, view);
    Envelope box = new Envelope();
    seen.forEach(lines -> box.expandToInclude(lines.getEnvelopeInternal()));
    Sketch sketch = new Sketch(Scale.fitting(box.getWidth(), box.getHeight(), SMALLEST_SCALE));
    PartMarks marks = new PartMarks(sketch);
    for (int at = 0; at < bodies.size(); at++) {
      List<LineString> lines = LineWork.lines(seen.get(at), sketch);
      Layer layer = bodies.get(at).sheet() ? Layers.OUTLINE : Layers.PARTS;
      lines.forEach(line -> LineWork.draw(sketch, layer, line));
      marks.add(bodies.get(at).mark(), lines);
      if (bodies.get(at).sheet()) {
        marks.face(bodies.get(at).mark(), bodies.get(at).open(bodies, view.toViewer()));
      }
    }
    Envelope written = marks.draw();
    box.expandToInclude(written);
    Extent extent = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    List<String> notes =
        List.of(
            from + " Sheets are drawn off the frame.",
            "Marks are those of the lists. What is hidden is left out.");
    return new ViewPage(extent, false).finish(checked, sketch, title, notes);
  }

  private void add(FacetLayout facet, int level) {
    double thickness = checked.layout().wall().sheet().thickness();
    UnaryOperator<Vector3> frame = explosion.frame(facet, level);
    UnaryOperator<Vector3> sheets = explosion.sheets(facet, level);
    for (Piece piece : facet.pieces()) {
      Solid solid = Solid.joining(piece.outline(), 0, piece.back(), thickness).mapped(sheets);
      bodies.add(SeenBody.of(piece.mark(), true, solid, openings(piece, sheets), view));
    }
    for (Member member : facet.members()) {
      Solid solid = member.body(thickness).mapped(frame);
      bodies.add(SeenBody.of(member.mark(), false, solid, List.of(), view));
    }
  }

  private List<Polygon> openings(Piece piece, UnaryOperator<Vector3> axes) {
    List<Polygon> openings = new ArrayList<>();
    for (int hole = 0; hole < piece.outline().getNumInteriorRing(); hole++) {
      Coordinate[] ring = piece.outline().getInteriorRingN(hole).getCoordinates();
      openings.add(
          Shapes.polygon(
              Stream.of(ring)
                  .limit(ring.length - 1L)
                  .map(at -> view.project(axes.apply(new Vector3(at.x, at.y, 0))))
                  .toList()));
    }
    return openings;
  }
}
