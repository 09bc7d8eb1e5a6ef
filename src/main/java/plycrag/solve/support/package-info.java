/**
 * Sets the timber that holds a run of facets up.
 *
 * <p>Needs the back of every facet's frame in section (y toward the climber, z up, in the axes of
 * the run), the places of the studs that may bear, and one section of timber. Knows lengths and
 * planes only: no facet, hole or price.
 *
 * <ol>
 *   <li>Stations: the first and the last stud, and between them as few as keep the greatest
 *       distance.
 *   <li>Levels: every fold, and the upper edge. At each level and station something level, upright
 *       or slanting ends flat on the back of the frame, in line with the stud.
 *   <li>What those members end on: posts on rails, a ledger on a wall or under a ceiling, the
 *       floor.
 *   <li>Braces: in each panel between levels, and across the posts.
 * </ol>
 *
 * <p>Everything of one station lies in the stud's own plane, so that members meet end on side, and
 * none reaches in between the studs where bolts may end. Guarantees that every end lies flat on
 * what it meets. Leaves strength out. A level that nothing of the kind can hold is told, not left
 * out silently.
 */
package plycrag.solve.support;
