/**
 * Drawings as DXF, R2000 (AC1015) or R12 (AC1009), in the model's millimetres.
 *
 * <p>Needs any {@link plycrag.document.Drawing} in which a layer's name stands for one pen.
 * Guarantees, for both versions: only entities that the version knows; every layer and linetype
 * declared and everything by layer; circles as CIRCLE, outlines as one closed polyline whose first
 * vertex is not repeated, text as TEXT; no two entities that lie on each other within 0.01 mm, the
 * first in the drawing's order being kept; extents, limits and the active viewport set to what the
 * drawing shows; at most four decimals; ASCII, other characters as {@code \U+XXXX}. For R2000 also
 * units and measurement, handles, owners, subclass markers and lineweights.
 *
 * <p>The numbers are the model's whatever the drawing's scale; text heights and dashes, which are
 * meant for paper, are multiplied by it. Leaves out: fills. A filled outline is its outline.
 */
package plycrag.files.dxf;
