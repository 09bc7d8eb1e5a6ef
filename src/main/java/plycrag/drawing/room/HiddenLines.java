package plycrag.drawing.room;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import plycrag.geometry.Shapes;
import plycrag.geometry.Vector3;

/** What a viewer sees of some bodies of which each may hide others. */
final class HiddenLines {
  private HiddenLines() {}

  /** The edges of each body without what others hide. */
  static List<Geometry> seen(List<SeenBody> bodies, Axonometry view) {
    return bodies.stream().map(body -> seen(body, bodies, view.toViewer())).toList();
  }

  private static Geometry seen(SeenBody body, List<SeenBody> bodies, Vector3 toViewer) {
    Geometry lines = Shapes.together(body.edges());
    for (SeenBody other : bodies) {
      if (other.mayHide(body, toViewer)) {
        lines = Shapes.without(lines, other.silhouette());
      }
    }
    return lines;
  }
}
