package plycrag.layout.fixing;

import plycrag.geometry.Place;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;

/** Boxes of timber along the room's axes. */
final class Bodies {
  private Bodies() {}

  /** Between two corners, with the grain along an axis. */
  static TimberBody box(String mark, Place from, Place to, Place way) {
    Solid solid =
        Solid.between(
            Shapes.rectangle(from.x(), from.y(), to.x(), to.y()),
            from.z(),
            Shapes.rectangle(from.x(), from.y(), to.x(), to.y()),
            to.z());
    return new TimberBody(mark, solid, way, false);
  }

  static Place place(double x, double y, double z) {
    return new Place(x, y, z);
  }

  static Place up() {
    return place(0, 0, 1);
  }

  static Place level() {
    return place(1, 0, 0);
  }
}
