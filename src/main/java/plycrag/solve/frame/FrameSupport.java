package plycrag.solve.frame;

import java.util.Arrays;
import java.util.List;

/**
 * What holds one freedom of a node to the ground.
 *
 * @param node whose
 * @param freedom which, in the axes of the frame
 * @param stiffness N/mm, for rotations N mm per radian; infinite where it does not give
 * @param acting both ways, or the sign of the force on the frame that alone it takes
 */
public record FrameSupport(FrameNode node, Freedom freedom, double stiffness, Acting acting) {
  /** Refuses a support that holds nothing. */
  public FrameSupport {
    if (!(stiffness > 0)) {
      throw new IllegalArgumentException("a support holds with more than nothing: " + node);
    }
  }

  /** Holds some freedoms of a node so that they do not give. */
  public static List<FrameSupport> held(FrameNode node, Freedom... freedoms) {
    return Arrays.stream(freedoms).map(one -> rigid(node, one, Acting.BOTH_WAYS)).toList();
  }

  /** Holds all of a node. */
  public static List<FrameSupport> fixed(FrameNode node) {
    return held(node, Freedom.values());
  }

  /** Holds a node's place and lets it turn. */
  public static List<FrameSupport> pinned(FrameNode node) {
    return held(node, Freedom.ALONG_X, Freedom.ALONG_Y, Freedom.ALONG_Z);
  }

  /** What a node stands on or leans against: pushes it along an axis, and lets it lift off. */
  public static FrameSupport contact(FrameNode node, Freedom freedom) {
    return rigid(node, freedom, Acting.POSITIVE_ONLY);
  }

  /** Gives in proportion; stiffness in N/mm, for rotations N mm per radian. */
  public static FrameSupport spring(FrameNode node, Freedom freedom, double stiffness) {
    return new FrameSupport(node, freedom, stiffness, Acting.BOTH_WAYS);
  }

  private static FrameSupport rigid(FrameNode node, Freedom freedom, Acting acting) {
    return new FrameSupport(node, freedom, Double.POSITIVE_INFINITY, acting);
  }

  boolean isRigid() {
    return Double.isInfinite(stiffness);
  }

  /** What reactions and slack parts call it. */
  public String name() {
    return node.name() + " " + freedom;
  }
}
