/**
 * What a wall takes: counted, priced, and planned from the sticks and sheets that are sold.
 *
 * <p>Needs a checked layout and, beside it, what the file says of buying ({@link
 * plycrag.wall.buying.MaterialWishes}) and a price list: they are no part of the wall.
 *
 * <ol>
 *   <li>What is needed, article by article, with a size as lengths ({@link plycrag.stock.Need}):
 *       wood, hardware, finish.
 *   <li>How sticks are cut, section by section: lengths as whole numbers for {@code solve.cutting},
 *       whose plan gets its members back ({@link plycrag.stock.StickPlan}).
 *   <li>What is bought for a need: the cheapest packs that hold it ({@link
 *       plycrag.stock.ShoppingList}), with costs and masses ({@link plycrag.stock.Costs}, {@link
 *       plycrag.stock.JobFigures}).
 *   <li>Lists for whoever saws, screws and carries, each a {@code document.Table}.
 * </ol>
 *
 * <p>Guarantees: what is counted is what the layout holds, piece by piece; the sheets are those
 * that the layout laid. What is bought is rounded up to what is sold; money is decimal, each line's
 * price and its tax are rounded to the hundredth, halves up, and sums add what is rounded; a
 * missing price is never taken for zero, and a sum that lacks one says so. Leaves out: discounts,
 * and whatever would move a hole. Sees {@code check}, {@code document}, {@code prices} and {@code
 * solve.cutting}.
 */
package plycrag.stock;
