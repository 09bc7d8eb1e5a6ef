package plycrag.solve.frame;

import java.util.List;
import java.util.stream.IntStream;
import plycrag.geometry.Vector3;

/**
 * The middle of a sheet with four corners.
 *
 * @param area mm²
 * @param shear how a motion of each corner shears it, 1/mm
 */
record PanelShape(double area, List<Vector3> shear) {
  private static final int[] RIGHT = {-1, 1, 1, -1};
  private static final int[] UP = {-1, -1, 1, 1};

  /** Of corners in order round it. */
  static PanelShape of(List<Vector3> corners) {
    Vector3 right = mean(corners, RIGHT);
    Vector3 up = mean(corners, UP);
    LocalAxes axes = LocalAxes.of(right, up);
    double breadth = right.length();
    double lean = up.dot(axes.x());
    double height = up.dot(axes.y());
    return new PanelShape(
        4 * breadth * height,
        IntStream.range(0, corners.size())
            .mapToObj(
                i -> {
                  double alongX = RIGHT[i] / (4 * breadth);
                  double alongY = (UP[i] - RIGHT[i] * lean / breadth) / (4 * height);
                  return axes.x().times(alongY).plus(axes.y().times(alongX));
                })
            .toList());
  }

  private static Vector3 mean(List<Vector3> corners, int[] signs) {
    Vector3 sum = new Vector3(0, 0, 0);
    for (int i = 0; i < signs.length; i++) {
      sum = sum.plus(corners.get(i).times(signs[i] / 4.0));
    }
    return sum;
  }
}
