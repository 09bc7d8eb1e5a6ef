package plycrag.layout.joints;

import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.solve.fixing.GussetFit;

/**
 * A rectangle of plywood over members that meet, where no bracket and no strap holds them.
 *
 * @param mark {@code GU1}, {@code GU2}, …
 * @param joints the marks of the joints that it holds
 * @param side of the timber on which it lies
 * @param fit its size, its screws and where it lies
 */
public record Gusset(String mark, List<String> joints, Side side, GussetFit fit) {
  /** A side of timber as one sees it from where one climbs. */
  public enum Side {
    /** Left. */
    LEFT("left side"),
    /** Right. */
    RIGHT("right side"),
    /** Toward the climber. */
    FRONT("front"),
    /** Away from the climber. */
    BACK("back"),
    /** Up. */
    TOP("upper side"),
    /** Down. */
    BOTTOM("lower side");

    private final String words;

    Side(String words) {
      this.words = words;
    }

    /** In words, to follow "the". */
    public String words() {
      return words;
    }

    /** The one that a way points to most, in the axes of a run. */
    static Side of(Vector3 way) {
      double x = Math.abs(way.x());
      double y = Math.abs(way.y());
      double z = Math.abs(way.z());
      if (x >= y && x >= z) {
        return way.x() < 0 ? LEFT : RIGHT;
      }
      if (y >= z) {
        return way.y() < 0 ? BACK : FRONT;
      }
      return way.z() < 0 ? BOTTOM : TOP;
    }
  }

  /** Copies the joints. */
  public Gusset {
    joints = List.copyOf(joints);
  }

  Gusset withMark(String other) {
    return new Gusset(other, joints, side, fit);
  }

  /** The marks of the members under it. */
  public List<String> members() {
    return List.copyOf(fit.timbers().keySet());
  }
}
