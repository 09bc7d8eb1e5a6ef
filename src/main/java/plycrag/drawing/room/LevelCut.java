package plycrag.drawing.room;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Xy;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Piece;

/**
 * Cuts what belongs to a facet at one height above the floor. Seen from above the climber's way is
 * down on the drawing.
 */
final class LevelCut {
  private static final double FAR = 1e5;

  private final FacetPlane plane;
  private final double height;
  private final double thickness;

  /**
   * Cuts one facet.
   *
   * @param plane the facet's
   * @param height above the floor, mm
   * @param thickness of the sheets, mm
   */
  LevelCut(FacetPlane plane, double height, double thickness) {
    this.plane = plane;
    this.height = height;
    this.thickness = thickness;
  }

  /** The parts of a sheet's piece that the cut meets; several where an opening is between. */
  List<List<Xy>> piece(Piece piece) {
    return Shapes.areas(piece.outline()).stream()
        .flatMap(area -> between(area, 0, piece.back(), thickness).stream())
        .toList();
  }

  /** A member that the cut meets on both its faces. */
  Optional<List<Xy>> member(Member member) {
    double far = thickness + member.depth();
    return between(member.footprint(), thickness, member.far(), far);
  }

  private Optional<List<Xy>> between(Polygon near, double front, Polygon far, double back) {
    Optional<Envelope> one = across(near, front);
    Optional<Envelope> other = across(far, back);
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        List.of(
            at(one.get().getMinX(), front),
            at(one.get().getMaxX(), front),
            at(other.get().getMaxX(), back),
            at(other.get().getMinX(), back)));
  }

  /** From where to where the cut crosses an area that lies so far behind the face. */
  private Optional<Envelope> across(Polygon area, double behind) {
    double v = up(behind);
    Geometry met = Shapes.line(-FAR, v, FAR, v).intersection(area);
    return met.getLength() > 0 ? Optional.of(met.getEnvelopeInternal()) : Optional.empty();
  }

  /** How far up the slope the cut is, mm. */
  double up(double behind) {
    double foot = plane.toRoom(new Vector3(0, 0, behind)).z();
    double rise = plane.toRoom(new Vector3(0, 1, behind)).z() - foot;
    return (height - foot) / rise;
  }

  /** Where a place of the cut lies on the drawing. */
  Xy at(double u, double behind) {
    Vector3 room = plane.toRoom(new Vector3(u, up(behind), behind));
    return new Xy(room.x(), -room.y());
  }
}
