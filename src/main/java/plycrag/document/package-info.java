/**
 * What the product makes, free of any format: drawings, programs, tables, maps, scenes, prints, the
 * book.
 *
 * <p>The second waist of the house. Makers of content fill these values and know no grammar; the
 * writers in {@code files} know a grammar and nothing of walls.
 *
 * <ul>
 *   <li>A printed page is a value too ({@link plycrag.document.Print}): drawings at their own
 *       scales on paper. So title blocks, tiles and maps are drawn like everything else, and a
 *       writer of pages knows no layout.
 *   <li>A part's line in a list is a {@code Cell.Marks}, a drawing of parts a figure that says so:
 *       writers lead from one to the other by the mark alone and know no parts.
 *   <li>A {@link plycrag.document.Scene} has the room's axes and says what is seen from outside;
 *       how a format turns its axes is the format's.
 *   <li>A {@link plycrag.document.DrillProgram} is made of canonical moves, however they are
 *       spelled.
 * </ul>
 *
 * <p>Guarantees: all values are immutable and reject what could not be written; lengths are
 * millimetres; places in a drawing are the model's, text heights and pens those on paper. Leaves
 * out: what anything means. Sees {@code units}.
 */
package plycrag.document;
