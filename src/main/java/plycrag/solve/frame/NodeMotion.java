package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/**
 * How a node, or a place of a beam, moves.
 *
 * @param translation mm
 * @param rotation radians about each axis
 */
public record NodeMotion(Vector3 translation, Vector3 rotation) {
  static NodeMotion of(double[] motions, int first) {
    return new NodeMotion(vector(motions, first), vector(motions, first + 3));
  }

  static Vector3 vector(double[] values, int first) {
    return new Vector3(values[first], values[first + 1], values[first + 2]);
  }
}
