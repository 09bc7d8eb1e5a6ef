package plycrag.layout;

import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
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
    return members.near(piece.box(), 0).stream()
        .flatMap(member -> Bearing.of(piece, member).stream())
        .map(this::line)
        .toList();
  }

  private FastenerLine line(Bearing bearing) {
    String piece = bearing.piece().mark();
    String member = bearing.member().mark();
    double across = spacing.across(bearing);
    List<Screw> screws =
        spacing.along(bearing).stream()
            .map(along -> new Screw("", piece, member, point(bearing.axis(), along, across)))
            .toList();
    return new FastenerLine(piece, member, middle(bearing, across), screws);
  }

  private static Point point(Axis axis, double along, double across) {
    return axis == Axis.ACROSS ? Shapes.point(along, across) : Shapes.point(across, along);
  }

  private static LineString middle(Bearing bearing, double across) {
    double low = bearing.axis().low(bearing.box());
    double high = bearing.axis().high(bearing.box());
    return bearing.axis() == Axis.ACROSS
        ? Shapes.line(low, across, high, across)
        : Shapes.line(across, low, across, high);
  }
}
