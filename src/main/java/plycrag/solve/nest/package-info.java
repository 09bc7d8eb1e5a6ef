/**
 * Every blank on a stock sheet. Knows outlines and sheets, nothing of walls.
 *
 * <ol>
 *   <li>A blank that leaves no margin on any sheet gets a sheet of its own, as it stands on the
 *       wall.
 *   <li>The rectangles round the others are laid so that cuts right across free them ({@link
 *       plycrag.layout.nest.guillotine}): least price, what is at hand being free; then fewest
 *       sheets; then the largest single offcut.
 *   <li>The same with odd blanks paired head to tail, the two that save most first; pairs stay
 *       where that is cheaper or takes fewer sheets ({@link plycrag.solve.nest.Pairing}).
 *   <li>Sheets that hold the same sizes are laid the same.
 *   <li>A sheet is turned so that its first blank lies as it stands on the wall.
 * </ol>
 *
 * <p>Guarantees: every blank is placed once; blanks keep the gap from each other and, but for those
 * alone, the margin; the map from the facet's (u, v) to the sheet's (x, y) is rigid, mirrored where
 * backs lie up. Leaves out: whether a sheet is large enough for a blank that lies on it alone,
 * which the tiling sees to; outlines that interlock other than in pairs.
 */
package plycrag.solve.nest;
