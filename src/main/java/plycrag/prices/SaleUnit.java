package plycrag.prices;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** By what a merchant sells. */
public enum SaleUnit {
  /** One by one. */
  PIECE("piece"),
  /** By the metre. */
  METRE("metre"),
  /** In packs of so many. */
  PACK("pack");

  private final String word;

  SaleUnit(String word) {
    this.word = word;
  }

  /** The word for it in a price list. */
  public String word() {
    return word;
  }

  public static Optional<SaleUnit> find(String word) {
    return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(SaleUnit::word).toList();
  }
}
