package plycrag.check.structure;

import plycrag.geometry.Trig;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;
import plycrag.layout.structure.MemberAxis;
import plycrag.solve.timber.AngledBearing;
import plycrag.solve.timber.DesignStrength;
import plycrag.solve.timber.RectangularSection;

/**
 * The end of a member that presses on the side of another: EN 1995-1-1, 6.2.2, (6.16) in what it
 * presses on, at the angle between both, on the first one's section and no more, k_c,90 = 1. N.
 */
final class BearingCheck implements JointCheck {
  private static final double NO_HELP = 1;
  private static final double SQUARE = 90;

  private final TimberValues timber;
  private final RectangularSection end;
  private final double angle;

  BearingCheck(TimberValues timber, MemberAxis first, MemberAxis second) {
    this.timber = timber;
    this.end = new RectangularSection(first.breadth(), first.depth());
    double along = Math.abs(first.way().dot(second.way()));
    double across = first.way().cross(second.way()).length();
    this.angle = Math.min(SQUARE, Trig.angle(across, along));
  }

  @Override
  public String words() {
    return "bearing of the end on the side";
  }

  @Override
  public String clause() {
    return "EN 1995-1-1, 6.2.2, (6.16)";
  }

  @Override
  public double demand(JointPath path, JointPath.Passed passed) {
    return passed.pressed();
  }

  @Override
  public double capacity(Combination combination) {
    DesignStrength design = DesignStrength.of(timber.strength(), end, timber.basis(combination));
    return AngledBearing.strength(design, NO_HELP, angle).value() * end.area();
  }

  @Override
  public String source() {
    return timber.source();
  }

  @Override
  public LineStatus status(double utilisation) {
    return LineStatus.of(utilisation);
  }
}
