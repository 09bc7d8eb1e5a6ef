package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Plans with stock of which merchants have only so many sticks: as if there were no end of them, as
 * long as that takes no more than there are; else with the fewest sticks beyond, and of these plans
 * the cheapest.
 */
public final class ScarceCutting {
  /** Sums of weights stay below this, with room for a search's own. */
  private static final double GREATEST = 0x1p60;

  private ScarceCutting() {}

  /**
   * The plan. A stock whose index is the task's number of stocks or more is lacking: it is like the
   * one so many places before, but beyond its limit.
   *
   * @param task the limits of what is not sold are always kept
   * @param sold how many stocks of the task are sold; they come first and are together long enough
   * @param steps as {@link CuttingPlanner#plan} takes them
   * @throws IllegalArgumentException if a piece is longer than everything sold
   */
  public static CuttingPlan plan(CuttingTask task, int sold, long steps) {
    List<CuttingTask.Stock> endless = new ArrayList<>(task.stocks());
    endless.subList(0, sold).replaceAll(stock -> endless(stock, stock.price()));
    CuttingPlan plan = planned(with(task, endless), steps);
    return isWithin(plan, task) ? plan : beyond(task, sold, steps);
  }

  private static CuttingTask.Stock endless(CuttingTask.Stock stock, long price) {
    return new CuttingTask.Stock(stock.length(), price, CuttingTask.Stock.UNLIMITED);
  }

  private static CuttingTask with(CuttingTask task, List<CuttingTask.Stock> stocks) {
    return new CuttingTask(task.pieces(), stocks, task.kerf(), task.trim());
  }

  private static CuttingPlan planned(CuttingTask task, long steps) {
    return CuttingPlanner.plan(task, steps)
        .orElseThrow(() -> new IllegalStateException("endless sticks hold every piece"));
  }

  private static boolean isWithin(CuttingPlan plan, CuttingTask task) {
    TreeMap<Integer, Integer> taken = new TreeMap<>();
    plan.patterns().forEach(cut -> taken.merge(cut.stock(), cut.sticks(), Integer::sum));
    return taken.entrySet().stream()
        .allMatch(one -> one.getValue() <= task.stocks().get(one.getKey()).limit());
  }

  /** Every stock again without end, at a price that no saving elsewhere makes up for. */
  private static CuttingPlan beyond(CuttingTask task, int sold, long steps) {
    long extra = extra(task);
    List<CuttingTask.Stock> stocks = new ArrayList<>(task.stocks());
    task.stocks().subList(0, sold).stream()
        .map(stock -> endless(stock, stock.price() + extra))
        .forEach(stocks::add);
    CuttingPlan plan = planned(with(task, stocks), steps);
    long beyond =
        plan.patterns().stream()
            .filter(cut -> cut.stock() >= task.stocks().size())
            .mapToLong(CuttingPlan.Cut::sticks)
            .sum();
    long bound = Math.max(0, plan.costBound() - beyond * extra);
    return new CuttingPlan(
        plan.patterns(), plan.cost() - beyond * extra, bound, plan.waste(), plan.leastWaste());
  }

  /** More than all sticks cost; less in a task so large that sums would not fit. */
  private static long extra(CuttingTask task) {
    long dearest = task.stocks().stream().mapToLong(CuttingTask.Stock::price).max().orElse(0);
    double longest = task.stocks().stream().mapToLong(CuttingTask.Stock::length).max().orElse(1);
    double each = (dearest + 1.0) * longest * task.count() * task.count();
    return (dearest + 1) * (long) Math.max(1, Math.min(task.count(), GREATEST / each));
  }
}
