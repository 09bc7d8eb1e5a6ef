package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** Screws the sheets to the frame: a fastener line wherever a piece bears on a member. */
final class Fastening {
  private final ScrewSpacing spacing;
  private final SpatialIndex<Member> members;

  private Fastening(Wall wall, Facet facet, List<Member> members) {
    this.spacing = ScrewSpacing.of(wall, facet);
    this.members = new SpatialIndex<>(members, Member::box);
  }

  /** The fastener lines of a facet, piece by piece, member by member. */
  static List<FastenerLine> of(Wall wall, Facet facet, List<Piece> pieces, List<Member> members) {
    Fastening fastening = new Fastening(wall, facet, members);
    return pieces.stream().flatMap(piece -> fastening.lines(piece).stream()).toList();
  }

  private List<FastenerLine> lines(Piece piece) {
    Polygon core = piece.core();
    List<FastenerLine> lines = new ArrayList<>();
    for (Member member : members.near(piece.box(), 0)) {
      for (Bearing bearing : Bearing.of(piece, core, member)) {
        FastenerLine line = line(bearing);
        if (!line.screws().isEmpty()) {
          lines.add(line);
        }
      }
    }
    return lines;
  }

  private FastenerLine line(Bearing bearing) {
    String piece = bearing.piece().mark();
    String member = bearing.member().mark();
    double across = spacing.across(bearing);
    List<Screw> screws = new ArrayList<>();
    for (Point place : spacing.along(bearing, across)) {
      screws.add(new Screw("", piece, member, place));
    }
    return new FastenerLine(piece, member, middle(bearing, across), screws);
  }

  private static LineString middle(Bearing bearing, double across) {
    Span along = bearing.along();
    Coordinate low = bearing.direction().place(along.low(), across);
    Coordinate high = bearing.direction().place(along.high(), across);
    return Shapes.line(low.x, low.y, high.x, high.y);
  }
}
