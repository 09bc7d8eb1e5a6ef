/**
 * From an approved layout to the moves of a router.
 *
 * <p>Takes an {@link plycrag.check.ApprovedLayout} only, so that nothing refused can be machined.
 * Every hole is plunged once at its centre with a tool of its own diameter; the order of the holes
 * is a short way from the sheet's corner (TourSearch), never longer than nearest neighbour's.
 * Guarantees: the first motion raises Z alone; the spindle turns before any cut; nothing moves
 * across below the clearance height. Leaves out: how a controller spells it, and holes that no tool
 * of their size fits.
 */
package plycrag.machining;
