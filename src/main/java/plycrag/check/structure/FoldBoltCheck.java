package plycrag.check.structure;

import plycrag.geometry.Vector3;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.JointPath;
import plycrag.solve.timber.BoltPull;
import plycrag.solve.timber.Dowel;
import plycrag.solve.timber.Embedment;
import plycrag.solve.timber.TimberShear;
import plycrag.solve.timber.WoodLayer;
import plycrag.solve.timber.Worked;
import plycrag.solve.timber.YieldMoment;

/**
 * One bolt of class 4.6, the least that is sold, through two plates at a fold: shear by EN
 * 1995-1-1, 8.2.2 (8.6), across the grain of both, and pull against the wood under a washer of 3 d,
 * 8.5.2. Both together are added, there being no other rule for bolts. The first and the last bolt
 * of a joint take all. N.
 */
final class FoldBoltCheck implements JointCheck {
  private static final double STRENGTH = 400;
  private static final double WASHER = 3;
  private static final double ACROSS = 90;

  private final TimberValues timber;
  private final double shear;
  private final double pull;
  private final Vector3 way;

  FoldBoltCheck(TimberValues timber, double diameter, double plate, Vector3 way) {
    this.timber = timber;
    this.way = way;
    double density = timber.timber().density();
    WoodLayer layer = new WoodLayer(plate, Embedment.bolt(diameter, density, ACROSS).value());
    Dowel bolt = new Dowel(diameter, YieldMoment.of(STRENGTH, diameter).value());
    this.shear = Worked.least(new TimberShear(bolt, layer, layer).single()).value();
    this.pull = BoltPull.washer(WASHER * diameter, diameter + 1, timber.timber().across()).value();
  }

  @Override
  public String words() {
    return "bolt across the fold, shear and pull together";
  }

  @Override
  public String clause() {
    return "EN 1995-1-1, (8.6), 8.5.2";
  }

  @Override
  public double demand(JointPath path, JointPath.Passed passed) {
    Vector3 force = passed.force();
    double along = passed.pressed() > 0 ? 0 : Math.abs(force.dot(way));
    double across = force.minus(way.times(force.dot(way))).length();
    return across + along * shear / pull;
  }

  @Override
  public double capacity(Combination combination) {
    return timber.basis(combination).of(shear);
  }

  @Override
  public String source() {
    return timber.source() + "; bolts of class 4.6";
  }

  @Override
  public LineStatus status(double utilisation) {
    return LineStatus.of(utilisation);
  }
}
