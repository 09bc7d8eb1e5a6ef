package plycrag.solve.guillotine;

/** Which of the places where an item has room is taken: that of the least score. */
enum FitRule {
  /** Area lost between the item and the part it is put beside. */
  LEAST_WASTE,
  /** The shorter of what stays free beside the item each way. */
  LEAST_SHORT_SIDE,
  /** The longer of what stays free beside the item each way. */
  LEAST_LONG_SIDE,
  /** Area that stays of the free rectangle. */
  LEAST_AREA,
  /** Difference of the two edges that come to lie side by side. */
  EQUAL_EDGES
}
