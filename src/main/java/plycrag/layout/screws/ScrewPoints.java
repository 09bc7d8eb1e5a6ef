package plycrag.layout.screws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Distances;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.ClearOfScrews;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.InsertPattern;
import plycrag.layout.pattern.PatternArea;
import plycrag.layout.pattern.ScatterPattern;
import plycrag.layout.pattern.Screw;
import plycrag.layout.skin.Piece;
import plycrag.wall.Facet;
import plycrag.wall.GivenZone.Points;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.Wall;
import plycrag.wall.Zone;

/**
 * The screw points of a facet's zones. They move nothing and nothing moves for them: what an
 * insert, a screw or the edge of a piece is too near to is left out.
 */
public final class ScrewPoints {
  /**
   * Between two screws, in their diameters: not predrilled, across the grain (EN 1995-1-1 Table
   * 8.2).
   */
  private static final double APART = 5;

  private final Wall wall;
  private final FramedFacet frame;
  private final SpatialIndex<Insert> inserts;
  private final SpatialIndex<Screw> screws;

  private ScrewPoints(Wall wall, FramedFacet frame, List<Insert> inserts, List<Screw> screws) {
    this.wall = wall;
    this.frame = frame;
    this.inserts = new SpatialIndex<>(inserts, one -> one.centre().getEnvelopeInternal());
    this.screws = new SpatialIndex<>(screws, one -> one.centre().getEnvelopeInternal());
  }

  /** The points between what is set out on a facet, zone by zone. */
  public static List<ScrewPoint> of(
      Wall wall, FramedFacet frame, List<Insert> inserts, List<Screw> screws) {
    ScrewPoints points = new ScrewPoints(wall, frame, inserts, screws);
    List<Zone> zones = wall.zones(frame.facet(), Points.SCREW_POINTS);
    List<ScrewPoint> all = new ArrayList<>();
    for (int at = 0; at < zones.size(); at++) {
      all.addAll(points.in(area(wall, frame.facet(), zones, at)));
    }
    return all;
  }

  /** A zone without the places of those after it. */
  private static PatternArea area(Wall wall, Facet facet, List<Zone> zones, int at) {
    return new PatternArea(
        wall,
        facet,
        Optional.of(zones.get(at)),
        zones.subList(at + 1, zones.size()).stream().map(Zone::shape).toList());
  }

  private List<ScrewPoint> in(PatternArea area) {
    List<ScrewPoint> points = new ArrayList<>();
    for (Insert asked : asked(area)) {
      Point place = asked.centre();
      pieceAround(place)
          .filter(piece -> isClear(place))
          .map(
              piece ->
                  new ScrewPoint(
                      area.name() + " " + (points.size() + 1), piece, memberBehind(place), place))
          .ifPresent(points::add);
    }
    return points;
  }

  private List<Insert> asked(PatternArea area) {
    Kind kind = area.pattern().kind();
    if (area.pattern().hasLines()) {
      return InsertPattern.of(area).inserts();
    }
    return kind == Kind.SCATTER ? new ScatterPattern(area).over(free(area)) : List.of();
  }

  /** Where an area's points may lie: they keep the setback as inserts do. */
  private Geometry free(PatternArea area) {
    double setback = wall.inserts().setback();
    return Shapes.shared(area.own(), Shapes.together(frame.facet().setback(setback)));
  }

  /** The piece that holds a screw there, far enough from its edges. */
  private Optional<String> pieceAround(Point place) {
    return frame.pieces().stream()
        .filter(
            piece -> -Distances.from(place, piece.core()) >= wall.clearance().screw().toSheetEdge())
        .map(Piece::mark)
        .findFirst();
  }

  private boolean isClear(Point place) {
    double toInsert = ClearOfScrews.reach(wall);
    double toScrew = APART * wall.screws().diameter();
    return inserts.near(place.getEnvelopeInternal(), toInsert).stream()
            .allMatch(insert -> insert.centre().distance(place) >= toInsert)
        && screws.near(place.getEnvelopeInternal(), toScrew).stream()
            .allMatch(screw -> screw.centre().distance(place) >= toScrew);
  }

  /** The member that a screw there bites, far enough from its edges. */
  private Optional<String> memberBehind(Point place) {
    return frame.members().stream()
        .filter(
            member ->
                -Distances.from(place, member.footprint())
                    >= wall.clearance().screw().toMemberEdge())
        .map(Member::mark)
        .findFirst();
  }
}
