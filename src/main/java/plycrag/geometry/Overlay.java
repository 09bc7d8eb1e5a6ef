package plycrag.geometry;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/**
 * What geometries share, leave of each other and are together, on the grid.
 *
 * <p>Rounding to the grid may fold a sliver over itself, and so may sides that are moved past each
 * other. Such an area is not valid, and an overlay refuses it: it is mended, rounded to the grid
 * again without folds, and taken once more. This is the only place where areas are mended; what is
 * valid is never touched.
 */
final class Overlay {
  private Overlay() {}

  static Geometry shared(Geometry a, Geometry b) {
    return of(a, b, OverlayNG.INTERSECTION);
  }

  static Geometry without(Geometry a, Geometry b) {
    return of(a, b, OverlayNG.DIFFERENCE);
  }

  /** All of one or more. */
  static Geometry together(List<Geometry> parts) {
    try {
      return UnaryUnionNG.union(parts, Shapes.GRID);
    } catch (TopologyException folded) {
      return UnaryUnionNG.union(parts.stream().map(Overlay::mended).toList(), Shapes.GRID);
    }
  }

  private static Geometry of(Geometry a, Geometry b, int operation) {
    try {
      return OverlayNG.overlay(a, b, operation, Shapes.GRID);
    } catch (TopologyException folded) {
      return OverlayNG.overlay(mended(a), mended(b), operation, Shapes.GRID);
    }
  }

  private static Geometry mended(Geometry area) {
    return area.isValid()
        ? area
        : GeometryPrecisionReducer.reduce(GeometryFixer.fix(area), Shapes.GRID);
  }
}
