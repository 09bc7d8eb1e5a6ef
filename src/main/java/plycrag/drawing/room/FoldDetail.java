package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Fill;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.FacetPlane;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.stock.JointHardware;
import plycrag.wall.Fold;

/**
 * The fold between a facet and the one that stands on it, cut through: how sheets and plates meet,
 * with the angles at which a saw is set.
 */
public final class FoldDetail {
  /** How much is shown around what meets, mm. */
  private static final double AROUND = 60;

  /** A hinge as it is drawn (a choice: what is bought decides), mm. */
  private static final double LEAF = 60;

  private static final double PIN = 6;
  private static final double SHEET_METAL = 3;

  private final CheckedLayout checked;
  private final FacetLayout lower;
  private final FacetLayout upper;
  private final Fold fold;
  private final double thickness;
  private final DetailWindow window;
  private final Sketch sketch;

  private FoldDetail(CheckedLayout checked, FacetLayout lower, FacetLayout upper, Fold fold) {
    this.checked = checked;
    this.lower = lower;
    this.upper = upper;
    this.fold = fold;
    this.thickness = checked.layout().wall().sheet().thickness();
    double reach = thickness + checked.layout().wall().frame().depth() + AROUND;
    Xy place = new Xy(upper.facet().plane().y(0, 0), upper.facet().plane().z(0, 0));
    this.window = DetailWindow.around(place, reach);
    this.sketch = window.sketch();
  }

  /**
   * The detail of the fold below a facet.
   *
   * @param lower the facet that it stands on
   * @param upper the facet
   * @throws IllegalArgumentException if it stands on none; a defect of the caller
   */
  public static Drawing of(CheckedLayout checked, FacetLayout lower, FacetLayout upper) {
    Fold fold =
        upper
            .facet()
            .fold(Fold.Place.BELOW)
            .orElseThrow(
                () -> new IllegalArgumentException(upper.facet().name() + " stands alone"));
    return new FoldDetail(checked, lower, upper, fold).drawing();
  }

  private Drawing drawing() {
    List<String> notes = new ArrayList<>();
    notes.add("CUT THROUGH, SEEN FROM THE LEFT; the climber is at the right. Tinted: plates, cut.");
    notes.add("The climbing faces enclose " + SawWords.degrees(180 - fold.turn()) + ".");
    notes.add("Sheets: " + SawWords.sheetEdges(checked.layout().wall(), fold));
    for (FacetLayout facet : List.of(lower, upper)) {
      window.draw(Layers.OUTLINE, new SideProfile(facet, thickness).sheets());
      plates(facet).forEach(plate -> drawPlate(facet, plate, notes));
      drawStud(facet);
    }
    drawHinge(notes);
    labelAngle();
    String title = "Fold of " + lower.facet().name() + " and " + upper.facet().name();
    return new ViewPage(window.extent(), false).finish(checked, sketch, title, notes);
  }

  /** The members that the section cuts near the fold. */
  private List<Member> plates(FacetLayout facet) {
    SideProfile profile = new SideProfile(facet, thickness);
    return profile.cutAcross().stream()
        .filter(member -> window.isSeen(profile.member(member)))
        .toList();
  }

  private void drawPlate(FacetLayout facet, Member plate, List<String> notes) {
    List<Xy> corners = new SideProfile(facet, thickness).member(plate);
    window.drawTimber(corners, plate.mark());
    notes.add(SawWords.sides(plate));
  }

  private void drawStud(FacetLayout facet) {
    facet.members().stream()
        .filter(member -> member.role() == MemberRole.STUD)
        .max(Comparator.comparingDouble(Member::length))
        .ifPresent(
            stud -> window.draw(Layers.CONTEXT, new SideProfile(facet, thickness).member(stud)));
  }

  /** What swings turns about the line where the climbing faces meet: there its hinges' pins are. */
  private void drawHinge(List<String> notes) {
    for (Joint joint : lower.joints()) {
      if (joint.kind() == Joint.Kind.HINGE) {
        FacetPlane above = upper.facet().plane();
        FacetPlane below = lower.facet().plane();
        double end = lower.facet().length();
        drawLeaf(below, end - LEAF, end);
        drawLeaf(above, 0, LEAF);
        sketch.circle(Layers.OUTLINE, new Xy(above.y(0, 0), above.z(0, 0)), PIN);
        int count = JointHardware.of(joint, checked.layout()).count();
        notes.add(
            count
                + " hinges, evenly along the fold, one near each end; their pins on the line where"
                + " the climbing faces meet,");
        notes.add(
            "their screws through the sheets into "
                + joint.first()
                + " and "
                + joint.second()
                + ". Which hinge bears the load is for an engineer.");
      }
    }
  }

  private void drawLeaf(FacetPlane plane, double from, double to) {
    List<Xy> corners = new ArrayList<>();
    for (double[] at :
        new double[][] {{from, 0}, {to, 0}, {to, -SHEET_METAL}, {from, -SHEET_METAL}}) {
      corners.add(new Xy(plane.y(at[0], at[1]), plane.z(at[0], at[1])));
    }
    sketch.area(Layers.TINT, corners, Fill.INK);
  }

  /** On the climber's side of the fold. */
  private void labelAngle() {
    Xy at = new Xy(window.box().centre().x + sketch.paper(8), window.box().centre().y);
    sketch.label(
        Layers.TEXT, at, SawWords.degrees(180 - fold.turn()), Sketch.LARGE, TextAnchor.START);
  }
}
