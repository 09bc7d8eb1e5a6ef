package plycrag.files.gltf;

import java.util.List;
import plycrag.document.Scene.Spot;
import plycrag.document.Xyz;

/** The only place where a scene's axes become those of glTF. */
public final class GltfAxes {
  /** Steps of the grid in a millimetre and in a metre. */
  private static final double IN_MILLIMETRE = 1e3;

  private static final double IN_METRE = 1e6;

  private GltfAxes() {}

  /** A place in metres, y up, on the grid of 1 µm. */
  public static double[] metres(Xyz place) {
    Xyz swapped = swapped(place);
    return new double[] {metres(swapped.x()), metres(swapped.y()), metres(swapped.z())};
  }

  private static double metres(double millimetres) {
    return Math.round(millimetres * IN_MILLIMETRE) / IN_METRE;
  }

  private static Xyz swapped(Xyz place) {
    return new Xyz(place.x(), place.z(), place.y());
  }

  /** How a spot is turned: a quaternion of length one, its real part last and not below zero. */
  static double[] rotation(Spot spot) {
    return quaternion(swapped(spot.right()), swapped(spot.up()));
  }

  /**
   * That of a turn by what it makes of x and of y, as K. Shoemake has it (SIGGRAPH 1985): from the
   * greatest of its four parts, so that nothing small is divided by.
   */
  private static double[] quaternion(Xyz x, Xyz y) {
    Xyz z =
        new Xyz(
            x.y() * y.z() - x.z() * y.y(),
            x.z() * y.x() - x.x() * y.z(),
            x.x() * y.y() - x.y() * y.x());
    List<Double> squares =
        List.of(
            1 + x.x() - y.y() - z.z(),
            1 - x.x() + y.y() - z.z(),
            1 - x.x() - y.y() + z.z(),
            1 + x.x() + y.y() + z.z());
    double[][] products = {
      {squares.get(0), x.y() + y.x(), z.x() + x.z(), y.z() - z.y()},
      {x.y() + y.x(), squares.get(1), y.z() + z.y(), z.x() - x.z()},
      {z.x() + x.z(), y.z() + z.y(), squares.get(2), x.y() - y.x()},
      {y.z() - z.y(), z.x() - x.z(), x.y() - y.x(), squares.get(3)}
    };
    int greatest = 3;
    for (int at = 0; at < 3; at++) {
      greatest = squares.get(at) > squares.get(greatest) ? at : greatest;
    }
    double size = 2 * Math.sqrt(squares.get(greatest));
    double[] parts = products[greatest];
    double sign = parts[3] < 0 ? -1 : 1;
    return new double[] {
      sign * parts[0] / size, sign * parts[1] / size, sign * parts[2] / size, sign * parts[3] / size
    };
  }
}
