/**
 * Screws the sheets to the frame, and gives every hole of a facet its mark.
 *
 * <p>Needs a framed facet, and the inserts that screws slide off.
 *
 * <ol>
 *   <li>A {@link plycrag.layout.screws.FastenerLine} wherever a piece bears on a member; where
 *       timber at a fold leaves no room, the square timber beside it takes the screws ({@link
 *       plycrag.layout.screws.Fastening}).
 *   <li>Across, screws lie on the member's middle where the distances to the piece's edges allow
 *       it; along, evenly, at the spacing of an edge or of the field ({@link
 *       plycrag.layout.screws.ScrewSpacing}).
 *   <li>They slide off the stretches that inserts take: as few screws as keep the greatest spacing,
 *       then the least moves ({@link plycrag.layout.screws.SlidingScrews}). Where the file asks to
 *       report only, none slides.
 *   <li>Marks: what a tape reads at the centre. Inserts and screws are told apart together ({@link
 *       plycrag.layout.screws.MarkedHoles}).
 *   <li>Points for holds that are screwed on ({@link plycrag.layout.screws.ScrewPoints}): they move
 *       nothing, and nothing moves for them.
 * </ol>
 *
 * <p>Guarantees: every screw stands on the marking grid, in the piece and over the member that its
 * line names. Leaves out: whether distances and lengths suffice, which rules judge. Sees the rooms
 * up to {@code layout.pattern}.
 */
package plycrag.layout.screws;
