package plycrag.solve.guillotine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class GuillotineTest {
  private static final int FEW_LOOKS = 10_000;
  private static final int SMALL = 5;

  /** A task on whole millimetres, where the exhaustive search's sums are exact. */
  record Task(List<Item> items, List<StockKind> stock, Cutting cutting) {
    GuillotinePlan plan() {
      return Guillotine.plan(items, stock, cutting, FEW_LOOKS);
    }
  }

  @Provide
  Arbitrary<Task> tasks() {
    return tasks(25);
  }

  @Provide
  Arbitrary<Task> smallTasks() {
    return tasks(SMALL);
  }

  private static Arbitrary<Task> tasks(int most) {
    Arbitrary<Cutting> cuttings =
        Combinators.combine(Arbitraries.integers().between(0, 4), number(0, 3))
            .as((kerf, trim) -> new Cutting(kerf, trim));
    return Combinators.combine(sizes().list().ofMinSize(1).ofMaxSize(most), stocks(), cuttings)
        .as((sizes, stock, cutting) -> new Task(numbered(sizes), stock, cutting));
  }

  private static Arbitrary<Item> sizes() {
    return Combinators.combine(number(3, 54), number(3, 34), Arbitraries.of(true, false))
        .as((width, height, turn) -> new Item("", width, height, turn));
  }

  private static List<Item> numbered(List<Item> items) {
    List<Item> numbered = new ArrayList<>();
    for (Item item : items) {
      String id = "P" + (numbered.size() + 1);
      numbered.add(new Item(id, item.width(), item.height(), item.mayTurn()));
    }
    return numbered;
  }

  /** Sheets to buy that hold any item, dearer or cheaper ones of another size, and a rest. */
  private static Arbitrary<List<StockKind>> stocks() {
    Arbitrary<StockKind> second =
        Combinators.combine(number(45, 90), number(30, 60), number(1, 30), number(0, 4))
            .as(
                (width, height, price, limit) ->
                    new StockKind("second", width, height, price, limit));
    Arbitrary<StockKind> rest =
        Combinators.combine(number(20, 60), number(20, 40), number(0, 2))
            .as((width, height, limit) -> new StockKind("rest", width, height, 0, limit));
    return Combinators.combine(second, rest)
        .as(
            (other, piece) ->
                List.of(new StockKind("whole", 60, 40, 10, StockKind.UNLIMITED), other, piece));
  }

  private static Arbitrary<Integer> number(int least, int most) {
    return Arbitraries.integers().between(least, most);
  }

  @Property(tries = 100)
  void everyItemLiesOnceWithinLimits(@ForAll("tasks") Task task) {
    GuillotinePlan plan = task.plan();
    CutCheck check = new CutCheck(task.cutting());
    check.everyItemOnce(task.items(), plan);
    check.limitsKept(plan);
    assertThat(plan.left()).isEmpty();
    assertThat(plan.sheets().size()).isGreaterThanOrEqualTo(plan.bound());
  }

  @Property(tries = 100)
  void theCutsSeparateTheItemsAndTileTheSheet(@ForAll("tasks") Task task) {
    CutCheck check = new CutCheck(task.cutting());
    for (CutSheet sheet : task.plan().sheets()) {
      check.apartAndInside(sheet);
      check.separable(sheet);
      check.cutsTile(sheet);
    }
  }

  @Property(tries = 100)
  void smallTasksCostNoMoreThanBruteForce(@ForAll("smallTasks") Task task) {
    GuillotinePlan plan = task.plan();
    ExhaustiveCutting exhaustive =
        new ExhaustiveCutting(task.items(), task.stock(), task.cutting());
    ExhaustiveCutting.Cost found = new ExhaustiveCutting.Cost(plan.price(), plan.sheets().size());
    assertThat(Optional.of(found)).isEqualTo(exhaustive.best());
    assertThat(plan.bound()).isLessThanOrEqualTo(found.sheets());
  }

  @Property(tries = 100)
  void smallTasksOnLimitedStockAreLaidIfTheyCanBe(@ForAll("smallTasks") Task task) {
    StockKind whole = new StockKind("whole", 60, 40, 10, 2);
    List<StockKind> stock = List.of(whole, task.stock().get(1), task.stock().get(2));
    GuillotinePlan plan = Guillotine.plan(task.items(), stock, task.cutting(), FEW_LOOKS);
    ExhaustiveCutting exhaustive = new ExhaustiveCutting(task.items(), stock, task.cutting());
    assertThat(plan.left().isEmpty()).isEqualTo(exhaustive.best().isPresent());
    new CutCheck(task.cutting()).everyItemOnce(task.items(), plan);
    new CutCheck(task.cutting()).limitsKept(plan);
  }

  @Property(tries = 20)
  void theSameTaskGivesTheSamePlan(@ForAll("tasks") Task task) {
    assertThat(task.plan()).isEqualTo(task.plan());
  }

  @Example
  void anItemLargerThanEverySheetIsRefused() {
    List<Item> items = List.of(new Item("long", 61, 10, true));
    List<StockKind> stock = List.of(new StockKind("whole", 60, 40, 10, StockKind.UNLIMITED));
    assertThatThrownBy(() -> Guillotine.plan(items, stock, new Cutting(3, 0), FEW_LOOKS))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("long");
  }

  @Example
  void anItemThatMayNotTurnIsRefusedWhereOnlyTheTurnedOneFits() {
    List<StockKind> stock = List.of(new StockKind("whole", 60, 40, 10, StockKind.UNLIMITED));
    assertThat(
            Guillotine.plan(
                    List.of(new Item("a", 40, 60, true)), stock, new Cutting(3, 0), FEW_LOOKS)
                .sheets())
        .hasSize(1);
    assertThatThrownBy(
            () ->
                Guillotine.plan(
                    List.of(new Item("a", 40, 60, false)), stock, new Cutting(3, 0), FEW_LOOKS))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Two halves of a sheet and one kerf make exactly its width, and no kerf is due at the edge. */
  @Example
  void theKerfCountsBetweenPartsOnly() {
    List<StockKind> stock = List.of(new StockKind("whole", 2440, 1220, 1, StockKind.UNLIMITED));
    Cutting cutting = new Cutting(3.2, 10);
    List<Item> exact =
        List.of(new Item("a", 1208.4, 1200, false), new Item("b", 1208.4, 1200, false));
    assertThat(Guillotine.plan(exact, stock, cutting, FEW_LOOKS).sheets()).hasSize(1);
    List<Item> over =
        List.of(new Item("a", 1208.4, 1200, false), new Item("b", 1208.401, 1200, false));
    assertThat(Guillotine.plan(over, stock, cutting, FEW_LOOKS).sheets()).hasSize(2);
  }

  @Example
  void piecesAtHandAreUsedBeforeAnyIsBought() {
    StockKind bought = new StockKind("whole", 2440, 1220, 4500, StockKind.UNLIMITED);
    StockKind rest = new StockKind("rest", 700, 500, 0, 1);
    List<Item> items = List.of(new Item("a", 600, 400, false));
    GuillotinePlan plan =
        Guillotine.plan(items, List.of(bought, rest), new Cutting(3, 10), FEW_LOOKS);
    assertThat(plan.price()).isZero();
    assertThat(plan.sheets()).extracting(sheet -> sheet.kind().name()).containsExactly("rest");
  }

  /** Five of 200 x 300 fill 1000 x 300 in a row, which leaves 1000 x 700: all that is free. */
  @Example
  void whatIsFreeStaysInOnePiece() {
    List<StockKind> stock = List.of(new StockKind("whole", 1000, 1000, 1, StockKind.UNLIMITED));
    List<Item> items = new ArrayList<>();
    for (int item = 0; item < 5; item++) {
      items.add(new Item("P" + item, 200, 300, true));
    }
    CutSheet sheet = Guillotine.plan(items, stock, new Cutting(0, 0), FEW_LOOKS).sheets().get(0);
    assertThat(sheet.offcuts().stream().mapToDouble(CutCheck::area).max()).hasValue(700_000);
  }
}
