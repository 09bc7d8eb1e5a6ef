package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.files.csv.CsvWriter;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.prices.PriceList;
import plycrag.read.lists.PriceFile;
import plycrag.wall.buying.MaterialWishes.Environment;

/** Sums are worked out by hand beside each check. */
class ShoppingListTest {
  private static final String HEADER = "article,size,unit,contents,price,currency,tax,mass\n";

  /** Three studs of 2655, two plates of 1200, two blockings of 532.5; one sheet; 50 inserts. */
  private static final String WALL = TestFiles.text("must-fail/layout/top-row-in-plate.toml");

  private static PriceList prices(String rows) {
    return PriceFile.read("prices.csv", TestFiles.bytes(HEADER + rows)).value().orElseThrow();
  }

  private static ShoppingList list(String wall, PriceList prices) {
    CheckedLayout checked = Walls.judged(wall);
    StickPlan plan = StickPlan.of(checked, prices);
    return ShoppingList.of(checked, plan, Walls.parameters(wall).buying(), prices);
  }

  private static ShoppingLine line(ShoppingList list, String what) {
    return list.lines().stream()
        .filter(line -> line.need().what().startsWith(what))
        .findFirst()
        .orElseThrow();
  }

  /** 50 and 3 to spare: two packs of 30 at 9.99 are 19.98, or one of 100 at 18.33 and 20 % tax. */
  @Test
  void insertsGetFivePercentMoreInTheCheapestPacks() {
    PriceList packs =
        prices("insert,12 mm,pack,30,9.99,EUR,,\ninsert,12 mm,pack,100,18.33,EUR,20,\n");
    ShoppingLine inserts = line(list(WALL, packs), "T-nut");
    assertThat(inserts.need().amount().spare()).isEqualTo(3);
    assertThat(inserts.units()).isEqualByComparingTo("2");
    assertThat(inserts.soldAs()).isEqualTo("pack of 30");
    assertThat(inserts.cost()).contains(new BigDecimal("19.98"));
  }

  /** M10 where nothing is told, 3/8-16 in a file of inches, else what is told. */
  @Test
  void insertsAndBoltsAreBoughtByTheirThread() {
    assertThat(threads("[[facet]]\n")).containsExactly("M10", "M10");
    assertThat(threads("[wall]\nunit = \"in\"\n[[facet]]\n"))
        .containsExactly("3/8-16 UNC", "3/8-16 UNC");
    assertThat(threads("[[facet]]\n[inserts]\nthread = \"m8\"\n")).containsExactly("M8", "M8");
  }

  private static List<String> threads(String toml) {
    return new HardwareNeeds(Walls.laidOut(toml), Environment.INDOORS)
        .needs().stream()
            .filter(need -> need.what().matches("T-nut.*|bolt for a hold.*"))
            .map(need -> need.size().replaceAll(", .*", ""))
            .toList();
  }

  /**
   * 53 inserts: a pack of 50 at 15 and one of 10 at 4 cost 19; two of 50 cost 30, six of 10 cost
   * 24.
   */
  @Test
  void packsAreMixedWhereThatCostsLess() {
    PriceList packs = prices("insert,12 mm,pack,10,4.00,EUR,,\ninsert,12 mm,pack,50,15.00,EUR,,\n");
    List<ShoppingLine> inserts =
        list(WALL, packs).lines().stream()
            .filter(line -> line.need().what().startsWith("T-nut"))
            .toList();
    assertThat(inserts)
        .extracting(ShoppingLine::soldAs)
        .containsExactly("pack of 50", "pack of 10");
    assertThat(inserts)
        .allSatisfy(line -> assertThat(line.units()).isEqualByComparingTo("1"))
        .extracting(line -> line.need().amount().all().intValueExact())
        .containsExactly(50, 3);
  }

  /** A price for the very size goes before one for any size; screws of 5 by 35 are in it. */
  @Test
  void bracketsAndTheirScrewsArePricedBySize() {
    PriceList both =
        prices(
            """
            bracket,,piece,,1.00,EUR,,
            bracket,65 x 40 x 2 mm,piece,,2.50,EUR,,
            bracket screw,4 x 30 mm,pack,100,3.00,EUR,,
            bracket screw,5 x 35 mm,pack,500,9.00,EUR,,
            """);
    ShoppingLine bracket = line(list(WALL, both), "angle bracket");
    assertThat(bracket.need().size()).startsWith("65 x 65 x 40 x 2 mm");
    assertThat(bracket.purchase().orElseThrow().offer().price()).contains(new BigDecimal("2.50"));
    assertThat(line(list(WALL, both), "pan-head screw").soldAs()).isEqualTo("pack of 500");
    PriceList other = prices("bracket,80 x 25 x 2 mm,piece,,2.50,EUR,,\n");
    assertThat(line(list(WALL, other), "angle bracket").isPriceMissing()).isTrue();
  }

  /** 2 x 0.335 = 0.67; 7.5 % of it is 0.05025, rounded 0.05. 0.125 x 1 is rounded up to 0.13. */
  @Test
  void linesAreRoundedHalfUp() {
    PriceList halves = prices("sheet,,piece,,0.125,EUR,,\n");
    assertThat(line(list(WALL, halves), "structural plywood").cost())
        .contains(new BigDecimal("0.13"));
    Purchase two =
        new Purchase(prices("nut,,piece,,0.335,EUR,7.5,\n").offers().get(0), new BigDecimal(2));
    assertThat(two.net()).contains(new BigDecimal("0.67"));
    assertThat(two.cost()).contains(new BigDecimal("0.72"));
  }

  @Test
  void aMissingPriceIsMissingAndMakesTheTotalIncomplete() {
    ShoppingList list = list(WALL, prices("sheet,,piece,,60,EUR,,\ninsert,,pack,100,,EUR,,\n"));
    ShoppingLine inserts = line(list, "T-nut");
    assertThat(inserts.isPriceMissing()).isTrue();
    assertThat(inserts.units()).isEqualByComparingTo("1");
    Costs costs = Costs.of(list);
    assertThat(costs.total().isComplete()).isFalse();
    assertThat(costs.total().known()).isEqualByComparingTo("60");
    assertThat(costs.shared(3)).isEqualTo(Optional.empty());
    assertThat(CsvWriter.write(list.table())).contains(",1,pack of 100,missing,,,missing,");
    assertThat(CsvWriter.write(costs.table()))
        .contains(
            "sheets,60.00,EUR,1,0,yes\n", "inserts,missing,EUR,0,1,no\n", "total,60.00,EUR,1,");
  }

  /**
   * A stick of 3000 holds a stud, or two plates and a blocking; one of 6000 holds two studs and a
   * blocking. At 5 and 16 five of 3000 come to 25; the least length, 12 m, would come to 26.
   */
  @Test
  void theCuttingPlanFollowsThePrices() {
    String wall = WALL + "\n[stock]\nlengths = [3000, 6000]\n";
    CheckedLayout checked = Walls.judged(wall);
    PriceList cheap =
        prices(
            "timber,45 x 90 x 3000 mm,piece,,5,EUR,,\ntimber,45 x 90 x 6000 mm,piece,,16,EUR,,\n");
    StickPlan plan = StickPlan.of(checked, cheap);
    assertThat(plan.sticks()).hasSize(5).allMatch(stick -> stick.length() == 3000);
    assertThat(plan.sections().get(0).outlay())
        .isEqualTo(new Outlay.OfMoney(new BigDecimal("25.00"), new BigDecimal("25.00"), "EUR"));
    assertThat(line(list(wall, cheap), "structural timber").cost())
        .contains(new BigDecimal("25.00"));
  }

  /**
   * Five of 3000 would cost 25. There are two: they hold a stud, or two plates and a blocking; two
   * studs and a blocking come from one of 6000. That is 26.
   */
  @Test
  void theCuttingPlanTakesNoMoreThanIsAvailable() {
    String wall = WALL + "\n[stock]\nlengths = [3000, 6000]\n";
    PriceList two =
        available("timber,45x90x3000mm,piece,5,EUR,2\ntimber,45x90x6000mm,piece,16,EUR,\n");
    StickPlan plan = StickPlan.of(Walls.judged(wall), two);
    assertThat(plan.sticks()).extracting(Stick::length).containsExactly(6000.0, 3000.0, 3000.0);
    assertThat(plan.sections().get(0).lacking()).isEmpty();
    assertThat(plan.sections().get(0).outlay())
        .isEqualTo(new Outlay.OfMoney(new BigDecimal("26.00"), new BigDecimal("26.00"), "EUR"));
    assertThat(Shortage.of(Walls.judged(wall), two)).isEmpty();
  }

  private static PriceList available(String rows) {
    String header = "article,size,unit,price,currency,available\n";
    return PriceFile.read("prices.csv", TestFiles.bytes(header + rows)).value().orElseThrow();
  }

  /** Five sticks of 3000 hold the frame, and fewer do not; three are there. */
  @Test
  void whatIsShortIsToldOnceAndHasNoPrice() {
    String wall = WALL + "\n[stock]\nlengths = [3000]\n";
    PriceList three = available("timber,45x90x3000mm,piece,5,EUR,3\n");
    StickPlan plan = StickPlan.of(Walls.judged(wall), three);
    assertThat(plan.sticks()).extracting(Stick::source).hasSize(5).endsWith(Stick.Source.LACKING);
    assertThat(plan.sections().get(0).lacking()).hasSize(2);
    Finding finding = Shortage.of(Walls.judged(wall), three).get(0);
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.sentence())
        .startsWith("the price list has too few sticks of 45x90 mm: 2 sticks are short, 2 of 3000");
    assertThat(finding.suggestion()).isNotEmpty();
    ShoppingList list = list(wall, three);
    assertThat(list.lines().stream().filter(line -> line.need().group().equals("timber")))
        .extracting(line -> line.units().intValueExact(), ShoppingLine::isPriceMissing)
        .containsExactly(tuple(3, false), tuple(2, true));
    assertThat(Costs.of(list).total().isComplete()).isFalse();
  }

  /** Five sticks of 3 m: two by the piece at 5, three by the metre at 2, which is 6 each. */
  @Test
  void scarceSticksAreTakenFirstAndTheRestByTheMetre() {
    String wall = WALL + "\n[stock]\nlengths = [3000]\n";
    PriceList both = available("timber,45x90x3000mm,piece,5,EUR,2\ntimber,45x90 mm,metre,2,EUR,\n");
    assertThat(StickPlan.of(Walls.judged(wall), both).sections().get(0).outlay())
        .isEqualTo(new Outlay.OfMoney(new BigDecimal("28.00"), new BigDecimal("28.00"), "EUR"));
    assertThat(
            list(wall, both).lines().stream().filter(line -> line.need().group().equals("timber")))
        .extracting(ShoppingLine::soldAs, line -> line.cost().orElseThrow())
        .containsExactly(
            tuple("piece", new BigDecimal("10.00")), tuple("metre", new BigDecimal("18.00")));
  }

  /** Where one length has no price the plan is counted by length, as without a list. */
  @Test
  void aLengthWithoutPriceIsNotFree() {
    CheckedLayout checked = Walls.judged(WALL + "\n[stock]\nlengths = [3000, 6000]\n");
    PriceList half = prices("timber,45 x 90 x 3000 mm,piece,,5,EUR,,\n");
    assertThat(StickPlan.of(checked, half)).isEqualTo(StickPlan.of(checked, PriceList.empty()));
  }

  /** 4.5 m at 3 a metre: 13.50 each. */
  @Test
  void timberIsPricedByTheMetreToo() {
    ShoppingList list =
        list(WALL + "\n[stock]\nlengths = [4500]\n", prices("timber,45x90mm,metre,,3,EUR,,2\n"));
    ShoppingLine timber = line(list, "structural timber");
    assertThat(timber.units()).isEqualByComparingTo("13.5");
    assertThat(timber.cost()).contains(new BigDecimal("40.50"));
    assertThat(timber.mass()).contains(27.0);
  }

  /** 45 x 90 mm at 420 kg/m3 is 1.701 kg a metre; a 2440 x 1220 x 18 sheet at 680 is 36.44 kg. */
  @Test
  void whatTheListDoesNotWeighIsWeighedBySize() {
    ShoppingList list = list("[[facet]]\n[stock]\nlengths = [6000]\n", PriceList.empty());
    ShoppingLine timber = line(list, "structural timber");
    double sticks = timber.need().amount().quantity().doubleValue();
    assertThat(timber.mass().orElseThrow() / sticks).isBetween(10.205, 10.207);
    ShoppingLine sheets = line(list, "structural plywood");
    double count = sheets.need().amount().quantity().doubleValue();
    assertThat(sheets.mass().orElseThrow() / count).isBetween(36.43, 36.45);
  }

  @Test
  void whatIsAtHandIsNotBought() {
    ShoppingList list = list(WALL + "\n[stock]\nat-hand = [6000, 6000, 6000]\n", PriceList.empty());
    ShoppingLine timber = line(list, "structural timber");
    assertThat(timber.isBought()).isFalse();
    assertThat(timber.isPriceMissing()).isFalse();
    assertThat(timber.units()).isZero();
  }

  @Test
  void wordsOfTheParameterFileStayWordsInASpreadsheet() {
    String wall = "[[facet]]\n[stock]\ntimber-grade = \"=1+1\"\nsheet-bond = \"@SUM(1)\"\n";
    String text = CsvWriter.write(list(wall, PriceList.empty()).table());
    assertThat(text).contains(",'=1+1;", ",\"'@SUM(1);");
    assertThat(List.of(text.split("[,\n]", -1))).noneMatch(cell -> cell.matches("\"?[=+@-].*"));
  }

  /** Each section stands on lines of its own, weighed and named to price lists by its own size. */
  @Test
  void everySectionIsBoughtByItself() {
    ShoppingList list = list(StandingWall.TOML, available("timber,45 x 140 mm,metre,7,EUR,\n"));
    List<ShoppingLine> timber =
        list.lines().stream().filter(line -> line.need().group().equals("timber")).toList();
    assertThat(timber)
        .extracting(line -> line.need().what())
        .contains("structural timber, 45 x 90 mm actual", "structural timber, 45 x 140 mm actual");
    for (ShoppingLine line : timber) {
      boolean isRail = line.need().what().contains("140");
      double metres =
          line.need().sourcing().length() / 1000 * line.need().amount().all().doubleValue();
      double kilograms = metres * 0.045 * (isRail ? 0.14 : 0.09) * 420;
      assertThat(line.mass().orElseThrow()).isCloseTo(kilograms, within(1e-6));
      assertThat(line.isPriceMissing()).isEqualTo(!isRail);
      assertThat(line.need().note()).endsWith(isRail ? "lengths would change" : "holes would move");
    }
    assertThat(list.table().rows().stream().map(row -> row.get(15).text()))
        .anyMatch(size -> size.startsWith("45 x 140 x "))
        .anyMatch(size -> size.startsWith("45 x 90 x "));
  }

  /** Two rails of more than half a stick, of which there is one; the frame has enough. */
  @Test
  void whatIsShortIsToldOfItsSection() {
    CheckedLayout wall = Walls.judged(StandingWall.TOML + "[stock]\nlengths = [3000]\n");
    PriceList one = available("timber,45x140x3000mm,piece,5,EUR,1\ntimber,45x90mm,metre,3,EUR,\n");
    assertThat(Shortage.of(wall, one))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.sentence())
                  .isEqualTo(
                      "the price list has too few sticks of 45x140 mm: 1 stick is short, 1 of"
                          + " 3000 mm, for RA2");
              assertThat(finding.suggestion()).doesNotContain("at-hand");
            });
  }
}
