package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Xy;
import plycrag.layout.Axis;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.layout.Role;
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
    this.sketch = new Sketch(Math.min(20, Scale.fitting(box.getWidth(), box.getHeight())));
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
    members.forEach(this::labelMember);
    Datum.outside(sketch, new Xy(box.getMinX(), box.getMinY()), 1);
    drawDimensions();
    String facet = layout.facet().name();
    Tape tape = checked.layout().wall().tape();
    List<String> notes =
        List.of(
            "FRONT, sheets left off. Read from the filled corner, in " + tape.unit().plural() + ":",
            "the left side of every stud, the underside of every plate and blocking.");
    Extent view = new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
    return new ViewPage(view, false).finish(checked, sketch, "Frame of facet " + facet, notes);
  }

  private void labelMember(Member member) {
    Envelope place = member.box();
    if (member.axis() == Axis.UP) {
      Xy at = beside(member, new Xy(place.centre().x, clearHeight(place)));
      sketch.labelUp(Layers.TEXT, at, member.mark(), Sketch.SMALL, Anchor.MIDDLE);
    } else {
      Xy at = beside(member, new Xy(clearWidth(place), place.centre().y));
      sketch.label(Layers.TEXT, at, member.mark(), Sketch.SMALL, Anchor.MIDDLE);
    }
  }

  /** The middle of the longest stretch of a stud that no blocking meets. */
  private double clearHeight(Envelope stud) {
    double from = stud.getMinY();
    double best = stud.centre().y;
    double longest = 0;
    TreeMap<Double, Double> rows = new TreeMap<>();
    for (Member member : layout.members()) {
      if (member.axis() == Axis.ACROSS) {
        rows.put(member.box().getMinY(), member.box().getMaxY());
      }
    }
    for (Map.Entry<Double, Double> row : rows.entrySet()) {
      if (row.getKey() - from > longest) {
        longest = row.getKey() - from;
        best = (row.getKey() + from) / 2;
      }
      from = Math.max(from, row.getValue());
    }
    return best;
  }

  /** The middle of that bay between studs which is nearest to a member's middle. */
  private double clearWidth(Envelope member) {
    List<Envelope> studs =
        layout.members().stream()
            .filter(other -> other.role() == Role.STUD)
            .map(Member::box)
            .toList();
    double best = member.centre().x;
    double nearest = Double.MAX_VALUE;
    for (int next = 1; next < studs.size(); next++) {
      double low = Math.max(member.getMinX(), studs.get(next - 1).getMaxX());
      double high = Math.min(member.getMaxX(), studs.get(next).getMinX());
      double away = Math.abs((low + high) / 2 - member.centre().x);
      if (high > low && away < nearest) {
        nearest = away;
        best = (low + high) / 2;
      }
    }
    return best;
  }

  /** Inside the member where its breadth on paper allows it, else just beside it, in the frame. */
  private Xy beside(Member member, Xy middle) {
    if (member.breadth() >= sketch.paper(Sketch.SMALL + 0.4)) {
      return middle;
    }
    double off = member.breadth() / 2 + sketch.paper(Sketch.SMALL / 2 + 0.7);
    Axis across = member.axis().other();
    double before = across.middle(member.box()) - off;
    double side = before < across.low(box) || hasNeighbourBefore(member) ? off : -off;
    return member.axis() == Axis.UP ? middle.plus(side, 0) : middle.plus(0, side);
  }

  private boolean hasNeighbourBefore(Member member) {
    Axis across = member.axis().other();
    return layout.members().stream()
        .anyMatch(
            other ->
                other.role() == member.role()
                    && Math.abs(across.high(other.box()) - across.low(member.box())) < 0.01);
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    List<Double> across = new ArrayList<>();
    List<Double> up = new ArrayList<>();
    for (Member member : layout.members()) {
      if (member.role() == Role.STUD) {
        across.add(member.box().getMinX() - box.getMinX());
      } else {
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
