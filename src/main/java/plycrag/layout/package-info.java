/**
 * Gives everything on a facet a place and a size. Pure functions of the wall.
 *
 * <p>In this order, each step standing on those before it:
 *
 * <ol>
 *   <li>{@link plycrag.layout.skin.Skin}: pieces and the seams between them;
 *   <li>{@link plycrag.layout.frame.Framing}: plates, rakes, studs, the timber round openings,
 *       blocking;
 *   <li>{@link plycrag.layout.screws.Fastening}: screws wherever a piece bears on a member;
 *   <li>{@link plycrag.layout.pattern.AskedInserts}: the places asked for, of a facet and of its
 *       zones;
 *   <li>{@link plycrag.layout.pattern.InsertSelection}: what becomes of those that are blocked;
 *   <li>{@link plycrag.layout.nest}: every piece on a stock sheet.
 * </ol>
 *
 * <p>What an insert keeps clear of is said once, in {@link
 * plycrag.layout.pattern.InsertHindrances}: each {@link plycrag.layout.pattern.Hindrance} by where
 * it forbids inserts, from which all else follows. Three things do not follow from that alone:
 *
 * <ul>
 *   <li>Lines are moved as a whole, so a thing says whether it keeps off all of a line that it only
 *       meets in part ({@code Avoided.keepsOff}, seams in {@code ClearOfEdge}): a short header
 *       does, a neighbour's stud does where it lies behind half of the line. An area cannot tell
 *       that.
 *   <li>Members that the set-out moves together with the lines are no stretches where none may lie
 *       but partners of its search; it takes their distance from {@code ClearOfTimber} ({@code
 *       AxisTask}).
 *   <li>The distance between two inserts has no place until one of them has; each chooser keeps it
 *       by itself ({@code InsertSelection}, {@code AxisTask}, {@code PlacedPattern}), and {@code
 *       scatter-spacing} is the scatter's.
 * </ul>
 *
 * <p>Guarantees: centres of holes, screws and inner members lie on the marking grid; what lies
 * flush with an edge, a seam or a member stays flush; marks are unique within their kind and follow
 * the order of reading. Leaves out: any judgement. A layout may be wrong; {@code check} says so.
 */
package plycrag.layout;
