package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/**
 * What supports do to a node.
 *
 * @param force on the frame, N
 * @param moment on the frame, N mm
 */
public record NodeForce(Vector3 force, Vector3 moment) {
  static NodeForce of(double[] forces, int first) {
    return new NodeForce(NodeMotion.vector(forces, first), NodeMotion.vector(forces, first + 3));
  }
}
