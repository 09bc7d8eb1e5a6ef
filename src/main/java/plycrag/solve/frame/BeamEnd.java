package plycrag.solve.frame;

import java.util.Set;
import plycrag.geometry.Tolerance;

/**
 * How an end of a beam is held by its node.
 *
 * @param at where it ends
 * @param released what it does not pass on, in the beam's own axes: {@link Freedom#ALONG_X} and the
 *     rotations only
 */
public record BeamEnd(Attachment at, Set<Freedom> released) {
  /** Refuses shear that is released: a beam's end without it is no joint. */
  public BeamEnd {
    released = Set.copyOf(released);
    if (released.contains(Freedom.ALONG_Y) || released.contains(Freedom.ALONG_Z)) {
      throw new IllegalArgumentException("the end of a beam passes shear on: " + at);
    }
  }

  /** An end that turns and moves as its node does. */
  public static BeamEnd rigid(FrameNode node) {
    return rigid(Attachment.at(node));
  }

  /** The same on an arm. */
  public static BeamEnd rigid(Attachment at) {
    return new BeamEnd(at, Set.of());
  }

  /** An end that passes on no bending moment, but torsion. */
  public static BeamEnd pinned(FrameNode node) {
    return pinned(Attachment.at(node));
  }

  /** The same on an arm. */
  public static BeamEnd pinned(Attachment at) {
    return new BeamEnd(at, Set.of(Freedom.ABOUT_Y, Freedom.ABOUT_Z));
  }

  boolean releases(Freedom freedom) {
    return released.contains(freedom);
  }

  double distance(BeamEnd other) {
    double distance = other.at.place().minus(at.place()).length();
    if (!Tolerance.isSome(distance)) {
      throw new IllegalArgumentException("a beam without length at " + at);
    }
    return distance;
  }
}
