package plycrag.solve.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.timber.Cases.C24;
import static plycrag.solve.timber.Cases.bolt;
import static plycrag.solve.timber.Cases.least;
import static plycrag.solve.timber.Cases.near;
import static plycrag.solve.timber.Cases.printed;
import static plycrag.solve.timber.Cases.shear;
import static plycrag.solve.timber.Cases.wood;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Joints against course sheets (TKT4211), the Norwegian glulam book and what was recomputed from
 * the same inputs: structural cases C1 to C13. C24 unless told; no rope effect unless told.
 */
class ConnectionCasesTest {
  private static final double DESIGN = 0.9 / 1.3;

  /** What the cases are made of. */
  @Test
  void embedmentAndYielding() {
    double[][] along = {{8, 26.404, 1.47}, {10, 25.830, 1.50}, {12, 25.256, 1.53}};
    for (double[] row : along) {
      Worked embedment = Embedment.bolt(row[0], C24, 0);
      assertThat(embedment.value()).isCloseTo(row[1], within(5.1e-4));
      assertThat(embedment.symbol("k_90")).isCloseTo(row[2], within(1e-9));
    }
    double[][] angles = {{25, 23.0720}, {30, 22.3011}, {45, 19.9652}, {60, 18.0723}, {90, 16.5072}};
    for (double[] row : angles) {
      assertThat(Embedment.bolt(12, C24, row[0]).value()).isCloseTo(row[1], within(5.1e-5));
    }
    assertThat(YieldMoment.of(400, 8).value()).isCloseTo(26_743, within(0.51));
    near(YieldMoment.of(400, 10).value(), 47_772.9);
    near(YieldMoment.of(400, 12).value(), 76_745.4);
    double[][] course = {
      {12, 400, 76_745}, {10, 800, 95_545}, {12, 600, 115_118}, {12, 800, 153_491}
    };
    for (double[] row : course) {
      assertThat(YieldMoment.of(row[1], row[0]).value()).isCloseTo(row[2], within(1.0));
    }
    assertThat(Embedment.boltInPlywood(10, 630).value()).isCloseTo(62.370, within(5.1e-4));
    assertThat(Embedment.boltInPlywood(12, 630).value()).isCloseTo(60.984, within(5.1e-4));
    assertThat(Embedment.nailPredrilled(12, C24).value()).isCloseTo(25.256, within(5.1e-4));
  }

  /** C1. */
  @Test
  void singleShear() {
    near(shear(10, 400, 45, 45, 0, 0).single(), 11_623.5, 11_623.5, 4814.6, 5115.5, 5115.5, 5713.0);
    near(shear(10, 400, 45, 45, 0, 90).single(), 11_623.5, 7749.0, 3988.0, 4704.6, 4001.6, 5109.9);
    least(shear(10, 400, 45, 45, 0, 0).single(), "c", 4814.6);
    near(Worked.least(shear(10, 400, 45, 45, 90, 90).single()).value(), 3209.7);
    least(shear(10, 400, 45, 45, 0, 25).single(), "c", 4616.0);
    least(shear(10, 800, 45, 45, 0, 0).single(), "c", 4814.6);
    least(shear(8, 400, 45, 45, 0, 0).single(), "f", 3865.5);
    least(shear(12, 400, 45, 45, 0, 0).single(), "c", 5649.1);
    least(shear(12, 400, 45, 45, 0, 90).single(), "c", 4639.7);
  }

  /** C2. */
  @Test
  void unequalLayers() {
    least(shear(12, 400, 45, 95, 0, 0).single(), "d", 6421.8);
    least(shear(12, 400, 45, 95, 0, 90).single(), "d", 5865.1);
    least(shear(12, 400, 45, 45, 30, 0).single(), "c", 5315.7);
    near(shear(12, 400, 45, 45, 30, 0).single().get(4).value(), 6265.8);
  }

  /** C3. */
  @Test
  void threeLayers() {
    double[][] rows = {
      {10, 400, 0, 5115.5},
      {10, 400, 90, 3874.5},
      {10, 400, 65, 4119.8},
      {10, 800, 0, 5811.8},
      {10, 800, 90, 3874.5},
      {10, 800, 65, 4119.8},
      {12, 400, 0, 6421.8},
      {12, 400, 90, 4456.9},
      {12, 400, 65, 4750.9},
      {12, 800, 0, 6819.1},
      {12, 800, 90, 4456.9},
      {12, 800, 65, 4750.9}
    };
    for (double[] row : rows) {
      near(Worked.least(shear(row[0], row[1], 45, 45, 0, row[2]).twice()).value(), row[3]);
    }
  }

  /** C4, course sheet C1: dowels in three layers. */
  @Test
  void dowelsInThreeLayers() {
    List<Worked> ways = shear(12, 600, 36, 48, 0, 0).twice();
    near(ways, 10_910.6, 7273.7, 6651.1, 9606.3);
    double[] sheet = {10_930, 7286, 6657, 9614};
    for (int i = 0; i < sheet.length; i++) {
      printed(ways.get(i).value(), sheet[i]);
    }
    double counts = EffectiveNumber.bolts(3, 60, 12).value();
    assertThat(counts).isCloseTo(2.116732, within(1e-6));
    double least = Worked.least(ways).value();
    assertThat(4 * counts * least * DESIGN).isCloseTo(38_986.9, within(0.5));
    assertThat(12 * least * DESIGN).isCloseTo(55_255.4, within(0.5));
  }

  /** C5, course sheet C2. */
  @Test
  void dowelsAcrossSides() {
    TimberShear shear = shear(12, 360, 80, 80, 70, 0);
    near(shear.twice(), 16_516.2, 12_122.9, 7074.8, 6698.5);
    double[] sheet = {16_512, 12_144, 7075, 6699};
    for (int i = 0; i < sheet.length; i++) {
      printed(shear.twice().get(i).value(), sheet[i]);
    }
    assertThat(Embedment.bolt(12, C24, 70).value()).isCloseTo(17.2043, within(5.1e-5));
    assertThat(EffectiveNumber.bolts(2, 64, 12).value()).isCloseTo(1.493451, within(1e-6));
    assertThat(EffectiveNumber.bolts(2, 53, 12).value()).isCloseTo(1.424672, within(1e-6));
  }

  /** C6 and C7. */
  @Test
  void splitting() {
    Worked splits = GrainSplitting.of(160, 180, 120);
    assertThat(splits.value()).isCloseTo(42_501.01, within(5.1e-3));
    assertThat(splits.value() * DESIGN).isCloseTo(29_423.78, within(5.1e-3));
    printed(splits.value(), 42_501);
    near(GrainSplitting.of(190, 1215, 608).value(), 92_795.6);
    printed(GrainSplitting.of(190, 1215, 608).value(), 92_760);
    double[][] own = {
      {145, 45, 5089.0},
      {145, 72.5, 7586.2},
      {145, 100, 11_308.8},
      {95, 47.5, 6140.5},
      {195, 120, 11_128.0}
    };
    for (double[] row : own) {
      near(GrainSplitting.of(45, row[0], row[1]).value(), row[2]);
    }
  }

  /** C8, course sheet C3: six bolts that a moment turns. */
  @Test
  void group() {
    List<FastenerGroup.Plane> places = new ArrayList<>();
    for (double x : new double[] {-90, 0, 90}) {
      places.add(new FastenerGroup.Plane(x, 40));
      places.add(new FastenerGroup.Plane(x, -40));
    }
    FastenerGroup group = new FastenerGroup(places);
    assertThat(group.squares()).isEqualTo(42_000);
    FastenerGroup.Plane whole = new FastenerGroup.Plane(40_000, -1500);
    FastenerGroup.Plane worst = group.worst(whole, 3.715e6);
    assertThat(worst.x()).isCloseTo(10_204.76, within(5.1e-3));
    assertThat(Math.abs(worst.y())).isCloseTo(8210.71, within(5.1e-3));
    assertThat(worst.size()).isCloseTo(13_097.82, within(5.1e-3));
    double x = 0;
    double y = 0;
    for (FastenerGroup.Plane one : group.forces(whole, 3.715e6)) {
      x += one.x();
      y += one.y();
    }
    near(x, 40_000);
    near(y, -1500);
  }

  /** C9, course sheet C3: its bolts, with rope effect. */
  @Test
  void bolts() {
    TimberShear shear =
        new TimberShear(bolt(12, 800), wood(75, 12, 39, 380), wood(115, 12, 39, 430));
    near(shear.twice(), 20_397.3, 17_695.5, 9353.7, 10_827.2);
    Worked washer = BoltPull.washer(48, 13, 2.7);
    near(washer.value(), 13_582.3);
    Worked rope = RopeEffect.of(Worked.least(shear.twice()), washer.value() * 100, 0.25);
    near(rope.value(), 11_692.1);
    near(RopeEffect.of(Worked.least(shear.twice()), 4000, 0.25).value(), 10_353.7);
    printed(rope.value(), 11_662);
    TimberShear along = new TimberShear(bolt(12, 800), wood(75, 12, 0, 380), wood(115, 12, 0, 430));
    near(Worked.least(along.twice()).value(), 10_904.5);
    near(1.25 * Worked.least(along.twice()).value(), 13_630.6);
    assertThat(EffectiveNumber.bolts(3, 90, 12).value()).isCloseTo(2.342549, within(1e-6));
  }

  /** C10, course sheet C4: steel in slots. */
  @Test
  void slottedSteel() {
    SteelShear outer = new SteelShear(bolt(12, 400), wood(40, 12, 0, 400));
    near(outer.slotted(), 13_854.7, 8286.5, 11_858.3);
    SteelShear middle = new SteelShear(bolt(12, 400), wood(71, 12, 0, 400));
    near(middle.thickOutside(), 12_296.1, 11_858.3);
    double[] sheet = {13_872, 8294, 11_866};
    for (int i = 0; i < sheet.length; i++) {
      printed(outer.slotted().get(i).value(), sheet[i]);
    }
    assertThat(EffectiveNumber.bolts(5, 60, 12).value()).isCloseTo(3.352198, within(1e-6));
  }

  /** C11, course sheet C5. */
  @Test
  void heavierLayers() {
    TimberShear shear = new TimberShear(bolt(10, 800), wood(50, 10, 0, 380), wood(100, 10, 0, 380));
    near(shear.twice(), 14_022, 14_022, 6742.6, 8418.6);
    printed(Worked.least(shear.twice()).value(), 6734);
  }

  /** C12, the glulam book's example 19. */
  @Test
  void glulamBetweenSteel() {
    SteelShear shear = new SteelShear(bolt(16, 800), wood(190, 16, 90, 390));
    near(shear.thinOutside(), 25_680.5, 15_227.0);
    near(shear.thickOutside().get(1).value(), 21_534.2);
    printed(shear.thinOutside().get(1).value(), 15_300);
    printed(1.25 * shear.thinOutside().get(1).value(), 19_100);
  }

  /** C13. */
  @Test
  void steelOnWood() {
    SteelShear shear = new SteelShear(bolt(10, 400), wood(45, 10, 0));
    near(shear.thin(), 4649.4, 5713.0);
    near(shear.thick(), 11_623.5, 6253.0, 8079.4);
    near(shear.thinOutside(), 5811.8, 5713.0);
    near(shear.thickOutside(), 5811.8, 8079.4);
    SteelShear across = new SteelShear(bolt(10, 400), wood(45, 10, 90));
    near(across.thinOutside(), 3874.5, 4664.7);
    Worked thin = Worked.least(shear.thin());
    Worked thick = Worked.least(shear.thick());
    near(SteelShear.between(6, 10, thin, thick).value(), 4970.1);
    near(SteelShear.between(4, 10, thin, thick).value(), thin.value());
    near(SteelShear.between(12, 10, thin, thick).value(), thick.value());
  }
}
