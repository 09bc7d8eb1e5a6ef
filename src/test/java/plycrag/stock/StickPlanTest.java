package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.skin.Fixity;
import plycrag.prices.PriceList;
import plycrag.solve.cutting.CuttingTask;
import plycrag.units.LengthUnit;
import plycrag.wall.buying.Section;
import plycrag.wall.buying.TimberStock;

class StickPlanTest {
  private static final CheckedLayout WALL =
      Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));

  private static List<Member> studs(List<Double> lengths) {
    List<Member> members = new ArrayList<>();
    for (double length : lengths) {
      String mark = "ST" + (members.size() + 1);
      Polygon footprint = Shapes.rectangle(0, 0, 45, length);
      members.add(
          new Member(mark, MemberRole.STUD, Fixity.FREE, Direction.UP, footprint, footprint, 90));
    }
    return members;
  }

  private static SectionPlan plan(List<Member> members, TimberStock stock, LengthUnit unit) {
    StickPrices.Tier open = new StickPrices.Tier(0, CuttingTask.Stock.UNLIMITED);
    StickPrices none =
        new StickPrices("", Collections.nCopies(stock.carried().size(), List.of(open)));
    return SectionPlan.of(new Section(45, 90), members, new StickMeasure(unit, stock, none));
  }

  /**
   * Common practice, no source: three studs of 2655, two plates of 1200 and two blockings of 532.5
   * come out of three lengths of 4.5 m, kerfs counted, and of no fewer.
   */
  @Test
  void threeLengthsHoldTheFrame() {
    List<Member> members = WALL.layout().members();
    assertThat(members.stream().map(Member::length).sorted())
        .containsExactly(532.5, 532.5, 1200.0, 1200.0, 2655.0, 2655.0, 2655.0);
    SectionPlan plan =
        plan(members, new TimberStock(List.of(4500.0), 3, 0, 20_000, List.of()), LengthUnit.MM);
    assertThat(plan.sticks()).hasSize(3).allMatch(stick -> stick.length() == 4500);
    assertThat(plan.outlay().isLeast()).isTrue();
    assertThat(plan.waste()).isCloseTo(1 - 11_430.0 / 13_500, within(1e-9));
  }

  @Property(tries = 60)
  void sticksHoldEveryMemberOnceWithTheKerfsBetween(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 50, max = 5300) Double> lengths,
      @ForAll @DoubleRange(max = 10) double kerf,
      @ForAll @DoubleRange(max = 50) double trim,
      @ForAll @Size(max = 4) List<@IntRange(min = 300, max = 7000) Integer> hand,
      @ForAll boolean inches) {
    List<Double> atHand = hand.stream().map(Integer::doubleValue).toList();
    TimberStock stock =
        new TimberStock(List.of(2400.0, 3600.0, 5400.0, 6000.0), kerf, trim, 5400, atHand);
    List<Member> members = studs(lengths);
    SectionPlan plan = plan(members, stock, inches ? LengthUnit.IN : LengthUnit.MM);
    assertThat(
            plan.sticks().stream().flatMap(stick -> stick.cuts().stream()).map(Stick.Cut::member))
        .containsExactlyInAnyOrderElementsOf(members);
    for (Stick stick : plan.sticks()) {
      double place = trim;
      for (Stick.Cut cut : stick.cuts()) {
        assertThat(cut.offset()).isCloseTo(place, within(1e-6));
        place = cut.end() + kerf;
      }
      assertThat(place - kerf + trim).isLessThanOrEqualTo(stick.length() + 1e-6);
      assertThat(stick.isAtHand() ? atHand : List.of(2400.0, 3600.0, 5400.0))
          .contains(stick.length());
    }
    for (double length : atHand) {
      assertThat(plan.sticks().stream().filter(Stick::isAtHand).filter(s -> s.length() == length))
          .hasSizeLessThanOrEqualTo(Collections.frequency(atHand, length));
    }
    assertThat(((Outlay.OfLength) plan.outlay()).least())
        .isLessThanOrEqualTo(plan.boughtLength() + 1e-6);
  }

  /** What lies in the shed is used before anything is bought, even where it wastes more. */
  @Test
  void usesWhatIsAtHandFirst() {
    TimberStock stock = new TimberStock(List.of(2400.0), 3, 0, 20_000, List.of(5000.0, 2000.0));
    SectionPlan plan = plan(studs(List.of(1900.0, 1900.0, 1900.0)), stock, LengthUnit.MM);
    assertThat(plan.boughtLength()).isZero();
    assertThat(plan.sticks().stream().map(Stick::length)).containsExactly(5000.0, 2000.0);
  }

  @Test
  void theTableHasARowForEveryPiece() {
    StickPlan plan = StickPlan.of(WALL, PriceList.empty());
    assertThat(plan.table().columns())
        .containsExactly("section", "stick", "stock_length_mm", "mark", "length_mm", "offset_mm");
    assertThat(plan.table().rows()).hasSize(WALL.layout().members().size());
    assertThat(plan.table().rows().get(0).stream().map(Cell::text))
        .startsWith("45x90", "1")
        .endsWith("0");
  }
}
