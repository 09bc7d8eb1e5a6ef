package plycrag.solve.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class ScarceCuttingTest {
  private static final long STEPS = 100_000_000;

  /** Above what all sticks of a small task cost. */
  private static final long DEAR = 100_000;

  @Provide
  Arbitrary<CuttingTask> small() {
    return tasks(3, 2, 3);
  }

  @Provide
  Arbitrary<CuttingTask> large() {
    return tasks(20, 9, 30);
  }

  /** Two stocks are sold, so many of each; the second is long enough; a third is at hand. */
  private static Arbitrary<CuttingTask> tasks(int kinds, int demand, int most) {
    Arbitrary<List<CuttingTask.Piece>> pieces =
        Combinators.combine(
                Arbitraries.longs().between(1, 25), Arbitraries.integers().between(1, demand))
            .as(CuttingTask.Piece::new)
            .list()
            .ofMinSize(1)
            .ofMaxSize(kinds);
    Arbitrary<CuttingTask.Stock> shorter = stock(5, 30, 1, 60, most);
    Arbitrary<CuttingTask.Stock> longer = stock(31, 50, 1, 60, most);
    Arbitrary<CuttingTask.Stock> atHand = stock(5, 60, 0, 0, 1);
    Arbitrary<Long> kerfs = Arbitraries.longs().between(0, 3);
    return Combinators.combine(pieces, shorter, longer, atHand, kerfs)
        .as(
            (some, one, two, hand, kerf) ->
                new CuttingTask(some, List.of(one, two, hand), kerf, 0));
  }

  private static Arbitrary<CuttingTask.Stock> stock(
      long least, long longest, long cheapest, long dearest, int most) {
    return Combinators.combine(
            Arbitraries.longs().between(least, longest),
            Arbitraries.longs().between(cheapest, dearest),
            Arbitraries.integers().between(0, most))
        .as(CuttingTask.Stock::new);
  }

  @Property(tries = 30)
  void takesNoMoreThanThereAre(@ForAll("large") CuttingTask task) {
    CuttingPlan plan = ScarceCutting.plan(task, 2, STEPS);
    TreeMap<Long, Integer> held = new TreeMap<>();
    TreeMap<Integer, Integer> taken = new TreeMap<>();
    long cost = 0;
    for (CuttingPlan.Cut cut : plan.patterns()) {
      CuttingTask.Stock stock = task.stocks().get(cut.stock() % task.stocks().size());
      long pieces = cut.lengths().stream().mapToLong(Long::longValue).sum();
      assertThat(pieces + task.kerf() * (cut.lengths().size() - 1))
          .isLessThanOrEqualTo(stock.length());
      cut.lengths().forEach(length -> held.merge(length, cut.sticks(), Integer::sum));
      taken.merge(cut.stock(), cut.sticks(), Integer::sum);
      cost += cut.sticks() * stock.price();
    }
    TreeMap<Long, Integer> wanted = new TreeMap<>();
    task.pieces().forEach(piece -> wanted.merge(piece.length(), piece.demand(), Integer::sum));
    assertThat(held).isEqualTo(wanted);
    taken
        .headMap(task.stocks().size())
        .forEach(
            (stock, sticks) ->
                assertThat(sticks).isLessThanOrEqualTo(task.stocks().get(stock).limit()));
    assertThat(taken.keySet()).allMatch(stock -> stock < task.stocks().size() + 2);
    assertThat(plan.cost()).isEqualTo(cost).isGreaterThanOrEqualTo(plan.costBound());
  }

  /** Every way is tried: with what there is; where that does not do, with the fewest more. */
  @Property(tries = 120)
  void lacksOnlyWhatItMustAndIsTheCheapestThen(@ForAll("small") CuttingTask task) {
    CuttingPlan plan = ScarceCutting.plan(task, 2, STEPS);
    List<Long> within = BruteForce.costAndWaste(task);
    List<CuttingTask.Stock> more = new ArrayList<>(task.stocks());
    for (CuttingTask.Stock stock : task.stocks().subList(0, 2)) {
      more.add(
          new CuttingTask.Stock(stock.length(), stock.price() + DEAR, CuttingTask.Stock.UNLIMITED));
    }
    List<Long> beyond =
        BruteForce.costAndWaste(new CuttingTask(task.pieces(), more, task.kerf(), task.trim()));
    long lacking = lacking(plan, task);
    assertThat(lacking).isEqualTo(beyond.get(0) / DEAR);
    assertThat(lacking == 0).isEqualTo(!within.isEmpty());
    assertThat(List.of(plan.cost(), plan.waste()))
        .isEqualTo(within.isEmpty() ? List.of(beyond.get(0) % DEAR, beyond.get(1)) : within);
    assertThat(plan.cost()).isEqualTo(plan.costBound());
  }

  private static long lacking(CuttingPlan plan, CuttingTask task) {
    return plan.patterns().stream()
        .filter(cut -> cut.stock() >= task.stocks().size())
        .mapToLong(CuttingPlan.Cut::sticks)
        .sum();
  }

  /** Of 2400 there is one; the other four of five studs come two by two from longer sticks. */
  @Test
  void turnsToWhatThereIsEnoughOf() {
    List<CuttingTask.Piece> pieces =
        List.of(new CuttingTask.Piece(2400, 5), new CuttingTask.Piece(4000, 2));
    CuttingTask.Stock shorter = new CuttingTask.Stock(2400, 9, 1);
    CuttingTask.Stock longer = new CuttingTask.Stock(4806, 20, CuttingTask.Stock.UNLIMITED);
    CuttingPlan plan =
        ScarceCutting.plan(new CuttingTask(pieces, List.of(shorter, longer), 3, 0), 2, STEPS);
    assertThat(plan.cost()).isEqualTo(9 + 20 * 2 + 20 * 2);
    assertThat(plan.cost()).isEqualTo(plan.costBound());
  }

  /** Prices of a real list and thousands of pieces: no sum overflows. */
  @Test
  void sumsOfLargeTasksFit() {
    List<CuttingTask.Piece> studs =
        List.of(new CuttingTask.Piece(23_550, 4000), new CuttingTask.Piece(11_000, 4000));
    List<CuttingTask.Stock> stocks =
        List.of(
            new CuttingTask.Stock(24_000, 1080, 100),
            new CuttingTask.Stock(60_000, 2880, 100),
            new CuttingTask.Stock(70_000, 0, 1));
    CuttingTask task = new CuttingTask(studs, stocks, 30, 0);
    CuttingPlan plan = ScarceCutting.plan(task, 2, STEPS / 10);
    assertThat(lacking(plan, task)).isPositive();
  }
}
