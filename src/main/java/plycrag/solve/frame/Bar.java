package plycrag.solve.frame;

import plycrag.geometry.Tolerance;

/**
 * A member that only pulls and pushes: a brace, a chain, a strut.
 *
 * @param name what it is called, unlike any other member of its frame
 * @param start where it starts
 * @param end where it ends
 * @param stiffness modulus of elasticity times area, N
 * @param acting pulls only, pushes only, or both; what it does not take leaves it slack
 */
public record Bar(String name, Attachment start, Attachment end, double stiffness, Acting acting) {
  /** Refuses a bar without length or stiffness. */
  public Bar {
    if (!(stiffness > 0) || !Tolerance.isSome(end.place().minus(start.place()).length())) {
      throw new IllegalArgumentException("a bar without length or stiffness: " + name);
    }
  }

  /** One between nodes that pulls and pushes; stiffness in N. */
  public static Bar between(String name, FrameNode start, FrameNode end, double stiffness) {
    return new Bar(name, Attachment.at(start), Attachment.at(end), stiffness, Acting.BOTH_WAYS);
  }

  /** One between nodes that only pulls; stiffness in N. */
  public static Bar tie(String name, FrameNode start, FrameNode end, double stiffness) {
    return new Bar(name, Attachment.at(start), Attachment.at(end), stiffness, Acting.POSITIVE_ONLY);
  }

  /** How long it is, mm. */
  public double length() {
    return end.place().minus(start.place()).length();
  }
}
