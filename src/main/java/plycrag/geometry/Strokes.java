package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * Straight strokes of which none lies on another, since a reader that cuts would cut twice, and one
 * that counts would count twice.
 *
 * <p>Neighbours are found in a quadtree. Two strokes lie on each other where they are nearer than
 * 0.01 mm over more than that length.
 */
public final class Strokes {
  private final Quadtree drawn = new Quadtree();

  /** A stretch of a stroke, in parts of its length. */
  private record Stretch(double from, double to) {
    boolean isWhole() {
      return to - from == 1;
    }
  }

  /**
   * Adds a stroke; what of it was not there before, in order along it. What is left of a stroke may
   * lie on one that the whole of it only crosses, at a small angle.
   */
  public List<LineSegment> add(LineSegment stroke) {
    List<LineSegment> fresh = fresh(stroke);
    for (LineSegment part : fresh) {
      drawn.insert(part.toGeometry(Shapes.factory()).getEnvelopeInternal(), part);
    }
    return fresh;
  }

  private List<LineSegment> fresh(LineSegment stroke) {
    List<Stretch> rest = List.of(new Stretch(0, 1));
    for (LineSegment earlier : near(stroke)) {
      if (isOnOneLine(stroke, earlier)) {
        rest = without(rest, shadow(stroke, earlier), Tolerance.TOUCH / stroke.getLength());
      }
    }
    if (rest.size() == 1 && rest.get(0).isWhole()) {
      return List.of(stroke);
    }
    List<LineSegment> fresh = new ArrayList<>();
    for (Stretch stretch : rest) {
      fresh.addAll(
          fresh(
              new LineSegment(stroke.pointAlong(stretch.from()), stroke.pointAlong(stretch.to()))));
    }
    return fresh;
  }

  private List<LineSegment> near(LineSegment stroke) {
    Envelope box = stroke.toGeometry(Shapes.factory()).getEnvelopeInternal();
    box.expandBy(Tolerance.TOUCH);
    List<LineSegment> found = new ArrayList<>();
    drawn.query(box, item -> found.add((LineSegment) item));
    return found;
  }

  private static boolean isOnOneLine(LineSegment a, LineSegment b) {
    return isAlong(a, b) || isAlong(b, a);
  }

  private static boolean isAlong(LineSegment line, LineSegment other) {
    return line.distancePerpendicular(other.p0) < Tolerance.TOUCH
        && line.distancePerpendicular(other.p1) < Tolerance.TOUCH;
  }

  private static Stretch shadow(LineSegment stroke, LineSegment earlier) {
    double one = stroke.projectionFactor(earlier.p0);
    double other = stroke.projectionFactor(earlier.p1);
    return new Stretch(Math.min(one, other), Math.max(one, other));
  }

  /** The stretches without a shadow; crumbs shorter than the least are dropped with it. */
  private static List<Stretch> without(List<Stretch> rest, Stretch shadow, double least) {
    List<Stretch> left = new ArrayList<>();
    for (Stretch stretch : rest) {
      double from = Math.max(stretch.from(), shadow.from());
      double to = Math.min(stretch.to(), shadow.to());
      if (to - from <= least) {
        left.add(stretch);
        continue;
      }
      if (from - stretch.from() > least) {
        left.add(new Stretch(stretch.from(), from));
      }
      if (stretch.to() - to > least) {
        left.add(new Stretch(to, stretch.to()));
      }
    }
    return left;
  }
}
