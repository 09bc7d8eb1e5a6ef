package plycrag.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.layout.FacetLayout;
import plycrag.layout.Member;
import plycrag.layout.Role;
import plycrag.params.WallParameters.FoldEdges;
import plycrag.units.Decimal;
import plycrag.wall.Fold;

/**
 * The fold between a facet and the one that stands on it, cut through: how sheets and plates meet,
 * with the angles at which a saw is set.
 */
public final class FoldDetail {
  /** How much is shown around what meets, mm. */
  private static final double AROUND = 60;

  private static final double SAME = 0.01;

  private final CheckedLayout checked;
  private final FacetLayout lower;
  private final FacetLayout upper;
  private final Fold fold;
  private final double thickness;
  private final Envelope window;
  private final Sketch sketch;

  private FoldDetail(CheckedLayout checked, FacetLayout lower, FacetLayout upper, Fold fold) {
    this.checked = checked;
    this.lower = lower;
    this.upper = upper;
    this.fold = fold;
    this.thickness = checked.layout().wall().sheet().thickness();
    double reach = thickness + checked.layout().wall().frame().depth() + AROUND;
    this.window =
        new Envelope(new Coordinate(upper.facet().plane().y(0, 0), upper.facet().plane().z(0, 0)));
    window.expandBy(reach);
    this.sketch = new Sketch(Scale.fitting(window.getWidth(), window.getHeight()));
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
    notes.add("The climbing faces enclose " + degrees(180 - fold.turn()) + ".");
    notes.add("Sheets: " + sheetEdges());
    for (FacetLayout facet : List.of(lower, upper)) {
      drawPart(Layers.OUTLINE, new SideProfile(facet, thickness).sheets());
      plates(facet).forEach(plate -> drawPlate(facet, plate, notes));
      drawStud(facet);
    }
    labelAngle();
    Extent view =
        new Extent(window.getMinX(), window.getMinY(), window.getMaxX(), window.getMaxY());
    String title = "Fold of " + lower.facet().name() + " and " + upper.facet().name();
    return new ViewPage(view, false).finish(checked, sketch, title, notes);
  }

  private String sheetEdges() {
    boolean mitred = checked.layout().wall().foldEdges() == FoldEdges.MITRED;
    double bevel = Math.abs(fold.bevel());
    if (!mitred || bevel < SAME) {
      return "cut square.";
    }
    return "bevel both edges, the blade tilted "
        + degrees(bevel)
        + " from square, "
        + (fold.bevel() > 0 ? "longer at the back." : "longer at the front.");
  }

  private static String degrees(double angle) {
    return Decimal.of(angle, 1) + "°";
  }

  /** The members that the section cuts near the fold. */
  private List<Member> plates(FacetLayout facet) {
    SideProfile profile = new SideProfile(facet, thickness);
    return profile.cutAcross().stream().filter(member -> isSeen(profile.member(member))).toList();
  }

  private boolean isSeen(List<Xy> corners) {
    return corners.stream().anyMatch(corner -> window.contains(corner.x(), corner.y()));
  }

  private void drawPlate(FacetLayout facet, Member plate, List<String> notes) {
    List<Xy> corners = new SideProfile(facet, thickness).member(plate);
    for (Polygon part : shown(corners)) {
      sketch.area(Layers.TINT, Sketch.vertices(part.getExteriorRing(), whole()), Fill.TIMBER);
    }
    drawPart(Layers.PARTS, corners);
    Coordinate middle = polygon(corners).getCentroid().getCoordinate();
    if (window.contains(middle)) {
      Xy at = new Xy(middle.x, middle.y);
      sketch.label(Layers.TEXT, at, plate.mark(), Sketch.SMALL, Anchor.MIDDLE);
    }
    notes.add(
        plate.hasSquareSides()
            ? plate.mark() + ": sides square."
            : plate.mark()
                + ": rip a side, the blade tilted "
                + degrees(Math.abs(plate.rip()))
                + " from square.");
  }

  private void drawStud(FacetLayout facet) {
    facet.members().stream()
        .filter(member -> member.role() == Role.STUD)
        .max(Comparator.comparingDouble(Member::length))
        .ifPresent(
            stud -> drawPart(Layers.CONTEXT, new SideProfile(facet, thickness).member(stud)));
  }

  /** The edges of a part within the window; where the window cuts it, it goes on. */
  private void drawPart(Layer layer, List<Xy> corners) {
    for (Polygon part : shown(corners)) {
      for (LineString edge : Shapes.edges(part)) {
        if (!isCut(edge)) {
          List<Xy> ends = Sketch.points(edge, whole());
          sketch.line(layer, ends.get(0), ends.get(1));
        }
      }
    }
  }

  private List<Polygon> shown(List<Xy> corners) {
    Geometry shared = Shapes.shared(polygon(corners), Shapes.rectangle(window));
    return Shapes.areas(shared);
  }

  private static Polygon polygon(List<Xy> corners) {
    return Shapes.polygon(
        corners.stream().map(corner -> new Coordinate(corner.x(), corner.y())).toList());
  }

  private static FacetFrame whole() {
    return new FacetFrame(false, 0);
  }

  private boolean isCut(LineString edge) {
    Envelope box = edge.getEnvelopeInternal();
    return (box.getWidth() < SAME
            && (box.getMinX() - window.getMinX() < SAME || window.getMaxX() - box.getMaxX() < SAME))
        || (box.getHeight() < SAME
            && (box.getMinY() - window.getMinY() < SAME
                || window.getMaxY() - box.getMaxY() < SAME));
  }

  /** On the climber's side of the fold. */
  private void labelAngle() {
    Xy at = new Xy(window.centre().x + sketch.paper(8), window.centre().y);
    sketch.label(Layers.TEXT, at, degrees(180 - fold.turn()), Sketch.LARGE, Anchor.START);
  }
}
