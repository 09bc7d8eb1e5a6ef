/**
 * The wall with everything in its place: a pure function of what is to be built.
 *
 * <p>Needs a {@link plycrag.wall.Wall}. Its rooms are a staircase, each seeing only those before
 * it: {@code skin}, {@code frame}, {@code pattern}, {@code screws}, {@code facet}, {@code support},
 * {@code joints}, {@code sheets}. This room stands on them all and puts them in order; {@code
 * standing} asks the finished layout.
 *
 * <ol>
 *   <li>Pieces and seams of every facet, and its frame with the free members evenly apart.
 *   <li>Columns and rows against that frame, and with them the members that stand free.
 *   <li>The frame once more, with its members where the set-out wants them; its joints.
 *   <li>The inserts of zones and of lists, against that frame. It is settled by then, so that no
 *       zone moves a stud from under another.
 *   <li>Screws, which slide off inserts, and what becomes of inserts that are still blocked.
 *   <li>The support, and what holds each joint.
 *   <li>The pieces on stock sheets, what is done to those, and what their offcuts yield.
 * </ol>
 *
 * <p>Guarantees: centres of holes, screws and inner members lie on the marking grid; what is flush
 * with an edge, a seam or a member stays flush. Marks of pieces and members count through the wall,
 * in the order of reading, so that a mark alone finds its part; they are given after a step, in
 * order. Of other facets a facet knows only what stood before the step, so that each step lays them
 * out side by side on all cores, and no result depends on who was first. Where a support meets
 * facets that stand on each other, studs stand at the seams of all of them and so in line.
 *
 * <p>Leaves out: any judgement. A layout may be wrong; {@code check} says so. No price and nothing
 * to buy is known here, so that neither can move a hole.
 */
package plycrag.layout;
