package plycrag.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Xy;
import plycrag.geometry.FacetPlane;
import plycrag.layout.Axis;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** A section through a facet, seen from its right: its lean, its heights, the timber cut across. */
public final class SideView {
  /** How far the floor is drawn beyond the wall on paper, mm. */
  private static final double FLOOR = 14;

  private final CheckedLayout checked;
  private final FacetLayout layout;
  private final Facet facet;
  private final FacetPlane plane;
  private final double thickness;
  private final double back;
  private final double foot;
  private final Sketch sketch;

  private SideView(CheckedLayout checked, FacetLayout layout) {
    this.checked = checked;
    this.layout = layout;
    this.facet = layout.facet();
    this.plane = new FacetPlane(facet.angle(), facet.raise());
    this.thickness = checked.layout().wall().sheet().thickness();
    this.back = thickness + checked.layout().wall().frame().depth();
    this.foot = layout.footing().plateLow();
    Extent view = view();
    this.sketch = new Sketch(Scale.fitting(view.width(), view.height()));
  }

  /** The section of a facet. */
  public static Drawing of(CheckedLayout checked, FacetLayout layout) {
    return new SideView(checked, layout).drawing();
  }

  private Drawing drawing() {
    drawFloor();
    drawTimber();
    sketch.outline(
        Layers.OUTLINE,
        List.of(at(0, 0), at(facet.length(), 0), at(facet.length(), thickness), at(0, thickness)));
    drawDimensions();
    Tape tape = checked.layout().wall().tape();
    List<String> notes =
        List.of(
            "SECTION, SEEN FROM THE RIGHT. Heights above the floor, in "
                + tape.unit().plural()
                + ".",
            lean(tape));
    Extent view = view();
    Extent withFloor =
        new Extent(view.left(), view.low(), view.right() + sketch.paper(FLOOR), view.high());
    return new ViewPage(withFloor, false)
        .finish(checked, sketch, "Section of facet " + facet.name(), notes);
  }

  private String lean(Tape tape) {
    String length = "The face is " + tape.text(facet.length()) + " up the slope";
    if (!facet.leans()) {
      return length + " and plumb.";
    }
    return length
        + " and "
        + (facet.angle() > 0 ? "leans out " : "leans back ")
        + Decimal.of(Math.abs(facet.angle()), 2)
        + "° from plumb.";
  }

  private Extent view() {
    List<Xy> corners =
        Stream.of(
                at(0, 0),
                at(facet.length(), 0),
                at(facet.length(), back),
                at(foot, back),
                at(foot, thickness))
            .toList();
    return new Extent(
        corners.stream().map(Xy::x).min(Comparator.naturalOrder()).orElseThrow(),
        Math.min(0, corners.stream().map(Xy::y).min(Comparator.naturalOrder()).orElseThrow()),
        corners.stream().map(Xy::x).max(Comparator.naturalOrder()).orElseThrow(),
        corners.stream().map(Xy::y).max(Comparator.naturalOrder()).orElseThrow());
  }

  private Xy at(double v, double behind) {
    return new Xy(plane.y(v, behind), plane.z(v, behind));
  }

  private void drawFloor() {
    Extent view = view();
    double left = view.left() - sketch.paper(2);
    double right = view.right() + sketch.paper(FLOOR);
    sketch.line(Layers.PARTS, new Xy(left, 0), new Xy(right, 0));
    double hatch = sketch.paper(2);
    for (double x = left + hatch; x < right; x += 2 * hatch) {
      sketch.line(Layers.CONTEXT, new Xy(x, 0), new Xy(x - hatch, -hatch));
    }
  }

  private void drawTimber() {
    TreeMap<Double, Member> cut = new TreeMap<>();
    TreeSet<Double> joints = new TreeSet<>();
    for (Member member : layout.members()) {
      if (member.axis() == Axis.ACROSS) {
        cut.putIfAbsent(member.box().getMinY(), member);
        joints.add(member.box().getMinY());
        joints.add(member.box().getMaxY());
      }
    }
    cut.values().forEach(this::drawCut);
    joints.remove(foot);
    joints.remove(facet.length());
    for (double v : joints) {
      sketch.line(Layers.PARTS, at(v, thickness), at(v, back));
    }
    sketch.path(Layers.PARTS, frame());
  }

  /** The frame's edge, but for what the sheet's back shares with it. */
  private List<Xy> frame() {
    List<Xy> frame = new ArrayList<>();
    frame.add(at(0, thickness));
    if (foot < 0) {
      frame.add(at(foot, thickness));
    }
    frame.add(at(foot, back));
    frame.add(at(facet.length(), back));
    frame.add(at(facet.length(), thickness));
    return frame;
  }

  /** Timber in section: a tint and two crossing diagonals. */
  private void drawCut(Member member) {
    double low = member.box().getMinY();
    double high = member.box().getMaxY();
    double deep = thickness + member.depth();
    List<Xy> corners =
        List.of(at(low, thickness), at(high, thickness), at(high, deep), at(low, deep));
    sketch.area(Layers.TINT, corners, Fill.TIMBER);
    sketch.line(Layers.CONTEXT, corners.get(0), corners.get(2));
    sketch.line(Layers.CONTEXT, corners.get(1), corners.get(3));
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    Extent view = view();
    List<Double> heights = new ArrayList<>();
    if (facet.raise() > 0) {
      heights.add(facet.raise());
    }
    heights.add(facet.overallHeight());
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    dimensions.up(0, view.left(), Readings.of(heights, tape, z -> z));
    if (facet.leans()) {
      new RunningDimensions(sketch, facet.angle() > 0 ? 1 : -1)
          .across(
              0, view.low(), Readings.of(List.of(Math.abs(facet.reach())), tape, this::outward));
    }
    sketch.label(
        Layers.TEXT,
        new Xy(view.right() + sketch.paper(FLOOR), sketch.paper(2.5)),
        "floor",
        Sketch.SMALL,
        Anchor.END);
  }

  private double outward(double reach) {
    return facet.angle() > 0 ? reach : -reach;
  }
}
