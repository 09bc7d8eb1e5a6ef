/**
 * Pages as PDF, true to size, and the build book to print.
 *
 * <p>Needs any {@link plycrag.document.Print}, or any {@link plycrag.document.Book} and its paper.
 *
 * <p>Guarantees: media, crop and trim box of a page are its paper, to 0.0001 pt; a viewer is asked
 * not to scale ({@code /PrintScaling /None}, ISO 32000-1 table 150), which it may ignore; text is
 * text, in a subset of Liberation Sans that lies in the file, so that it looks the same everywhere
 * and can be searched; places on paper are exact to 0.001 mm. The same print makes the same bytes:
 * the document's id is fixed, no date is written, and no stream is compressed, since the bytes of
 * deflate differ between machines.
 *
 * <p>A book is set in one column: lines broken at spaces by the font's own widths; a figure at its
 * scale, or shrunk to the page, or turned where that keeps it larger by far, always with its
 * caption; a table's title and heads again on every page where it goes on; a heading with what
 * follows it; stamp, wall, page and foot on every page. It is set from the same book as the page on
 * the screen and holds all its figures, so it weighs about what the printed set does: it must be
 * enough in a garage without a screen.
 *
 * <p>Leaves out: letters that the font has not, which become question marks.
 */
package plycrag.files.pdf;
