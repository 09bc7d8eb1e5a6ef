package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.support.Tether;
import plycrag.layout.support.WallSupport;

/** The wall as it stands on its support, from one side; what is hidden is left out. */
public final class StandingView {
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
    Map<String, LineString> tethers = tethers();
    tethers.values().forEach(line -> box.expandToInclude(line.getEnvelopeInternal()));
    Sketch sketch = new Sketch(Scale.fitting(box.getWidth(), box.getHeight()));
    PartMarks marks = new PartMarks(sketch);
    for (int at = 0; at < bodies.size(); at++) {
      SeenBody body = bodies.get(at);
      List<LineString> lines = LineWork.lines(seen.get(at), sketch);
      boolean support = marked.contains(body.mark());
      Layer layer = support || body.sheet() ? Layers.OUTLINE : Layers.CONTEXT;
      lines.forEach(line -> LineWork.draw(sketch, layer, line));
      if (support) {
        marks.add(body.mark(), lines);
      } else {
        marks.keepOff(lines);
      }
    }
    tethers.forEach((mark, line) -> marks.add(mark, List.of(line)));
    tethers.values().forEach(line -> LineWork.draw(sketch, Layers.CENTRE, line));
    box.expandToInclude(marks.draw());
    Extent extent = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    List<String> notes = new ArrayList<>();
    notes.add(note);
    notes.add("Thick: the sheets and the support, with its marks.");
    if (!checked.layout().support().map(WallSupport::anchors).orElse(List.of()).isEmpty()) {
      notes.add(TitleLines.FIXING);
    }
    return new ViewPage(extent, false).finish(checked, sketch, title, notes);
  }

  private void addBodies() {
    Layout layout = checked.layout();
    Set<String> sheets = new TreeSet<>();
    layout.facets().forEach(one -> one.pieces().forEach(piece -> sheets.add(piece.mark())));
    layout.standing().forEach(placed -> marked.add(placed.member().mark()));
    for (int run = 0; run < layout.runs().size(); run++) {
      for (RunAtAngle.Body body : RunAtAngle.of(layout, run, angle()).bodies()) {
        boolean sheet = sheets.contains(body.mark());
        bodies.add(SeenBody.of(body.mark(), sheet, body.solid(), List.of(), view));
      }
    }
  }

  /** The angle that a hinged wall is laid out at; without meaning where nothing swings. */
  private double angle() {
    List<FacetLayout> run = checked.layout().runs().get(0);
    return run.get(Math.min(1, run.size() - 1)).facet().angle();
  }

  /** What holds a hinged wall, as lines by their marks; nothing hides them. */
  private Map<String, LineString> tethers() {
    Map<String, LineString> lines = new LinkedHashMap<>();
    for (Tether tether : checked.layout().support().map(WallSupport::tethers).orElse(List.of())) {
      Coordinate from = view.project(checked.layout().held(tether, angle()));
      Coordinate to = view.project(tether.anchor());
      lines.put(tether.mark(), Shapes.line(from.x, from.y, to.x, to.y));
    }
    return lines;
  }
}
