package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/**
 * The corner between two walls, cut level at half its height: how sheets and timber meet, with the
 * angles at which a saw is set.
 */
public final class CornerDetail {
  /** How much is shown around what meets, mm. */
  private static final double AROUND = 60;

  /** From a face to the middle of its name on paper, mm. */
  private static final double CLEAR = 4;

  /** Heights tried from the middle up and down to find one without blocking or openings, mm. */
  private static final double STEP = 25;

  private final CheckedLayout checked;
  private final FacetLayout left;
  private final FacetLayout right;
  private final Fold fold;
  private final double thickness;
  private final double reach;

  private CornerDetail(CheckedLayout checked, FacetLayout left, FacetLayout right, Fold fold) {
    this.checked = checked;
    this.left = left;
    this.right = right;
    this.fold = fold;
    this.thickness = checked.layout().wall().sheet().thickness();
    this.reach = 1.5 * (thickness + checked.layout().wall().frame().depth()) + AROUND;
  }

  /**
   * The detail of a corner on the left of a facet.
   *
   * @param fold one that runs up, as the facet has it
   */
  public static Drawing of(CheckedLayout checked, FacetLayout right, Fold fold) {
    FacetLayout left =
        checked.layout().facets().stream()
            .filter(facet -> facet.facet().name().equals(fold.other()))
            .findFirst()
            .orElseThrow();
    return new CornerDetail(checked, left, right, fold).drawing();
  }

  private Drawing drawing() {
    double height = height();
    DetailWindow window = DetailWindow.around(corner(height), reach);
    Tape tape = checked.layout().wall().tape();
    List<String> notes = new ArrayList<>();
    notes.add(
        "CUT LEVEL, SEEN FROM ABOVE, "
            + tape.text(tape.snap(height))
            + " above the floor; the climber stands below. Tinted: timber, cut.");
    notes.add("The climbing faces enclose " + SawWords.degrees(180 - fold.turn()) + ".");
    notes.add("Sheets: " + SawWords.sheetEdges(checked.layout().wall(), fold));
    for (FacetLayout facet : List.of(left, right)) {
      LevelCut cut = new LevelCut(facet.facet().plane(), height, thickness);
      facet.pieces().stream()
          .flatMap(piece -> cut.piece(piece).stream())
          .forEach(part -> window.draw(Layers.OUTLINE, part));
      facet.members().forEach(member -> draw(member, cut, window, notes));
    }
    nameFaces(height, window);
    String title = "Corner of " + left.facet().name() + " and " + right.facet().name();
    return new ViewPage(window.extent(), false).finish(checked, window.sketch(), title, notes);
  }

  private static void draw(Member member, LevelCut cut, DetailWindow window, List<String> notes) {
    cut.member(member)
        .filter(window::isSeen)
        .ifPresent(
            corners -> {
              window.drawTimber(corners, member.mark());
              notes.add(SawWords.sides(member));
            });
  }

  /**
   * The middle of the corner, or the next height where sheets meet and no blocking is cut along.
   */
  private double height() {
    Envelope one = heights(left, back());
    Envelope both = one.intersection(heights(right, fold));
    double middle = (both.getMinX() + both.getMaxX()) / 2;
    for (double away = 0; away < both.getWidth() / 2; away += STEP) {
      for (double height : new double[] {middle - away, middle + away}) {
        if (isClear(height)) {
          return height;
        }
      }
    }
    return middle;
  }

  /** The corner as the left facet has it. */
  private Fold back() {
    Facet facet = left.facet();
    return facet.folds().stream()
        .filter(one -> fold.isSameAs(one, right.facet().name(), facet.name()))
        .findFirst()
        .orElseThrow();
  }

  /** From where to where a side runs, heights above the floor. */
  private static Envelope heights(FacetLayout layout, Fold fold) {
    Facet facet = layout.facet();
    Envelope heights = new Envelope();
    for (Coordinate end : Shapes.outerEdges(facet.boundary()).get(fold.side()).getCoordinates()) {
      heights.expandToInclude(facet.plane().toRoom(new Vector3(end.x, end.y, 0)).z(), 0);
    }
    return heights;
  }

  private boolean isClear(double height) {
    Xy corner = corner(height);
    DetailWindow window = DetailWindow.around(corner, reach);
    return List.of(left, right).stream()
        .allMatch(
            facet -> {
              LevelCut cut = new LevelCut(facet.facet().plane(), height, thickness);
              return reaches(facet, cut, corner)
                  && facet.members().stream()
                      .filter(member -> !member.role().isUpright() && member.isUpOrLevel())
                      .noneMatch(member -> cut.member(member).filter(window::isSeen).isPresent());
            });
  }

  /** Whether a facet's sheet goes on to the corner: an opening may take the side there. */
  private boolean reaches(FacetLayout facet, LevelCut cut, Xy corner) {
    return facet.pieces().stream()
        .flatMap(piece -> cut.piece(piece).stream())
        .flatMap(List::stream)
        .map(CornerDetail::coordinate)
        .anyMatch(at -> at.distance(coordinate(corner)) < 2 * thickness);
  }

  private static Coordinate coordinate(Xy place) {
    return new Coordinate(place.x(), place.y());
  }

  /** Where the corner is at a height. */
  private Xy corner(double height) {
    Facet facet = right.facet();
    LineString side = Shapes.outerEdges(facet.boundary()).get(fold.side());
    LevelCut cut = new LevelCut(facet.plane(), height, thickness);
    Coordinate from = side.getCoordinateN(0);
    Coordinate to = side.getCoordinateN(1);
    double part = (cut.up(0) - from.y) / (to.y - from.y);
    return cut.at(from.x + part * (to.x - from.x), 0);
  }

  /** The walls' names before their faces. */
  private void nameFaces(double height, DetailWindow window) {
    Xy corner = corner(height);
    nameFace(left, -0.6 * reach, corner, window.sketch());
    nameFace(right, 0.6 * reach, corner, window.sketch());
  }

  private static void nameFace(FacetLayout layout, double way, Xy corner, Sketch sketch) {
    FacetPlane plane = layout.facet().plane();
    Vector3 along = plane.toRoom(new Vector3(1, 0, 0)).minus(plane.toRoom(new Vector3(0, 0, 0)));
    Vector3 out = plane.normal();
    String name = layout.facet().name();
    double beside = TextSize.width(name, Sketch.SMALL) / 2 * Math.abs(out.x());
    double off = sketch.paper(CLEAR + beside);
    Xy at = corner.plus(way * along.x() + off * out.x(), -(way * along.y() + off * out.y()));
    sketch.label(Layers.TEXT, at, name, Sketch.SMALL, TextAnchor.MIDDLE);
  }
}
