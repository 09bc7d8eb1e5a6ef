/**
 * Counts what a wall takes and what has to be bought for it.
 *
 * <p>Needs a checked layout. Guarantees: what is counted here is what the layout holds, piece by
 * piece. Leaves out for now: the cutting plan (sticks are filled first-fit), packs, spares and
 * prices, and the hardware of the frame's joints, which no layout states yet.
 */
package plycrag.stock;
