package plycrag.layout.standing;

import java.util.List;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.geometry.Volume;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.skin.Piece;
import plycrag.layout.support.PlacedMember;
import plycrag.wall.Wall;
import plycrag.wall.room.Room.Handling;

/**
 * What something weighs, and where its centre of gravity is in the room; what holds it together is
 * not counted.
 *
 * @param kilograms its mass
 * @param centre its centre of gravity
 */
public record Mass(double kilograms, Vector3 centre) {
  private static final double CUBIC_METRE = 1e9;
  private static final Mass NONE = new Mass(0, new Vector3(0, 0, 0));

  /** The timber of a facet. */
  public static Mass ofFrame(Wall wall, FacetLayout facet) {
    Handling handling = wall.room().handling();
    double thickness = wall.sheet().thickness();
    return facet.members().stream()
        .map(member -> member.body(thickness).mapped(facet.facet().plane()::toRoom))
        .map(solid -> of(solid, handling.timberDensity()))
        .reduce(NONE, Mass::plus);
  }

  /** All sheets and timber of a layout. */
  public static Mass of(Layout layout) {
    Wall wall = layout.wall();
    return layout.facets().stream()
        .map(facet -> ofFrame(wall, facet).plus(ofSheets(wall, facet)))
        .reduce(ofSupport(wall, layout.standing()), Mass::plus);
  }

  /**
   * The sheets of a facet, holes not taken off: half of each as large as its front, half as its
   * back. Where edges are bevelled that is true but for the square of what they slant.
   */
  public static Mass ofSheets(Wall wall, FacetLayout facet) {
    return facet.pieces().stream()
        .map(piece -> ofPiece(wall, facet, piece))
        .reduce(NONE, Mass::plus);
  }

  /** One of them. */
  static Mass ofPiece(Wall wall, FacetLayout facet, Piece piece) {
    double half = wall.sheet().thickness() / 2;
    double density = wall.room().handling().sheetDensity();
    return ofPlate(facet, piece.outline(), half, half / 2, density)
        .plus(ofPlate(facet, piece.back(), half, half * 3 / 2, density));
  }

  private static Mass ofPlate(
      FacetLayout facet, Polygon area, double thickness, double behind, double density) {
    Point middle = area.getCentroid();
    return new Mass(
        area.getArea() * thickness * density / CUBIC_METRE,
        facet.facet().plane().toRoom(new Vector3(middle.getX(), middle.getY(), behind)));
  }

  /** The timber of a support. */
  public static Mass ofSupport(Wall wall, List<PlacedMember> members) {
    double density = wall.room().handling().timberDensity();
    return members.stream().map(one -> of(one.body(), density)).reduce(NONE, Mass::plus);
  }

  private static Mass of(Solid solid, double density) {
    Volume bulk = Volume.of(solid);
    return new Mass(bulk.volume() * density / CUBIC_METRE, bulk.centre());
  }

  /** Both together. */
  public Mass plus(Mass other) {
    double sum = kilograms + other.kilograms;
    if (sum == 0) {
      return this;
    }
    double here = kilograms / sum;
    double there = other.kilograms / sum;
    return new Mass(
        sum,
        new Vector3(
            centre.x() * here + other.centre.x() * there,
            centre.y() * here + other.centre.y() * there,
            centre.z() * here + other.centre.z() * there));
  }

  /** How many people lift it, two at least. */
  public int people(double perPerson) {
    return Math.max(2, (int) Math.ceil(kilograms / perPerson));
  }
}
