package plycrag.check.clearance;

import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import plycrag.geometry.Tolerance;
import plycrag.units.Tape;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * What an opening leaves of a facet beside one of its sides, where that is too narrow for timber
 * and for the screws on it.
 *
 * @param cutout the opening
 * @param facet whose it is
 * @param least how broad it would have to be, mm
 */
record NarrowStrip(Cutout cutout, Facet facet, double least) {

  /** The strip that something lies in; empty where it lies in none. */
  static Optional<NarrowStrip> at(Geometry place, Facet facet, Wall wall) {
    double least = Math.max(wall.frame().breadth(), 2 * wall.clearance().screw().toSheetEdge());
    Geometry side = facet.boundary().getBoundary();
    return facet.cutouts().stream()
        .filter(cutout -> isNarrow(cutout.shape().distance(side), least))
        .filter(cutout -> place.distance(cutout.shape()) < least && place.distance(side) < least)
        .findFirst()
        .map(cutout -> new NarrowStrip(cutout, facet, least));
  }

  private static boolean isNarrow(double breadth, double least) {
    return breadth > Tolerance.TOUCH && Tolerance.isLess(breadth, least);
  }

  /** What to do, in words. */
  String cure(Tape tape) {
    return "let cutout "
        + cutout.name()
        + " go up to the side of facet "
        + facet.name()
        + ", or leave at least "
        + tape.text(tape.snapUp(least))
        + " between them ([[cutout]])";
  }
}
