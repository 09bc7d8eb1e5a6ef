package plycrag.layout.standing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Seam;

/**
 * The edges of a stock sheet from which all on it is measured: the left and the lower one. Of a
 * sheet as bought, an edge that meets a seam comes before one that meets none: by what the sheet is
 * larger or smaller than stated, it then ends elsewhere at the outside of the wall, and the holes
 * keep their distance from the neighbour.
 *
 * @param width of the sheet as it lies, mm
 * @param height likewise
 * @param fromRight whether it is the right edge
 * @param fromTop whether it is the upper edge
 */
public record SheetDatum(double width, double height, boolean fromRight, boolean fromTop) {
  /** That of a sheet. */
  public static SheetDatum of(Layout layout, LaidSheet sheet) {
    double width = sheet.stock().width();
    double height = sheet.stock().height();
    if (layout.wall().sheet().seams().drift() == 0) {
      return new SheetDatum(width, height, false, false);
    }
    List<Coordinate> met = new ArrayList<>();
    for (LaidPiece laid : sheet.pieces()) {
      layout.facets().stream()
          .filter(facet -> facet.facet().name().equals(laid.facet()))
          .flatMap(facet -> facet.seams().stream())
          .forEach(seam -> addMet(seam, laid, met));
    }
    boolean left = met.stream().anyMatch(place -> place.x < Tolerance.TOUCH);
    boolean right = met.stream().anyMatch(place -> place.x > width - Tolerance.TOUCH);
    boolean lower = met.stream().anyMatch(place -> place.y < Tolerance.TOUCH);
    boolean upper = met.stream().anyMatch(place -> place.y > height - Tolerance.TOUCH);
    return new SheetDatum(width, height, right && !left, upper && !lower);
  }

  /** The middle of a piece's side at a seam, where it lies on the sheet. */
  private static void addMet(Seam seam, LaidPiece laid, List<Coordinate> met) {
    Axis across = seam.axis().other();
    Envelope box = laid.piece().blank().getEnvelopeInternal();
    double along = seam.axis().middle(box);
    if (along < seam.low() || along > seam.high()) {
      return;
    }
    for (double side : List.of(across.low(box), across.high(box))) {
      if (Math.abs(Math.abs(side - seam.middle()) - seam.gap() / 2) < Tolerance.TOUCH) {
        double u = seam.axis() == Axis.UP ? side : along;
        double v = seam.axis() == Axis.UP ? along : side;
        met.add(laid.placement().of(new Coordinate(Shapes.onGrid(u), Shapes.onGrid(v))));
      }
    }
  }

  /** What a tape shows across the sheet, mm from the datum edge. */
  public double across(double x) {
    return fromRight ? width - x : x;
  }

  /** What a tape shows up or down the sheet, mm from the datum edge. */
  public double up(double y) {
    return fromTop ? height - y : y;
  }

  /** The edge from which readings across are taken. */
  public String sideEdge() {
    return (fromRight ? "right" : "left") + " edge";
  }

  /** The edge from which readings up or down are taken. */
  public String levelEdge() {
    return (fromTop ? "upper" : "lower") + " edge";
  }

  /** The corner between both: {@code lower left}. */
  public String corner() {
    return (fromTop ? "upper" : "lower") + (fromRight ? " right" : " left");
  }

  /** Whether it is not the corner that all other sheets are measured from. */
  public boolean isOdd() {
    return fromRight || fromTop;
  }
}
