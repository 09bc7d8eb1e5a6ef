/**
 * What every drawing is made with: lines, layers, words that find room, dimensions, scales, paper.
 *
 * <p>Needs lengths and places; of a layout it knows no more than a facet's size, a hole's kind and
 * the verdict to stamp.
 *
 * <ul>
 *   <li>{@link plycrag.drawing.pen.Sketch} collects shapes and knows the scale; {@link
 *       plycrag.drawing.pen.FacetFrame} maps (u, v) to the paper; {@link
 *       plycrag.drawing.pen.Layers} names what a line stands for, {@link
 *       plycrag.drawing.pen.OperationLayers} what a shop cuts and bores, by the user's patterns.
 *   <li>{@link plycrag.drawing.pen.FreeSpot}, {@link plycrag.drawing.pen.Inked} and {@link
 *       plycrag.drawing.pen.LabelSpread} find places for words, measured by {@link
 *       plycrag.document.TextSize}; {@link plycrag.drawing.pen.RunningDimensions}, {@link
 *       plycrag.drawing.pen.Datum} and {@link plycrag.drawing.pen.ViewPage} set readings around a
 *       view, {@link plycrag.drawing.pen.TitleLines} the words below it.
 *   <li>{@link plycrag.drawing.pen.View} and {@link plycrag.drawing.pen.ViewKind}: a view with its
 *       place in folder, print and CAD; {@link plycrag.drawing.pen.PrintedSet} puts views on the
 *       smallest paper that holds them.
 * </ul>
 *
 * <p>Guarantees: a drawing has no line on another, so that a shop's reader counts no cut twice: of
 * every line only what no other has drawn is left, and closed outlines stay whole ({@link
 * plycrag.drawing.pen.DrawnOnce}). Words keep off words and lines as far as there is room. Fills go
 * on {@code Shape.Area}, which formats for CAD leave out.
 *
 * <p>Leaves out: what is shown. Sees {@code check}, {@code document} and what is made of a verdict.
 */
package plycrag.drawing.pen;
