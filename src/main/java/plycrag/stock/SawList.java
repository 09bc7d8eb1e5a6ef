package plycrag.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.EndCut;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Piece;

/**
 * Every cut for which the saw is tilted: bevelled edges of sheets, slanting ends of timber, and the
 * rips that let plates at a fold lie flat against their sheets.
 */
public record SawList(List<Cut> cuts) {
  private static final List<String> COLUMNS =
      List.of("part", "cut", "angle_deg", "longer_side", "difference_mm", "facet");

  /** The tangent of the steepest bevel, and a little more. */
  private static final double STEEPEST = 1.01;

  /**
   * A cut.
   *
   * @param part the mark of what is cut
   * @param what which edge or end, in words
   * @param angle from square, degrees
   * @param longer the side that stays longer, in words
   * @param difference between the two sides, mm
   * @param facet the facet that the part belongs to, by name
   */
  public record Cut(
      String part, String what, double angle, String longer, double difference, String facet) {}

  /** Copies the cuts. */
  public SawList {
    cuts = List.copyOf(cuts);
  }

  /** The cuts of a layout, facet by facet, sheets before timber. */
  public static SawList of(CheckedLayout checked) {
    double thickness = checked.layout().wall().sheet().thickness();
    double breadth = checked.layout().wall().frame().breadth();
    List<Cut> cuts = new ArrayList<>();
    for (FacetLayout facet : checked.layout().facets()) {
      String name = facet.facet().name();
      facet.pieces().forEach(piece -> addEdges(piece, thickness, name, cuts));
      facet.members().forEach(member -> addEnds(member, breadth, name, cuts));
    }
    return new SawList(cuts);
  }

  private static void addEdges(Piece piece, double thickness, String facet, List<Cut> cuts) {
    if (piece.isSquare()) {
      return;
    }
    List<LineString> front = Shapes.outerEdges(piece.outline());
    for (LineString back : Shapes.outerEdges(piece.back())) {
      front.stream()
          .filter(edge -> isSameEdge(edge, back, thickness))
          .min(Comparator.comparingDouble(edge -> edge.distance(back.getCentroid())))
          .ifPresent(
              edge -> {
                double angle = Trig.angle(outward(edge, back), thickness);
                add(new Slant(piece.mark(), name(back), angle, thickness), facet, cuts);
              });
    }
  }

  /** Whether two edges run the same way, no further apart than a saw can tilt. */
  private static boolean isSameEdge(LineString front, LineString back, double thickness) {
    return Direction.of(front).isParallel(Direction.of(back))
        && name(front).equals(name(back))
        && Math.abs(outward(front, back)) <= thickness * STEEPEST;
  }

  /** How far the back's edge lies outside the front's, which is counter-clockwise, mm. */
  private static double outward(LineString front, LineString back) {
    Coordinate from = front.getCoordinateN(0);
    Coordinate to = front.getCoordinateN(1);
    Coordinate other = back.getCentroid().getCoordinate();
    double turn = (to.x - from.x) * (other.y - from.y) - (to.y - from.y) * (other.x - from.x);
    return -turn / from.distance(to);
  }

  private static String name(LineString edge) {
    double du = edge.getCoordinateN(1).x - edge.getCoordinateN(0).x;
    double dv = edge.getCoordinateN(1).y - edge.getCoordinateN(0).y;
    if (Math.abs(du) >= Math.abs(dv)) {
      return du > 0 ? "lower edge" : "upper edge";
    }
    return dv > 0 ? "right edge" : "left edge";
  }

  private static void addEnds(Member member, double breadth, String facet, List<Cut> cuts) {
    addEnd(member, member.lowEnd(), "lower end", facet, cuts);
    addEnd(member, member.highEnd(), "upper end", facet, cuts);
    double rip = member.rip();
    if (!member.hasSquareSides()) {
      String longer = rip > 0 ? "upper face" : "lower face";
      double difference = breadth * Trig.tan(Math.abs(rip));
      cuts.add(
          new Cut(member.mark(), "rip along the sheet", Math.abs(rip), longer, difference, facet));
    }
  }

  private static void addEnd(Member member, EndCut end, String name, String facet, List<Cut> cuts) {
    String both = Math.abs(end.mitre()) > Tolerance.SQUARE ? name + ", blade" : name;
    add(new Slant(member.mark(), both, end.tilt(), member.depth()), facet, cuts);
  }

  private record Slant(String mark, String what, double angle, double through) {}

  private static void add(Slant slant, String facet, List<Cut> cuts) {
    double angle = Math.abs(slant.angle());
    if (angle > Tolerance.SQUARE) {
      String longer = slant.angle() > 0 ? "back" : "front";
      double difference = slant.through() * Trig.tan(angle);
      cuts.add(new Cut(slant.mark(), slant.what(), angle, longer, difference, facet));
    }
  }

  /** The list for a spreadsheet. */
  public Table table() {
    return new Table("Saw list", COLUMNS, cuts.stream().map(SawList::cells).toList());
  }

  private static List<Cell> cells(Cut cut) {
    return List.of(
        Cell.of(cut.part()),
        Cell.of(cut.what()),
        Cell.number(cut.angle(), 2),
        Cell.of(cut.longer()),
        Cell.mm(cut.difference()),
        Cell.of(cut.facet()));
  }
}
