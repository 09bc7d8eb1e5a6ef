package plycrag.solve.tour;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The numbered places of a closed tour and the ways between them.
 *
 * <p>A way that ends wherever it likes is a closed tour through one more place, {@link #end}: it
 * lies at the first place and so far from every other that no tour gains by leaving it there.
 */
public final class Places {
  private final double[] x;
  private final double[] y;
  private final Metric metric;
  private final int size;
  private final double apart;

  private Places(List<Coordinate> places, Metric metric, boolean open) {
    this.x = places.stream().mapToDouble(place -> place.x).toArray();
    this.y = places.stream().mapToDouble(place -> place.y).toArray();
    this.metric = metric;
    this.size = x.length + (open ? 1 : 0);
    this.apart = x.length * (spread(x) + spread(y));
  }

  /** Of a tour that comes back to where it began. */
  static Places closed(List<Coordinate> places, Metric metric) {
    return new Places(places, metric, false);
  }

  /** Of a way from the first place through all others. */
  public static Places open(List<Coordinate> places, Metric metric) {
    return new Places(places, metric, true);
  }

  private static double spread(double[] values) {
    double least = values[0];
    double greatest = values[0];
    for (double value : values) {
      least = Math.min(least, value);
      greatest = Math.max(greatest, value);
    }
    return greatest - least;
  }

  /** How many there are, the open way's end among them. */
  int size() {
    return size;
  }

  /** How many lie somewhere. They come first. */
  int located() {
    return x.length;
  }

  /** The number of the open way's end. */
  public int end() {
    return x.length;
  }

  double x(int place) {
    return x[place];
  }

  double y(int place) {
    return y[place];
  }

  double distance(int one, int other) {
    if (one == x.length || other == x.length) {
      return one + other == x.length ? 0 : apart;
    }
    return metric.length(x[one], y[one], x[other], y[other]);
  }

  /** Each place the nearest one to that before it, from the first; ties to the earlier place. */
  int[] nearestNeighbour() {
    int[] order = new int[size];
    for (int at = 0; at < size; at++) {
      order[at] = at;
    }
    for (int at = 1; at < x.length; at++) {
      int nearest = nearest(order, at);
      int place = order[nearest];
      // Moved down rather than swapped: what is left stays in its order, for the ties.
      System.arraycopy(order, at, order, at + 1, nearest - at);
      order[at] = place;
    }
    return order;
  }

  private int nearest(int[] order, int from) {
    int nearest = from;
    for (int at = from + 1; at < x.length; at++) {
      if (distance(order[from - 1], order[at]) < distance(order[from - 1], order[nearest])) {
        nearest = at;
      }
    }
    return nearest;
  }
}
