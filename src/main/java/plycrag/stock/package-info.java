/**
 * Counts what a wall takes, prices it and plans how sticks are cut.
 *
 * <p>Needs a checked layout, what the parameter file says about buying, and a price list.
 * Guarantees: what is counted here is what the layout holds, piece by piece; sticks are cut as
 * {@link plycrag.stock.StickPlan} says; what is bought is rounded up to what is sold; money is
 * decimal, each line's price and its tax are rounded to the hundredth, halves up, and sums add what
 * is rounded; a missing price is never taken for zero. Leaves out: the frame's support, and
 * discounts.
 */
package plycrag.stock;
