/**
 * What merchants sell, as read-only tables that come with the program.
 *
 * <p>Each table is a CSV file beside these classes, every row of it with the source of its numbers.
 * A table that cannot be read is a defect of the program, never a fault of the user's. Rows keep
 * the order of the file. Lengths are millimetres.
 */
package plycrag.catalog;
