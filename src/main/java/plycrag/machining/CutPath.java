package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Xy;
import plycrag.geometry.Tolerance;

/**
 * A way of straight stretches, measured from its first point.
 *
 * @param points the corners, the first not repeated
 * @param closed whether it ends where it begins; then it can be gone round more than once
 */
record CutPath(List<Xy> points, boolean closed) {
  CutPath {
    points = List.copyOf(points);
  }

  private int stretches() {
    return closed ? points.size() : points.size() - 1;
  }

  private Xy corner(int number) {
    return points.get(number % points.size());
  }

  private double stretch(int number) {
    double dx = corner(number + 1).x() - corner(number).x();
    double dy = corner(number + 1).y() - corner(number).y();
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Once along it, mm. */
  double length() {
    double length = 0;
    for (int number = 0; number < stretches(); number++) {
      length += stretch(number);
    }
    return length;
  }

  /** The place so far along it, mm. */
  Xy at(double along) {
    double rest = closed ? along % length() : along;
    int number = 0;
    while (number < stretches() - 1 && rest > stretch(number)) {
      rest -= stretch(number);
      number++;
    }
    double part = Math.min(1, rest / stretch(number));
    Xy from = corner(number);
    Xy to = corner(number + 1);
    return new Xy(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
  }

  /** How far along the corners lie between two places, in order, mm. */
  List<Double> corners(double from, double to) {
    List<Double> corners = new ArrayList<>();
    double at = 0;
    for (int number = 0; Tolerance.isLess(at, to); number++) {
      if (Tolerance.isMore(at, from)) {
        corners.add(at);
      }
      at += stretch(number % stretches());
    }
    return corners;
  }
}
