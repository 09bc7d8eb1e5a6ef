package plycrag.check.structure;

import plycrag.layout.structure.Combination;
import plycrag.solve.timber.Dowel;
import plycrag.solve.timber.Embedment;
import plycrag.solve.timber.TimberShear;
import plycrag.solve.timber.WoodLayer;
import plycrag.solve.timber.Worked;
import plycrag.solve.timber.YieldMoment;
import plycrag.wall.room.GivenStructure.ScrewValues;

/**
 * What one screw bears across itself, EN 1995-1-1, 8.7.1 by 8.2.2 (8.6) and 8.3.1.1: as a nail of
 * d_ef = 1.1 times its core, M_y = 0.3 f_u d_ef^2.6, embedment as if nothing were predrilled, no
 * rope effect. N, mm, N/mm².
 */
final class ScrewShear {
  /** Usual for screws in timber, from memory. */
  private static final double CORE = 0.64;

  private static final double STRENGTH = 600;

  /** The least ρ_k that is published for plywood in structures, EN 636 with the German annex. */
  private static final double PLYWOOD = 350;

  /** The most d_ef for which screws are nails, 8.7.1 (3), mm. */
  private static final double MOST = 6;

  private final TimberValues timber;
  private final ScrewValues values;

  ScrewShear(TimberValues timber, ScrewValues values) {
    this.timber = timber;
    this.values = values;
  }

  /** d_ef of a thread's diameter, mm. */
  double effective(double diameter) {
    return 1.1 * values.core().orElse(CORE) * diameter;
  }

  /** Whether screws of a diameter may be reckoned so. */
  boolean knows(double diameter) {
    return effective(diameter) <= MOST;
  }

  /** F_v,Rk through plywood into timber. */
  double throughPlywood(double diameter, double plywood, double penetration) {
    double effective = effective(diameter);
    return single(
        effective,
        new WoodLayer(plywood, Embedment.nailInPlywood(effective, PLYWOOD).value()),
        new WoodLayer(penetration, inTimber(effective)));
  }

  /** F_v,Rk through timber into timber. */
  double throughTimber(double diameter, double thickness, double penetration) {
    double effective = effective(diameter);
    return single(
        effective,
        new WoodLayer(thickness, inTimber(effective)),
        new WoodLayer(penetration, inTimber(effective)));
  }

  private double inTimber(double effective) {
    return Math.min(
        Embedment.nail(effective, timber.timber().density()).value(),
        Embedment.nailPredrilled(effective, timber.timber().density()).value());
  }

  private double single(double effective, WoodLayer first, WoodLayer second) {
    double yields = YieldMoment.of(values.strength().orElse(STRENGTH), effective).value();
    return Worked.least(new TimberShear(new Dowel(effective, yields), first, second).single())
        .value();
  }

  /** A design value of a characteristic one. */
  double design(double characteristic, Combination combination) {
    return timber.basis(combination).of(characteristic);
  }

  /** What passes does so if the steel is what nobody has confirmed. */
  LineStatus status(double utilisation) {
    boolean isTold = values.core().isPresent() && values.strength().isPresent();
    return utilisation > 1 || isTold
        ? LineStatus.of(utilisation)
        : new LineStatus.WouldPass(
            "screws have a core of 0.64 d and steel of 600 N/mm2 ([structure] screw-core,"
                + " screw-strength)");
  }

  String source() {
    return timber.source() + "; plywood of 350 kg/m3";
  }
}
