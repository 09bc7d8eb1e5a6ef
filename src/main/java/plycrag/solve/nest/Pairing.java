package plycrag.solve.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Hulls;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/**
 * Two convex blanks side by side or one above the other in one rectangle, the second as it is or
 * turned by 180°, so near that a straight cut still passes between them. For trapezoids and
 * triangles, head to tail.
 */
final class Pairing {
  private static final int HALVINGS = 60;

  private final NestTask task;
  private final Bundle first;
  private final Bundle second;

  private Pairing(NestTask task, Bundle first, Bundle second) {
    this.task = task;
    this.first = first;
    this.second = second;
  }

  /** The pair of the least rectangle; empty where it takes no less than the two apart. */
  static Optional<Bundle> of(NestTask task, Bundle first, Bundle second) {
    double apart = area(first) + area(second);
    return new Pairing(task, first, second)
        .candidates().stream()
            .filter(pair -> area(pair) < apart - task.gap() * Math.max(pair.width(), pair.height()))
            .min(Comparator.comparingDouble(Pairing::area));
  }

  /** Mm². */
  static double area(Bundle bundle) {
    return bundle.width() * bundle.height();
  }

  /** Whether pairing it could save anything: a blank alone, convex and no rectangle. */
  static boolean isOddAlone(NestTask task, Bundle bundle) {
    Polygon outline = task.blanks().get(bundle.number()).outline();
    return bundle.blanks().size() == 1 && !outline.isRectangle() && Hulls.isConvex(outline);
  }

  private List<Bundle> candidates() {
    List<Bundle> pairs = new ArrayList<>();
    for (Turn turn : List.of(Turn.NONE, Turn.HALF)) {
      LaidBlank other = second.at(turn, 0, 0).get(0);
      double higher = first.height() - second.height();
      double wider = first.width() - second.width();
      for (double share : new double[] {0, 1}) {
        pairs.add(pair(moved(other, 0, share * higher), true));
        pairs.add(pair(moved(other, share * wider, 0), false));
      }
    }
    return pairs;
  }

  private static LaidBlank moved(LaidBlank blank, double dx, double dy) {
    return new LaidBlank(blank.mark(), blank.placement().moved(dx, dy));
  }

  /** The second blank is pushed away until the gap is kept; the places nearer are one interval. */
  private Bundle pair(LaidBlank other, boolean across) {
    Polygon one = outline(first.blanks().get(0), first);
    double near = 0;
    double far = (across ? first.width() : first.height()) + task.gap() + Tolerance.GRID;
    for (int step = 0; step < HALVINGS && far - near > Tolerance.GRID / 2; step++) {
      double middle = (near + far) / 2;
      boolean keeps = outline(shifted(other, middle, across), second).distance(one) >= task.gap();
      near = keeps ? near : middle;
      far = keeps ? middle : far;
    }
    return bundle(shifted(other, Math.ceil(far / Tolerance.GRID) * Tolerance.GRID, across));
  }

  private static LaidBlank shifted(LaidBlank blank, double by, boolean across) {
    return across ? moved(blank, by, 0) : moved(blank, 0, by);
  }

  private Polygon outline(LaidBlank laid, Bundle bundle) {
    return laid.placement().of(task.blanks().get(bundle.number()).outline());
  }

  private Bundle bundle(LaidBlank other) {
    LaidBlank one = first.blanks().get(0);
    Envelope box = outline(one, first).getEnvelopeInternal();
    box.expandToInclude(outline(other, second).getEnvelopeInternal());
    return new Bundle(
        List.of(
            moved(one, -box.getMinX(), -box.getMinY()),
            moved(other, -box.getMinX(), -box.getMinY())),
        Shapes.onGrid(box.getWidth()),
        Shapes.onGrid(box.getHeight()),
        Math.min(first.number(), second.number()));
  }
}
