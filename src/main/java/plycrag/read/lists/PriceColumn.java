package plycrag.read.lists;

/** The columns of a price list. */
enum PriceColumn implements ListColumn {
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

  @Override
  public String word() {
    return word;
  }

  @Override
  public boolean isNeeded() {
    return isNeeded;
  }
}
