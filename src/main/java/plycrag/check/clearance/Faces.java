package plycrag.check.clearance;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Distances;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.wall.Facet;

/**
 * The climbing faces of a wall with their sheets, as they stand in the room: which of them lies in
 * whose way.
 */
final class Faces {
  private final List<Face> faces;

  /**
   * The sheets of a facet.
   *
   * @param name the facet's
   * @param plane where it stands
   * @param outline openings taken out
   * @param thickness of the sheets, mm
   */
  private record Face(String name, FacetPlane plane, Polygon outline, double thickness) {
    static Face of(Facet facet, double thickness) {
      return new Face(facet.name(), facet.plane(), facet.outline(), thickness);
    }

    /** Whether a straight way meets the sheets, ends a touch inside them not counted. */
    boolean isMet(Vector3 from, Vector3 to) {
      Vector3 one = plane.fromRoom(from);
      Vector3 other = plane.fromRoom(to);
      double low = Math.max(Tolerance.MARKED, Math.min(one.z(), other.z()));
      double high = Math.min(thickness - Tolerance.MARKED, Math.max(one.z(), other.z()));
      return low < high && (holds(one, other, low) || holds(one, other, high));
    }

    private boolean holds(Vector3 one, Vector3 other, double depth) {
      double part = (depth - one.z()) / (other.z() - one.z());
      Vector3 place = one.plus(other.minus(one).times(part));
      return isWithin(place);
    }

    private boolean isWithin(Vector3 place) {
      return outline.getEnvelopeInternal().contains(place.x(), place.y())
          && Distances.from(Shapes.point(place.x(), place.y()), outline) < -Tolerance.TOUCH;
    }

    /** The place of the face before which another lies, if it lies behind the face. */
    Optional<Vector3> before(Vector3 place) {
      Vector3 seen = plane.fromRoom(place);
      return seen.z() > Tolerance.TOUCH && isWithin(seen)
          ? Optional.of(plane.toRoom(new Vector3(seen.x(), seen.y(), 0)))
          : Optional.empty();
    }
  }

  Faces(Layout layout) {
    double thickness = layout.wall().sheet().thickness();
    this.faces = layout.wall().facets().stream().map(one -> Face.of(one, thickness)).toList();
  }

  /** The first facet but one's own whose sheets a straight way meets. */
  Optional<String> met(String own, Vector3 from, Vector3 to) {
    return faces.stream()
        .filter(face -> !face.name().equals(own) && face.isMet(from, to))
        .map(Face::name)
        .findFirst();
  }

  /**
   * The facet behind which a place before another facet lies, if there is one: between it and the
   * back of that facet is nothing.
   */
  Optional<String> hiding(String own, Vector3 place) {
    return faces.stream()
        .filter(face -> !face.name().equals(own))
        .filter(face -> face.before(place).filter(front -> isOpen(face, place, front)).isPresent())
        .map(Face::name)
        .findFirst();
  }

  private boolean isOpen(Face hiding, Vector3 from, Vector3 to) {
    return faces.stream().noneMatch(face -> !face.equals(hiding) && face.isMet(from, to));
  }
}
