package plycrag.solve.scatter;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * How frequent pairs of a square's samples are at a distance, over how frequent they would be at
 * random; counted from samples that lie five distances inside.
 *
 * @param samples in the square
 * @param extent of the square
 * @param distance the unit of what is asked
 */
record PairDensity(List<Coordinate> samples, double extent, double distance) {

  double between(double from, double to) {
    double margin = 5 * distance;
    List<Coordinate> inner =
        samples.stream()
            .filter(one -> Math.abs(one.x - extent / 2) < extent / 2 - margin)
            .filter(one -> Math.abs(one.y - extent / 2) < extent / 2 - margin)
            .toList();
    long pairs = 0;
    for (Coordinate one : inner) {
      pairs +=
          samples.stream()
              .filter(other -> !other.equals(one))
              .mapToDouble(other -> other.distance(one) / distance)
              .filter(apart -> from <= apart && apart < to)
              .count();
    }
    double ring = Math.PI * (to * to - from * from) * distance * distance;
    double width = extent - 2 * margin;
    double density = inner.size() / (width * width);
    return pairs / (inner.size() * density * ring);
  }
}
