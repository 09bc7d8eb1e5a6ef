package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Fixity;
import plycrag.solve.cutting.CuttingTask;
import plycrag.units.LengthUnit;
import plycrag.wall.buying.Section;
import plycrag.wall.buying.TimberStock;

/** What is cut is rounded up, what it is cut from down: tenths of a millimetre or 1/128 in. */
class StickMeasureTest {
  private static final Section SECTION = new Section(45, 90);

  /** Any number of either length, without a price. */
  private static final StickPrices NONE =
      new StickPrices(
          "",
          Collections.nCopies(2, List.of(new StickPrices.Tier(0, CuttingTask.Stock.UNLIMITED))));

  private static Member stud(double length) {
    Polygon footprint = Shapes.rectangle(0, 0, 45, length);
    return new Member("ST1", MemberRole.STUD, Fixity.FREE, Direction.UP, footprint, footprint, 90);
  }

  private static StickMeasure measure(LengthUnit unit, double kerf, double trim, double... atHand) {
    List<Double> hand = Arrays.stream(atHand).boxed().toList();
    TimberStock stock = new TimberStock(List.of(2400.0, 3000.0), kerf, trim, 20_000, hand);
    return new StickMeasure(unit, stock, NONE);
  }

  /** 1000.01 are 10 001 tenths, 1000 are 10 000; a kerf of 2.31 is 24, a trim of 5.01 is 51. */
  @Test
  void tenthsOfAMillimetre() {
    StickMeasure measure = measure(LengthUnit.MM, 2.31, 5.01, 1500.09);
    assertThat(measure.length(stud(1000))).isEqualTo(10_000);
    assertThat(measure.length(stud(1000.01))).isEqualTo(10_001);
    CuttingTask task = measure.task(List.of(stud(1000), stud(1000.01), stud(1000)));
    assertThat(task.kerf()).isEqualTo(24);
    assertThat(task.trim()).isEqualTo(51);
    assertThat(task.pieces())
        .containsExactly(new CuttingTask.Piece(10_000, 2), new CuttingTask.Piece(10_001, 1));
    assertThat(task.stocks())
        .containsExactly(byLength(24_000), byLength(30_000), new CuttingTask.Stock(15_000, 0, 1));
    assertThat(measure.millimetres(10_001)).isCloseTo(1000.1, within(1e-9));
  }

  /**
   * 3000 less two ends of 5.01 are 2989.98, in tenths 29 900; but the ends take 51 each of 30 000,
   * which leaves 29 898.
   */
  @Test
  void theLongestMemberIsNoLongerThanWhatItsStickHas() {
    StickMeasure measure = measure(LengthUnit.MM, 2.31, 5.01);
    assertThat(measure.isYielded(stud(2989.98))).isTrue();
    assertThat(measure.length(stud(2989.98))).isEqualTo(29_898);
    assertThat(measure.length(stud(2989.75))).isEqualTo(29_898);
    assertThat(measure.length(stud(2989.7))).isEqualTo(29_897);
  }

  /** 25.4 mm are 128; a tenth of a millimetre more is 128.5, which is 129. */
  @Test
  void hundredAndTwentyEighthsOfAnInch() {
    StickMeasure measure = measure(LengthUnit.IN, 3.175, 0);
    assertThat(measure.length(stud(254))).isEqualTo(1280);
    assertThat(measure.length(stud(254.1))).isEqualTo(1281);
    assertThat(measure.task(List.of(stud(254))).kerf()).isEqualTo(16);
    assertThat(measure.millimetres(128)).isCloseTo(25.4, within(1e-9));
  }

  /** 3000 less two ends of 10 are 2980, the longest member that a stick yields. */
  @Test
  void aMemberIsYieldedUpToBothTrims() {
    StickMeasure measure = measure(LengthUnit.MM, 3, 10);
    assertThat(measure.isYielded(stud(2980))).isTrue();
    assertThat(measure.isYielded(stud(2980.001))).isFalse();
  }

  /** Two sold, then two lengths at hand, the shorter first, one of it there twice. */
  @Test
  void whatIsAtHandComesAfterWhatIsSold() {
    StickMeasure measure = measure(LengthUnit.MM, 3, 0, 1800, 900, 1800);
    assertThat(measure.sold()).isEqualTo(2);
    assertThat(measure.stockLength(0)).isEqualTo(2400);
    assertThat(measure.stockLength(2)).isEqualTo(900);
    assertThat(measure.stockLength(3)).isEqualTo(1800);
    assertThat(measure.source(1)).isEqualTo(Stick.Source.BOUGHT);
    assertThat(measure.source(2)).isEqualTo(Stick.Source.AT_HAND);
    assertThat(measure.source(3)).isEqualTo(Stick.Source.AT_HAND);
    // beyond the four kinds the sold ones come again, lacking
    assertThat(measure.source(4)).isEqualTo(Stick.Source.LACKING);
    assertThat(measure.stockLength(5)).isEqualTo(3000);
    assertThat(measure.task(List.of(stud(500))).stocks().get(3).limit()).isEqualTo(2);
  }

  /**
   * Studs of 2300, 1700 and 800; sold are 2400 and 3000, at hand is one of 1800. That takes the
   * 1700; 2300 and 800 do not fit into 3000, so that 2400 are bought for either: 4800, where two
   * more cannot be less. Of 6600 mm become 4800 members: 27.27 % are waste.
   */
  @Test
  void whatIsAtHandIsCutFirstAndNotBought() {
    StickMeasure measure = measure(LengthUnit.MM, 3, 0, 1800);
    List<Member> studs = List.of(stud(800), stud(1700), stud(2300));
    SectionPlan plan = SectionPlan.of(SECTION, studs, measure);
    assertThat(plan.sticks()).extracting(Stick::length).containsExactly(1800.0, 2400.0, 2400.0);
    assertThat(plan.sticks()).extracting(Stick::isAtHand).containsExactly(true, false, false);
    assertThat(plan.sticks()).extracting(Stick::number).containsExactly(1, 2, 3);
    assertThat(plan.sticks())
        .extracting(stick -> stick.cuts().get(0).end())
        .containsExactly(1700.0, 2300.0, 800.0);
    assertThat(plan.boughtLength()).isEqualTo(4800);
    assertThat(plan.outlay()).isEqualTo(new Outlay.OfLength(4800, 4800));
    assertThat(plan.waste()).isCloseTo(1 - 4800.0 / 6600, within(1e-9));
    assertThat(plan.lacking()).isEmpty();
  }

  /** 3000 less two trims of 10 hold 1500, a kerf of 3 and 1400, 77 are left; 2400 do not. */
  @Test
  void theLongestIsCutFirstBehindTheTrim() {
    SectionPlan plan =
        SectionPlan.of(SECTION, List.of(stud(1400), stud(1500)), measure(LengthUnit.MM, 3, 10));
    assertThat(plan.sticks()).hasSize(1);
    assertThat(plan.sticks().get(0).cuts())
        .extracting(Stick.Cut::offset, Stick.Cut::end)
        .containsExactly(tuple(10.0, 1510.0), tuple(1513.0, 2913.0));
  }

  private static CuttingTask.Stock byLength(long length) {
    return new CuttingTask.Stock(length, length, CuttingTask.Stock.UNLIMITED);
  }
}
