package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A task made ready for the search, and the way back.
 *
 * <p>A bin's weight is its length where price is length. Otherwise it is price times a number that
 * no sum of lengths reaches, plus length: the least weight is the least cost, and of equal cost the
 * least waste.
 *
 * @param packing what is searched
 * @param lengths of the pieces of each size
 * @param stocks the task's stock for each bin; a last bin without one is the last resort, so heavy
 *     that it is used only if nothing else holds the pieces
 * @param base what a price is multiplied with; 1 where weights are lengths
 * @param divisor what the weights have in common
 * @param priceStep what all prices have in common
 */
record PackingTask(
    Packing packing,
    List<Long> lengths,
    List<Integer> stocks,
    long base,
    long divisor,
    long priceStep) {

  static PackingTask of(CuttingTask task) {
    TreeMap<Long, Integer> demands = new TreeMap<>(Comparator.reverseOrder());
    task.pieces().forEach(piece -> demands.merge(piece.length(), piece.demand(), Integer::sum));
    List<Long> lengths = List.copyOf(demands.keySet());
    long size = common(lengths.stream().mapToLong(length -> length + task.kerf()));
    List<Integer> stocks = useful(task, lengths.get(lengths.size() - 1));
    long base = base(task, stocks);
    List<Packing.Bin> bins = new ArrayList<>();
    for (int index : stocks) {
      CuttingTask.Stock stock = task.stocks().get(index);
      int capacity = Math.toIntExact((task.usable(stock) + task.kerf()) / size);
      int limit = Math.min(stock.limit(), task.count());
      bins.add(new Packing.Bin(capacity, weight(stock, base), limit));
    }
    long divisor = common(bins.stream().mapToLong(Packing.Bin::weight));
    bins.replaceAll(bin -> new Packing.Bin(bin.capacity(), bin.weight() / divisor, bin.limit()));
    int[] sizes =
        lengths.stream().mapToInt(one -> Math.toIntExact((one + task.kerf()) / size)).toArray();
    long unit = unit(task, stocks, bins);
    addLastResort(bins, sizes[0], task.count());
    int[] wanted = demands.values().stream().mapToInt(Integer::intValue).toArray();
    long priceStep = common(stocks.stream().mapToLong(i -> task.stocks().get(i).price()));
    return new PackingTask(
        new Packing(sizes, wanted, List.copyOf(bins), unit),
        lengths,
        stocks,
        base,
        divisor,
        priceStep);
  }

  private static List<Integer> useful(CuttingTask task, long shortest) {
    List<Integer> useful = new ArrayList<>();
    for (int i = 0; i < task.stocks().size(); i++) {
      CuttingTask.Stock stock = task.stocks().get(i);
      if (stock.limit() > 0 && task.usable(stock) >= shortest) {
        useful.add(i);
      }
    }
    return useful;
  }

  private static long base(CuttingTask task, List<Integer> stocks) {
    boolean byLength =
        stocks.stream().map(task.stocks()::get).allMatch(stock -> stock.price() == stock.length());
    long longest = stocks.stream().mapToLong(i -> task.stocks().get(i).length()).max().orElse(0);
    return byLength ? 1 : Math.addExact(Math.multiplyExact(longest, task.count()), 1);
  }

  private static long weight(CuttingTask.Stock stock, long base) {
    return base == 1
        ? stock.length()
        : Math.addExact(Math.multiplyExact(stock.price(), base), stock.length());
  }

  /** Of the lightest bin that costs something; of any if none does. */
  private static long unit(CuttingTask task, List<Integer> stocks, List<Packing.Bin> bins) {
    return IntStream.range(0, bins.size())
        .filter(bin -> task.stocks().get(stocks.get(bin)).price() > 0)
        .mapToLong(bin -> bins.get(bin).weight())
        .min()
        .orElseGet(() -> bins.stream().mapToLong(Packing.Bin::weight).min().orElse(1));
  }

  private static void addLastResort(List<Packing.Bin> bins, int greatestSize, int count) {
    int longest = bins.stream().mapToInt(Packing.Bin::capacity).max().orElse(0);
    if (longest < greatestSize) {
      throw new IllegalArgumentException("a piece is longer than every stick");
    }
    boolean isMissing =
        bins.stream().noneMatch(bin -> bin.capacity() >= greatestSize && bin.limit() >= count);
    if (isMissing) {
      long heaviest = bins.stream().mapToLong(Packing.Bin::weight).max().orElse(1);
      bins.add(new Packing.Bin(longest, Math.multiplyExact(heaviest + 1, count), count));
    }
  }

  private static long common(LongStream numbers) {
    return Math.max(1, numbers.reduce(0, PackingTask::divisor));
  }

  private static long divisor(long one, long other) {
    return other == 0 ? one : divisor(other, one % other);
  }

  boolean isLastResort(int bin) {
    return bin >= stocks.size();
  }

  int stock(int bin) {
    return stocks.get(bin);
  }

  /** The least cost of a packing that has at least a weight. */
  long costBound(long weight) {
    if (base == 1) {
      return weight * divisor;
    }
    long least = -Math.floorDiv(-Math.max(0, weight * divisor - (base - 1)), base);
    return (least + priceStep - 1) / priceStep * priceStep;
  }
}
