package plycrag.solve.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.bench.StockFile;

class CuttingPlannerTest {
  private static final long STEPS = 300_000_000;

  private static CuttingPlan plan(CuttingTask task) {
    return CuttingPlanner.plan(task, STEPS).orElseThrow();
  }

  @Provide
  Arbitrary<CuttingTask> small() {
    return tasks(pieces(25, 3, 2));
  }

  @Provide
  Arbitrary<CuttingTask> large() {
    return tasks(pieces(25, 30, 9));
  }

  private static Arbitrary<List<CuttingTask.Piece>> pieces(int longest, int kinds, int demand) {
    return Combinators.combine(
            Arbitraries.longs().between(1, longest), Arbitraries.integers().between(1, demand))
        .as(CuttingTask.Piece::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(kinds);
  }

  /** The last stock is long enough for every piece, and there are as many as are wanted. */
  private static Arbitrary<CuttingTask> tasks(Arbitrary<List<CuttingTask.Piece>> pieces) {
    Arbitrary<List<CuttingTask.Stock>> limited =
        Combinators.combine(
                Arbitraries.longs().between(5, 45),
                Arbitraries.longs().between(0, 60),
                Arbitraries.integers().between(0, 3))
            .as(CuttingTask.Stock::new)
            .list()
            .ofMaxSize(2);
    Arbitrary<Long> lengths = Arbitraries.longs().between(31, 50);
    Arbitrary<Boolean> priced = Arbitraries.of(true, false);
    Arbitrary<Long> kerfs = Arbitraries.longs().between(0, 3);
    Arbitrary<Long> trims = Arbitraries.longs().between(0, 3);
    return Combinators.combine(pieces, limited, lengths, priced, kerfs, trims)
        .as(
            (some, few, length, isPriced, kerf, trim) -> {
              List<CuttingTask.Stock> stocks = new ArrayList<>(few);
              stocks.add(
                  new CuttingTask.Stock(
                      length, isPriced ? 47 : length, CuttingTask.Stock.UNLIMITED));
              return new CuttingTask(some, stocks, kerf, trim);
            });
  }

  /** As many as are wanted, priced by their length. */
  private static CuttingTask.Stock byLength(long length) {
    return new CuttingTask.Stock(length, length, CuttingTask.Stock.UNLIMITED);
  }

  private static int sticks(CuttingPlan plan) {
    return plan.patterns().stream().mapToInt(CuttingPlan.Cut::sticks).sum();
  }

  @Property(tries = 150)
  void isNeverWorseThanEveryWayTried(@ForAll("small") CuttingTask task) {
    CuttingPlan plan = plan(task);
    assertThat(List.of(plan.cost(), plan.waste())).isEqualTo(BruteForce.costAndWaste(task));
    assertThat(plan.cost()).isEqualTo(plan.costBound());
    assertThat(plan.leastWaste()).isTrue();
  }

  @Property(tries = 60)
  void holdsWhatIsWantedWithinWhatThereIs(@ForAll("large") CuttingTask task) {
    CuttingPlan plan = CuttingPlanner.plan(task, STEPS / 10).orElseThrow();
    TreeMap<Long, Integer> wanted = new TreeMap<>();
    task.pieces().forEach(piece -> wanted.merge(piece.length(), piece.demand(), Integer::sum));
    TreeMap<Long, Integer> held = new TreeMap<>();
    TreeMap<Integer, Integer> taken = new TreeMap<>();
    long cost = 0;
    long waste = 0;
    for (CuttingPlan.Cut cut : plan.patterns()) {
      CuttingTask.Stock stock = task.stocks().get(cut.stock());
      long pieces = cut.lengths().stream().mapToLong(Long::longValue).sum();
      assertThat(2 * task.trim() + pieces + task.kerf() * (cut.lengths().size() - 1))
          .isLessThanOrEqualTo(stock.length());
      cut.lengths().forEach(length -> held.merge(length, cut.sticks(), Integer::sum));
      taken.merge(cut.stock(), cut.sticks(), Integer::sum);
      cost += cut.sticks() * stock.price();
      waste += cut.sticks() * (stock.length() - pieces);
    }
    assertThat(held).isEqualTo(wanted);
    taken.forEach(
        (stock, sticks) ->
            assertThat(sticks).isLessThanOrEqualTo(task.stocks().get(stock).limit()));
    assertThat(plan.cost()).isEqualTo(cost).isGreaterThanOrEqualTo(plan.costBound());
    assertThat(plan.waste()).isEqualTo(waste);
  }

  @Property(tries = 20)
  void isTheSameEveryTime(@ForAll("large") CuttingTask task) {
    assertThat(CuttingPlanner.plan(task, STEPS / 10))
        .isEqualTo(CuttingPlanner.plan(task, STEPS / 10));
  }

  @Test
  void countsTheKerfBetweenPiecesAndNotAfterTheLast() {
    List<CuttingTask.Piece> halves = List.of(new CuttingTask.Piece(50, 2));
    assertThat(sticks(plan(new CuttingTask(halves, List.of(byLength(103)), 3, 0)))).isEqualTo(1);
    assertThat(sticks(plan(new CuttingTask(halves, List.of(byLength(102)), 3, 0)))).isEqualTo(2);
    assertThat(sticks(plan(new CuttingTask(halves, List.of(byLength(104)), 3, 1)))).isEqualTo(2);
  }

  @Test
  void saysWhereThereIsTooLittle() {
    List<CuttingTask.Piece> pieces = List.of(new CuttingTask.Piece(60, 3));
    CuttingTask two = new CuttingTask(pieces, List.of(new CuttingTask.Stock(100, 1, 2)), 0, 0);
    CuttingTask three = new CuttingTask(pieces, List.of(new CuttingTask.Stock(100, 1, 3)), 0, 0);
    assertThat(CuttingPlanner.plan(two, STEPS)).isEqualTo(Optional.empty());
    assertThat(plan(three).cost()).isEqualTo(3);
    CuttingTask tooShort = new CuttingTask(pieces, List.of(byLength(59)), 0, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> CuttingPlanner.plan(tooShort, STEPS));
  }

  static List<String> published() throws IOException {
    return Files.readAllLines(folder().resolveSibling("optima.csv")).stream().skip(1).toList();
  }

  private static Path folder() {
    try {
      return Path.of(CuttingPlannerTest.class.getResource("/benchmarks/stock1d").toURI());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Sources beside the files, in benchmarks/README.md. */
  @ParameterizedTest
  @MethodSource("published")
  void reachesThePublishedOptimumAndProvesIt(String line) throws IOException {
    String[] cells = line.split(",", -1);
    CuttingTask task = StockFile.read(folder().resolveSibling(cells[0]));
    CuttingPlan plan = CuttingPlanner.plan(task, 4_000_000_000L).orElseThrow();
    assertThat(sticks(plan)).isEqualTo(Integer.parseInt(cells[1]));
    assertThat(plan.cost()).isEqualTo(plan.costBound());
  }
}
