package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.layout.joints.Gusset;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;
import plycrag.layout.structure.MemberAxis;
import plycrag.solve.fixing.GussetFit;
import plycrag.solve.timber.EffectiveNumber;
import plycrag.solve.timber.FastenerGroup;
import plycrag.solve.timber.FastenerGroup.Plane;

/**
 * The screws of a pair of gussets in one of the members that it joins: each gusset takes half of
 * the force, and of its moment about the middle of the member's screws (elastic distribution); the
 * most loaded screw against F_v,Rd times n_ef/n of the longest row along the grain, EN 1995-1-1,
 * 8.3.1.1 (8), (8.17). What presses one member on the other goes through their contact. Forces
 * square to the plywood are not counted.
 */
final class GussetPairCheck implements JointCheck {
  /** Table 8.1 begins at so many diameters where nothing is predrilled. */
  private static final double LEAST_STEP = 7;

  private final String member;
  private final ScrewShear screws;
  private final Vector3 middle;
  private final Vector3 along;
  private final Vector3 across;
  private final FastenerGroup group;
  private final double characteristic;
  private final int count;

  GussetPairCheck(Gusset gusset, MemberAxis axis, ScrewShear screws) {
    this.member = axis.mark();
    this.screws = screws;
    GussetFit fit = gusset.fit();
    List<Vector3> places = places(fit, axis.mark());
    this.count = places.size();
    this.middle = middle(places);
    this.along = axis.way();
    this.across = normal(fit.body()).cross(along).unit();
    List<Plane> plane =
        places.stream()
            .map(place -> place.minus(middle))
            .map(arm -> new Plane(arm.dot(along), arm.dot(across)))
            .toList();
    this.group = new FastenerGroup(plane);
    double thickness = thickness(fit.body());
    double one = screws.throughPlywood(fit.diameter(), thickness, fit.screwLength() - thickness);
    this.characteristic = one * rows(plane, screws.effective(fit.diameter()));
  }

  /**
   * Whether it can be reckoned: the screws are nails to the standard, and some are in the member.
   */
  static boolean knows(Gusset gusset, String member, ScrewShear screws) {
    return screws.knows(gusset.fit().diameter()) && places(gusset.fit(), member).size() > 1;
  }

  private static List<Vector3> places(GussetFit fit, String member) {
    List<Rod> rods = fit.rods();
    List<Vector3> places = new ArrayList<>();
    for (int i = 0; i < rods.size(); i++) {
      if (fit.screws().get(i).member().equals(member)) {
        places.add(rods.get(i).from());
      }
    }
    return places;
  }

  private static Vector3 middle(List<Vector3> places) {
    return places.stream().reduce(new Vector3(0, 0, 0), Vector3::plus).times(1.0 / places.size());
  }

  private static Vector3 normal(Solid body) {
    return body.far().get(0).minus(body.near().get(0)).unit();
  }

  private static double thickness(Solid body) {
    return body.far().get(0).minus(body.near().get(0)).length();
  }

  /** n_ef/n of the longest row along the grain; 1 where no two stand in one. */
  private static double rows(List<Plane> places, double diameter) {
    double least = 1;
    for (Plane one : places) {
      List<Double> row =
          places.stream()
              .filter(other -> Math.abs(other.y() - one.y()) < diameter)
              .map(Plane::x)
              .sorted()
              .toList();
      if (row.size() > 1) {
        least = Math.min(least, part(row, diameter));
      }
    }
    return least;
  }

  private static double part(List<Double> row, double diameter) {
    double step = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < row.size(); i++) {
      step = Math.min(step, row.get(i + 1) - row.get(i));
    }
    double counted = Math.max(step, LEAST_STEP * diameter);
    return EffectiveNumber.nails(row.size(), counted, diameter, false).value() / row.size();
  }

  @Override
  public String words() {
    return "gussets: the most loaded of " + count + " screws of each in " + member;
  }

  @Override
  public String clause() {
    return "EN 1995-1-1, 8.7.1, (8.6), (8.17)";
  }

  @Override
  public double demand(JointPath path, JointPath.Passed passed) {
    Vector3 pressed = path.axes().x().times(-passed.pressed());
    Vector3 half = passed.force().minus(pressed).times(0.5);
    Vector3 arm = path.place().minus(middle);
    Vector3 turning = passed.moment().times(0.5).plus(arm.cross(half));
    double about = turning.dot(along.cross(across));
    return group.worst(new Plane(half.dot(along), half.dot(across)), about).size();
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
