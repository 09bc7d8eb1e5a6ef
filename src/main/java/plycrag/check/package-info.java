/**
 * The verdict on a layout, and the first waist of the house.
 *
 * <p>Needs a layout, right or wrong. {@link plycrag.check.Inspection} asks every rule of its one
 * list side by side and hears them in order. What inserts keep clear of makes a rule each, before
 * and after the rule of inserts among themselves; then come all others.
 *
 * <p>Guarantees: only this room can construct a {@link plycrag.check.CheckedLayout}, and all that
 * is made of a wall is made of one; it is an {@link plycrag.check.ApprovedLayout} if no finding is
 * an error, and {@code machining} takes nothing else. What no rule sees, as what merchants lack,
 * may be noted afterwards and changes no verdict.
 *
 * <p>Leaves out: rules themselves, which have rooms by what they judge. Sees them, and the layout.
 */
package plycrag.check;
