/**
 * Reads drawings that are about to be written, as strictly as the strictest of their receivers.
 *
 * <p>Needs the content of a file, and nothing of who wrote it: no code is shared with the writers,
 * so that a mistake of theirs is not made twice.
 *
 * <p>Guarantees: a file without a fault holds no number that some reader misreads ({@code NaN},
 * exponents, decimal commas, zero below zero); a DXF file is of the version that it says, ends, has
 * every layer declared, no open outline and nothing twice within 0.01 mm; an SVG file states its
 * size in millimetres and shows just that; a PDF file carries its font, has pages of papers that
 * are sold and no word beside them, asks not to be scaled, and has neither date nor compression.
 *
 * <p>Leaves out: whether a drawing is right.
 */
package plycrag.files.lint;
