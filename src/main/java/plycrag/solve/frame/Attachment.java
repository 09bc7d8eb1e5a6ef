package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/**
 * A place that moves with a node as if a rigid arm held it there, so that what acts on it away from
 * the node turns the node too.
 *
 * @param node what it moves with
 * @param arm from the node to the place, mm, in the axes of the frame
 */
public record Attachment(FrameNode node, Vector3 arm) {
  private static final Vector3 NONE = new Vector3(0, 0, 0);

  /** The node's own place. */
  public static Attachment at(FrameNode node) {
    return new Attachment(node, NONE);
  }

  /** Where it is, mm. */
  public Vector3 place() {
    return node.place().plus(arm);
  }
}
