/**
 * Every blank on a stock sheet. Knows outlines and sheets, nothing of walls, pieces or inserts:
 * otherwise it and the layout would need each other.
 *
 * <ol>
 *   <li>A blank that leaves no margin on any sheet gets a sheet of its own, as it stands on the
 *       wall.
 *   <li>The rectangles round the others are laid so that cuts right across free them ({@code
 *       solve.guillotine}), for a router too, since what a track saw can cut a router can: least
 *       price, what is at hand being free; then fewest sheets; then the largest single offcut.
 *   <li>The same with odd blanks paired head to tail, the two that save most first; pairs stay
 *       where that is cheaper or takes fewer sheets ({@link plycrag.solve.nest.Pairing}).
 *   <li>Sheets that hold the same sizes are laid the same.
 *   <li>A sheet is turned so that its first blank lies as it stands on the wall.
 * </ol>
 *
 * <p>Guarantees: every blank is placed once; blanks keep the gap from each other and, but for those
 * alone, the margin; {@link plycrag.solve.nest.Placement}, the map from the facet's (u, v) to the
 * sheet's (x, y), is rigid, mirrored where backs lie up, and the only one there is: all that is
 * drawn, listed or drilled on a sheet goes through it. Leaves out: whether a sheet is large enough
 * for a blank that lies on it alone, which {@link plycrag.layout.skin.Skin} sees to; clamps;
 * outlines that interlock other than in pairs.
 */
package plycrag.solve.nest;
