package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import plycrag.geometry.Vector3;

/**
 * A stretch of beam without a load at a point inside, on which everything is a polynomial. All in
 * the beam's own axes.
 *
 * @param from where it starts along the beam, mm
 * @param length mm
 * @param section what it resists with
 * @param line the load on each millimetre, N/mm
 * @param force in the section at its start, N
 * @param moment in the section at its start, N mm
 * @param start how its start moves
 */
record Span(
    double from,
    double length,
    BeamSection section,
    Vector3 line,
    Vector3 force,
    Vector3 moment,
    NodeMotion start) {

  /** The forces so far from its start. */
  SectionForces forces(double s) {
    Vector3 beyond = forceAt(s);
    Vector3 turn = momentAt(s);
    return new SectionForces(beyond.x(), beyond.y(), beyond.z(), turn.x(), turn.y(), turn.z());
  }

  private Vector3 forceAt(double s) {
    return force.minus(line.times(s));
  }

  private Vector3 momentAt(double s) {
    return new Vector3(
        moment.x(),
        moment.y() + force.z() * s - line.z() * s * s / 2,
        moment.z() - force.y() * s + line.y() * s * s / 2);
  }

  /** How the place so far from its start moves. */
  NodeMotion motion(double s) {
    Vector3 moved = start.translation();
    Vector3 turned = start.rotation();
    double bendY = section.elasticity() * section.inertiaY();
    double bendZ = section.elasticity() * section.inertiaZ();
    Vector3 rotation =
        new Vector3(
            turned.x() + moment.x() * s / (section.shearModulus() * section.torsion()),
            turned.y() + once(s, moment.y(), force.z(), -line.z()) / bendY,
            turned.z() + once(s, moment.z(), -force.y(), line.y()) / bendZ);
    Vector3 translation =
        new Vector3(
            moved.x() + mean(s, force.x(), line.x()) / (section.elasticity() * section.area()),
            moved.y()
                + turned.z() * s
                + twice(s, moment.z(), -force.y(), line.y()) / bendZ
                + mean(s, force.y(), line.y()) / (section.shearModulus() * section.shearAreaY()),
            moved.z()
                - turned.y() * s
                - twice(s, moment.y(), force.z(), -line.z()) / bendY
                + mean(s, force.z(), line.z()) / (section.shearModulus() * section.shearAreaZ()));
    return new NodeMotion(translation, rotation);
  }

  private static double mean(double s, double at, double line) {
    return at * s - line * s * s / 2;
  }

  private static double once(double s, double constant, double linear, double square) {
    return s * (constant + s * (linear / 2 + s * square / 6));
  }

  private static double twice(double s, double constant, double linear, double square) {
    return s * s * (constant / 2 + s * (linear / 6 + s * square / 24));
  }

  /** From the start: both ends, and where shear changes its sign and so a moment is greatest. */
  List<Double> stations() {
    List<Double> all = new ArrayList<>();
    DoubleStream.of(0, length, force.y() / line.y(), force.z() / line.z())
        .filter(s -> s >= 0 && s <= length)
        .sorted()
        .distinct()
        .forEach(all::add);
    return all;
  }

  /** What follows on it after an action at its end, so long. */
  Span next(Vector3 acting, Vector3 turning, double itsLength) {
    return new Span(
        from + length,
        itsLength,
        section,
        line,
        forceAt(length).minus(acting),
        momentAt(length).minus(turning),
        motion(length));
  }
}
