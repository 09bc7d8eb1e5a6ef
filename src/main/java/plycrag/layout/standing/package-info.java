/**
 * The finished wall as bodies in the room: what it weighs, how it is raised and assembled, where
 * people fall.
 *
 * <p>Needs a whole {@link plycrag.layout.Layout}, which is why it stands after it; nothing here
 * moves anything.
 *
 * <ul>
 *   <li>{@link plycrag.layout.standing.RunAtAngle}: the bodies of a run at one of its angles. What
 *       swings is laid out at one angle and turned as a body to the others, so that no hole moves
 *       with the angle; rules and views that depend on it ask here.
 *   <li>{@link plycrag.layout.standing.Assembly}: the order of work, found from the joints: what
 *       lies on floor or building, then facet by facet what meets only what stands. Tests move
 *       every part to its place past what stands, by a reckoning of their own ({@code Polyhedron}).
 *   <li>{@link plycrag.layout.standing.BuildOrder}: all steps of building, with every member, piece
 *       of hardware, sheet, insert and screw in one of them and none before what it needs; the
 *       book, and whoever shows a wall grow, read it.
 *   <li>{@link plycrag.layout.standing.Raising} and {@link plycrag.layout.standing.Mass}: what it
 *       takes to tilt a frame up.
 *   <li>{@link plycrag.layout.standing.FallZone}: measured once, since section, plan, book and rule
 *       must agree.
 *   <li>{@link plycrag.layout.standing.SheetDatum}: from which edges a sheet is measured. Of a
 *       sheet as bought those are edges at seams, so that what it is larger or smaller than stated
 *       goes to the outside of the wall. It needs the neighbours, hence the whole wall.
 * </ul>
 *
 * <p>Guarantees: the same order and bodies for everyone who asks. Leaves out: whether any of it is
 * safe, which {@code check.standing} judges. Sees all of the layout.
 */
package plycrag.layout.standing;
