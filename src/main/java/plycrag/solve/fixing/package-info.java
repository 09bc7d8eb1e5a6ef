/**
 * Chooses and sets out what holds lengths of timber together where they meet.
 *
 * <p>Needs bodies of timber in the room, each with the way of its grain, and how the two meet.
 * Knows bodies, the catalogue and the distances that EN 1995-1-1 asks for: no facet, sheet or
 * price.
 *
 * <ul>
 *   <li>Screws through one member into another beside it, and bolts through both: places on the
 *       face that both share, which keep their distances from the sides and ends of both and from
 *       each other. Two screws through a member into the end of another keep that in its place
 *       ({@link plycrag.solve.fixing.EndScrews}).
 *   <li>Brackets and straps: a piece of the catalogue for two faces that meet, which lies on both,
 *       meets no other timber, and whose screws keep their distances and end inside.
 *   <li>Gussets: a rectangle of plywood over all members that meet with a side flush, with its
 *       screws; clear of all bodies that it is told of, and of a driver at its screws. A pair lies
 *       on both sides of members that are flush on both: as large as each other, each to the marks
 *       as one looks at it, their screws in turn from this side and from the other, at the
 *       distances of one side's ({@link plycrag.solve.fixing.GussetSides}).
 * </ul>
 *
 * <p>Guarantees that what it says fits does. Where nothing does, says so, with what there is room
 * for. Ends and sides of timber are loaded where screws pull it when its members draw apart; what
 * pushes goes from timber to timber. Leaves strength out, and with it a pull along a member that
 * ends under a bracket, which is chosen for the force across the wall that people on its face make.
 */
package plycrag.solve.fixing;
