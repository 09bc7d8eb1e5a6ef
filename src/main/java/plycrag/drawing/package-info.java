/**
 * Shows a checked layout: elevations, sections, sheets, and the tables that are read with them.
 *
 * <p>{@link plycrag.drawing.Portfolio} lists all views; each is drawn once, when it is first asked
 * for.
 *
 * <p>Guarantees: every drawing is a {@link plycrag.document.Drawing} in millimetres; nothing is
 * drawn twice in the same place, so that a format for cutting can take it; a view from behind is
 * mirrored and says so; what must not be made is stamped.
 *
 * <p>How a view is put together: a {@link plycrag.drawing.pen.Sketch} collects shapes and knows the
 * scale; {@link plycrag.drawing.pen.FacetFrame} maps (u, v) to the paper; {@link
 * plycrag.drawing.pen.RunningDimensions} and {@link plycrag.drawing.pen.TitleLines} set the words.
 */
package plycrag.drawing;
