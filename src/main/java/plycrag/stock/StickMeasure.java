package plycrag.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import plycrag.layout.Member;
import plycrag.params.StockParameters;
import plycrag.stock.cutting.CuttingTask;
import plycrag.units.LengthUnit;

/**
 * Turns millimetres into the whole numbers of a cutting task: tenths of a millimetre, or 128ths of
 * an inch. What is cut is rounded up and what it is cut from down, so that a plan always fits.
 */
record StickMeasure(LengthUnit unit, StockParameters stock, StickPrices prices) {
  private static final double TOLERANCE = 1e-6;

  private double step() {
    return unit == LengthUnit.MM ? 0.1 : unit.millimetres() / 128;
  }

  /** Whether a bought stick yields a member. */
  boolean isYielded(Member member) {
    return member.length() <= stock.longestMember() + TOLERANCE;
  }

  /** A member's length, rounded up, but not beyond what a stick has that yields it. */
  long length(Member member) {
    double longest = stock.longestMember() + 2 * stock.endTrim();
    return Math.min(up(member.length()), down(longest) - 2 * up(stock.endTrim()));
  }

  /** A task's length in millimetres. */
  double millimetres(long length) {
    return length * step();
  }

  /** Whether a stock of the task is at hand. */
  boolean isAtHand(int index) {
    return index >= stock.carried().size();
  }

  /** The length of a stock of the task as it was given, mm. */
  double stockLength(int index) {
    return stockLengths().get(index);
  }

  private List<Double> stockLengths() {
    List<Double> lengths = new ArrayList<>(stock.carried());
    stock.atHand().stream().distinct().sorted().forEach(lengths::add);
    return lengths;
  }

  /** The task: what is at hand costs nothing, what is bought its price or else its length. */
  CuttingTask task(List<Member> members) {
    TreeMap<Long, Integer> demands = new TreeMap<>();
    members.forEach(member -> demands.merge(length(member), 1, Integer::sum));
    List<CuttingTask.Piece> pieces = new ArrayList<>();
    demands.forEach((length, demand) -> pieces.add(new CuttingTask.Piece(length, demand)));
    List<CuttingTask.Stock> stocks = new ArrayList<>();
    List<Double> lengths = stockLengths();
    for (int index = 0; index < lengths.size(); index++) {
      stocks.add(stock(index, lengths.get(index)));
    }
    return new CuttingTask(pieces, stocks, up(stock.kerf()), up(stock.endTrim()));
  }

  private CuttingTask.Stock stock(int index, double length) {
    if (isAtHand(index)) {
      return new CuttingTask.Stock(down(length), 0, Collections.frequency(stock.atHand(), length));
    }
    return prices.isKnown()
        ? new CuttingTask.Stock(
            down(length), prices.hundredths().get(index), CuttingTask.Stock.UNLIMITED)
        : CuttingTask.Stock.byLength(down(length));
  }

  private long up(double length) {
    return (long) Math.ceil(length / step() - TOLERANCE);
  }

  private long down(double length) {
    return (long) Math.floor(length / step() + TOLERANCE);
  }
}
