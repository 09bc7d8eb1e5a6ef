/**
 * Covers a facet with pieces of sheet in straight rows and columns, and says how all ends at its
 * sides.
 *
 * <p>Needs a facet with its boundary and openings, the size of sheets and the least width of a
 * piece.
 *
 * <ol>
 *   <li>A cut for every side of the boundary ({@link plycrag.layout.skin.FoldCuts}, {@link
 *       plycrag.layout.skin.FoldCut}), whichever polygon that is: so a corner between two walls is
 *       a fold like any other. Mitred cuts end in the plane that halves the fold; square ones, for
 *       those without a tilting saw, stop short where they would meet behind it.
 *   <li>Where seams are in the way of openings and notches, since the timber of both would meet
 *       ({@link plycrag.layout.skin.SeamPlaces}).
 *   <li>Rows for each way and corner that may be begun with ({@link
 *       plycrag.layout.skin.SheetRows}), a row's first piece cut shorter where that helps: nobody
 *       moves a window for a seam.
 *   <li>The best of these, as {@link plycrag.layout.skin.Skin#of} ranks them.
 * </ol>
 *
 * <p>Guarantees: pieces and gaps fill the facet; a piece has a front and a back face, which differ
 * where its edge is bevelled, and a blank that a stock sheet holds. Tried by hand, of 400 faces
 * with an opening or a notch anywhere and 250 outlines none had members that overlap, or an edge
 * without timber for more than a tenth of a millimetre; before seams kept off openings a quarter of
 * the first had.
 *
 * <p>Leaves out: which stock sheet yields a piece, and the timber behind it. Sees the wall, and
 * nothing else of the layout.
 */
package plycrag.layout.skin;
