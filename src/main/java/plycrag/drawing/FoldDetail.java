package plycrag.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Drawing;
import plycrag.document.Xy;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.layout.Role;
import plycrag.wall.Fold;

/**
 * The fold between a facet and the one that stands on it, cut through: how sheets and plates meet,
 * with the angles at which a saw is set.
 */
public final class FoldDetail {
  /** How much is shown around what meets, mm. */
  private static final double AROUND = 60;

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
        .filter(member -> member.role() == Role.STUD)
        .max(Comparator.comparingDouble(Member::length))
        .ifPresent(
            stud -> window.draw(Layers.CONTEXT, new SideProfile(facet, thickness).member(stud)));
  }

  /** On the climber's side of the fold. */
  private void labelAngle() {
    Xy at = new Xy(window.box().centre().x + sketch.paper(8), window.box().centre().y);
    sketch.label(Layers.TEXT, at, SawWords.degrees(180 - fold.turn()), Sketch.LARGE, Anchor.START);
  }
}
