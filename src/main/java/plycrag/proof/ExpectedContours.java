package plycrag.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FreeSides;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.OffcutPart;
import plycrag.proof.replay.Expected;
import plycrag.proof.replay.Heights;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Routing.Direction;
import plycrag.wall.machine.Routing.Outlines;

/** What is to be cut out of a sheet, in the words of the self-check. */
final class ExpectedContours {
  /** Bridges stand no nearer to each other, as a rule, mm. */
  private static final double APART = 500;

  /** Fewer let a piece turn. */
  private static final int FEWEST = 3;

  /** By how much a way may be shorter than reckoned here, mm. */
  private static final double SPARE = 2;

  private final Routing routing;
  private final Heights heights;
  private final double cutter;
  private final Envelope sheet;

  /**
   * Expects what one tool cuts.
   *
   * @param routing what holds the pieces meanwhile
   * @param heights of the sheet
   * @param cutter the tool's diameter, mm
   * @param sheet that they are cut from
   */
  ExpectedContours(Routing routing, Heights heights, double cutter, Envelope sheet) {
    this.sheet = sheet.copy();
    this.routing = routing;
    this.heights = heights;
    this.cutter = cutter;
  }

  /**
   * The outlines of a sheet's pieces, of the openings in them, and of what its offcuts yield, X and
   * Y from a corner.
   */
  List<Expected.Contour> of(LaidSheet sheet, List<OffcutPart> parts, Coordinate corner) {
    List<Expected.Contour> contours = new ArrayList<>();
    for (LaidPiece laid : sheet.pieces()) {
      String piece = "piece " + laid.piece().mark();
      Polygon kept = laid.kept();
      for (Polygon opening : Shapes.openings(kept)) {
        contours.add(contour("opening in " + piece, opening, corner, false));
      }
      contours.add(contour(piece, kept, corner, true));
    }
    for (OffcutPart part : parts) {
      contours.add(contour("offcut " + part.mark(), part.area(), corner, true));
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
    Expected.Side side =
        routing.direction() == Direction.CLIMB ? Expected.Side.RIGHT : Expected.Side.LEFT;
    return new Expected.Contour(
        mark, moved, keeps, bottom, bridges(area, moved, keeps), Optional.of(side));
  }

  private double skin() {
    return heights.sheet().bottom() + routing.skin();
  }

  /** One at every free stretch at least, three round the whole, and more on long ones. */
  private Optional<Expected.Bridges> bridges(Polygon area, Polygon moved, boolean keeps) {
    int sides = Math.max(FEWEST, moved.getNumPoints() - 1);
    double around = moved.getExteriorRing().getLength() + 2 * cutter * sides;
    return routing.outlines() == Outlines.TABS
        ? Optional.of(
            new Expected.Bridges(
                keeps ? least(area) : inOpening(area),
                sides + (int) Math.ceil(around / APART),
                routing.tabLength() + cutter,
                heights.sheet().bottom() + routing.tabHeight(),
                routing.manner().tabRamp()))
        : Optional.empty();
  }

  private int least(Polygon area) {
    int least = 0;
    for (FreeSides.Chain chain : FreeSides.of(area, sheet)) {
      List<Coordinate> points = new ArrayList<>(chain.points());
      if (chain.closed()) {
        points.add(points.get(0));
      }
      least += count(length(points), chain.closed());
    }
    return least;
  }

  /** The tool goes shorter ways within than the opening's edge is long. */
  private int inOpening(Polygon area) {
    return count(area.getExteriorRing().getLength() - 4 * cutter, true);
  }

  /** None where the way is so short that tabs would be cut short themselves. */
  private int count(double length, boolean closed) {
    int count = Math.max(closed ? FEWEST : 1, (int) Math.ceil(length / APART));
    double room = (length - SPARE) / 2 / count;
    return room < routing.tabLength() + cutter ? 0 : count;
  }

  private static double length(List<Coordinate> points) {
    double length = 0;
    for (int at = 1; at < points.size(); at++) {
      length += points.get(at - 1).distance(points.get(at));
    }
    return length;
  }
}
