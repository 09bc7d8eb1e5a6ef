package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/** What acts on a frame, in the frame's axes. */
public sealed interface FrameLoad {
  /** No force or moment. */
  Vector3 NONE = new Vector3(0, 0, 0);

  /**
   * A force and a moment on a node.
   *
   * @param node which
   * @param force N
   * @param moment N mm
   */
  record OnNode(FrameNode node, Vector3 force, Vector3 moment) implements FrameLoad {}

  /**
   * A load spread evenly along a beam between its ends, as its own weight is.
   *
   * @param beam the beam's name
   * @param force on each millimetre of the beam, N/mm
   */
  record Spread(String beam, Vector3 force) implements FrameLoad {}

  /**
   * A force and a moment on a beam. What acts beside the beam's axis is a force on it and the
   * moment of its arm.
   *
   * @param beam the beam's name
   * @param at from the beam's start, along it, mm
   * @param force N
   * @param moment N mm
   */
  record OnBeam(String beam, double at, Vector3 force, Vector3 moment) implements FrameLoad {}

  /**
   * How far a rigid support moves its node.
   *
   * @param node whose
   * @param freedom along or about which axis; a rigid support must hold it
   * @param amount mm or radians
   */
  record Settlement(FrameNode node, Freedom freedom, double amount) implements FrameLoad {}

  /** A force alone on a node, N. */
  static FrameLoad on(FrameNode node, Vector3 force) {
    return new OnNode(node, force, NONE);
  }

  /** A force alone on a beam, N, so far from its start, mm. */
  static FrameLoad on(String beam, double at, Vector3 force) {
    return new OnBeam(beam, at, force, NONE);
  }
}
