package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Xy;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;

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

  /** How far along it lie its beginning and its end, and the corners that turn by more, mm. */
  List<Double> sharpCorners(double degrees) {
    List<Double> corners = new ArrayList<>(List.of(0.0));
    double at = 0;
    double straight = Trig.cos(degrees);
    for (int number = 0; number < stretches() - 1; number++) {
      at += stretch(number);
      if (along(number) < straight) {
        corners.add(at);
      }
    }
    corners.add(length());
    return corners;
  }

  /** The cosine of how far it turns after a stretch. */
  private double along(int number) {
    Xy before = corner(number);
    Xy here = corner(number + 1);
    Xy after = corner(number + 2);
    double dot =
        (here.x() - before.x()) * (after.x() - here.x())
            + (here.y() - before.y()) * (after.y() - here.y());
    return dot / stretch(number) / stretch(number + 1);
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
