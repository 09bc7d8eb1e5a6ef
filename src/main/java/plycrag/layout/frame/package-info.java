/**
 * The timber behind a facet's sheets, and where its members meet.
 *
 * <p>Needs a facet, its cuts and seams ({@code layout.skin}). A frame lies in a rectangle in the
 * plane of the sheets' back; on a leaning facet its bottom plate touches the floor with an arris,
 * and what remains is packed ({@link plycrag.layout.frame.Footing}).
 *
 * <ol>
 *   <li>Where members are wished to be: plates, rakes and studs at edges and seams, timber round
 *       openings, studs and blocking in between ({@link plycrag.layout.frame.FramePlan}); free ones
 *       evenly apart, or where the set-out wants them.
 *   <li>They take ground, one after another ({@link plycrag.layout.frame.FrameFill}): what comes
 *       first keeps it, what comes later ends where it meets it, unless both run the same way
 *       ({@link plycrag.layout.frame.FrameGround}). This one rule cuts studs to plates, rakes,
 *       headers and slanting sides, and gives every end its compound angle ({@link
 *       plycrag.layout.frame.EndCut}).
 *   <li>What is longer than is sold is spliced ({@link plycrag.layout.frame.PlatePlan}, {@link
 *       plycrag.layout.frame.Splices}).
 *   <li>Where walls meet in a corner, what still reaches into timber or sheets of a facet that it
 *       has no plane in common with is made shorter ({@link plycrag.layout.frame.ClearedEnds}).
 *   <li>Joints, where footprints touch and across folds ({@link plycrag.layout.frame.JointFinder}).
 * </ol>
 *
 * <p>At a mitred fold the plates of both facets lie back to back in the plane that halves it, and
 * studs end against them: two flat faces to bolt together, and timber behind both edges. So a
 * member has a footprint and what lies at its back, and bodies are compared in the room ({@link
 * plycrag.geometry.Solid}). Timber is ripped to no more than 30° from square: where faces are
 * turned toward each other more sharply it stays square, as no screw would stay in so thin an edge.
 * Timber in a fold without room for the sheets' screws ({@code FoldCut.crowded}) gets square timber
 * beside it that takes them: blocking beside a plate, a stud or a rake beside another. As the two
 * touch along a line only, it hangs between its own neighbours.
 *
 * <p>Guarantees: members that cross share no ground (two that run the same way may, and a rule says
 * so); free members stand on the marking grid. Leaves out: what holds a joint, and whether any of
 * it can be bought or sawn. Sees the wall and {@code layout.skin}.
 */
package plycrag.layout.frame;
