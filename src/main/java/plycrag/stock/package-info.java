/**
 * Counts what a wall takes and what has to be bought for it.
 *
 * <p>Needs a checked layout. Guarantees: what is counted here is what the layout holds, piece by
 * piece; sticks are cut as {@link plycrag.stock.StickPlan} says. Leaves out for now: packs, spares
 * and prices, and the hardware of the frame's joints, which no layout states yet.
 */
package plycrag.stock;
