/**
 * Gives everything on a facet a place and a size. Pure functions of the wall.
 *
 * <p>In this order, each step standing on those before it:
 *
 * <ol>
 *   <li>{@link plycrag.layout.Tiling}: pieces and the seams between them;
 *   <li>{@link plycrag.layout.Framing}: plates, rakes, studs, the timber round openings, blocking;
 *   <li>{@link plycrag.layout.Fastening}: screws wherever a piece bears on a member;
 *   <li>{@link plycrag.layout.AskedInserts}: the places asked for, of a facet and of its zones;
 *   <li>{@link plycrag.layout.InsertSelection}: what becomes of those that are blocked;
 *   <li>{@link plycrag.layout.nest}: every piece on a stock sheet.
 * </ol>
 *
 * <p>Guarantees: centres of holes, screws and inner members lie on the marking grid; what lies
 * flush with an edge, a seam or a member stays flush; marks are unique within their kind and follow
 * the order of reading. Leaves out: any judgement. A layout may be wrong; {@code check} says so.
 */
package plycrag.layout;
