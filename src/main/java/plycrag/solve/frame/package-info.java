/**
 * Frames in space by the direct stiffness method: how they move under loads, what goes on in their
 * members and at their supports, and whether they stand at all. Knows beams, bars, sheets and
 * springs; no wall, timber or rule.
 *
 * <p><b>Units</b>: mm, N, N mm, N/mm, N/mm², radians; nothing else enters or leaves. (The reckoning
 * itself knows none: any units that fit each other do.) Axes are any three that are square to each
 * other. Turns and moments follow the axes' own hand, r × F being the moment of a force, so a
 * left-handed room needs no change. Tension is positive.
 *
 * <p>Needs a {@link plycrag.solve.frame.FrameModel}, whose beams and bars end at nodes or on rigid
 * arms from them, so that what is eccentric is computed so, and any number of {@link
 * plycrag.solve.frame.LoadCase}s. What contradicts itself, such as two members of one name, is
 * refused with an exception, being its maker's defect. What cannot be solved is an answer: {@link
 * plycrag.solve.frame.FrameOutcome}.
 *
 * <ol>
 *   <li>Every freedom gets a number: six a node, one for each release, six for each place where a
 *       beam is cut ({@link plycrag.solve.frame.FreedomCount}, {@link
 *       plycrag.solve.frame.PieceEnd}).
 *   <li>Elements are added into one sparse matrix whose order fills little ({@link
 *       plycrag.solve.sparse}). What is held keeps its row and meets only itself, so that one-way
 *       supports change values and no structure.
 *   <li>Turns of nodes at which all is pinned are no mechanism and are braked ({@link
 *       plycrag.solve.frame.IdleTurn}); a moment that asks for one makes it one.
 *   <li>Cholesky's factor, by EJML. Where a pivot vanishes, the motion is read from it ({@link
 *       plycrag.solve.sparse.FreeMotions}). A factor serves all cases in which the same parts act.
 *   <li>One-way parts let go and act until all signs are right ({@link
 *       plycrag.solve.frame.ActiveSet}), bounded by a count.
 *   <li>Second order: axial forces stiffen and soften, until they settle ({@link
 *       plycrag.solve.frame.SecondOrder}). Buckling: the least factor at which stiffness is lost
 *       ({@link plycrag.solve.frame.Buckling}).
 * </ol>
 *
 * <p>Guarantees: first-order results of beams in one piece are exact but for rounding, shear
 * included, all along the beam; the same model gives the same bits on every machine, since only
 * sums, products, quotients and square roots are taken, in a fixed order and on one thread.
 * Mechanisms are told as {@code solve.sparse} has it. Buckling and second order come near the truth
 * with the fourth power of the pieces' length: four in a member that buckles alone are 0.05 % high.
 *
 * <p>Leaves out: strength; large turns; shortening by bending; twisting and lateral buckling of a
 * beam (axial forces alone stiffen); joints that give other than by springs; dynamics.
 */
package plycrag.solve.frame;
