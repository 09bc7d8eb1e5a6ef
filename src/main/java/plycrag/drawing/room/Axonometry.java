package plycrag.drawing.room;

import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;

/** A parallel view of the room from before the wall, from its right and from above. */
final class Axonometry {
  /** Shows faces well and keeps edges from falling together (a choice, no source). */
  static final Axonometry USUAL = new Axonometry(35, 25);

  /** The same from behind, from the climber's left. */
  static final Axonometry BEHIND = new Axonometry(215, 25);

  /** The same from before the wall and its left. */
  static final Axonometry FROM_LEFT = new Axonometry(-35, 25);

  private final double aside;
  private final double above;

  /**
   * The view of one viewer.
   *
   * @param aside how far the viewer stands from straight before the wall, degrees
   * @param above how far they look down, degrees
   */
  Axonometry(double aside, double above) {
    this.aside = aside;
    this.above = above;
  }

  /** The direction to the viewer, in the room. */
  Vector3 toViewer() {
    double level = Trig.cos(above);
    return new Vector3(Trig.sin(aside) * level, Trig.cos(aside) * level, Trig.sin(above));
  }

  /** Where a place of the room lies on the drawing, mm. */
  Coordinate project(Vector3 place) {
    double right = place.x() * Trig.cos(aside) - place.y() * Trig.sin(aside);
    double near = place.x() * Trig.sin(aside) + place.y() * Trig.cos(aside);
    return new Coordinate(right, place.z() * Trig.cos(above) - near * Trig.sin(above));
  }
}
