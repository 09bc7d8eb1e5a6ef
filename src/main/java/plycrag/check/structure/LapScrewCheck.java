package plycrag.check.structure;

import plycrag.geometry.Vector3;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;
import plycrag.solve.fixing.ThroughLine;

/**
 * One screw through a member into another beside it, EN 1995-1-1, 8.7.1 and (8.6). The first and
 * the last screw of a joint take all. What pulls along it asks for a declared value and is told by
 * itself. N.
 */
final class LapScrewCheck implements JointCheck {
  private final ScrewShear screws;
  private final Vector3 way;
  private final double characteristic;

  /** A screw of a diameter and length whose head lies on a member so thick, mm. */
  LapScrewCheck(
      ScrewShear screws, ThroughLine line, double diameter, double length, double thickness) {
    this.screws = screws;
    this.way = line.way();
    this.characteristic =
        screws.throughTimber(diameter, thickness, Math.max(1, length - thickness));
  }

  @Override
  public String words() {
    return "screw through both members, sheared";
  }

  @Override
  public String clause() {
    return "EN 1995-1-1, 8.7.1, (8.6)";
  }

  @Override
  public double demand(JointPath path, JointPath.Passed passed) {
    Vector3 force = passed.force();
    return force.minus(way.times(force.dot(way))).length();
  }

  @Override
  public double capacity(Combination combination) {
    return screws.design(characteristic, combination);
  }

  @Override
  public String source() {
    return screws.source();
  }

  @Override
  public LineStatus status(double utilisation) {
    return screws.status(utilisation);
  }
}
