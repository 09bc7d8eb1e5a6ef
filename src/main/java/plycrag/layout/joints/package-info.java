/**
 * What holds each joint: screws, bolts, brackets, straps, members beside it, or plywood.
 *
 * <p>Needs all joints of frame and support, and the bodies of all timber. It belongs to the layout
 * because rules, lists and the book must agree on it.
 *
 * <ol>
 *   <li>What a support hands on at an end it hands on through a pair of gussets, one on either side
 *       ({@link plycrag.layout.joints.GussetChoice}), or it would bend what it ends on. Pairs come
 *       first, since nothing else can take their place.
 *   <li>A piece of steel for members of which one ends on the other: chosen by the two faces on
 *       which it would lie, with all other timber round them and what is in it. The choice is the
 *       catalogue's alone; {@code [joints]} says how many screws it takes. It comes before what
 *       goes through, since it has few places; where two are in each other's way the later one
 *       looks again.
 *   <li>Screws and bolts through both members where these lie side by side or back to back, which
 *       find room along them. Where they have none beside the steel, they come before it.
 *   <li>Where none finds room, members beside the joint may hold it ({@link
 *       plycrag.layout.joints.HeldByOthers}).
 *   <li>Else a gusset, one over several joints where theirs would lie in each other's way. It is
 *       clear of timber and steel, sheets, inserts, floor and building ({@link
 *       plycrag.layout.joints.GussetRoom}).
 *   <li>What is left where a plate lies over a stud's end takes screws through the plate into that.
 *   <li>Every piece then has a mark, a place and a way ({@link plycrag.layout.joints.Hardware}):
 *       lists, views, the model and the rule that holds them against each other read those alone.
 * </ol>
 *
 * <p>Guarantees: {@link plycrag.layout.joints.Fixings} answers for every joint, in the order of the
 * joints; one that nothing holds is told, not hidden. Leaves out: strength, and from which offcut a
 * gusset is cut. Sees the rooms up to {@code layout.support}; {@code solve.fixing} knows the
 * distances.
 */
package plycrag.layout.joints;
