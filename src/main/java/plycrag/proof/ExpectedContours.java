package plycrag.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.proof.replay.Expected;
import plycrag.proof.replay.Heights;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Routing.Outlines;

/** What is to be cut out of a sheet, in the words of the self-check. */
final class ExpectedContours {
  /** Bridges stand no nearer to each other, as a rule, mm. */
  private static final double APART = 500;

  private final Routing routing;
  private final Heights heights;
  private final double cutter;

  /**
   * Expects what one tool cuts.
   *
   * @param routing what holds the pieces meanwhile
   * @param heights of the sheet
   * @param cutter the tool's diameter, mm
   */
  ExpectedContours(Routing routing, Heights heights, double cutter) {
    this.routing = routing;
    this.heights = heights;
    this.cutter = cutter;
  }

  /** The outlines of a sheet's pieces and of the openings in them, X and Y from a corner. */
  List<Expected.Contour> of(LaidSheet sheet, Coordinate corner) {
    List<Expected.Contour> contours = new ArrayList<>();
    for (LaidPiece laid : sheet.pieces()) {
      String piece = "piece " + laid.piece().mark();
      Polygon kept = laid.kept();
      for (Polygon opening : Shapes.openings(kept)) {
        contours.add(contour("opening in " + piece, opening, corner, false));
      }
      contours.add(contour(piece, kept, corner, true));
    }
    return contours;
  }

  private Expected.Contour contour(String mark, Polygon area, Coordinate corner, boolean keeps) {
    List<Coordinate> ring = new ArrayList<>();
    for (Coordinate at : area.getExteriorRing().getCoordinates()) {
      ring.add(new Coordinate(at.x - corner.x, at.y - corner.y));
    }
    Polygon moved = Shapes.polygon(ring.subList(1, ring.size()));
    double bottom = routing.outlines() == Outlines.SKIN ? skin() : heights.travel().floor();
    return new Expected.Contour(mark, moved, keeps, bottom, bridges(moved));
  }

  private double skin() {
    return heights.sheet().bottom() + routing.skin();
  }

  /** One at every free stretch at least, three round the whole, and more on long ones. */
  private Optional<Expected.Bridges> bridges(Polygon area) {
    int sides = Math.max(3, area.getNumPoints() - 1);
    double around = area.getExteriorRing().getLength() + 2 * cutter * sides;
    return routing.outlines() == Outlines.TABS
        ? Optional.of(
            new Expected.Bridges(
                sides + (int) Math.ceil(around / APART),
                routing.tabLength() + cutter,
                heights.sheet().bottom() + routing.tabHeight()))
        : Optional.empty();
  }
}
