package plycrag.solve.fixing;

import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;

/** Boxes of timber along the room's axes. */
final class Bodies {
  private Bodies() {}

  /** Between two corners, with the grain along an axis. */
  static TimberBody box(String mark, Vector3 from, Vector3 to, Vector3 way) {
    Solid solid =
        Solid.between(
            Shapes.rectangle(from.x(), from.y(), to.x(), to.y()),
            from.z(),
            Shapes.rectangle(from.x(), from.y(), to.x(), to.y()),
            to.z());
    return new TimberBody(mark, solid, way, false);
  }

  static Vector3 place(double x, double y, double z) {
    return new Vector3(x, y, z);
  }

  static Vector3 up() {
    return place(0, 0, 1);
  }

  static Vector3 level() {
    return place(1, 0, 0);
  }
}
