package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Shapes;
import plycrag.layout.Hold;
import plycrag.layout.Member;
import plycrag.layout.Role;
import plycrag.params.StockParameters;

class StockTest {
  private static final CheckedLayout WALL =
      Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));

  private static Member stud(int number, double length) {
    Polygon footprint = Shapes.rectangle(0, 0, 45, length);
    return new Member("ST" + number, Role.STUD, Hold.FREE, footprint, footprint, 90);
  }

  /** Common practice, no source: three 4.5 m lengths hold the wall's frame, kerfs counted. */
  @Test
  void threeLengthsHoldTheFrame() {
    List<Member> members = WALL.layout().facets().get(0).members();
    List<Stick> sticks = Stick.firstFit(members, new StockParameters(List.of(4500.0), 3));
    assertThat(sticks).hasSize(3).allMatch(stick -> stick.length() == 4500);
  }

  @Property(tries = 300)
  void sticksHoldEveryMemberOnceWithTheKerfsBetween(
      @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 50, max = 5400) Integer> lengths) {
    StockParameters stock = new StockParameters(List.of(2400.0, 3600.0, 5400.0), 3);
    List<Member> members = new ArrayList<>();
    lengths.forEach(length -> members.add(stud(members.size() + 1, length)));
    List<Stick> sticks = Stick.firstFit(members, stock);
    assertThat(sticks.stream().flatMap(stick -> stick.cuts().stream()))
        .containsExactlyInAnyOrderElementsOf(members);
    for (Stick stick : sticks) {
      double used =
          stick.cuts().stream().mapToDouble(Member::length).sum() + 3.0 * (stick.cuts().size() - 1);
      assertThat(used).isLessThanOrEqualTo(stick.length());
      assertThat(stock.lengths().stream().filter(length -> length < stick.length()))
          .allMatch(length -> length < used);
    }
  }

  @Test
  void theCutListHasEveryMemberOnceAndEqualOnesInARow() {
    List<CutList.Row> rows = CutList.of(WALL).rows();
    assertThat(rows.stream().map(row -> String.join(" ", row.marks()) + " " + row.length()))
        .containsExactly("PL1 PL2 1200.0", "ST1 ST2 ST3 2655.0", "BL1 BL2 532.5");
    assertThat(texts(CutList.of(WALL).table().rows().get(1)))
        .containsExactly("ST1 ST2 ST3", "stud", "45x90", "2655", "0", "0", "3", "main");
  }

  @Test
  void theShoppingListCountsWhatTheLayoutHolds() {
    Table shopping = ShoppingList.of(WALL);
    assertThat(quantity(shopping, "sheets")).isEqualTo(1);
    assertThat(quantity(shopping, "inserts")).isEqualTo(50);
    assertThat(quantity(shopping, "screws"))
        .isEqualTo(WALL.layout().facets().get(0).screws().size())
        .isEqualTo(FastenerList.of(WALL).rows().size());
  }

  /** What no length sold holds is on the list all the same, and says so. */
  @Test
  void theShoppingListHidesNoMember() {
    String wall = "[[facet]]\nwidth = 1200\nlength = 2400\n[stock]\nlengths = [2000]\n";
    assertThat(ShoppingList.of(Walls.judged(wall)).rows())
        .filteredOn(row -> row.get(1).text().endsWith("longer than is sold"))
        .hasSize(4)
        .allMatch(row -> row.get(2).text().equals("2310 mm"));
  }

  private static int quantity(Table shopping, String group) {
    return shopping.rows().stream()
        .filter(row -> row.get(0).text().equals(group))
        .mapToInt(row -> Integer.parseInt(row.get(3).text()))
        .sum();
  }

  private static List<String> texts(List<Cell> row) {
    return row.stream().map(Cell::text).toList();
  }

  /**
   * USDA Wood Handbook (FPL-GTR-190), chapter 8: root about two thirds of the shank; lead hole
   * about 70 % of the root in softwood. For a number 10 screw, 4.826 mm (ASME B18.6.1), 2.25 mm.
   */
  @Test
  void thePilotFollowsTheHandbook() {
    String wall = "[[facet]]\n[screws]\ndiameter = 4.826\n";
    assertThat(ScrewHoles.of(Walls.parameters(wall).screws()).pilot()).isEqualTo(2.3);
    assertThat(ScrewHoles.of(Walls.parameters(wall + "predrilled = false\n").screws()).pilot())
        .isZero();
  }

  /** EN 1995-1-1 Table 8.2, unloaded: 3d and 7d predrilled, 5d and 10d not; d = 4.5 and α = 0. */
  @Test
  void edgeAndEndDistancesFollowTheTable() {
    assertThat(Walls.parameters("[[facet]]\n").clearance().screwToSheetEdge()).isEqualTo(13.5);
    assertThat(Walls.parameters("[[facet]]\n").clearance().screwToMemberEnd()).isEqualTo(31.5);
    String bare = "[[facet]]\n[screws]\npredrilled = false\n";
    assertThat(Walls.parameters(bare).clearance().screwToMemberEdge()).isEqualTo(22.5);
    assertThat(Walls.parameters(bare).clearance().screwToMemberEnd()).isEqualTo(45);
  }
}
