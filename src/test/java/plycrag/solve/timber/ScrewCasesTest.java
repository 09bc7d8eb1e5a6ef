package plycrag.solve.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.timber.Cases.C24;
import static plycrag.solve.timber.Cases.bolt;
import static plycrag.solve.timber.Cases.near;
import static plycrag.solve.timber.Cases.printed;
import static plycrag.solve.timber.Cases.shear;
import static plycrag.solve.timber.Cases.wood;

import org.junit.jupiter.api.Test;

/**
 * Screws, and bolts that are pulled, against the same sources as {@link ConnectionCasesTest}:
 * structural cases C14 to C23. C24 unless told; no rope effect unless told.
 */
class ScrewCasesTest {
  private static final double DESIGN = 0.9 / 1.3;
  private static final Dowel SCREW = bolt(3.52, 600);

  /** C14. */
  @Test
  void screwInSteel() {
    assertThat(SCREW.yieldMoment()).isCloseTo(4745.5, within(0.051));
    double wood = Embedment.nail(3.52, C24).value();
    SteelShear deep = new SteelShear(SCREW, new WoodLayer(38.5, wood));
    SteelShear shallow = new SteelShear(SCREW, new WoodLayer(33.5, wood));
    Worked thin = Worked.least(deep.thin());
    Worked thick = Worked.least(deep.thick());
    near(thin.value(), 932.4);
    near(Worked.least(shallow.thin()).value(), 928.0);
    near(thick.value(), 1274.9);
    near(Worked.least(shallow.thick()).value(), 1155.6);
    near(SteelShear.between(3, 5, thin, thick).value(), 1000.9);
  }

  private static TimberShear sheetScrew() {
    return new TimberShear(
        SCREW,
        new WoodLayer(18, Embedment.nailInPlywood(3.52, 630).value()),
        new WoodLayer(42, Embedment.nail(3.52, C24).value()));
  }

  /** C15. */
  @Test
  void plywoodOnTimber() {
    assertThat(Embedment.nailInPlywood(3.52, 630).value()).isCloseTo(47.5084, within(5.1e-5));
    assertThat(Embedment.nail(3.52, C24).value()).isCloseTo(19.6752, within(5.1e-5));
    near(sheetScrew().single(), 3010.1, 2908.8, 1217.4, 1072.7, 1276.6, 1108.8);
    near(Worked.least(sheetScrew().single()).value() * DESIGN, 742.7);
  }

  /** C16. */
  @Test
  void nailedPlywood() {
    Worked yields = YieldMoment.of(650, 3);
    near(yields.value(), 3392.7);
    TimberShear shear =
        new TimberShear(
            new Dowel(3, yields.value()),
            new WoodLayer(12, Embedment.nailInPlywood(3, 630).value()),
            new WoodLayer(38, Embedment.nail(3, 320).value()));
    near(shear.single(), 1794.3, 2151.5, 854.9, 705.6, 959.2, 858.5);
  }

  /** C17. */
  @Test
  void gussetsOnBothSides() {
    double[][] rows = {{10, 0, 5081.9}, {10, 90, 3874.5}, {12, 0, 6623.7}, {12, 90, 4456.9}};
    for (double[] row : rows) {
      WoodLayer plywood = new WoodLayer(18, Embedment.boltInPlywood(row[0], 630).value());
      TimberShear shear = new TimberShear(bolt(row[0], 400), plywood, wood(45, row[0], row[1]));
      near(Worked.least(shear.twice()).value(), row[2]);
    }
  }

  /** C18. */
  @Test
  void pulledScrews() {
    near(ScrewPull.withdrawal(1, 12, 5, 42, 350, 350).value(), 2520.0);
    Worked head = ScrewPull.headThrough(1, 10, 10, 630, 350);
    near(head.value(), 1600.4);
    near(ScrewPull.headThrough(1, 10, 10, 350, 350).value(), 1000);
    near(head.value() * DESIGN, 1107.9);
    double shear = Worked.least(sheetScrew().single()).value() * DESIGN;
    assertThat(ScrewPull.together(500, head.value() * DESIGN, 300, shear).value())
        .isCloseTo(0.366833, within(1e-6));
  }

  /** C19. */
  @Test
  void pulledBolts() {
    double[][] washers = {
      {8, 24, 2915.8}, {10, 30, 4588.7}, {10, 40, 8712.0}, {12, 36, 6638.6}, {12, 48, 12_576.2}
    };
    for (double[] row : washers) {
      near(BoltPull.washer(row[1], row[0] + 1, 2.5).value(), row[2]);
    }
    near(BoltPull.plate(3, 10, 11, 2.5).value(), 6921.3);
    near(BoltPull.tension(400, 58.0).value(), 16_704);
    near(BoltPull.tension(800, 58.0).value(), 33_408);
    assertThat(BoltPull.tension(400, 84.3).value()).isCloseTo(24_278, within(0.51));
    near(BoltPull.shear(400, 58.0).value(), 11_136);
    near(BoltPull.shear(800, 58.0).value(), 22_272);
    assertThat(BoltPull.shear(800, 84.3).value()).isCloseTo(32_371, within(0.51));
    printed(BoltPull.washer(48, 13, 2.5).value(), 1.26e4);
  }

  /** C20. */
  @Test
  void coachScrew() {
    near(new SteelShear(bolt(8, 400), wood(92, 8, 0)).thick(), 19_433.3, 8457.6, 5466.6);
    near(new SteelShear(bolt(8, 400), wood(92, 8, 90)).thick(), 13_220.0, 5882.6, 4508.8);
  }

  /** C21. */
  @Test
  void howManyCount() {
    double[][] bolts = {
      {2, 50, 10, 1.469548}, {2, 70, 10, 1.598511}, {2, 60, 12, 1.469548}, {4, 60, 12, 2.742273}
    };
    for (double[] row : bolts) {
      assertThat(EffectiveNumber.bolts((int) row[0], row[1], row[2]).value())
          .isCloseTo(row[3], within(1e-6));
    }
    assertThat(EffectiveNumber.bolts(1, 200, 10).value()).isEqualTo(1);
    double[][] nails = {
      {14, 2, 4}, {10, 1.8025, 3.2490}, {7, 1.6245, 2.6390}, {4, 1.4142, 2}, {20, 2, 4}
    };
    for (double[] row : nails) {
      assertThat(EffectiveNumber.nails(2, 5 * row[0], 5, true).value())
          .isCloseTo(row[1], within(5.1e-5));
      assertThat(EffectiveNumber.nails(4, 5 * row[0], 5, true).value())
          .isCloseTo(row[2], within(5.1e-5));
    }
    assertThat(EffectiveNumber.nails(4, 40, 5, false).value()).isCloseTo(2.828427, within(1e-6));
    assertThatThrownBy(() -> EffectiveNumber.nails(2, 30, 5, false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** C22. */
  @Test
  void slip() {
    double[][] bolts = {{12, 4490.84}, {10, 3742.36}, {6, 2245.42}, {5, 1871.18}};
    for (double[] row : bolts) {
      assertThat(FastenerSlip.bolt(420, row[0]).value()).isCloseTo(row[1], within(5.1e-3));
    }
    assertThat(FastenerSlip.nail(420, 3.1).value()).isCloseTo(709.32, within(5.1e-3));
    double mixed = FastenerSlip.density(680, 420);
    assertThat(mixed).isCloseTo(534.416, within(5.1e-4));
    assertThat(FastenerSlip.bolt(mixed, 5).value()).isCloseTo(2685.72, within(5.1e-3));
    double inUse = FastenerSlip.bolt(420, 10).value();
    assertThat(FastenerSlip.ultimate(inUse)).isCloseTo(2494.91, within(5.1e-3));
    assertThat(2 * inUse).isCloseTo(7484.73, within(5.1e-3));
  }

  /** C23: what a lap on one side bends. */
  @Test
  void oneSidedLap() {
    double moment = 3000.0 * 45;
    assertThat(moment).isEqualTo(135_000);
    assertThat(SectionStress.of(new RectangularSection(45, 95), 0, 0, moment).bendingZ())
        .isCloseTo(4.2105, within(5.1e-5));
  }
}
