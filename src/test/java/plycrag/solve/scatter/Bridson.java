package plycrag.solve.scatter;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;

/**
 * Poisson-disc sampling of a square as published, for comparison: R. Bridson, Fast Poisson Disk
 * Sampling in Arbitrary Dimensions, SIGGRAPH 2007 sketches; new samples from the ring between one
 * and two distances around an active one, given up after 30 tries. The neighbours are looked up by
 * looking at all.
 */
final class Bridson {
  private static final int TRIES = 30;

  private Bridson() {}

  static List<Coordinate> samples(double extent, double distance, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Coordinate> all = new ArrayList<>();
    all.add(new Coordinate(random.nextDouble(extent), random.nextDouble(extent)));
    List<Coordinate> active = new ArrayList<>(all);
    while (!active.isEmpty()) {
      int at = random.nextInt(active.size());
      Coordinate sample = around(active.get(at), extent, distance, random, all);
      if (sample == null) {
        active.set(at, active.get(active.size() - 1));
        active.remove(active.size() - 1);
      } else {
        all.add(sample);
        active.add(sample);
      }
    }
    return all;
  }

  private static Coordinate around(
      Coordinate centre,
      double extent,
      double distance,
      SplittableRandom random,
      List<Coordinate> all) {
    for (int tries = 0; tries < TRIES; tries++) {
      double angle = random.nextDouble(2 * Math.PI);
      double radius = distance * Math.sqrt(1 + 3 * random.nextDouble());
      Coordinate sample =
          new Coordinate(
              centre.x + radius * StrictMath.cos(angle), centre.y + radius * StrictMath.sin(angle));
      boolean isInside = sample.x >= 0 && sample.x <= extent && sample.y >= 0 && sample.y <= extent;
      if (isInside && all.stream().noneMatch(other -> other.distance(sample) < distance)) {
        return sample;
      }
    }
    return null;
  }
}
