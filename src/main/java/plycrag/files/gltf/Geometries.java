package plycrag.files.gltf;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import plycrag.document.Scene.Body;
import plycrag.document.Scene.Triangle;
import plycrag.document.Xyz;

/**
 * The numbers of all bodies: first the places of all corners, then the corners of all triangles.
 */
final class Geometries {
  private static final int AXES = 3;
  private static final double FAR = Double.POSITIVE_INFINITY;

  private final List<Float> places = new ArrayList<>();
  private final List<Integer> corners = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  /**
   * What of the numbers is one body's.
   *
   * @param corners how many places
   * @param placesFrom the first byte of its places among all places
   * @param low the least of each coordinate, m
   * @param high the greatest
   * @param indices how many corners of triangles
   * @param indicesFrom the first byte of its corners among all corners
   */
  record Part(
      int corners,
      int placesFrom,
      List<Double> low,
      List<Double> high,
      int indices,
      int indicesFrom) {
    Part {
      low = List.copyOf(low);
      high = List.copyOf(high);
    }
  }

  /** Adds a body. */
  void add(Body body) {
    int placesFrom = placesSize();
    int indicesFrom = cornersSize();
    List<Double> low = new ArrayList<>(List.of(FAR, FAR, FAR));
    List<Double> high = new ArrayList<>(List.of(-FAR, -FAR, -FAR));
    for (Xyz corner : body.corners()) {
      double[] metres = GltfAxes.metres(corner);
      for (int axis = 0; axis < AXES; axis++) {
        low.set(axis, Math.min(low.get(axis), metres[axis]));
        high.set(axis, Math.max(high.get(axis), metres[axis]));
        places.add((float) metres[axis]);
      }
    }
    for (Triangle one : body.triangles()) {
      corners.addAll(List.of(one.a(), one.b(), one.c()));
    }
    int indices = 3 * body.triangles().size();
    parts.add(new Part(body.corners().size(), placesFrom, low, high, indices, indicesFrom));
  }

  /** Body by body. */
  List<Part> parts() {
    return List.copyOf(parts);
  }

  /** How many bytes the places take. */
  int placesSize() {
    return places.size() * Float.BYTES;
  }

  /** How many bytes the corners of triangles take. */
  int cornersSize() {
    return corners.size() * Integer.BYTES;
  }

  /** All of them; a number of bytes that four divides. */
  byte[] bytes() {
    byte[] bytes = new byte[placesSize() + cornersSize()];
    ByteBuffer numbers = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    places.forEach(numbers::putFloat);
    corners.forEach(numbers::putInt);
    return bytes;
  }
}
