package plycrag.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;
import plycrag.geometry.Tolerance;
import plycrag.layout.frame.Member;
import plycrag.solve.cutting.CuttingTask;
import plycrag.units.LengthUnit;
import plycrag.wall.buying.TimberStock;

/**
 * Turns millimetres into the whole numbers of a cutting task: tenths of a millimetre, or 128ths of
 * an inch. What is cut is rounded up and what it is cut from down, so that a plan always fits.
 */
record StickMeasure(LengthUnit unit, TimberStock stock, StickPrices prices) {
  private double step() {
    return unit == LengthUnit.MM ? 0.1 : unit.millimetres() / 128;
  }

  /** Whether a bought stick yields a member. */
  boolean isYielded(Member member) {
    return Tolerance.atMost(member.length(), stock.longestMember());
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

  /**
   * Sticks that the task knows as one stock.
   *
   * @param length as it was given, mm
   * @param price in the task's unit
   * @param limit how many there are
   * @param isAtHand whether they need not be bought
   */
  private record Kind(double length, long price, int limit, boolean isAtHand) {}

  /** Where sticks of the task come from; beyond its stocks are those lacking. */
  Stick.Source source(int index) {
    List<Kind> kinds = kinds();
    if (index >= kinds.size()) {
      return Stick.Source.LACKING;
    }
    return kinds.get(index).isAtHand() ? Stick.Source.AT_HAND : Stick.Source.BOUGHT;
  }

  /** The length of a stock of the task as it was given, or of one lacking, mm. */
  double stockLength(int index) {
    List<Kind> kinds = kinds();
    return kinds.get(index % kinds.size()).length();
  }

  /** What is sold, ascending, then what is at hand. */
  private List<Kind> kinds() {
    List<Kind> kinds = new ArrayList<>();
    List<Double> carried = stock.carried();
    for (int index = 0; index < carried.size(); index++) {
      double length = carried.get(index);
      for (StickPrices.Tier tier : prices.of(index)) {
        long price = prices.isKnown() ? tier.hundredths() : down(length);
        kinds.add(new Kind(length, price, tier.limit(), false));
      }
    }
    stock.atHand().stream()
        .distinct()
        .sorted()
        .map(length -> new Kind(length, 0, Collections.frequency(stock.atHand(), length), true))
        .forEach(kinds::add);
    return kinds;
  }

  /** The task: what is at hand costs nothing, what is bought its price or else its length. */
  CuttingTask task(List<Member> members) {
    TreeMap<Long, Integer> demands = new TreeMap<>();
    members.forEach(member -> demands.merge(length(member), 1, Integer::sum));
    List<CuttingTask.Piece> pieces = new ArrayList<>();
    demands.forEach((length, demand) -> pieces.add(new CuttingTask.Piece(length, demand)));
    List<CuttingTask.Stock> stocks =
        kinds().stream()
            .map(kind -> new CuttingTask.Stock(down(kind.length()), kind.price(), kind.limit()))
            .toList();
    return new CuttingTask(pieces, stocks, up(stock.kerf()), up(stock.endTrim()));
  }

  /** How many of the task's stocks are sold; those at hand come after. */
  int sold() {
    return (int) kinds().stream().filter(kind -> !kind.isAtHand()).count();
  }

  private long up(double length) {
    return (long) Tolerance.wholeUp(length / step());
  }

  private long down(double length) {
    return (long) Tolerance.wholeDown(length / step());
  }
}
