package plycrag.layout.screws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.frame.FramedFacet;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.ClearOfScrews;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.skin.Piece;
import plycrag.wall.Wall;

/**
 * Screws the sheets to the frame: a fastener line wherever a piece bears on a member. Timber at a
 * fold that has no room for screws leaves them to square timber that lies beside it.
 */
public final class Fastening {
  private final ScrewSpacing spacing;
  private final SpatialIndex<Member> members;
  private final SpatialIndex<Insert> inserts;
  private final double apart;

  private Fastening(Wall wall, FramedFacet frame, List<Insert> inserts) {
    this.spacing = ScrewSpacing.of(wall, frame.facet());
    this.members = new SpatialIndex<>(frame.members(), Member::box);
    this.inserts = new SpatialIndex<>(inserts, insert -> insert.centre().getEnvelopeInternal());
    this.apart = ClearOfScrews.reach(wall);
  }

  /**
   * The fastener lines of a facet, piece by piece, member by member.
   *
   * @param inserts from which screws slide
   */
  public static List<FastenerLine> of(Wall wall, FramedFacet frame, List<Insert> inserts) {
    Fastening fastening = new Fastening(wall, frame, inserts);
    return frame.pieces().stream().flatMap(piece -> fastening.lines(piece).stream()).toList();
  }

  private List<FastenerLine> lines(Piece piece) {
    Polygon core = piece.core();
    List<Bearing> bearings = new ArrayList<>();
    for (Member member : members.near(piece.box(), 0)) {
      bearings.addAll(Bearing.of(piece, core, member));
    }
    Map<Boolean, List<Bearing>> byRoom =
        bearings.stream()
            .collect(Collectors.partitioningBy(one -> spacing.roomAcross(one).isPresent()));
    List<Bearing> crowded =
        byRoom.get(false).stream()
            .filter(bearing -> byRoom.get(true).stream().anyMatch(bearing::isRelievedBy))
            .toList();
    List<FastenerLine> lines = new ArrayList<>();
    for (Bearing bearing : bearings) {
      boolean relieves = crowded.stream().anyMatch(one -> one.isRelievedBy(bearing));
      FastenerLine line =
          line(bearing, relieves ? spacing.screws().edgeSpacing() : spacing.greatest(bearing));
      if (!crowded.contains(bearing) && !line.screws().isEmpty()) {
        lines.add(line);
      }
    }
    return lines;
  }

  private FastenerLine line(Bearing bearing, double greatest) {
    String piece = bearing.piece().mark();
    String member = bearing.member().mark();
    double across = spacing.across(bearing);
    List<Screw> screws = new ArrayList<>();
    for (Point place : spacing.along(bearing, across, greatest, taken(bearing, across))) {
      screws.add(new Screw("", piece, member, place));
    }
    return new FastenerLine(piece, member, middle(bearing, across), screws);
  }

  /** Where inserts lie too near to a line. */
  private List<Span> taken(Bearing bearing, double across) {
    Direction direction = bearing.direction();
    List<Span> taken = new ArrayList<>();
    for (Insert insert : inserts.near(bearing.area().getEnvelopeInternal(), apart)) {
      Coordinate centre = insert.centre().getCoordinate();
      double aside = direction.across().along(centre) - across;
      if (Math.abs(aside) < apart) {
        double reach = Math.sqrt(apart * apart - aside * aside);
        double along = direction.along(centre);
        taken.add(new Span(along - reach, along + reach));
      }
    }
    return taken;
  }

  private static LineString middle(Bearing bearing, double across) {
    Span along = bearing.along();
    Coordinate low = bearing.direction().place(along.low(), across);
    Coordinate high = bearing.direction().place(along.high(), across);
    return Shapes.line(low.x, low.y, high.x, high.y);
  }
}
