package plycrag.read.lists;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The columns of a price list. */
enum PriceColumn {
  ARTICLE("article", true),
  SIZE("size", false),
  UNIT("unit", true),
  CONTENTS("contents", false),
  PRICE("price", true),
  CURRENCY("currency", true),
  TAX("tax", false),
  MASS("mass", false),
  AVAILABLE("available", false);

  private final String word;
  private final boolean isNeeded;

  PriceColumn(String word, boolean isNeeded) {
    this.word = word;
    this.isNeeded = isNeeded;
  }

  String word() {
    return word;
  }

  boolean isNeeded() {
    return isNeeded;
  }

  static Optional<PriceColumn> find(String word) {
    return Arrays.stream(values()).filter(column -> column.word.equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(PriceColumn::word).toList();
  }
}
