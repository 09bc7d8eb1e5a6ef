package plycrag.layout.structure;

import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.solve.frame.FrameLoad;

/**
 * A place where somebody may hang: on one stud wholly, at the tip of a hold.
 *
 * @param name of the insert or of the corner
 * @param member the mark of the stud
 * @param beam the beam of the frame
 * @param at along that, mm
 * @param line where that is, in the room
 * @param tip of the hold
 * @param outward square to the face, toward the climber, level, of length one
 * @param along the face, to the right, of length one
 */
public record ClimberPlace(
    String name,
    String member,
    String beam,
    double at,
    Vector3 line,
    Vector3 tip,
    Vector3 outward,
    Vector3 along) {

  /** A force at the tip, N. */
  FrameLoad load(Vector3 force) {
    Vector3 arm = tip.minus(line);
    return new FrameLoad.OnBeam(beam, at, force, arm.cross(force));
  }

  /** Which way somebody pulls, beside down. */
  public enum Pull {
    /** Straight down. */
    DOWN("down", 0, 0),
    /** Off the face as well. */
    OUT("down and outward", 1, 0),
    /** To the left as well. */
    LEFT("down and to the left", 0, -1),
    /** To the right as well. */
    RIGHT("down and to the right", 0, 1),
    /** Against the face as well. */
    IN("down and inward", -1, 0);

    private final String words;
    private final int out;
    private final int right;

    Pull(String words, int out, int right) {
      this.words = words;
      this.out = out;
      this.right = right;
    }

    /** In words. */
    public String words() {
      return words;
    }

    /** The ways on a face that leans out, or that may be pressed as well. */
    static List<Pull> of(boolean pressed) {
      return pressed ? List.of(values()) : List.of(DOWN, OUT, LEFT, RIGHT);
    }
  }

  /** The force of a weight, N, of which a part acts sideways too. */
  public Vector3 force(Pull pull, double weight, double part) {
    return new Vector3(0, 0, -weight)
        .plus(outward.times(pull.out * weight * part))
        .plus(along.times(pull.right * weight * part));
  }
}
