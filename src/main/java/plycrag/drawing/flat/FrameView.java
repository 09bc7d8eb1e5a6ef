package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Xy;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Hulls;
import plycrag.geometry.Solid;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.joints.Hardware;
import plycrag.units.Tape;

/**
 * The frame of a facet from the front, the sheets left off: every member with its mark, and what a
 * tape reads from the frame's lower left corner at the left side of each stud and the underside of
 * each plate and blocking.
 */
public final class FrameView {
  private final CheckedLayout checked;
  private final FacetLayout layout;
  private final FacetFrame frame;
  private final Envelope box = new Envelope();
  private final Sketch sketch;

  private FrameView(CheckedLayout checked, FacetLayout layout) {
    this.checked = checked;
    this.layout = layout;
    this.frame = new FacetFrame(false, layout.facet().width());
    layout.members().forEach(member -> box.expandToInclude(member.box()));
    this.sketch = new Sketch(Scale.fitting(box.getWidth(), box.getHeight(), 20));
  }

  /** The view of a facet's frame. */
  public static Drawing of(CheckedLayout checked, FacetLayout layout) {
    return new FrameView(checked, layout).drawing();
  }

  private Drawing drawing() {
    List<Member> members = layout.members();
    for (Member member : members) {
      List<Xy> vertices = Sketch.vertices(member.footprint().getExteriorRing(), frame);
      sketch.area(Layers.TINT, vertices, Fill.TIMBER);
    }
    members.forEach(member -> sketch.edges(Layers.OUTLINE, member.footprint(), frame));
    Map<String, List<Polygon>> hardware = hardware();
    hardware.values().stream()
        .flatMap(List::stream)
        .forEach(one -> sketch.edges(Layers.HARDWARE, one, frame));
    new FrameLabels(sketch, members, hardware).draw();
    Datum.outside(sketch, new Xy(box.getMinX(), box.getMinY()), 1);
    drawDimensions();
    String facet = layout.facet().name();
    Tape tape = checked.layout().wall().tape();
    List<String> notes =
        List.of(
            "FRONT, sheets left off. Read from the filled corner, in " + tape.unit().plural() + ":",
            "the left side of every stud, the underside of every plate and blocking.",
            "Fine lines: brackets BR, straps SP, bolts BT, screws SC, hinges HN, gussets GU, anchors AN;",
            "those without room for their marks are in lists/hardware.csv.");
    Extent view = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    return new ViewPage(view, false).finish(checked, sketch, "Frame of facet " + facet, notes);
  }

  /** The outlines of what lies on the facet's timber or in it, by their marks. */
  private Map<String, List<Polygon>> hardware() {
    Set<String> own = layout.members().stream().map(Member::mark).collect(Collectors.toSet());
    Map<String, List<Polygon>> outlines = new LinkedHashMap<>();
    for (Hardware piece : checked.layout().hardware()) {
      List<Polygon> parts = piece.form().parts().stream().map(this::outline).toList();
      if (!parts.isEmpty() && piece.members().stream().anyMatch(own::contains)) {
        outlines.put(piece.mark(), parts);
      }
    }
    return outlines;
  }

  private Polygon outline(Solid part) {
    return Hulls.around(
        Stream.concat(part.near().stream(), part.far().stream())
            .map(layout.facet().plane()::fromRoom)
            .map(corner -> new Coordinate(corner.x(), corner.y()))
            .toList());
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    List<Double> across = new ArrayList<>();
    List<Double> up = new ArrayList<>();
    for (Member member : layout.members()) {
      if (member.role().isUpright()) {
        across.add(member.box().getMinX() - box.getMinX());
      } else if (member.isUpOrLevel()) {
        up.add(member.box().getMinY() - box.getMinY());
      }
    }
    across.add(box.getWidth());
    up.add(box.getHeight());
    across.removeIf(place -> place <= 0);
    up.removeIf(place -> place <= 0);
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    dimensions.across(
        box.getMinX(), box.getMinY(), Readings.of(across, tape, u -> u + box.getMinX()));
    dimensions.up(box.getMinY(), box.getMinX(), Readings.of(up, tape, v -> v + box.getMinY()));
  }
}
