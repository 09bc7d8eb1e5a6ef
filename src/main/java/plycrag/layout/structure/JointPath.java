package plycrag.layout.structure;

import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.layout.frame.Joint;
import plycrag.solve.frame.FrameSolution;
import plycrag.solve.frame.MemberForces;
import plycrag.solve.frame.SectionForces;

/**
 * A way by which forces go through a joint.
 *
 * @param joint which
 * @param beam the beam of the frame that passes them
 * @param atEnd whether at that beam's end, not at its start
 * @param place where, in the room
 * @param axes of that beam
 */
public record JointPath(Joint joint, String beam, boolean atEnd, Vector3 place, BeamAxes axes) {
  /**
   * The axes of a beam in the room, each of length one.
   *
   * @param x along it
   * @param y square to that
   * @param z square to both
   */
  public record BeamAxes(Vector3 x, Vector3 y, Vector3 z) {
    static BeamAxes of(Vector3 along, Vector3 reference) {
      Vector3 x = along.unit();
      Vector3 y = reference.minus(x.times(reference.dot(x))).unit();
      return new BeamAxes(x, y, x.cross(y));
    }

    Vector3 toRoom(double alongX, double alongY, double alongZ) {
      return x.times(alongX).plus(y.times(alongY)).plus(z.times(alongZ));
    }
  }

  private SectionForces forces(FrameSolution solution) {
    List<MemberForces.Station> stations = solution.forces(beam).stations();
    return stations.get(atEnd ? stations.size() - 1 : 0).forces();
  }

  /**
   * What one side of a joint does to the other, or the other to it.
   *
   * @param force in the room, N
   * @param moment at the way's place, N mm
   * @param pressed the part of the force with which one presses on the other along the way, which
   *     needs no fastener, N; 0 where they are pulled apart
   */
  public record Passed(Vector3 force, Vector3 moment, double pressed) {}

  /** What goes this way. */
  public Passed passed(FrameSolution solution) {
    SectionForces forces = forces(solution);
    return new Passed(
        axes.toRoom(forces.normal(), forces.shearY(), forces.shearZ()),
        axes.toRoom(forces.torsion(), forces.momentY(), forces.momentZ()),
        Math.max(0, -forces.normal()));
  }
}
