package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.FloorLine;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Tolerance;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/**
 * A section through the wall, seen from the climber's left: its leans, its heights, the timber cut
 * across.
 */
public final class SideView {
  /** How far the floor is drawn beyond the wall on paper, mm. */
  private static final double FLOOR = 14;

  private final CheckedLayout checked;
  private final List<FacetLayout> run;
  private final double thickness;
  private final SideSurroundings surroundings;
  private final Extent view;
  private final Sketch sketch;

  private SideView(CheckedLayout checked, List<FacetLayout> run) {
    this.checked = checked;
    this.run = run;
    this.thickness = checked.layout().wall().sheet().thickness();
    this.surroundings = new SideSurroundings(checked, run);
    this.view = view();
    this.sketch = new Sketch(Scale.fitting(view.width(), view.height()));
  }

  /**
   * The section of a run.
   *
   * @param run facets that stand on each other, from the floor up
   */
  public static Drawing of(CheckedLayout checked, List<FacetLayout> run) {
    return new SideView(checked, run).drawing();
  }

  private Drawing drawing() {
    drawFloor();
    run.forEach(this::tintTimber);
    run.forEach(facet -> sketch.closed(Layers.OUTLINE, sheets(facet)));
    run.forEach(this::drawTimber);
    lowerEnd().ifPresent(ends -> sketch.line(Layers.BEHIND, ends.get(0), ends.get(1)));
    surroundings.draw(sketch);
    drawDimensions();
    surroundings.drawObstacles(sketch, view);
    Tape tape = checked.layout().wall().tape();
    List<String> notes = new ArrayList<>();
    notes.add(
        "SECTION, SEEN FROM THE LEFT. Heights above the floor, in " + tape.unit().plural() + ".");
    run.forEach(facet -> notes.add(lean(facet.facet(), tape)));
    lowerEnd().ifPresent(ends -> notes.add("Dashed: the lower end of the upper edge."));
    notes.add(TitleLines.MATTING);
    Extent withFloor =
        new Extent(view.left(), view.low(), view.right() + sketch.paper(FLOOR), view.high());
    return new ViewPage(withFloor, false).finish(checked, sketch, title(), notes);
  }

  private String title() {
    boolean only = run.size() == checked.layout().facets().size();
    return only ? "Section" : "Section at facet " + run.get(0).facet().name();
  }

  private static String lean(Facet facet, Tape tape) {
    String length = "Facet " + facet.name() + " is " + tape.text(facet.length()) + " up the slope";
    if (!facet.leans()) {
      return length + " and plumb.";
    }
    return length
        + " and "
        + (facet.angle() > 0 ? "leans out " : "leans back ")
        + Decimal.of(Math.abs(facet.angle()), 2)
        + "° from plumb.";
  }

  /** Where an upper edge that follows a ceiling along the wall ends lower. */
  private Optional<List<Xy>> lowerEnd() {
    FacetLayout top = run.get(run.size() - 1);
    SideProfile profile = new SideProfile(top, thickness);
    double end = profile.lowerEnd();
    boolean falls = surroundings.ceilingFallsAlong();
    return falls && end < top.facet().length() - Tolerance.TOUCH
        ? Optional.of(profile.across(end))
        : Optional.empty();
  }

  private Extent view() {
    Envelope box = surroundings.box();
    for (FacetLayout facet : run) {
      sheets(facet).forEach(corner -> box.expandToInclude(corner.x(), corner.y()));
      for (Member member : facet.members()) {
        profile(facet, member).forEach(corner -> box.expandToInclude(corner.x(), corner.y()));
      }
    }
    return new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  private List<Xy> sheets(FacetLayout facet) {
    return new SideProfile(facet, thickness).sheets();
  }

  private List<Xy> profile(FacetLayout facet, Member member) {
    return new SideProfile(facet, thickness).member(member);
  }

  private void drawFloor() {
    FloorLine.draw(sketch, view.left() - sketch.paper(2), view.right() + sketch.paper(FLOOR));
  }

  private void tintTimber(FacetLayout facet) {
    new SideProfile(facet, thickness)
        .cutAcross()
        .forEach(member -> sketch.area(Layers.TINT, profile(facet, member), Fill.TIMBER));
  }

  /** Timber in section has two crossing diagonals; behind it stands a stud. */
  private void drawTimber(FacetLayout facet) {
    for (Member member : new SideProfile(facet, thickness).cutAcross()) {
      List<Xy> corners = profile(facet, member);
      sketch.closed(Layers.PARTS, corners);
      sketch.line(Layers.CONTEXT, corners.get(0), corners.get(2));
      sketch.line(Layers.CONTEXT, corners.get(1), corners.get(3));
    }
    facet.members().stream()
        .filter(member -> member.role() == MemberRole.STUD)
        .max(Comparator.comparingDouble(Member::length))
        .ifPresent(stud -> sketch.closed(Layers.PARTS, profile(facet, stud)));
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    List<Double> heights = new ArrayList<>();
    List<Double> out = new ArrayList<>();
    List<Double> back = new ArrayList<>();
    for (FacetLayout facet : run) {
      heights.add(facet.facet().raise());
      heights.add(facet.facet().overallHeight());
      double reach = facet.facet().plane().y(facet.facet().length(), 0);
      (reach > 0 ? out : back).add(Math.abs(reach));
    }
    lowerEnd().ifPresent(ends -> heights.add(ends.get(0).y()));
    heights.removeIf(height -> height <= 0);
    new RunningDimensions(sketch, 1)
        .up(0, view.left(), Readings.of(heights, tape, height -> height));
    across(out, 1, tape);
    across(back, -1, tape);
    sketch.label(
        Layers.TEXT,
        new Xy(view.right() + sketch.paper(FLOOR), sketch.paper(2.5)),
        "floor",
        Sketch.SMALL,
        TextAnchor.END);
  }

  /** How far upper edges stand out from the lowest one, or back. */
  private void across(List<Double> reaches, int sign, Tape tape) {
    reaches.removeIf(reach -> reach < tape.unit().markingGrid());
    if (!reaches.isEmpty()) {
      new RunningDimensions(sketch, sign)
          .across(0, view.low(), Readings.of(reaches, tape, reach -> sign * reach));
    }
  }
}
