package plycrag.proof.replay;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Tolerance;

/**
 * A circle fitted to places by least squares (I. Kåsa, IEEE Transactions on Instrumentation and
 * Measurement 25, 1976; from memory): exact if they all lie on one.
 *
 * @param centre of it
 * @param radius mm
 */
record Circle(Coordinate centre, double radius) {
  /** The circle nearest to places; none if they lie on a line. */
  static Optional<Circle> through(List<Coordinate> places) {
    Coordinate middle = middle(places);
    double[] sums = new double[5];
    for (Coordinate place : places) {
      double x = place.x - middle.x;
      double y = place.y - middle.y;
      double square = (x * x + y * y) / 2;
      sums[0] += x * x;
      sums[1] += x * y;
      sums[2] += y * y;
      sums[3] += x * square;
      sums[4] += y * square;
    }
    double spread = sums[0] * sums[2] - sums[1] * sums[1];
    if (!(spread > Tolerance.VANISHING)) {
      return Optional.empty();
    }
    double dx = (sums[3] * sums[2] - sums[4] * sums[1]) / spread;
    double dy = (sums[4] * sums[0] - sums[3] * sums[1]) / spread;
    double around = (sums[0] + sums[2]) / places.size();
    return Optional.of(
        new Circle(
            new Coordinate(middle.x + dx, middle.y + dy), Math.sqrt(dx * dx + dy * dy + around)));
  }

  private static Coordinate middle(List<Coordinate> places) {
    double x = places.stream().mapToDouble(place -> place.x).average().orElse(0);
    double y = places.stream().mapToDouble(place -> place.y).average().orElse(0);
    return new Coordinate(x, y);
  }

  /** How far outside of the circle a place lies; negative inside. */
  double outside(Coordinate place) {
    return place.distance(centre) - radius;
  }
}
