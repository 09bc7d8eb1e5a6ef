package plycrag.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Move;
import plycrag.geometry.Contours;
import plycrag.geometry.Contours.Contour;
import plycrag.layout.sheets.CutOut;
import plycrag.layout.sheets.LaidSheet;
import plycrag.wall.machine.Routing;
import plycrag.wall.machine.Routing.Direction;
import plycrag.wall.machine.Routing.Outlines;
import plycrag.wall.machine.Tool;

/**
 * Cuts openings and pieces out of sheets, openings first, in passes no deeper than the tool cuts at
 * a time. Way round: see {@link Contours}.
 */
final class OutlineMoves {
  private final Routing routing;
  private final DrillHeights heights;
  private final double thickness;

  /**
   * Moves of one program.
   *
   * @param routing what holds the pieces meanwhile
   * @param heights of the program
   * @param thickness of the sheet, mm
   */
  OutlineMoves(Routing routing, DrillHeights heights, double thickness) {
    this.routing = routing;
    this.heights = heights;
    this.thickness = thickness;
  }

  /**
   * All moves for a sheet, from the first way across until the tool is clear again.
   *
   * @param all that is cut out of it
   */
  List<Move> of(Tool tool, LaidSheet sheet, List<CutOut> all, SheetOrigin origin) {
    List<Move> moves = new ArrayList<>();
    for (Contour contour : contours(sheet, all, tool.diameter() / 2)) {
      boolean climbs = routing.direction() == Direction.CLIMB;
      Contour way = contour.inside() == climbs ? contour : contour.reversed();
      CutPath path = path(way, origin);
      moves.addAll(
          new PassMoves(tool, heights, tabs(path, tool), routing.manner().entry())
              .cut(path, bottom()));
    }
    return moves;
  }

  /** The openings of all pieces before any outline, while the sheet still holds them all. */
  private static List<Contour> contours(LaidSheet sheet, List<CutOut> all, double radius) {
    return all.stream()
        .flatMap(one -> new Contours(one.area(), sheet.area(), radius).all().stream())
        .sorted(Comparator.comparing(contour -> !contour.inside()))
        .toList();
  }

  private static CutPath path(Contour way, SheetOrigin origin) {
    return new CutPath(
        way.points().stream().map((Coordinate at) -> origin.from(at.x, at.y)).toList(),
        way.closed());
  }

  private Tabs tabs(CutPath path, Tool tool) {
    return routing.outlines() == Outlines.TABS
        ? Tabs.along(
                path,
                routing.tabLength() + tool.diameter(),
                heights.top() - thickness + routing.tabHeight(),
                tool.diameter())
            .sloping(routing.manner().tabRamp(), bottom(), path)
        : Tabs.NONE;
  }

  private double bottom() {
    return heights.top() - routing.depth(thickness, heights.breakthrough());
  }
}
