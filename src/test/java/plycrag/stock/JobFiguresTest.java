package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.check.Found;
import plycrag.document.Cell;
import plycrag.prices.PriceList;
import plycrag.read.lists.PriceFile;

/**
 * A plumb wall of 1200 by 1200 out of one sheet of 2440 by 1220 by 18; two plates of 1200 and three
 * studs of 1110 out of one stick of 6 m, 45 by 90; four inserts, 39 screws, six brackets.
 */
class JobFiguresTest {
  private static final String TEXT = Found.bay("300, 800", "250, 650");
  private static final CheckedLayout WALL = Walls.judged(TEXT);

  private static PriceList prices(String rows) {
    String header = "article,size,unit,contents,price,currency,tax,mass\n";
    return PriceFile.read("prices.csv", TestFiles.bytes(header + rows)).value().orElseThrow();
  }

  private static ShoppingList list(PriceList prices) {
    StickPlan plan = StickPlan.of(WALL, prices);
    return ShoppingList.of(WALL, plan, Walls.parameters(TEXT).buying(), prices);
  }

  private static JobFigures figures(PriceList prices) {
    return JobFigures.of(WALL.layout(), StickPlan.of(WALL, prices), list(prices));
  }

  /**
   * 1.44 of 2.9768 m² leave 51.63 %; 5.73 of 6 m leave 4.5 %. Sheet 0.0535824 m³ · 680 = 36.436 kg,
   * stick 0.0243 m³ · 420 = 10.206 kg. The rest of ten lines, eight, weighs nobody knows what. As
   * built 0.02592 m³ of plywood and 0.0232065 m³ of timber weigh 27.37233 kg.
   */
  @Test
  void theWholeJobIsTheSumOfItsParts() {
    JobFigures figures = figures(PriceList.empty());
    assertThat(figures.area()).isCloseTo(1.44, within(1e-9));
    assertThat(figures.standing()).isCloseTo(27.37233, within(1e-6));
    assertThat(figures.waste().sheets()).isCloseTo(1 - 1.44 / 2.9768, within(1e-9));
    assertThat(figures.waste().sticks()).isCloseTo(0.045, within(1e-9));
    assertThat(figures.load().volume()).isCloseTo(0.0778824, within(1e-9));
    assertThat(figures.load().mass()).isCloseTo(46.642032, within(1e-6));
    assertThat(figures.load().unweighed()).isEqualTo(8);
    assertThat(figures.load().longest()).isEqualTo(6000);
  }

  /** 39 screws are in a pack of 200 of 0.8 kg; the rest as before, in seven lines. */
  @Test
  void whatTheListWeighsIsAdded() {
    JobFigures figures = figures(prices("sheet screw,,pack,200,4,EUR,,0.8\n"));
    assertThat(figures.load().mass()).isCloseTo(47.442032, within(1e-6));
    assertThat(figures.load().unweighed()).isEqualTo(7);
  }

  private static final String ALL =
      """
      sheet,,piece,,40,EUR,20,
      timber,45x90 mm,metre,,2,EUR,20,
      insert,12 mm,pack,5,3,EUR,20,
      hold bolt,,piece,,0.5,EUR,,
      sheet screw,,pack,20,1.11,EUR,20,
      bracket,,piece,,0.9,EUR,,
      bracket screw,,pack,50,2.5,EUR,,
      paint,,piece,,0,EUR,,
      sealant,,piece,,7.01,EUR,,
      sandpaper,,piece,,0.25,EUR,,
      """;

  /**
   * Sheet 48.00. Six metres 12, with tax 14.40. Five inserts in one pack 3.60. Five bolts 2.50. Two
   * packs of screws 2.22 and 0.44 tax, 2.66. Six brackets 5.40 and 48 screws in a pack 2.50: 7.90.
   * Paint nothing, sealer 7.01, a sheet of paper 0.25: 7.26. All: 86.32; for a square metre / 1.44
   * = 59.94; for an insert / 4 = 21.58.
   */
  @Test
  void costsAreAddedLineByLine() {
    PriceList prices = prices(ALL);
    Costs costs = Costs.of(list(prices));
    assertThat(costs.groups())
        .extracting(
            sum -> sum.name() + " " + sum.known() + " " + sum.priced() + " " + sum.missing())
        .containsExactly(
            "sheets 48.00 1 0",
            "timber 14.40 1 0",
            "inserts 3.60 1 0",
            "holds 2.50 1 0",
            "screws 2.66 1 0",
            "hardware 7.90 2 0",
            "finish 7.26 3 0");
    assertThat(costs.total().known()).isEqualByComparingTo("86.32");
    assertThat(costs.total().priced()).isEqualTo(10);
    assertThat(costs.shared(1.44)).contains(new BigDecimal("59.94"));
    assertThat(costs.shared(0)).isEmpty();
    assertThat(costs.shared(86.32 / 0.125)).contains(new BigDecimal("0.13"));
    List<List<Cell>> rows = figures(prices).table(costs, 4).rows();
    assertThat(rows.stream().map(row -> row.get(0).text() + " " + row.get(1).text()))
        .containsExactly(
            "climbing face 1.44",
            "waste of sheets 51.6",
            "waste of sticks 4.5",
            "mass to carry 46.6",
            "articles of unknown mass 8",
            "volume of sheets and sticks 0.078",
            "longest to carry 6000",
            "mass of sheets and timber as built 27.372",
            "cost of a square metre 59.94",
            "cost of an insert 21.58");
  }

  @Test
  void whatIsMissingIsCounted() {
    Costs costs = Costs.of(list(prices(ALL.replace("bracket,,piece,,0.9,EUR,,\n", ""))));
    assertThat(costs.total().known()).isEqualByComparingTo("80.92");
    assertThat(costs.total().missing()).isEqualTo(1);
    assertThat(costs.groups().get(5).missing()).isEqualTo(1);
    assertThat(costs.groups().get(5).priced()).isEqualTo(1);
  }
}
