package plycrag.solve.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;

/** What cases of joints are made of, and how near they must come. */
final class Cases {
  static final double C24 = 350;

  private Cases() {}

  static void near(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(0.051));
  }

  static void near(List<Worked> ways, double... expected) {
    assertThat(ways).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      near(ways.get(i).value(), expected[i]);
    }
  }

  static void least(List<Worked> ways, String way, double expected) {
    Worked least = Worked.least(ways);
    assertThat(least.clause()).endsWith("(" + way + ")");
    near(least.value(), expected);
  }

  static void printed(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, withinPercentage(0.5));
  }

  static Dowel bolt(double diameter, double strength) {
    return new Dowel(diameter, YieldMoment.of(strength, diameter).value());
  }

  static WoodLayer wood(double thickness, double diameter, double angle) {
    return wood(thickness, diameter, angle, C24);
  }

  static WoodLayer wood(double thickness, double diameter, double angle, double density) {
    return new WoodLayer(thickness, Embedment.bolt(diameter, density, angle).value());
  }

  static TimberShear shear(
      double diameter, double strength, double t1, double t2, double angle1, double angle2) {
    return new TimberShear(
        bolt(diameter, strength), wood(t1, diameter, angle1), wood(t2, diameter, angle2));
  }
}
