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
 *   <li>Braces: in each panel between levels, and across the posts. Knee braces under a beam stand
 *       between the posts and not on their backs, so that two meet opposite sides of a post ({@link
 *       plycrag.solve.support.PostRow}). Their reach is cut to the room there is; where less is
 *       left than an end cut needs, the support says that it sways, and a rule tells.
 * </ol>
 *
 * <p>Everything of one station lies in the stud's own plane. Guarantees that every end lies flat on
 * what it meets. Leaves strength out. A level that nothing of the kind can hold is told, not left
 * out silently.
 */
package plycrag.solve.support;
