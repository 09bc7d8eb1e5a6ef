package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/**
 * A straight member that bends, twists and is pushed or pulled.
 *
 * <p>Its own axes: x from its start to its end; y square to x on the side of the reference; z = x ×
 * y.
 *
 * @param name what it is called, unlike any other member of its frame
 * @param start where it starts and how it is held there
 * @param end where it ends and how it is held there
 * @param reference a direction that is not the beam's own; its part square to the beam is y
 * @param section what it resists with
 */
public record Beam(
    String name, BeamEnd start, BeamEnd end, Vector3 reference, BeamSection section) {
  /** Refuses a beam that spins or slides by itself, being released so at both ends. */
  public Beam {
    for (Freedom alone : new Freedom[] {Freedom.ALONG_X, Freedom.ABOUT_X}) {
      if (start.releases(alone) && end.releases(alone)) {
        throw new IllegalArgumentException("nothing holds " + name + " " + alone);
      }
    }
  }

  /** From where it starts to where it ends, between the arms, mm. */
  public double length() {
    return start.distance(end);
  }

  LocalAxes axes() {
    return LocalAxes.of(end.at().place().minus(start.at().place()), reference);
  }
}
