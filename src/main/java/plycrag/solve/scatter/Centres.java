package plycrag.solve.scatter;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Tolerance;

/**
 * The centres chosen so far, in buckets so small that each holds one at most; asked for what is too
 * near.
 *
 * <p>Cost of a question: the buckets within the greatest distance.
 */
final class Centres {
  /** A bucket's diagonal is a little less than the least distance. */
  private static final double SIDE = 0.7;

  private final Fade fade;
  private final double left;
  private final double low;
  private final double side;
  private final int columns;
  private final int rows;
  private final int[] buckets;
  private final List<Coordinate> all = new ArrayList<>();

  Centres(Fade fade, Envelope box) {
    this.fade = fade;
    left = box.getMinX();
    low = box.getMinY();
    side = fade.least() * SIDE;
    columns = 1 + (int) (box.getWidth() / side);
    rows = 1 + (int) (box.getHeight() / side);
    buckets = new int[Math.multiplyExact(columns, rows)];
  }

  void add(Coordinate centre) {
    all.add(centre);
    buckets[row(centre.y) * columns + column(centre.x)] = all.size();
  }

  /** In the order of their choice. */
  List<Coordinate> all() {
    return all;
  }

  /** Whether a centre here would be too near to another. */
  boolean crowd(Coordinate place) {
    return cover(new Envelope(place), fade.at(place.y));
  }

  /** Whether each centre in a box would be too near to one and the same other. */
  boolean cover(Envelope box) {
    return cover(box, Math.min(fade.at(box.getMinY()), fade.at(box.getMaxY())));
  }

  private boolean cover(Envelope box, double own) {
    double reach = Math.max(own, fade.greatest());
    int toColumn = column(box.getMinX() + reach);
    int toRow = row(box.getMinY() + reach);
    for (int row = row(box.getMaxY() - reach); row <= toRow; row++) {
      for (int column = column(box.getMaxX() - reach); column <= toColumn; column++) {
        int bucket = buckets[row * columns + column];
        if (bucket > 0 && covers(all.get(bucket - 1), box, own)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean covers(Coordinate centre, Envelope box, double own) {
    double across = Math.max(centre.x - box.getMinX(), box.getMaxX() - centre.x);
    double up = Math.max(centre.y - box.getMinY(), box.getMaxY() - centre.y);
    double required = Math.max(own, fade.at(centre.y)) - Tolerance.RECKONING;
    return across * across + up * up < required * required;
  }

  private int column(double across) {
    return Math.max(0, Math.min(columns - 1, (int) Math.floor((across - left) / side)));
  }

  private int row(double up) {
    return Math.max(0, Math.min(rows - 1, (int) Math.floor((up - low) / side)));
  }
}
