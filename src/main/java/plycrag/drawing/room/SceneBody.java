package plycrag.drawing.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.document.Scene;
import plycrag.document.Xyz;
import plycrag.geometry.Shapes;
import plycrag.geometry.Surface;
import plycrag.geometry.Vector3;

/** Gathers the corners of a surface in the room, each once, on the 1 µm grid. */
final class SceneBody {
  private final Map<Xyz, Integer> corners = new LinkedHashMap<>();
  private final List<Scene.Triangle> triangles = new ArrayList<>();

  private SceneBody() {}

  /** The body; whatever sense its triangles have, they come out as seen from outside. */
  static Scene.Body of(Surface surface) {
    boolean leftHanded = surface.volume() <= 0;
    SceneBody body = new SceneBody();
    (leftHanded ? surface : surface.turned()).triangles().forEach(body::add);
    return new Scene.Body(List.copyOf(body.corners.keySet()), body.triangles);
  }

  /** What has two corners in one place is none, and its other two sides are one. */
  private void add(Surface.Triangle one) {
    int a = number(one.a());
    int b = number(one.b());
    int c = number(one.c());
    if (a != b && b != c && c != a) {
      triangles.add(new Scene.Triangle(a, b, c));
    }
  }

  private int number(Vector3 corner) {
    return corners.computeIfAbsent(place(corner), unseen -> corners.size());
  }

  static Xyz place(Vector3 at) {
    return new Xyz(Shapes.onGrid(at.x()), Shapes.onGrid(at.y()), Shapes.onGrid(at.z()));
  }
}
