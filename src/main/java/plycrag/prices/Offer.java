package plycrag.prices;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plycrag.catalog.SoldSize;

/**
 * A line of a price list.
 *
 * @param article what is sold
 * @param size its lengths in mm, ascending; empty for any size
 * @param unit by what it is sold
 * @param contents how many, or how many litres, are in a pack; 1 if it is not sold in packs
 * @param price of one unit before tax; empty where the list leaves it open
 * @param tax added to the price, percent
 * @param mass of one unit, kg, if the list gives it
 * @param available how many units there are; empty for as many as are wanted
 */
public record Offer(
    Article article,
    List<Double> size,
    SaleUnit unit,
    BigDecimal contents,
    Optional<BigDecimal> price,
    BigDecimal tax,
    Optional<BigDecimal> mass,
    Optional<Integer> available) {
  /** Copies the size. */
  public Offer {
    size = List.copyOf(size);
  }

  /**
   * Whether it is an offer of this size.
   *
   * @param wanted lengths in mm; by the metre the greatest one is left out
   */
  public boolean isOf(List<Double> wanted) {
    List<Double> sorted = wanted.stream().sorted().toList();
    int sides = unit == SaleUnit.METRE ? sorted.size() - 1 : sorted.size();
    return size.size() == sides
        && IntStream.range(0, sides).allMatch(i -> SoldSize.same(size.get(i), sorted.get(i)));
  }

  /** Whether both sell the same thing in the same way. */
  public boolean isLike(Offer other) {
    return article == other.article
        && unit == other.unit
        && contents.compareTo(other.contents) == 0
        && size.equals(other.size);
  }
}
