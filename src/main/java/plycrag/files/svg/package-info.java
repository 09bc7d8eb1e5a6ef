/**
 * Drawings as SVG, true to size.
 *
 * <p>Needs any {@link plycrag.document.Drawing}. Guarantees: width and height in millimetres with a
 * viewBox of the same numbers, so that one user unit is one millimetre on paper, and no unit or
 * non-scaling stroke inside, since readers differ in both; a white ground; the drawing's title as
 * the text alternative; attributes on one group for each run of shapes of a layer, the group's
 * class being the layer's name.
 *
 * <p>Leaves out: fonts. Text stays text, in the named font or what a reader has like it, its
 * capitals as tall as the drawing asks in the named font.
 */
package plycrag.files.svg;
