/**
 * Views of what lies in a plane: facets and frames in (u, v), sheets as they lie, sticks, and a
 * sheet cut through.
 *
 * <p>Needs a checked layout and, for sticks, their plan. Each view is a class with one way in that
 * returns a {@link plycrag.document.Drawing}; which there are is said in {@code drawing.Portfolio}.
 *
 * <ul>
 *   <li>{@link plycrag.drawing.flat.FacetView}, {@link plycrag.drawing.flat.FrameView}: from the
 *       front and from behind, with running dimensions from the lower left corner as seen from the
 *       front.
 *   <li>{@link plycrag.drawing.flat.SheetView}, {@link plycrag.drawing.flat.SheetSawing}, {@link
 *       plycrag.drawing.flat.CuttingDiagram}: where to drill, how a sheet comes apart, what is cut
 *       from which stick.
 *   <li>{@link plycrag.drawing.flat.SheetDetail}: an insert and a seam cut through.
 * </ul>
 *
 * <p>Guarantees: scaled to fit a page; marks and readings are those of the lists; {@link
 * plycrag.drawing.flat.SheetOutline}, {@link plycrag.drawing.flat.SheetTape} and {@link
 * plycrag.drawing.flat.EngravedStrokes} draw a sheet's edges, readings and marks for templates too.
 * Leaves out: all that needs a third direction. Sees {@code drawing.pen}.
 */
package plycrag.drawing.flat;
