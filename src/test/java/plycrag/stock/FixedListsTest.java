package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.prices.PriceList;
import plycrag.wall.buying.MaterialWishes;

/** Two sheets of 1200 by 1200 side by side, on a ledger 300 behind, with an insert each. */
class FixedListsTest {
  private static final CheckedLayout WALL =
      Walls.judged(
          """
          [[facet]]
          width = 2400
          length = 1200
          [sheet]
          length = 1200
          width = 1200
          seam-gap = 0
          [frame]
          section = [45, 90]
          stud-spacing = 600
          [inserts]
          pattern = "lines"
          columns = [300, 1500]
          rows = [300]
          [support]
          kind = "fixed"
          fixed-to = "masonry"
          behind = 300
          [stock]
          lengths = [2400]
          """);

  private static final MaterialWishes BUYING = Walls.parameters("[[facet]]\n").buying();

  private static List<String> rows(Table table) {
    return table.rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  private static List<String> shopping() {
    PriceList none = PriceList.empty();
    return rows(ShoppingList.of(WALL, StickPlan.of(WALL, none), BUYING, none).table());
  }

  /**
   * Two sheets of 1.2 · 1.2 · 0.018 m³ · 680 = 17.6256 kg; six sticks of 2.4 m · 1.701 = 4.0824,
   * two for plates, three for two studs of 1110 each, one for four ties of 210; and a ledger's of
   * 2.4 m · 3.402 = 8.1648.
   */
  @Test
  void equalOnesShareALineWithTheirMass() {
    assertThat(shopping())
        .anyMatch(
            row ->
                row.startsWith(
                        "sheets|structural plywood, 18 mm thick as measured|1200 x 1200 mm|2|")
                    && row.contains("|35.25|")
                    && row.endsWith("; 2 made alike: S1 S2|sheet|1200 x 1200 x 18 mm"))
        .anyMatch(
            row ->
                row.startsWith("timber|structural timber, 45 x 90 mm actual|2400 mm|6|")
                    && row.contains("|24.49|")
                    && row.endsWith("|timber|45 x 90 x 2400 mm"))
        .anyMatch(
            row ->
                row.startsWith("timber|structural timber, 90 x 90 mm actual|2400 mm|1|")
                    && row.contains("|8.16|")
                    && row.endsWith("|timber|90 x 90 x 2400 mm"));
  }

  /**
   * 2 · 1.2 · 1.2 · 0.018 = 0.05184 m³, a further sheet half of it; 6 · 2.4 · 0.045 · 0.09 =
   * 0.05832, and the ledger's stick of 2.4 · 0.09 · 0.09 = 0.01944.
   */
  @Test
  void equalOnesTakeTheRoomOfAll() {
    PriceList none = PriceList.empty();
    assertThat(ShoppingList.of(WALL, StickPlan.of(WALL, none), BUYING, none).lines())
        .filteredOn(line -> line.volume() > 0)
        .extracting(line -> Math.round(line.volume() * 1e5))
        .containsExactly(5184L, 2592L, 5832L, 1944L);
  }

  /** Both are bored at 300, 300 of their own. */
  @Test
  void sheetsThatAreMadeAlikeAreTold() {
    assertThat(rows(SheetList.of(WALL)))
        .contains(
            "S1||sheet||||0|0|0|1200|1200|front face up",
            "S2|S1|sheet||||0|0|0|1200|1200|front face up",
            "S2|S1|piece||P2|main|0|0|0|1200|1200|");
  }

  /**
   * Seven in the ledger, 2280 between the outermost in six steps of 380; four in the plate, in the
   * middle of every bay between studs, since these are more than 400 apart.
   */
  @Test
  void anchorsAreCountedByWhatTheyGoInto() {
    assertThat(shopping())
        .anyMatch(row -> row.startsWith("hardware|anchor into masonry, for timber of 90 mm||7|"))
        .anyMatch(row -> row.startsWith("hardware|anchor into the floor, for timber of 45 mm||4|"));
  }

  /** Nothing slants: a plain saw, and a hammer for inserts that are struck in. */
  @Test
  void everyToolIsListed() {
    List<String> tools = rows(ToolList.of(WALL));
    assertThat(tools)
        .startsWith("tape and square||marking out", "saw||sheets and timber; every cut is square");
    assertThat(tools.subList(tools.size() - 6, tools.size()))
        .containsExactly(
            "countersink||heads of screws flush, not deeper",
            "driver||screws of sheets, frame and brackets",
            "hammer||inserts, struck in from the back",
            "clamps and a backing board||clean holes, frames held square",
            "sanding block, brush or roller||edges, faces",
            "eye and ear protection, dust mask||everybody who saws, drills or sands");
  }
}
